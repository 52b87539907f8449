import {
  type FaceMeasureName,
  type FaceMeasures,
  type MeasureName,
  MEASURES,
  type SideMeasures,
} from "../landmarks/index.js";
import { MEASURE_NAMES } from "../landmarks/internal.js";
import type { SideComparison, SideDifference } from "../symmetry/index.js";
import type { Measured } from "../units/index.js";
import { decision } from "./decision.js";
import { toleranceSet } from "./tolerance-set.js";
import { measured } from "./quantity.js";
import { each, list, record, type Schema, word, wordsOf } from "./schema.js";

export const measureName: Schema<MeasureName> = word<MeasureName>(MEASURE_NAMES);

export const faceMeasureName: Schema<FaceMeasureName> = word<FaceMeasureName>(MEASURES);

const sideMeasures = record<SideMeasures<Measured>>({}, each(wordsOf(MEASURE_NAMES), measured));

export const faceMeasures: Schema<FaceMeasures<Measured>> = record<FaceMeasures<Measured>>(
  { right: sideMeasures, left: sideMeasures },
  { startToStart: measured },
);

const difference = record<SideDifference>(
  { measure: measureName, right: measured, left: measured, difference: measured },
  { decision },
);

export const sideComparison: Schema<SideComparison> = record<SideComparison>({
  differences: list(difference, MEASURE_NAMES.length),
  tolerances: toleranceSet,
});
