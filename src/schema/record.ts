import * as z from "zod/mini";
import { DOT_NAMES, FACE_MEASURE_NAMES, MEASURE_NAMES } from "../landmarks/internal.js";
import { AGREEMENTS, CALENDAR_DAY } from "../mapping/internal.js";
import type {
  Agreement,
  Deviation,
  DotDeviation,
  DrawnCheck,
  EarlierRecord,
  MapInput,
  MapRecord,
  MeasureDeviation,
  PlannableFace,
  RecordNote,
} from "../mapping/index.js";
import { choicesSchema, dot, side } from "./choices.js";
import { decision, outcome } from "./decision.js";
import { toleranceSet } from "./tolerance-set.js";
import { plannableFace } from "./face.js";
import { faceFrame } from "./frame.js";
import { faceMeasureName, sideComparison } from "./measures.js";
import { mapVersion, planSchema } from "./plan.js";
import { measured, MOST_NOTES, words } from "./quantity.js";
import { finite, kinds, list, record, type Schema, word } from "./schema.js";
import { parseVersioned, RECORD_STEPS } from "./versions.js";

const MOST_DOTS = 2 * DOT_NAMES.length;
/** All measures of both sides, and the one between them. */
const MOST_MEASURES = MEASURE_NAMES.length + FACE_MEASURE_NAMES.length;

const input = kinds<MapInput>({
  face: [{ face: plannableFace }],
  // The two spaces differ in their types only: numbers do not show their unit.
  photo: [{ photo: plannableFace as unknown as Schema<PlannableFace<"px">>, frame: faceFrame }],
});

const deviation = record<Deviation>({ difference: measured }, { decision });

/** Records of version 1 hold the sentence of a correction, too. */
interface Corrected {
  readonly correction?: string;
}

const dotDeviation = record<DotDeviation & Corrected>(
  { side, dot, outward: deviation, up: deviation },
  { correction: words },
) as unknown as Schema<DotDeviation>;

const measureDeviation = record<MeasureDeviation & Corrected>(
  { measure: faceMeasureName, planned: finite, drawn: measured, difference: measured },
  { side, decision, correction: words },
) as unknown as Schema<MeasureDeviation>;

const check = record<DrawnCheck>({
  outcome,
  dots: list(dotDeviation, MOST_DOTS),
  measures: list(measureDeviation, MOST_MEASURES),
  comparison: sideComparison,
  tolerances: toleranceSet,
});

const note = [{ text: words }, { by: words }] as const;

const kept = {
  version: mapVersion,
  input,
  choices: choicesSchema,
  plan: planSchema,
  notes: list(record<RecordNote>(...note), MOST_NOTES),
};

const DAY = "a day, year first, such as 2026-03-14";

const extras = {
  check,
  date: z.string(DAY).check(z.refine((day) => CALENDAR_DAY.test(day), DAY)),
  artist: words,
  place: words,
  agreement: list(record<Agreement>({ kind: word(AGREEMENTS), ...note[0] }, note[1]), MOST_NOTES),
  app: z.unknown() as Schema<unknown>,
};

/** A map with everything that led to it, as `recordOf` answers it. */
export const recordSchema: Schema<MapRecord> = record<MapRecord>(kept, {
  ...extras,
  earlier: list(record<EarlierRecord>(kept, extras), MOST_NOTES),
});

/**
 * Reads a record back that was written to JSON; what is read equals what was written, and replays to
 * the same plan. A record of an earlier version is read as this one would hold it; where a later one says
 * by `minor` that names were added, they are kept.
 *
 * @throws GeometryError `not-parsed`: a version that this library does not know is refused as such,
 * everything else by path, what stood there and what is needed
 *
 * @example
 * ```ts
 * import { parseRecord } from "brow-geometry/schema";
 * parseRecord({ version: 3 }); // throws GeometryError: version is 3; needs 2, the version of records
 * ```
 */
export function parseRecord(json: unknown): MapRecord {
  return parseVersioned("parseRecord", "record", recordSchema, RECORD_STEPS, json);
}

/**
 * What a record looks like as JSON Schema, draft 2020-12, for programs in other languages.
 *
 * @example
 * ```ts
 * import { recordJsonSchema } from "brow-geometry/schema";
 * recordJsonSchema().type; // → "object"
 * recordJsonSchema().required; // → ["version", "input", "choices", "plan", "notes"]
 * ```
 */
export function recordJsonSchema(): Readonly<Record<string, unknown>> {
  return { ...z.toJSONSchema(recordSchema, { reused: "ref" }) };
}
