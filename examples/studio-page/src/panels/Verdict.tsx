import { say } from "brow-geometry";
import type { PlanFinding } from "brow-geometry/mapping";
import { verdictOf } from "../planning/verdict.js";
import { changeMapToRuler } from "../actions/enter.js";
import { text, words } from "../words/language.js";

const ICONS = { Good: "✓", Careful: "!", Retake: "↺" } as const;

/** What the photo is worth, in one word; why, a tap away. */
export function Verdict({ findings }: { readonly findings: readonly PlanFinding[] }) {
  const verdict = verdictOf(findings);
  const told = findings.filter(({ severity }) => severity === "retake" || severity === "caution");
  const others = findings.filter((one) => !told.includes(one));
  return (
    <details class={`verdict ${verdict.toLowerCase()}`}>
      <summary>
        <span class="icon" aria-hidden="true">
          {ICONS[verdict]}
        </span>
        <span>
          {text.value.verdict}: <strong>{text.value.verdicts[verdict]}</strong>
        </span>
      </summary>
      <ul>
        {told.map((one) => (
          <li key={one.code}>{say(one, words.value)}</li>
        ))}
        {told.length === 0 && <li>{text.value.nothingAgainst}</li>}
      </ul>
      {others.length > 0 && (
        <details class="unchecked">
          <summary>{text.value.notChecked(others.length)}</summary>
          <ul>
            {others.map((one, index) => (
              <li key={index}>{say(one, words.value)}</li>
            ))}
          </ul>
        </details>
      )}
      {verdict === "Retake" && (
        <button type="button" onClick={changeMapToRuler}>
          {text.value.goByRuler}
        </button>
      )}
    </details>
  );
}
