import { say } from "brow-geometry";
import { STAGES } from "brow-geometry/mapping";
import { kept } from "../appointment/history.js";
import { FileButton } from "../controls/FileButton.js";
import { Options } from "../controls/Options.js";
import { addPhotoVisit, addRulerVisit } from "../actions/visits.js";
import { weeksSince } from "../page-state.js";
import type { Mapped } from "../planning/map.js";
import { resultsOf } from "../planning/results.js";

const WEEKS = { "0": "Fresh", "2": "2 weeks", "6": "6 weeks", "52": "A year" } as const;

/** The brows as they came out, fresh and healed, held against the map. */
export function VisitsPanel({ map }: { readonly map: Mapped }) {
  const results = resultsOf(map.plan, kept.value.visits);
  return (
    <fieldset>
      <legend>Compare with what came of it</legend>
      <Options
        title="Since the work"
        options={WEEKS}
        chosen={weeksSince.value}
        onChoose={(weeks) => {
          weeksSince.value = weeks;
        }}
      />
      <div class="row">
        <FileButton name="From a photo" accept="image/*" onFile={addPhotoVisit} />
        <button type="button" onClick={addRulerVisit}>
          By ruler
        </button>
      </div>
      {results?.ok === false && (
        <p role="alert">Cannot be compared: {results.refusal.detail.need}.</p>
      )}
      {results?.ok === true &&
        results.answer.results.map(({ name, weeks, notes, touchUps }) => (
          <section key={name}>
            <h3>{name}</h3>
            <ul class="notes">
              {touchUps.map(({ note }, index) => (
                <li key={`touch-up ${index}`}>{say(note)}</li>
              ))}
              {touchUps.length === 0 && weeks >= STAGES.healed && <li>Nothing to touch up.</li>}
              {notes.map((note, index) => (
                <li key={index}>{say(note)}</li>
              ))}
            </ul>
          </section>
        ))}
    </fieldset>
  );
}
