import type { FaceMeasures } from "../../landmarks/index.js";
import { MEASURE_NAMES } from "../../landmarks/internal.js";
import type { SideReading } from "../../proportions/internal.js";
import type { Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import type { ReadingsRow } from "./plan-readings.js";

// Readings as numbers in rows, for slopes that are taken some hundred times for a plan. NaN is what does not
// exist; it never leaves this room.

/** What one row of readings holds: the measures of the right side, of the left side, and between both. */
const SIDE: number = MEASURE_NAMES.length;
export const BETWEEN: number = 2 * SIDE;
export const READ: number = BETWEEN + 1;

export type Row = Float64Array;

/** Everything that is read on both brows and between them, in a row. */
export function rowOfMeasures(measures: FaceMeasures<number>): Row {
  const row = new Float64Array(READ);
  for (const side of SIDES) fillSide(row, side, measures[side]);
  row[BETWEEN] = measures.startToStart ?? Number.NaN;
  return row;
}

export function fillSide(row: Row, side: Side, reading: Partial<SideReading>): void {
  const from = side === "right" ? 0 : SIDE;
  MEASURE_NAMES.forEach((name, index) => {
    row[from + index] = reading[name] ?? Number.NaN;
  });
}

/**
 * How a row changes with one of something, by its mean slope over one either way; over less where some of
 * it does not exist so far away, and to one side where it exists on one side only.
 */
export function meanSlopes(rowAt: (amount: number) => Row, centre: Row): Row {
  const slopes = slopesOver(1, rowAt, centre);
  for (const share of NEARER) {
    const isOpen = slopes.some((slope, at) => Number.isNaN(slope) && !Number.isNaN(centre[at]));
    if (!isOpen) break;
    const near = slopesOver(share, rowAt, centre);
    slopes.forEach((slope, at) => {
      if (Number.isNaN(slope)) slopes[at] = near[at] as number;
    });
  }
  return slopes;
}

const NEARER = [1 / 8, 1 / 512];

function slopesOver(share: number, rowAt: (amount: number) => Row, centre: Row): Row {
  const [up, down] = [rowAt(share), rowAt(-share)];
  return centre.map((value, index) => {
    const [above, below] = [up[index] as number, down[index] as number];
    const twice = above - below;
    if (!Number.isNaN(twice)) return twice / (2 * share);
    return (Number.isNaN(above) ? value - below : above - value) / share;
  });
}

/** How what is read changes with each of the places it is read from, by mean slopes over ± a step. */
export function slopesOf(
  read: (placed: Row) => Row,
  placed: Row,
  steps: Row,
): readonly (Row | undefined)[] {
  const centre = read(placed);
  return Array.from(placed, (at, index) => {
    const known = steps[index] as number;
    if (known === 0 || Number.isNaN(at)) return undefined;
    const step = Number.isNaN(known) ? NOMINAL_STEP : known;
    const readAt = (amount: number): Row => {
      const moved = placed.slice();
      moved[index] = at + amount * step;
      return read(moved);
    };
    return meanSlopes(readAt, centre).map((slope) => slope / step);
  });
}

/** Tells which readings depend on a place of which nothing is known, in mm. */
const NOMINAL_STEP = 0.1;

export function rootOfSquares(rows: readonly Row[], size: number): Row {
  const sums = new Float64Array(size);
  for (const row of rows) {
    for (let index = 0; index < size; index += 1) {
      sums[index] = (sums[index] as number) + (row[index] as number) ** 2;
    }
  }
  return sums.map(Math.sqrt);
}

/** The uncertainties of one map's readings, and of the left ones less the right ones, by their paths. */
export function uncertainties(map: string, effects: readonly Row[]): ReadingsRow {
  const differences = effects.map((row) =>
    row.subarray(SIDE, BETWEEN).map((left, index) => left - (row[index] as number)),
  );
  const [spread, apart] = [rootOfSquares(effects, READ), rootOfSquares(differences, SIDE)];
  const u: Record<string, number> = {};
  const name = (path: string, value: number | undefined): void => {
    u[`${map}.${path}`] = value === undefined || Number.isNaN(value) ? Infinity : value;
  };
  MEASURE_NAMES.forEach((measure, index) => {
    name(`right.${measure}`, spread[index]);
    name(`left.${measure}`, spread[SIDE + index]);
    name(`difference.${measure}`, apart[index]);
  });
  name("startToStart", spread[BETWEEN]);
  return u;
}
