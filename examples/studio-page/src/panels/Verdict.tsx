import { say } from "brow-geometry";
import type { PlanFinding } from "brow-geometry/mapping";
import { verdictOf } from "../planning/verdict.js";
import { changeMapToRuler } from "../actions/enter.js";

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
          Photo: <strong>{verdict}</strong>
        </span>
      </summary>
      <ul>
        {told.map((one) => (
          <li key={one.code}>{say(one)}</li>
        ))}
        {told.length === 0 && <li>Nothing that was checked speaks against it.</li>}
      </ul>
      {others.length > 0 && (
        <details class="unchecked">
          <summary>Not checked ({others.length})</summary>
          <ul>
            {others.map((one, index) => (
              <li key={index}>{say(one)}</li>
            ))}
          </ul>
        </details>
      )}
      {verdict === "Retake" && (
        <button type="button" onClick={changeMapToRuler}>
          Go on by ruler alone
        </button>
      )}
    </details>
  );
}
