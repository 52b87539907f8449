import type { Length, Measured, Note, Point, Polyline, Sides, Unit } from "../../units/index.js";

/** The hair of one brow: its borders, each from the start to the tail. */
export interface Brow<U extends Unit> {
  readonly upper: Polyline<U>;
  readonly lower?: Polyline<U>;
}

/** Landmarks of one side of the face, each where it is known. */
export interface FaceSide<U extends Unit> {
  /** Inner corner of the eye. */
  readonly endocanthion?: Point<U>;
  /** Outer corner of the eye. */
  readonly exocanthion?: Point<U>;
  /** Centre of the pupil, the client looking ahead. */
  readonly pupil?: Point<U>;
  /** Edge of the iris nearest the nose, level with the pupil. */
  readonly limbusMedial?: Point<U>;
  /** Edge of the iris farthest from the nose, level with the pupil. */
  readonly limbusLateral?: Point<U>;
  /** Most lateral point of the nose wing. */
  readonly alare?: Point<U>;
  /** Corner of the mouth. */
  readonly cheilion?: Point<U>;
  /** Margin of the upper lid, from endocanthion to exocanthion. */
  readonly upperLid?: Polyline<U>;
  /** Margin of the lower lid, from endocanthion to exocanthion. */
  readonly lowerLid?: Polyline<U>;
  readonly brow?: Brow<U>;
}

/** Landmarks on the middle of the face, top down, each where it is known. */
export interface MidlineLandmarks<U extends Unit> {
  /** Most prominent point between the brows. */
  readonly glabella?: Point<U>;
  /** Deepest point of the root of the nose. */
  readonly sellion?: Point<U>;
  /** Tip of the nose. */
  readonly pronasale?: Point<U>;
  /** Where the nasal septum meets the upper lip. */
  readonly subnasale?: Point<U>;
  /** Middle of the upper lip's red border. */
  readonly labialeSuperius?: Point<U>;
  /** Middle of the line between the lips. */
  readonly stomion?: Point<U>;
  /** Lowest point of the upper lip: at stomion while the lips are closed. */
  readonly stomionSuperius?: Point<U>;
  /** Highest point of the lower lip: at stomion while the lips are closed. */
  readonly stomionInferius?: Point<U>;
  /** Lowest point of the chin. */
  readonly menton?: Point<U>;
}

/** Names of the single points of one side of the face. */
export type SideLandmark = Exclude<keyof FaceSide<"mm">, "upperLid" | "lowerLid" | "brow">;

/** Names of the points on the middle of the face. */
export type MidlineLandmark = keyof MidlineLandmarks<"mm">;

/** Name of any landmark; `brow` and the lids stand for each of their points. */
export type LandmarkName = keyof FaceSide<"mm"> | MidlineLandmark;

/** A landmark that its source only approximates, and what stands in for it. */
export interface StandIn {
  readonly landmark: LandmarkName;
  /** What was used instead, in words: "outer point of the nostril row". */
  readonly instead: string;
}

/** Standard uncertainty of a landmark's place in each axis of the face. */
export interface LandmarkUncertainty {
  readonly default: Length<"mm">;
  readonly landmarks?: { readonly [Name in LandmarkName]?: Length<"mm"> };
}

/** What is known of where a face's landmarks come from. */
export interface LandmarkSource {
  /** Name of the markup, or `"by-hand"`. */
  readonly markup: string;
  readonly uncertainty: LandmarkUncertainty;
  /** How many times too wide, sideways, the irises of this face are: 1 for an honest ring. */
  readonly ringFactor: Measured;
  /** Who says how deep points lie: nobody, a detector's model of a face, or a measurement. */
  readonly depth: "none" | "estimated" | "measured";
}

/** Further points with their mirror partners, without anatomical names: a mesh, a scan. */
export interface SymmetricPoints<U extends Unit> {
  readonly pairs: readonly Sides<Point<U>>[];
  readonly middle: readonly Point<U>[];
}

/** Codes of the notes that a face may carry. */
export type FaceNoteCode =
  | "sides-swapped"
  | "irises-swapped"
  | "mirroring-undone"
  | "scaled-to-pixels"
  | "point-missing"
  | "stand-in"
  | "irises-narrowed"
  | "repeated-points";

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
