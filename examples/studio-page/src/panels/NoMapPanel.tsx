import { basisAtHand } from "../appointment/appointment.js";
import { kept } from "../appointment/history.js";
import { changeToRuler } from "../actions/enter.js";
import { entering, tab } from "../page-state.js";
import { map } from "../planning/map.js";

/** Why there is no map, and what leads to one. */
export function NoMapPanel() {
  const { value } = map;
  const basis = basisAtHand(kept.value);
  if (value === undefined || value.ok) {
    return (
      <>
        <p>First pull the borders of both brows onto the hair: nothing is planned from a guess.</p>
        <button type="button" class="main" onClick={() => (tab.value = "face")}>
          To the face
        </button>
      </>
    );
  }
  const { code, detail } = value.refusal;
  const needsRuler = basis?.kind === "photo" && code === "missing-landmark";
  return (
    <>
      <p role="alert">
        {needsRuler
          ? "Millimetres are missing. Tap two marks of a ruler in the photo."
          : `No map from this: ${detail.field} needs ${detail.need}.`}
      </p>
      <button
        type="button"
        class="main"
        onClick={() => {
          entering.value = needsRuler ? "ruler" : "right";
          tab.value = "face";
        }}
      >
        {needsRuler ? "To the ruler" : "Back to the face"}
      </button>
      <button type="button" onClick={changeToRuler}>
        Go on by ruler alone
      </button>
    </>
  );
}
