import { say } from "brow-geometry";
import { cautionsToSay } from "brow-geometry/mapping";
import { today } from "../appointment/day.js";
import { change, kept } from "../appointment/history.js";
import { Tick } from "../controls/Tick.js";
import { linesShown } from "../page-state.js";
import { findings, type Mapped } from "../planning/map.js";
import { greatestMoves } from "../planning/moves.js";
import { Lengths } from "./Lengths.js";
import { Verdict } from "./Verdict.js";
import { dayInWords, text, words } from "../words/language.js";

/** What matters: the greatest moves, and whether the client agrees. */
export function MapPanel({ map }: { readonly map: Mapped }) {
  const { plan } = map;
  const moves = greatestMoves(plan);
  const { agreed } = kept.value;
  return (
    <>
      <ol class="moves">
        {moves.map(({ text, signs }) => (
          <li key={text}>
            <span class="signs" aria-hidden="true">
              {signs}
            </span>
            {text}
          </li>
        ))}
      </ol>
      {moves.length === 0 && <p>{text.value.nothingToMove}</p>}
      <button
        type="button"
        class={agreed ? "agree on" : "agree"}
        aria-pressed={agreed !== undefined}
        onClick={() =>
          change((now) => ({ ...now, agreed: now.agreed ? undefined : { on: today() } }))
        }
      >
        {agreed ? `✓ ${text.value.agree}` : text.value.agree}
        {agreed?.on !== undefined && <small>{text.value.agreedOn(dayInWords(agreed.on))}</small>}
      </button>
      {findings.value && <Verdict findings={findings.value} />}
      <Tick
        isOn={linesShown.value}
        onTick={(isOn) => {
          linesShown.value = isOn;
        }}
      >
        {text.value.showLines}
      </Tick>
      <Lengths plan={plan} />
      <details>
        <summary>{text.value.why}</summary>
        <ul>
          {plan.reasons.map((reason, index) => (
            <li key={index}>{say(reason, words.value)}</li>
          ))}
        </ul>
      </details>
      <details>
        <summary>{text.value.twice}</summary>
        <ul>
          {cautionsToSay(plan).map((caution, index) => (
            <li key={index}>{say(caution, words.value)}</li>
          ))}
        </ul>
      </details>
    </>
  );
}
