import { kept } from "../appointment/history.js";
import { changeMapToRuler, goToMapFace } from "../actions/enter.js";
import { needIn } from "../actions/telling.js";
import { map } from "../planning/map.js";

/** Why there is no map, and what leads to one. */
export function NoMapPanel() {
  const { value } = map;
  if (value === undefined || value.ok) {
    return (
      <>
        <p>First pull the borders of both brows onto the hair: nothing is planned from a guess.</p>
        <button type="button" class="main" onClick={() => goToMapFace(false)}>
          Go to the face
        </button>
      </>
    );
  }
  const { refusal } = value;
  const needsRuler = kept.value.map?.kind === "photo" && refusal.code === "missing-landmark";
  return (
    <>
      <p role="alert">
        {needsRuler
          ? "Millimetres are missing. Tap two marks of a ruler in the photo."
          : `No map from this: ${needIn(refusal)}.`}
      </p>
      <button type="button" class="main" onClick={() => goToMapFace(needsRuler)}>
        {needsRuler ? "Go to the ruler" : "Go to the face"}
      </button>
      <button type="button" onClick={changeMapToRuler}>
        Go on by ruler alone
      </button>
    </>
  );
}
