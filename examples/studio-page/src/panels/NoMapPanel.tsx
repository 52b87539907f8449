import { kept } from "../appointment/history.js";
import { changeMapToRuler, goToMapFace } from "../actions/enter.js";
import { needIn } from "../actions/telling.js";
import { map } from "../planning/map.js";
import { text } from "../words/language.js";

/** Why there is no map, and what leads to one. */
export function NoMapPanel() {
  const { value } = map;
  if (value === undefined || value.ok) {
    return (
      <>
        <p>{text.value.firstPull}</p>
        <button type="button" class="main" onClick={() => goToMapFace(false)}>
          {text.value.goToFace}
        </button>
      </>
    );
  }
  const { refusal } = value;
  const needsRuler = kept.value.map?.kind === "photo" && refusal.code === "missing-landmark";
  return (
    <>
      <p role="alert">
        {needsRuler ? text.value.noScale : text.value.because(text.value.noMap, needIn(refusal))}
      </p>
      <button type="button" class="main" onClick={() => goToMapFace(needsRuler)}>
        {needsRuler ? text.value.goToRuler : text.value.goToFace}
      </button>
      <button type="button" onClick={changeMapToRuler}>
        {text.value.goByRuler}
      </button>
    </>
  );
}
