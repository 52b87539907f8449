import {
  type FaceMeasureName,
  type FaceMeasures,
  type MeasureName,
  type SideMeasures,
} from "../landmarks/index.js";
import { FACE_MEASURE_NAMES, MEASURE_NAMES } from "../landmarks/internal.js";
import type { SideComparison, SideDifference } from "../symmetry/index.js";
import type { Measured } from "../units/index.js";
import { decision } from "./decision.js";
import { toleranceSet } from "./tolerance-set.js";
import { reading } from "./quantity.js";
import { each, list, record, type Schema, word } from "./schema.js";

export const measureName: Schema<MeasureName> = word(MEASURE_NAMES);

export const faceMeasureName: Schema<FaceMeasureName> = word(FACE_MEASURE_NAMES);

const sideMeasures = record<SideMeasures<Measured>>({}, each(MEASURE_NAMES, reading));

export const faceMeasures: Schema<FaceMeasures<Measured>> = record<FaceMeasures<Measured>>(
  { right: sideMeasures, left: sideMeasures },
  { startToStart: reading },
);

const difference = record<SideDifference>(
  { measure: measureName, right: reading, left: reading, difference: reading },
  { decision },
);

export const sideComparison: Schema<SideComparison> = record<SideComparison>({
  differences: list(difference, MEASURE_NAMES.length),
  tolerances: toleranceSet,
});
