import type { Tolerance, ToleranceName, ToleranceSet } from "../units/index.js";
import { limits } from "./decision.js";
import { parse } from "./parse.js";
import { words } from "./quantity.js";
import { each, record, type Schema, word } from "./schema.js";

const tolerance = record<Tolerance>(
  { limits, status: word<Tolerance["status"]>({ ours: true, published: true }), source: words },
  {},
);

/** Tolerances that belong together: what a studio, a study or a course decides by. */
export const toleranceSetSchema: Schema<ToleranceSet> = record<ToleranceSet>(
  {
    name: words,
    tolerances: record<ToleranceSet["tolerances"]>(
      {},
      each<ToleranceName, Tolerance>(
        { position: true, thickness: true, frontShare: true, eyeCant: true, noseDeviation: true },
        tolerance,
      ),
    ),
  },
  {},
);

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
