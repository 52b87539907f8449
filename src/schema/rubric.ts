import { FACE_MEASURE_NAMES, MEASURE_NAMES } from "../landmarks/internal.js";
import type { Rubric, RubricItem } from "../grading/index.js";
import { faceMeasureName, measureName } from "./measures.js";
import { parse } from "./parse.js";
import { words } from "./quantity.js";
import { kinds, list, positive, record, type Schema } from "./schema.js";

/** Each measure once against the reference and once for evenness. */
const MOST_ITEMS = FACE_MEASURE_NAMES.length + MEASURE_NAMES.length;

const item = kinds<RubricItem>({
  reference: [{ measure: faceMeasureName, points: positive }],
  evenness: [{ measure: measureName, points: positive }],
});

/** What a course looks at, and how much each of it weighs. */
export const rubricSchema: Schema<Rubric> = record<Rubric>({
  name: words,
  source: words,
  items: list(item, MOST_ITEMS, 1),
});

/**
 * Reads a rubric from outside, such as parsed JSON.
 *
 * @throws GeometryError `not-parsed`, naming the path, what stood there and what is needed
 *
 * @example
 * ```ts
 * import { parseRubric } from "brow-geometry/schema";
 * const items = [{ kind: "evenness", measure: "front", points: -1 }];
 * parseRubric({ name: "week 2", source: "us", items }); // throws GeometryError: items[0].points is -1; needs a finite number above 0
 * ```
 */
export function parseRubric(json: unknown): Rubric {
  return parse("parseRubric", "rubric", rubricSchema, json);
}
