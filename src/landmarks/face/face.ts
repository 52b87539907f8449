import {
  type Length,
  length,
  type Measured,
  type Note,
  type Point,
  type Polyline,
  type Side,
  type Sides,
  type Unit,
} from "../../units/index.js";
import type { LandmarkName, LANDMARKS, MidlineLandmark } from "./landmarks.js";
import type { FaceNoteCode } from "./notes.js";

/** The hair of one brow: its borders, each from the start to the tail. */
export interface Brow<U extends Unit> {
  readonly upper: Polyline<U>;
  readonly lower?: Polyline<U>;
}

/** Single points of one side of the face, each where it is known. */
export type SidePoints<U extends Unit> = {
  readonly [Name in keyof (typeof LANDMARKS)["side"]]?: Point<U>;
};

/** Landmarks of one side of the face, each where it is known. */
export interface FaceSide<U extends Unit> extends SidePoints<U> {
  /** Margin of the upper lid, from endocanthion to exocanthion. */
  readonly upperLid?: Polyline<U>;
  /** Margin of the lower lid, from endocanthion to exocanthion. */
  readonly lowerLid?: Polyline<U>;
  readonly brow?: Brow<U>;
}

/** Landmarks on the middle of the face, top down, each where it is known. */
export type MidlineLandmarks<U extends Unit> = {
  readonly [Name in keyof (typeof LANDMARKS)["midline"]]?: Point<U>;
};

/** A landmark that its source only approximates, and what stands in for it. */
export interface StandIn {
  readonly landmark: LandmarkName;
  /** What was used instead: a code that the catalogue has words for, or words of your own. */
  readonly instead: string;
  /** The side on which it stands in; absent: on both. */
  readonly side?: Side;
}

/** Standard uncertainty of a landmark's place in each axis of the face. */
export interface LandmarkUncertainty {
  readonly default: Length<"mm">;
  readonly landmarks?: { readonly [Name in LandmarkName]?: Length<"mm"> };
}

/** Size of a picture in pixels. */
export interface ImageSize {
  readonly width: number;
  readonly height: number;
}

/** What is known of where a face's landmarks come from. */
export interface LandmarkSource {
  /** Name of the markup, or `"by-hand"`. */
  readonly markup: string;
  readonly uncertainty: LandmarkUncertainty;
  /** Whether the mean errors of the markup's usual detector were taken out. */
  readonly corrected?: boolean;
  /** How many times too wide, sideways, the irises of this face are: 1 for an honest ring. */
  readonly ringFactor: Measured;
  /** Who says how deep points lie: nobody, a detector's model of a face, or a measurement. */
  readonly depth: "none" | "estimated" | "measured";
  /** The picture in whose pixels the points were read, where its size was given. */
  readonly picture?: ImageSize;
}

/** Further points with their mirror partners, without anatomical names: a mesh, a scan. */
export interface SymmetricPoints<U extends Unit> {
  readonly pairs: readonly Sides<Point<U>>[];
  readonly middle: readonly Point<U>[];
}

/**
 * Landmarks of one face in one space. Right and left are always the client's own.
 *
 * `source` left out means placed by hand, `standIns` left out means none.
 */
export interface Face<U extends Unit> {
  readonly right: FaceSide<U>;
  readonly left: FaceSide<U>;
  readonly midline: MidlineLandmarks<U>;
  readonly source?: LandmarkSource;
  readonly standIns?: readonly StandIn[];
  readonly symmetricPoints?: SymmetricPoints<U>;
  readonly notes?: readonly Note<FaceNoteCode>[];
}

/** A face in which the named landmarks are known on both sides and on the midline. */
export type FaceWith<
  U extends Unit,
  OnSides extends keyof FaceSide<U> = never,
  OnMidline extends MidlineLandmark = never,
> = Face<U> & {
  readonly [Which in keyof Sides<unknown>]: Required<Pick<FaceSide<U>, OnSides>>;
} & { readonly midline: Required<Pick<MidlineLandmarks<U>, OnMidline>> };

/** How the client sat when the landmarks were taken, as declared by whoever was there. */
export interface Declared {
  readonly upright?: boolean;
  readonly relaxed?: boolean;
}

/** One rater placing by hand. Source: Reliability of Periocular Anthropometry, 2019, 46 adults. */
export const BY_HAND: Length<"mm"> = length(0.26);

/**
 * Standard uncertainty of a landmark's place, in each axis of the face, as its source states it;
 * 0.26 mm where the face does not name its source and so was placed by hand.
 *
 * @example
 * ```ts
 * import { landmarkUncertainty } from "brow-geometry/landmarks";
 * landmarkUncertainty({ right: {}, left: {}, midline: {} }, "endocanthion"); // → 0.26
 * ```
 */
export function landmarkUncertainty<U extends Unit>(
  face: Face<U>,
  landmark: LandmarkName,
): Length<"mm"> {
  const uncertainty = face.source?.uncertainty;
  return uncertainty?.landmarks?.[landmark] ?? uncertainty?.default ?? BY_HAND;
}
