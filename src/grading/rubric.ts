import { type FaceMeasureName, type MeasureName } from "../landmarks/index.js";
import { FACE_MEASURE_NAMES, MEASURE_NAMES } from "../landmarks/internal.js";
import { refuse, requireObject, requirePositive } from "../units/internal.js";

/**
 * One thing that earns points.
 *
 * `"reference"`: what was drawn keeps to the reference; the points are for each side, and for
 * `startToStart` once. `"evenness"`: both sides read alike, whatever the reference says.
 */
export type RubricItem =
  | {
      readonly kind: "reference";
      readonly measure: FaceMeasureName;
      /** For each side; more than 0. */
      readonly points: number;
    }
  | {
      readonly kind: "evenness";
      readonly measure: MeasureName;
      /** For both sides together; more than 0. */
      readonly points: number;
    };

/** What a course looks at, and how much each of it weighs: plain data of the course's own. */
export interface Rubric {
  readonly name: string;
  /** Who set it. */
  readonly source: string;
  /** Each measure at most once against the reference and once for evenness. */
  readonly items: readonly RubricItem[];
}

/** What a ruler sheet holds, in the order in which it is filled in. */
const SHEET = [
  "front",
  "tail",
  "startThickness",
  "bodyThickness",
  "archThickness",
  "exocanthionToTailEnd",
  "startHeight",
  "archHeight",
  "tailHeight",
] as const;

/**
 * A rubric for what an artist reads by ruler; a default of this library. Each reading earns a point
 * against the reference, and a pair that is even two, since it takes two readings: 19 and 18 points.
 */
export const RULER_SHEET_RUBRIC: Rubric = /* @__PURE__ */ rulerSheetRubric();

function rulerSheetRubric(): Rubric {
  return {
    name: "ruler sheet",
    source: "default of brow-geometry",
    items: [
      { kind: "reference", measure: "startToStart", points: 1 },
      ...SHEET.map((measure) => ({ kind: "reference", measure, points: 1 }) as const),
      ...SHEET.map((measure) => ({ kind: "evenness", measure, points: 2 }) as const),
    ],
  };
}

/** What an item of each kind may ask for. */
const ASKED: { readonly [Kind in RubricItem["kind"]]: readonly string[] } = {
  reference: FACE_MEASURE_NAMES,
  evenness: MEASURE_NAMES,
};

/** Refuses a rubric that asks for nothing, asks twice, or weighs nothing. */
export function requireRubric(rubric: Rubric): void {
  requireObject("rubric", rubric, "an object with a name, a source and items");
  const { items } = rubric;
  if (!Array.isArray(items)) refuse("out-of-range", "rubric.items", items, "a list of items");
  if (items.length === 0) refuse("out-of-range", "rubric.items", items, "at least one item");
  const seen = new Set<string>();
  rubric.items.forEach((item, index) => {
    const field = `rubric.items[${index}]`;
    requireObject(field, item, "an object with kind, measure and points");
    const { kind, measure, points } = item;
    requirePositive(`${field}.points`, points);
    if (!Object.hasOwn(ASKED, kind))
      refuse("out-of-range", `${field}.kind`, kind, '"reference" or "evenness"');
    const named = ASKED[kind];
    if (!named.includes(measure)) {
      refuse("out-of-range", `${field}.measure`, measure, `one of ${named.join(", ")}`);
    }
    if (seen.has(`${kind} ${measure}`)) {
      refuse("out-of-range", `${field}.measure`, measure, `each measure once for ${kind}`);
    }
    seen.add(`${kind} ${measure}`);
  });
}
