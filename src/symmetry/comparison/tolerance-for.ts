import type { MeasureName } from "../../landmarks/index.js";
import type { Tolerance, ToleranceName, ToleranceSet } from "../../units/index.js";

/** What kind of tolerance each measure falls under; none for angles and areas. */
const TOLERANCE_OF: Readonly<Record<MeasureName | "startToStart", ToleranceName | undefined>> = {
  front: "position",
  tail: "position",
  frontAlong: "position",
  tailAlong: "position",
  frontOnPhoto: "position",
  tailOnPhoto: "position",
  frontShare: "frontShare",
  startDistance: "position",
  archDistance: "position",
  tailDistance: "position",
  startHeight: "position",
  archHeight: "position",
  tailHeight: "position",
  startThickness: "thickness",
  bodyThickness: "thickness",
  archThickness: "thickness",
  exocanthionToTailEnd: "position",
  lidToBrow: "position",
  frontInclination: undefined,
  browInclination: undefined,
  area: undefined,
  startToStart: "position",
};

/** Everything that is read on one side, in the order in which it is reported. */
export const MEASURE_NAMES: readonly MeasureName[] = (
  Object.keys(TOLERANCE_OF) as readonly (keyof typeof TOLERANCE_OF)[]
).filter((name) => name !== "startToStart");

/**
 * What a measure may differ by under a tolerance set, undefined where the set says nothing of it.
 *
 * @example
 * ```ts
 * import { toleranceFor, WORKING_TOLERANCES } from "brow-geometry";
 * toleranceFor("archThickness", WORKING_TOLERANCES)?.limits; // → { lower: -0.5, upper: 0.5 }
 * toleranceFor("area", WORKING_TOLERANCES); // → undefined
 * ```
 */
export function toleranceFor(
  measure: MeasureName | "startToStart",
  set: ToleranceSet,
): Tolerance | undefined {
  const kind = TOLERANCE_OF[measure];
  return kind === undefined ? undefined : set.tolerances[kind];
}
