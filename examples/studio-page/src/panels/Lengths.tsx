import type { BrowPlan } from "brow-geometry";
import type { Measured } from "brow-geometry/units";
import { ENGLISH } from "brow-geometry/words";

const SHOWN = ["startDistance", "front", "tail", "startThickness", "archThickness"] as const;

/** What a ruler reads on the planned brows, each with how sure that is. */
export function Lengths({ plan: { measures } }: { readonly plan: BrowPlan }) {
  return (
    <details>
      <summary>Lengths, in millimetres</summary>
      <table class="readings">
        <thead>
          <tr>
            <td />
            <th scope="col">right</th>
            <th scope="col">left</th>
          </tr>
        </thead>
        <tbody>
          {SHOWN.map((name) => (
            <tr key={name}>
              <th scope="row">{ENGLISH.terms.measures[name]}</th>
              <td>{written(measures.right[name])}</td>
              <td>{written(measures.left[name])}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

function written(measure: Measured | undefined): string {
  if (measure === undefined) return "–";
  const { value, u } = measure;
  return `${value.toFixed(1)} ± ${Number.isFinite(u) ? u.toFixed(1) : "?"}`;
}
