import { say } from "brow-geometry";
import { AIMS } from "../appointment/area.js";
import { change, kept } from "../appointment/history.js";
import { drawingFor } from "../page-state.js";
import { checksOf } from "../planning/areas.js";
import type { Mapped } from "../planning/map.js";
import { text, words } from "../words/language.js";

/** Skin that the map has to mind: drawn by finger on the picture, and held against the map. */
export function AreaControls({ map }: { readonly map: Mapped }) {
  const { areas } = kept.value;
  const checks = checksOf(map.plan, areas);
  return (
    <fieldset>
      <legend>{text.value.areas}</legend>
      <p class="hint" role="status">
        {drawingFor.value && text.value.areasSaid}
      </p>
      <div class="row">
        {AIMS.map((aim) => (
          <button
            key={aim}
            type="button"
            aria-pressed={drawingFor.value === aim}
            onClick={() => {
              drawingFor.value = drawingFor.value === aim ? undefined : aim;
            }}
          >
            {text.value.aims[aim]}
          </button>
        ))}
      </div>
      {checks.ok && (
        <ul class="areas">
          {checks.answer.map(({ area, note }, index) => (
            <li key={index}>
              <span>{say(note, words.value)}</span>
              <button
                type="button"
                aria-label={text.value.removeArea(area.name)}
                onClick={() =>
                  change((now) => ({ ...now, areas: now.areas.filter((_, at) => at !== index) }))
                }
              >
                ×
              </button>
            </li>
          ))}
        </ul>
      )}
    </fieldset>
  );
}
