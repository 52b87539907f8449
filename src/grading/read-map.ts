import { DOTS, type FaceMeasures } from "../landmarks/index.js";
import {
  checkDrawn,
  checkReadings,
  type DrawnMap,
  type DrawnOptions,
  type MeasureDeviation,
} from "../mapping/index.js";
import { compareSides, type SideDifference } from "../symmetry/index.js";
import { GeometryError, type Measured, type Side } from "../units/index.js";
import type { GradingReference } from "./grade.js";

/** A map as far as it can be read: against its reference, and one side against the other. */
export interface ReadMap {
  readonly deviations: readonly MeasureDeviation[];
  readonly differences: readonly SideDifference[];
}

/** Reads what was drawn; dots are read on the face of the plan that they are held against. */
export function readMap(
  where: string,
  drawn: DrawnMap,
  reference: GradingReference,
  options: DrawnOptions,
): ReadMap {
  const { readings = { right: {}, left: {} } } = drawn;
  if (reference.kind === "plan" && (hasDots(drawn) || hasReadings(readings))) {
    const { measures, comparison } = checkDrawn(reference.plan, drawn, options);
    return { deviations: measures, differences: comparison.differences };
  }
  if (hasDots(drawn)) {
    throw new GeometryError("missing-landmark", {
      where,
      field: "reference.kind",
      value: reference.kind,
      need: '"plan": dots are read on the face of a plan; without one, give readings instead of marks',
    });
  }
  return {
    deviations:
      reference.kind === "readings" ? checkReadings(reference.readings, readings, options) : [],
    differences: compareSides(readings, options).differences,
  };
}

const SIDES: readonly Side[] = ["right", "left"];

function hasDots({ marks }: DrawnMap): boolean {
  return SIDES.some((side) => DOTS.some((dot) => marks?.[side][dot] !== undefined));
}

function hasReadings({ right, left, startToStart }: FaceMeasures<Measured>): boolean {
  return [right, left].some((side) => Object.keys(side).length > 0) || startToStart !== undefined;
}
