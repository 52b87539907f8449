import type { FaceMeasures, MeasureName, SideMeasures } from "../../landmarks/index.js";
import { MEASURE_NAMES } from "../../landmarks/internal.js";
import type { Measured, Side, Sides } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { rootOfSquares, type Row, zeros } from "./mean-slopes.js";

// Readings as numbers in rows, for slopes that are taken some hundred times for a plan. NaN is what does not
// exist; it is left out of whatever is handed on.

/** What is read on one map, side by side: measures, and the left ones less the right ones. */
export interface SideReadings<Value> {
  readonly measures: FaceMeasures<Value>;
  readonly differences: SideMeasures<Value>;
}

/** What one row of readings holds: the measures of the right side, of the left side, and between both. */
const SIDE: number = MEASURE_NAMES.length;
export const BETWEEN: number = 2 * SIDE;
export const READ: number = BETWEEN + 1;

/** Everything that is read on both brows and between them, in a row. */
export function rowOfMeasures(measures: FaceValues): Row {
  const row = zeros(READ);
  for (const side of SIDES) fillSide(row, side, measures[side]);
  row[BETWEEN] = valueOf(measures.startToStart);
  return row;
}

/** Measures of both sides, with a place also for those that do not exist. */
type FaceValues = Sides<SideValues> & {
  readonly startToStart?: number | Measured;
};

type SideValues = { readonly [Name in MeasureName]?: number | Measured | undefined };

function valueOf(reading: number | Measured | undefined): number {
  return typeof reading === "object" ? reading.value : (reading ?? Number.NaN);
}

export function fillSide(row: Row, side: Side, reading: SideValues): void {
  const from = side === "right" ? 0 : SIDE;
  MEASURE_NAMES.forEach((name, index) => {
    row[from + index] = valueOf(reading[name]);
  });
}

/** Readings of rows, from a place in them on, with what every independent cause of error does to them. */
export function readingsFrom(
  values: Row,
  effects: readonly Row[],
  from = 0,
): SideReadings<Measured> {
  const u = rootOfSquares(effects, READ, from);
  const apart = rootOfSquares(effects, SIDE, from + SIDE, from);
  const readingAt = (index: number): Measured | undefined =>
    readingOf(values[from + index] as number, u[index] as number);
  const right = overMeasures((index) => readingAt(index));
  const left = overMeasures((index) => readingAt(SIDE + index));
  const startToStart = readingAt(BETWEEN);
  return {
    measures: { right, left, ...(startToStart === undefined ? {} : { startToStart }) },
    differences: overMeasures((index) =>
      readingOf(
        (values[from + SIDE + index] as number) - (values[from + index] as number),
        apart[index] as number,
      ),
    ),
  };
}

/** Readings as if they were known exactly: what a plan asks for, and what all choices have in common. */
export function exactly(measures: FaceValues): FaceMeasures<Measured> {
  return readingsFrom(rowOfMeasures(measures), []).measures;
}

function overMeasures(readingAt: (index: number) => Measured | undefined): SideMeasures<Measured> {
  const readings: { [Name in MeasureName]?: Measured } = {};
  MEASURE_NAMES.forEach((name, index) => {
    const reading = readingAt(index);
    if (reading !== undefined) readings[name] = reading;
  });
  return readings;
}

/** A reading that exists; what has no slope is known, but not how well. */
function readingOf(value: number, u: number): Measured | undefined {
  return Number.isNaN(value) ? undefined : { value, u: Number.isNaN(u) ? Infinity : u };
}
