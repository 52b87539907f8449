import * as z from "zod/mini";
import type { Reading, ReadingSheet, SideReadingSheet } from "../calibration/index.js";
import { READABLE_MEASURES } from "../landmarks/internal.js";
import { writtenLength } from "../units/internal.js";
import { parse } from "./parse.js";
import { measured, spread, words } from "./quantity.js";
import { each, record, type Schema } from "./schema.js";

const READING =
  'a length with its unit, such as "29.5 mm", a number of millimetres from 0 on, or one with its uncertainty as value and u';

const written = words.check(z.refine((text) => writtenLength(text) !== undefined, READING));

const reading = z.union([spread, written, measured], READING) as unknown as Schema<Reading>;

const side = record<SideReadingSheet>({}, each(READABLE_MEASURES, reading));

/** What was read by hand on a face. */
export const readingSheetSchema: Schema<ReadingSheet> = record<ReadingSheet>(
  {},
  { right: side, left: side, startToStart: reading },
);

/**
 * Reads a sheet of readings from outside, such as a form that was sent as JSON; `measuresFromReadings` makes
 * measures of it. Words need their unit, bare numbers are millimetres.
 *
 * @throws GeometryError `not-parsed`, naming the path, what stood there and what is needed
 *
 * @example
 * ```ts
 * import { parseReadingSheet } from "brow-geometry/schema";
 * parseReadingSheet({ left: { front: "32,5 mm", tail: 16.5 } }); // → { left: { front: "32,5 mm", tail: 16.5 } }
 * parseReadingSheet({ left: { front: "32,5" } }); // throws GeometryError: left.front is "32,5"; needs a length with its unit
 * ```
 */
export function parseReadingSheet(json: unknown): ReadingSheet {
  return parse("parseReadingSheet", "sheet", readingSheetSchema, json);
}
