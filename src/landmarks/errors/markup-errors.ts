import type { LandmarkName } from "../face/landmarks.js";

/** Where a markup's errors are known: along a border of the brow, or at a landmark of each side. */
export type ErrorPlace = "upper" | "lower" | Exclude<LandmarkName, "brow">;

/**
 * Pairs, outwards and upwards, in five-hundredths of the distance of the outer eye corners: one for a point,
 * or some at even shares of a line's length from its start. A lid has three, the middle one above or below
 * the pupil.
 */
export type ErrorRow = readonly number[];

/**
 * Mean errors of what a detector finds, as truth less what it found; of alare, at the usual point that
 * stands for it.
 */
export type MarkupErrors = { readonly [Place in ErrorPlace]?: ErrorRow };

/** The errors of the usual detector of each markup, where they are known. */
export type KnownErrors = { readonly [Markup in string]?: MarkupErrors };

/** What a row says of a share of its line: between its pairs in proportion. */
export function errorAt(
  row: ErrorRow,
  share: number,
): readonly [outwards: number, upwards: number] {
  const steps = share * (row.length / 2 - 1);
  const first = 2 * Math.floor(steps);
  const part = steps % 1;
  const axis = (at: number): number =>
    (row[at] ?? 0) + part * ((row[at + 2] ?? 0) - (row[at] ?? 0));
  return [axis(first), axis(first + 1)];
}
