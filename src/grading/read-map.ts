import { type FaceMeasures } from "../landmarks/index.js";
import { DOT_NAMES } from "../landmarks/internal.js";
import {
  checkDrawn,
  checkReadings,
  type DrawnMap,
  type DrawnOptions,
  type MeasureDeviation,
} from "../mapping/index.js";
import { compareSides, type SideDifference } from "../symmetry/index.js";
import { type Measured, type ToleranceSet, WORKING_TOLERANCES } from "../units/index.js";
import { refuse, requireObject, SIDES } from "../units/internal.js";
import type { GradingReference } from "./grade.js";

/** A map as far as it can be read: against its reference, and one side against the other. */
export interface ReadMap {
  readonly deviations: readonly MeasureDeviation[];
  readonly differences: readonly SideDifference[];
  readonly tolerances: ToleranceSet;
}

/** Reads what was drawn; dots are read on the face of the plan that they are held against. */
export function readMap(
  drawn: DrawnMap,
  reference: GradingReference,
  options: DrawnOptions,
): ReadMap {
  requireMap(drawn);
  requireReference(reference);
  const { readings = { right: {}, left: {} } } = drawn;
  const {
    tolerances = reference.kind === "plan"
      ? reference.plan.comparison.tolerances
      : WORKING_TOLERANCES,
  } = options;
  const judged = { ...options, tolerances };
  if (reference.kind === "plan" && (hasDots(drawn) || hasReadings(readings))) {
    const { measures, comparison } = checkDrawn(reference.plan, drawn, judged);
    return { deviations: measures, differences: comparison.differences, tolerances };
  }
  if (hasDots(drawn)) {
    const need =
      '"plan": dots are read on the face of a plan; without one, give readings instead of dots';
    refuse("missing-landmark", "reference.kind", reference.kind, need);
  }
  return {
    deviations:
      reference.kind === "readings" ? checkReadings(reference.readings, readings, judged) : [],
    differences: compareSides(readings, judged).differences,
    tolerances,
  };
}

/** A sheet that was passed for a map would read as an empty one. */
function requireMap(drawn: DrawnMap): void {
  requireObject("drawn", drawn, "an object with dots, readings, or both");
  if ("right" in drawn || "left" in drawn) {
    refuse("not-parsed", "drawn", drawn, "a sheet of readings as { readings: … }");
  }
  if (drawn.readings !== undefined) requireSheet("drawn.readings", drawn.readings);
  if (drawn.dots === undefined) return;
  requireObject("drawn.dots", drawn.dots, "the dots of both sides");
  for (const side of SIDES) {
    requireObject(`drawn.dots.${side}`, drawn.dots[side], "an object with dots, or {}");
  }
}

function requireReference(reference: GradingReference): void {
  requireObject("reference", reference, 'an object with kind "plan", "readings" or "none"');
  const { kind } = reference;
  switch (kind) {
    case "plan":
      requireObject("reference.plan", reference.plan, "a plan");
      return;
    case "readings":
      requireSheet("reference.readings", reference.readings);
      return;
    case "none":
      return;
  }
  // A kind that the type does not know: a program in JavaScript can pass anything.
  refuse("out-of-range", "reference.kind", kind, '"plan", "readings" or "none"');
}

/** Readings as `measuresFromReadings` answers them. */
function requireSheet(field: string, sheet: FaceMeasures<Measured>): void {
  requireObject(field, sheet, "what measuresFromReadings answers");
  const need = "a value with its u, as measuresFromReadings answers it";
  const requireReading = (path: string, reading: unknown): void =>
    requireObject(`${field}.${path}`, reading, need);
  for (const side of SIDES) {
    requireObject(`${field}.${side}`, sheet[side], "what measuresFromReadings answers");
    for (const [name, reading] of Object.entries(sheet[side]))
      requireReading(`${side}.${name}`, reading);
  }
  if (sheet.startToStart !== undefined) requireReading("startToStart", sheet.startToStart);
}

function hasDots({ dots }: DrawnMap): boolean {
  return SIDES.some((side) => DOT_NAMES.some((dot) => dots?.[side][dot] !== undefined));
}

function hasReadings({ right, left, startToStart }: FaceMeasures<Measured>): boolean {
  return [right, left].some((side) => Object.keys(side).length > 0) || startToStart !== undefined;
}
