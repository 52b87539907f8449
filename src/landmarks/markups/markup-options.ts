import type { Measured } from "../../units/index.js";
import {
  refuse,
  requireFlag,
  requireNames,
  requireObject,
  requirePositive,
  requireUncertainty,
  requireWord,
} from "../../units/internal.js";
import type { ImageSize, LandmarkUncertainty } from "../face/face.js";
import { LANDMARK_NAMES } from "../face/landmarks.js";
import type { AlareChoice, MarkupName } from "./markups.js";

/** All answers to how a picture was flipped. */
export const MIRRORINGS = ["no", "frame", "coordinates"] as const;

/**
 * Whether the picture was flipped sideways before its landmarks were used.
 *
 * `"no"`: the picture as taken. `"frame"`: a flipped picture went into the detector, which then
 * took the client's right for the left; right and left are swapped and the picture is flipped back.
 * `"coordinates"`: the picture as taken went in, and only its coordinates were flipped for a mirror
 * view; they are flipped back.
 */
export type Mirroring = (typeof MIRRORINGS)[number];

/** How points are to be read; markups differ in what may stand for alare. */
export type MarkupOptions<Name extends MarkupName = MarkupName> = SourceOptions & {
  /** Which points stand for alare; `"none"` leaves it out. */
  readonly alare?: AlareChoice<Name> | "none";
  /** Numbers of points that are not to be used, because they are covered for instance. */
  readonly missing?: readonly number[];
};

/** What is known of the picture and of whoever placed the points. */
export type SourceOptions = MarkupPicture & {
  /** `"no"` where it is left out. Anything else needs the image size. */
  readonly mirrored?: Mirroring;
  /** Instead of what the library states of the markup's usual source: of all landmarks, or of some. */
  readonly uncertainty?: Partial<LandmarkUncertainty>;
  /**
   * Whether the mean errors of the markup's usual detector are taken out, where the library knows them.
   * `false` for points placed by hand or found by another detector; the default is `true`, but `false`
   * where you state `uncertainty.default`, or one for the brow.
   */
  readonly correct?: boolean;
  /** How many times too wide, sideways, the source draws the iris: it is narrowed by so much. */
  readonly ringFactor?: Measured;
};

/**
 * What coordinates count: pixels of the photo, or shares of its width and height. Shares have two
 * different units sideways and upwards, so nothing can be read from them without the image size.
 */
export type MarkupPicture =
  | { readonly coordinates: "pixels"; readonly image?: ImageSize }
  | { readonly coordinates: "normalised"; readonly image: ImageSize };

/** Refuses options that are empty or have no meaning, instead of ignoring them. */
export function requireOptions(options: MarkupOptions, points: number): void {
  requireObject("options", options, "an object with coordinates");
  // A file of landmarks may be given whole: its schema knows what else stands in it.
  if (!("landmarks" in options)) {
    requireNames("options", options, [
      "coordinates",
      "image",
      "mirrored",
      "alare",
      "missing",
      "uncertainty",
      "correct",
      "ringFactor",
    ]);
  }
  const { missing = [], uncertainty = {} } = options;
  requireWord("mirrored", options.mirrored, MIRRORINGS);
  const isPoint = (index: number): boolean =>
    Number.isInteger(index) && index >= 0 && index < points;
  if (!Array.isArray(missing) || !missing.every(isPoint)) {
    const need = `a list of indices, 0 to ${points - 1}`;
    refuse("out-of-range", "missing", missing, need);
  }
  requireFlag("correct", options.correct);
  requireNames("uncertainty", uncertainty, ["default", "landmarks"]);
  if (uncertainty.default !== undefined) {
    requireUncertainty("uncertainty.default", uncertainty.default);
  }
  const { landmarks = {} } = uncertainty;
  requireNames("uncertainty.landmarks", landmarks, LANDMARK_NAMES);
  for (const [name, u] of Object.entries(landmarks)) {
    requireUncertainty(`uncertainty.landmarks.${name}`, u);
  }
}

/** The size of the image, where the options give one that makes sense. */
export function imageSize(options: MarkupPicture): ImageSize | undefined {
  const image = options.image;
  if (image === undefined) return undefined;
  requireObject("image", image, "the width and height");
  requirePositive("image.width", image.width);
  requirePositive("image.height", image.height);
  return image;
}

/** Refuses to go on without the size of the image. */
export function requireImageSize(image: ImageSize | undefined): ImageSize {
  if (image !== undefined) return image;
  const need = "the width and height, to flip it or for shares of it";
  refuse("image-size-needed", "image", undefined, need);
}
