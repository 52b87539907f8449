import type { Tolerance, ToleranceSet } from "../../units/index.js";
import { type FaceMeasureName, kindOf } from "./measures.js";

/**
 * What a measure may differ by under a tolerance set; undefined where the set says nothing of its kind,
 * and nothing is decided about it then.
 *
 * @example
 * ```ts
 * import { toleranceFor } from "brow-geometry/landmarks";
 * import { WORKING_TOLERANCES } from "brow-geometry";
 * toleranceFor("archThickness", WORKING_TOLERANCES)?.limits; // → { lower: -0.5, upper: 0.5 }
 * toleranceFor("area", WORKING_TOLERANCES); // → undefined
 * ```
 */
export function toleranceFor(measure: FaceMeasureName, set: ToleranceSet): Tolerance | undefined {
  const { tolerance } = kindOf(measure);
  return tolerance === undefined ? undefined : set.tolerances[tolerance];
}
