import * as z from "zod/mini";
import { type Limits, type Tolerance, type ToleranceSet } from "../units/index.js";
import { keysOf, TOLERANCE_UNITS } from "../units/internal.js";
import { limits } from "./decision.js";
import { parse } from "./parse.js";
import { words } from "./quantity.js";
import { each, record, type Schema, word } from "./schema.js";

/** A set as it stands in a record: whoever decides by it looks at its limits. */
export const toleranceSet: Schema<ToleranceSet> = setWith(limits);

/**
 * Tolerances that belong together: what a studio, a study or a course decides by. Each has a limit at
 * least to one side, and none that are crossed.
 */
export const toleranceSetSchema: Schema<ToleranceSet> = setWith(
  limits.check(
    z.refine(
      ({ lower, upper }) => lower !== undefined || upper !== undefined,
      "a lower limit, an upper limit, or both",
    ),
    z.refine(
      ({ lower = -Infinity, upper = Infinity }) => lower <= upper,
      "a lower limit that is not above the upper one",
    ),
  ),
);

function setWith(limits: Schema<Limits>): Schema<ToleranceSet> {
  const status = word(["ours", "published"]);
  const tolerance = record<Tolerance>({ limits, status, source: words });
  return record<ToleranceSet>({
    name: words,
    tolerances: record<ToleranceSet["tolerances"]>({}, each(keysOf(TOLERANCE_UNITS), tolerance)),
  });
}

/**
 * Reads a tolerance set from outside, such as parsed JSON.
 *
 * @throws GeometryError `not-parsed`, naming the path, what stood there and what is needed
 *
 * @example
 * ```ts
 * import { parseToleranceSet } from "brow-geometry/schema";
 * const position = { limits: { lower: -1, upper: "1" }, status: "ours", source: "our studio" };
 * parseToleranceSet({ name: "studio", tolerances: { position } });
 * // throws GeometryError: tolerances.position.limits.upper is "1"; needs a finite number
 * ```
 */
export function parseToleranceSet(json: unknown): ToleranceSet {
  return parse("parseToleranceSet", "tolerance set", toleranceSetSchema, json);
}
