import { unlessRefused } from "../../units/internal.js";

/** Numbers in a fixed order; NaN is what does not exist. */
export type Row = number[];

/** What a question answers; nothing where geometry has no answer for a face that is a little different. */
export function ifAny<Answer>(question: () => Answer): Answer | undefined {
  // What is missing is missing whichever way the face varies.
  return unlessRefused(question, (code) => code !== "missing-landmark");
}

/**
 * How a row changes with one of something, by its mean slope over one either way; over less where some of
 * it does not exist so far away, and to one side where it exists on one side only.
 *
 * @param rowAt makes a new row each time
 */
export function meanSlopes(rowAt: (amount: number) => Row, centre: Row): Row {
  const slopes = slopesOver(1, rowAt, centre);
  for (const share of NEARER) {
    let near: Row | undefined;
    for (let index = 0; index < slopes.length; index += 1) {
      if (!Number.isNaN(slopes[index]) || Number.isNaN(centre[index])) continue;
      near ??= slopesOver(share, rowAt, centre);
      slopes[index] = near[index] as number;
    }
  }
  return slopes;
}

const NEARER = [1 / 8, 1 / 512];

function slopesOver(share: number, rowAt: (amount: number) => Row, centre: Row): Row {
  const slopes = rowAt(share);
  const down = rowAt(-share);
  for (let index = 0; index < centre.length; index += 1) {
    const above = slopes[index] as number;
    const below = down[index] as number;
    const value = centre[index] as number;
    const oneSided = Number.isNaN(above) ? value - below : above - value;
    const twice = above - below;
    slopes[index] = Number.isNaN(twice) ? oneSided / share : twice / (2 * share);
  }
  return slopes;
}

/**
 * How what is read changes with each of the places it is read from, by mean slopes over ± a step.
 *
 * @param centre what is read at the places themselves
 */
export function slopesOf(
  read: (placed: Row) => Row,
  placed: Row,
  steps: Row,
  centre: Row = read(placed),
): readonly (Row | undefined)[] {
  return Array.from(placed, (at, index) => {
    const known = steps[index] as number;
    if (known === 0 || Number.isNaN(at)) return undefined;
    const step = Number.isNaN(known) ? NOMINAL_STEP : known;
    const readAt = (amount: number): Row => {
      const moved = placed.slice();
      moved[index] = at + amount * step;
      return read(moved);
    };
    const slopes = meanSlopes(readAt, centre);
    for (let at = 0; at < slopes.length; at += 1) slopes[at] = (slopes[at] as number) / step;
    return slopes;
  });
}

/** Tells which readings depend on a place of which nothing is known, in mm. */
const NOMINAL_STEP = 0.1;

/**
 * Root of the sum of squares of rows, for so many numbers from a place on; or of how much they are more than
 * those from another place on.
 */
export function rootOfSquares(rows: readonly Row[], size: number, from = 0, less?: number): Row {
  const sums = zeros(size);
  for (const row of rows) {
    for (let index = 0; index < size; index += 1) {
      const taken = less === undefined ? 0 : (row[less + index] as number);
      const by = (row[from + index] as number) - taken;
      sums[index] = (sums[index] as number) + by * by;
    }
  }
  return sums.map(Math.sqrt);
}

/**
 * Adds to rows, from a place on, what comes of moving what that part follows from: by as much each as rows of
 * moves have it, from a place on.
 */
export function addEffects(
  rows: readonly Row[],
  to: number,
  columns: readonly (Row | undefined)[],
  moves: readonly Row[],
  from: number,
): void {
  columns.forEach((column, index) => {
    if (column === undefined) return;
    // What does not depend on a place does not mind that nothing is known of it.
    const depends: number[] = [];
    for (let at = 0; at < column.length; at += 1) if (column[at] !== 0) depends.push(at);
    rows.forEach((row, which) => {
      const by = (moves[which] as Row)[from + index] as number;
      if (by === 0) return;
      for (const at of depends) {
        row[to + at] = (row[to + at] as number) + (column[at] as number) * by;
      }
    });
  });
}

export function zeros(size: number): Row {
  return new Array<number>(size).fill(0);
}

/** Writes a part into a row, from a place on. */
export function fillFrom(row: Row, start: number, part: Row): void {
  for (let index = 0; index < part.length; index += 1) row[start + index] = part[index] as number;
}

/** Whether rows begin with the same numbers, so many. */
export function isAlike(one: Row, other: Row, size: number): boolean {
  for (let index = 0; index < size; index += 1) {
    if (!Object.is(one[index], other[index])) return false;
  }
  return true;
}
