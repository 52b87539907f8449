import * as z from "zod/mini";
import type {
  Face,
  ImageSize,
  MarkupName,
  MarkupPicture,
  MarkupPoints,
  Mirroring,
} from "../landmarks/index.js";
import type { Choices } from "../mapping/index.js";
import type { Length, Point } from "../units/index.js";
import { choicesSchema } from "./choices.js";
import { faceSchema } from "./face.js";
import { parse } from "./parse.js";
import { point, positiveLength } from "./quantity.js";
import { finite, list, positive, record, type Schema, word, type Words } from "./schema.js";

/** Two points of the photo that lie a known length apart, such as two dots of a ruler. */
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

/** What a detector returned for one face, unchanged. */
export type DetectedLandmarks = LandmarkFileContext &
  MarkupPicture & {
    readonly markup: Exclude<MarkupName, "coco-wholebody-face">;
    /** Default `"no"`. */
    readonly mirrored?: Mirroring;
    readonly landmarks: MarkupPoints;
  };

/** What a detector of whole bodies returned for one person, unchanged. */
export type DetectedKeypoints = LandmarkFileContext &
  MarkupPicture & {
    readonly markup: "coco-wholebody-face";
    /** Default `"no"`. */
    readonly mirrored?: Mirroring;
    /** x, y, visibility, and so on: all of the person or those of the face. */
    readonly keypoints: readonly number[];
  };

/** Landmarks that somebody placed and named, in pixels. */
export interface NamedLandmarks extends LandmarkFileContext {
  readonly markup: "by-hand";
  readonly face: Face<"px">;
}

/** Landmarks of one face as a JSON file holds them. */
export type LandmarkFile = DetectedLandmarks | DetectedKeypoints | NamedLandmarks;

/** More than any markup in use has. */
const MOST_LANDMARKS = 2000;

const markupPoints = list(markupPoint(), MOST_LANDMARKS) as Schema<MarkupPoints>;

const imageSize = record<ImageSize>({ width: positive, height: positive }, {});

const context = {
  reference: record<LengthReference>(
    { from: point<"px">(), to: point<"px">(), length: positiveLength<"mm">() },
    {},
  ),
  choices: choicesSchema,
  provenance: z.unknown() as Schema<unknown>,
};

/** A detector's answer with its picture: whether the image size is needed, the adapter says. */
type Detected<Points> = LandmarkFileContext & {
  readonly coordinates: MarkupPicture["coordinates"];
  readonly image?: ImageSize;
  readonly mirrored?: Mirroring;
} & Points;

const markups: Words<DetectedLandmarks["markup"]> = {
  "mesh-478": true,
  "mesh-468": true,
  "points-68": true,
  "points-98": true,
};

const coordinates = word<MarkupPicture["coordinates"]>({ pixels: true, normalised: true });

const picture = {
  ...context,
  image: imageSize,
  mirrored: word<Mirroring>({ no: true, frame: true, coordinates: true }),
};

const detected = record<Detected<Pick<DetectedLandmarks, "markup" | "landmarks">>>(
  { markup: word<DetectedLandmarks["markup"]>(markups), coordinates, landmarks: markupPoints },
  picture,
);

const keypoints = record<Detected<Pick<DetectedKeypoints, "markup" | "keypoints">>>(
  {
    markup: word<DetectedKeypoints["markup"]>({ "coco-wholebody-face": true }),
    coordinates,
    keypoints: list(finite, MOST_LANDMARKS),
  },
  picture,
);

const named = record<NamedLandmarks>(
  { markup: word<"by-hand">({ "by-hand": true }), face: faceSchema("px") },
  context,
);

/** Landmarks of one face, named by hand or as a detector answered them. */
export const landmarkFileSchema: Schema<LandmarkFile> = z.discriminatedUnion(
  "markup",
  [detected, keypoints, named] as never,
  { error: `one of ${Object.keys(markups).join(", ")}, coco-wholebody-face, by-hand` },
);

/** `[x, y]`, `[x, y, z]`, or an object with these names and whatever else the detector adds. */
function markupPoint(): Schema<MarkupPoints[number]> {
  const need = "[x, y], [x, y, z], an object with x and y, or null";
  const coordinate = z.number({ error: "a finite number" });
  return z.nullable(
    z.union(
      [
        z.array(coordinate).check(z.minLength(2, { error: need }), z.maxLength(3, { error: need })),
        z.object({
          x: coordinate,
          y: coordinate,
          z: z.exactOptional(coordinate),
          visibility: z.exactOptional(coordinate),
        }),
      ],
      { error: need },
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
