import type { LandmarkUncertainty } from "../face/face.js";
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
 * Errors of what a detector finds, as truth less what it found: what they are in the mean, and what is
 * left over, which goes together along the borders and between the sides.
 */
export interface MarkupErrors {
  readonly places: { readonly [Place in ErrorPlace]?: PlaceErrors };
  /** What is left over of landmarks; of a brow, across the inner part of its upper border. */
  readonly landmarks: LandmarkUncertainty["landmarks"];
  /** Standard deviation of landmarks without a rest, in mm, where it is not what the markup says. */
  readonly others?: number;
}

/** The errors of the usual detector of each markup, where they are known. */
export type KnownErrors = { readonly [Markup in string]?: MarkupErrors };

/** The errors of one place. One standard deviation of a pattern moves all places by its rows. */
export interface PlaceErrors {
  /** The mean error; of alare, at the usual point that stands for it. */
  readonly shift?: ErrorRow;
  /** Patterns that are the same on both sides; none where they explain little of a place. */
  readonly alike?: readonly ErrorRow[];
  /** Patterns that move the left side so, and the right side the opposite way. */
  readonly unlike?: readonly ErrorRow[];
  /** Standard deviation of what is left of a landmark's own, sideways and upwards, in mm. */
  readonly rest?: readonly [sideways: number, upwards: number];
}

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
