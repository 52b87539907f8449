import type { BrowPlan } from "brow-geometry";
import type { Measured } from "brow-geometry/units";
import { figure, text, words } from "../words/language.js";

const SHOWN = ["startDistance", "front", "tail", "startThickness", "archThickness"] as const;

/** What a ruler reads on the planned brows, each with how sure that is. */
export function Lengths({ plan: { measures } }: { readonly plan: BrowPlan }) {
  return (
    <details>
      <summary>{text.value.lengths}</summary>
      <table class="readings">
        <thead>
          <tr>
            <td />
            <th scope="col">{words.value.terms.sides.right}</th>
            <th scope="col">{words.value.terms.sides.left}</th>
          </tr>
        </thead>
        <tbody>
          {SHOWN.map((name) => (
            <tr key={name}>
              <th scope="row">{words.value.terms.measures[name]}</th>
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
  return `${figure(value, 1)} ± ${Number.isFinite(u) ? figure(u, 1) : "?"}`;
}
