import { say } from "brow-geometry";
import { STAGES } from "brow-geometry/mapping";
import { kept } from "../appointment/history.js";
import { FileButton } from "../controls/FileButton.js";
import { Options } from "../controls/Options.js";
import { addPhotoVisit, addRulerVisit } from "../actions/visits.js";
import { weeksSince } from "../page-state.js";
import type { Mapped } from "../planning/map.js";
import { nameOf, resultsOf } from "../planning/results.js";
import { dayInWords, text, words } from "../words/language.js";

/** The brows as they came out, fresh and healed, held against the map. */
export function VisitsPanel({ map }: { readonly map: Mapped }) {
  const { visits } = kept.value;
  const results = resultsOf(map.plan, visits);
  const dayOfVisit = (weeks: number) => {
    const date = visits.find((visit) => visit.weeks === weeks)?.date;
    return date === undefined ? "" : dayInWords(date);
  };
  return (
    <fieldset>
      <legend>{text.value.compare}</legend>
      <Options
        title={text.value.since}
        options={text.value.weeks}
        chosen={weeksSince.value}
        onChoose={(weeks) => {
          weeksSince.value = weeks;
        }}
      />
      <div class="row">
        <FileButton name={text.value.fromPhoto} accept="image/*" onFile={addPhotoVisit} />
        <button type="button" onClick={addRulerVisit}>
          {text.value.byRuler}
        </button>
      </div>
      {results?.ok === false && (
        <p role="alert">
          {text.value.because(text.value.noComparing, results.refusal.detail.need)}
        </p>
      )}
      {results?.ok === true &&
        results.answer.results.map(({ name, weeks, notes, touchUps }) => (
          <section key={name}>
            <h2>{nameOf(weeks)}</h2>
            <p class="day">{dayOfVisit(weeks)}</p>
            <ul class="notes">
              {touchUps.map(({ note }, index) => (
                <li key={`touch-up ${index}`}>{say(note, words.value)}</li>
              ))}
              {touchUps.length === 0 && weeks >= STAGES.healed && (
                <li>{text.value.nothingToTouchUp}</li>
              )}
              {notes.map((note, index) => (
                <li key={index}>{say(note, words.value)}</li>
              ))}
            </ul>
          </section>
        ))}
    </fieldset>
  );
}
