import * as z from "zod/mini";
import {
  type Face,
  type ImageSize,
  type LandmarkForms,
  type MarkupLandmarks,
  type MarkupName,
  type MarkupPicture,
  type MarkupPoints,
  MARKUPS,
  type Mirroring,
} from "../landmarks/index.js";
import { MARKUP_NAMES, MIRRORINGS } from "../landmarks/internal.js";
import type { Choices } from "../mapping/index.js";
import type { Length, Point } from "../units/index.js";
import { choicesSchema } from "./choices.js";
import { faceSchema } from "./face.js";
import { parse } from "./parse.js";
import { imageSize, numbers, point, positiveLength } from "./quantity.js";
import { finite, flag, list, record, type Schema, word } from "./schema.js";

/** Two points of the photo that lie a known length apart, such as two marks of a ruler. */
export interface LengthReference {
  readonly from: Point<"px">;
  readonly to: Point<"px">;
  readonly length: Length<"mm">;
}

/** What a file may say beside landmarks. */
export interface LandmarkFileContext {
  /** Left out: millimetres come from the width of the irises. */
  readonly reference?: LengthReference;
  readonly choices?: Choices;
  /** Where the landmarks are from, in any form: kept as it is. */
  readonly provenance?: unknown;
}

/** What a detector returned for one face or person, unchanged, in the form of its markup. */
export type DetectedLandmarks<Name extends MarkupName = MarkupName> = LandmarkFileContext &
  MarkupPicture & {
    readonly markup: Name;
    /** Default `"no"`. */
    readonly mirrored?: Mirroring;
    /** Default `true`: see `fromMarkup`. */
    readonly correct?: boolean;
    readonly landmarks: MarkupLandmarks<Name>;
  };

/** Landmarks that somebody placed and named, in pixels. */
export interface NamedLandmarks extends LandmarkFileContext {
  readonly markup: "by-hand";
  readonly face: Face<"px">;
}

/** Landmarks of one face as a JSON file holds them. */
export type LandmarkFile =
  { [Name in MarkupName]: DetectedLandmarks<Name> }[MarkupName] | NamedLandmarks;

/** More than any markup in use has. */
const MOST_LANDMARKS = 2000;

const context = {
  reference: record<LengthReference>({
    from: point<"px">(),
    to: point<"px">(),
    length: positiveLength,
  }),
  choices: choicesSchema,
  provenance: z.unknown() as Schema<unknown>,
};

/** A detector's answer with its picture: whether the image size is needed, `fromMarkup` says. */
interface Detected extends LandmarkFileContext {
  readonly markup: MarkupName;
  readonly coordinates: MarkupPicture["coordinates"];
  readonly landmarks: LandmarkForms[keyof LandmarkForms];
  readonly image?: ImageSize;
  readonly mirrored?: Mirroring;
  readonly correct?: boolean;
}

const landmarks: { readonly [Form in keyof LandmarkForms]: Schema<LandmarkForms[Form]> } = {
  points: list(markupPoint(), MOST_LANDMARKS),
  keypoints: list(finite, MOST_LANDMARKS),
};

const detected = MARKUP_NAMES.map((name) =>
  record<Detected>(
    {
      markup: word([name]),
      coordinates: word(["pixels", "normalised"]),
      landmarks: landmarks[MARKUPS[name].form] as Schema<Detected["landmarks"]>,
    },
    {
      ...context,
      image: imageSize,
      mirrored: word(MIRRORINGS),
      correct: flag,
    },
  ),
);

const named = record<NamedLandmarks>(
  { markup: word(["by-hand"]), face: faceSchema("px") },
  context,
);

/** Landmarks of one face, named by hand or as a detector answered them. */
export const landmarkFileSchema: Schema<LandmarkFile> = z.discriminatedUnion(
  "markup",
  [...detected, named] as never,
  `one of ${MARKUP_NAMES.join(", ")}, by-hand`,
);

/** `[x, y]`, `[x, y, z]`, or an object with these names and whatever else the detector adds. */
function markupPoint(): Schema<MarkupPoints[number]> {
  const error = "[x, y], [x, y, z], an object with x and y, or null";
  return z.nullable(
    z.union(
      [
        numbers(3, error),
        z.object({
          x: finite,
          y: finite,
          z: z.exactOptional(finite),
          visibility: z.exactOptional(finite),
        }),
      ],
      error,
    ),
  );
}

/**
 * Reads a file of landmarks: those of a detector with the name of their markup, or a face whose
 * landmarks have been named by hand; and, where the file has them, a length that is known on the
 * photo and the artist's choices.
 *
 * @throws GeometryError `not-parsed`, naming the path, what stood there and what is needed
 *
 * @example
 * ```ts
 * import { parseLandmarkFile } from "brow-geometry/schema";
 * const json = { markup: "points-68", coordinates: "pixels", landmarks: [[415.9, 455.2], "416.3"] };
 * parseLandmarkFile(json); // throws GeometryError: landmarks[1] is "416.3"; needs [x, y], [x, y, z]
 * ```
 */
export function parseLandmarkFile(json: unknown): LandmarkFile {
  return parse("parseLandmarkFile", "file", landmarkFileSchema, json);
}
