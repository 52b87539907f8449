import type { FaceMeasures, MeasureName, SideMeasures } from "../landmarks/index.js";
import type { SideComparison, SideDifference } from "../symmetry/index.js";
import type { Measured } from "../units/index.js";
import { decision } from "./decision.js";
import { toleranceSet } from "./tolerance-set.js";
import { measured } from "./quantity.js";
import { each, list, record, type Schema, word, type Words } from "./schema.js";

/** Everything that is read on one side. */
export const measureNames: Words<MeasureName> = {
  front: true,
  tail: true,
  frontAlong: true,
  tailAlong: true,
  frontOnPhoto: true,
  tailOnPhoto: true,
  frontShare: true,
  startDistance: true,
  archDistance: true,
  tailDistance: true,
  startHeight: true,
  archHeight: true,
  tailHeight: true,
  startThickness: true,
  bodyThickness: true,
  archThickness: true,
  exocanthionToTailEnd: true,
  lidToBrow: true,
  frontInclination: true,
  browInclination: true,
  area: true,
};

const sideMeasures = record<SideMeasures<Measured>>({}, each(measureNames, measured));

/** What is read on both brows, with uncertainty. */
export const faceMeasures: Schema<FaceMeasures<Measured>> = record<FaceMeasures<Measured>>(
  { right: sideMeasures, left: sideMeasures },
  { startToStart: measured },
);

const difference = record<SideDifference>(
  {
    measure: word<MeasureName>(measureNames),
    right: measured,
    left: measured,
    difference: measured,
  },
  { decision },
);

/** How two sides differ. */
export const sideComparison: Schema<SideComparison> = record<SideComparison>(
  {
    differences: list(difference, Object.keys(measureNames).length),
    tolerances: toleranceSet,
  },
  {},
);
