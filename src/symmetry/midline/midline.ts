import type { Line } from "../../geometry/index.js";
import type { PointLandmark } from "../../landmarks/index.js";
import type { Length, Unit } from "../../units/index.js";

/**
 * How a midline is found: `"mirror"`, the best mirror line of the landmarks; `"endocanthia"`, the
 * perpendicular through the middle between the inner eye corners; `"midpoints"`, the line nearest to
 * the midline landmarks and the middles of the pairs; `"given"`, two points that the artist marked.
 */
export type MidlineMethod = (typeof MIDLINE_METHODS)[number];

/** All methods. */
export const MIDLINE_METHODS = ["mirror", "endocanthia", "midpoints", "given"] as const;

/** The middle of a face: the line across which its sides are compared. */
export interface Midline<U extends Unit> {
  /** Through its foot at the level of the inner eye corners, running from the chin to the forehead. */
  readonly line: Line<U>;
  /** Degrees from the vertical of the face's own space, positive where the chin end lies towards the client's left. */
  readonly tilt: number;
  /** Standard uncertainty of the tilt, in degrees. */
  readonly tiltU: number;
  /** Standard uncertainty of the line's place, across itself, at the foot. */
  readonly throughU: Length<U>;
  /** How it was found; `"plane"`: it is the mirror plane of a head with depth, seen edge on. */
  readonly method: MidlineMethod | "plane";
  /** How far each midline landmark and each pair's middle lies off the line, towards the client's left. */
  readonly offsets: { readonly [Name in PointLandmark]?: Length<U> };
  /** What each landmark counted for in the end: 0 where it lies too far off to have a say. */
  readonly weights: { readonly [Name in PointLandmark]?: number };
  /** The landmarks that ended without a say. */
  readonly trimmed: readonly PointLandmark[];
  /**
   * The landmarks that disagree with the line: they lie off by more than three times what their
   * uncertainty, and 1 % of the biocular width for the evenness of faces, explains.
   */
  readonly astray: readonly PointLandmark[];
  /** Whether any two misplaced landmarks were kept from moving the line. */
  readonly robust: boolean;
}
