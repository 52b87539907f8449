import { type FaceMeasureName, type FaceMeasures } from "../../landmarks/index.js";
import { type KindOfMeasure, kindOf, MEASURE_NAMES } from "../../landmarks/internal.js";
import {
  decide,
  type Measured,
  measured,
  type Side,
  WORKING_TOLERANCES,
} from "../../units/index.js";
import { decideUnder, SIDES, refusingAs } from "../../units/internal.js";
import type { Deviation, DrawnOptions, MeasureDeviation } from "./deviation.js";

/**
 * One sheet of readings against another, such as that of a teacher: per measure that both have, how
 * far it is off, and whether that is within tolerance, outside or undecided.
 *
 * Both sheets are uncertain, so that a difference is as uncertain as both together.
 *
 * @throws GeometryError as {@link measured} and `decide`
 *
 * @example
 * ```ts
 * import { checkReadings, measuresFromReadings } from "brow-geometry";
 * const asked = measuresFromReadings({ left: { archHeight: "25 mm", tail: "16.5 mm" } });
 * const read = measuresFromReadings({ left: { archHeight: "27 mm" } });
 * const [deviation] = checkReadings(asked, read);
 * deviation?.difference; // → { value: 2, u: 0.204 }
 * deviation?.decision?.outcome; // → "outside"
 * ```
 */
export function checkReadings(
  asked: FaceMeasures<Measured>,
  read: FaceMeasures<Measured>,
  options: DrawnOptions = {},
): readonly MeasureDeviation[] {
  return refusingAs("checkReadings", () => [
    ...SIDES.flatMap((side) =>
      MEASURE_NAMES.flatMap((measure) =>
        deviation({ side, measure }, asked[side][measure], read[side][measure], options),
      ),
    ),
    ...deviation({ measure: "startToStart" }, asked.startToStart, read.startToStart, options),
  ]);
}

function deviation(
  which: { readonly side?: Side; readonly measure: FaceMeasureName },
  asked: Measured | undefined,
  read: Measured | undefined,
  options: DrawnOptions,
): readonly MeasureDeviation[] {
  if (asked === undefined || read === undefined) return [];
  const difference = measured<number>(read.value - asked.value, Math.hypot(read.u, asked.u));
  const judged = judge(kindOf(which.measure), difference, options);
  return [{ ...which, planned: asked.value, drawn: read, ...judged }];
}

/** A difference with its decision, where the tolerances speak of its kind. */
export function judge(
  { tolerance }: KindOfMeasure,
  difference: Measured,
  { tolerances = WORKING_TOLERANCES, ...options }: DrawnOptions,
): Deviation {
  return { difference, ...decideUnder(tolerances, tolerance, difference, options, 0, decide) };
}
