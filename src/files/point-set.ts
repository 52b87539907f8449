import { refuse, requireFinite, requirePositive } from "../units/internal.js";

/** A point as a file holds it. */
export type FilePoint =
  readonly [x: number, y: number] | readonly [x: number, y: number, z: number];

/**
 * Points of one face as a file of landmarks holds them, in the file's own unit and axes: what
 * `fromMarkup` takes as its landmarks.
 */
export interface PointSet {
  /** Name of the face or of its picture. */
  readonly id: string;
  /** In the order of their markup; `null` where one is missing. */
  readonly points: readonly (FilePoint | null)[];
  /** File name of the picture. */
  readonly image?: string;
  /** Length of a pixel in the file's unit of length. */
  readonly scale?: number;
}

/** How much a reader takes in. */
export interface ReadLimits {
  /** Longest text, in characters; 100 million where it is left out. */
  readonly mostCharacters?: number;
}

/** More than any markup in use has. */
export const MOST_POINTS = 2000;

/**
 * Refuses points that are not finite, flat and deep ones in one set, and a scale that is not above 0;
 * returns how many numbers each point has, or nothing where all of them are missing.
 */
export function requireSet({ points, scale }: PointSet, field: string): 2 | 3 | undefined {
  let size: 2 | 3 | undefined;
  points.forEach((point, index) => {
    if (point === null) return;
    const place = `${field}.points[${index}]`;
    const length: number = point.length;
    size ??= length === 3 ? 3 : 2;
    if (length !== size) {
      const need = "two numbers in every point of a set, or three in every one";
      refuse("out-of-range", place, point, need);
    }
    point.forEach((coordinate, axis) => {
      requireFinite(`${place}[${axis}]`, coordinate);
    });
  });
  if (scale !== undefined) requirePositive(`${field}.scale`, scale);
  return size;
}
