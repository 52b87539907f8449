import type { BrowPlan } from "brow-geometry";
import { placeUnder } from "brow-geometry/drawing";
import { type AreaCheck, checkAreas } from "brow-geometry/mapping";
import { type Attempt, attempt } from "brow-geometry/units";
import type { DrawnArea } from "../appointment/area.js";
import { text } from "../words/language.js";

/** What a map does to what was drawn on its picture. */
export function checksOf(
  plan: BrowPlan,
  areas: readonly DrawnArea[],
): Attempt<readonly AreaCheck[]> {
  return attempt(() =>
    checkAreas(
      plan,
      areas.map(({ aim, edge }) => ({
        name: text.value.areaNames[aim],
        aim,
        edge: edge.map((spot) => placeUnder(plan, spot)),
      })),
    ),
  );
}
