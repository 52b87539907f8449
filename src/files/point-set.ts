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
