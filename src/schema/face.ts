import * as z from "zod/mini";
import {
  type Brow,
  type Face,
  type FaceSide,
  type LandmarkSource,
  type LandmarkUncertainty,
  type MidlineLandmarks,
  type SymmetricPoints,
  type StandIn,
} from "../landmarks/index.js";
import {
  FACE_NOTE_CODES,
  LANDMARK_NAMES,
  MIDLINE_LANDMARKS,
  SIDE_LANDMARKS,
} from "../landmarks/internal.js";
import type { PlannableFace } from "../mapping/index.js";
import type { Unit } from "../units/index.js";
import { side } from "./choices.js";
import { parse } from "./parse.js";
import { imageSize, measured, notes, point, polyline, sides, size, words } from "./quantity.js";
import { each, flag, list, record, type Schema, word } from "./schema.js";

/** Twice what the densest face mesh in use has. */
const MOST_PAIRS = 1000;
const MOST_STAND_INS = 100;

const landmark = word(LANDMARK_NAMES);

const uncertainty = record<LandmarkUncertainty>(
  { default: size },
  {
    landmarks: record<NonNullable<LandmarkUncertainty["landmarks"]>>(
      {},
      each(LANDMARK_NAMES, size),
    ),
  },
);

const source = record<LandmarkSource>(
  {
    markup: words,
    uncertainty,
    ringFactor: measured,
    depth: word(["none", "estimated", "measured"]),
  },
  { corrected: flag, picture: imageSize },
);

export const standIns: Schema<readonly StandIn[]> = list(
  record<StandIn>({ landmark, instead: words }, { side }),
  MOST_STAND_INS,
);

// The two spaces differ in their types only: numbers do not show their unit.
const place = point<"mm">();
const border = polyline<"mm">();
const brow = record<Brow<"mm">>({ upper: border }, { lower: border });

const lines = { upperLid: border, lowerLid: border };

const anySide = record<FaceSide<"mm">>({}, { ...each(SIDE_LANDMARKS, place), ...lines, brow });

const { endocanthion, exocanthion, alare, ...others } = each(SIDE_LANDMARKS, place);

const plannableSide = record<PlannableFace["right"]>(
  { endocanthion, exocanthion, alare, brow },
  { ...others, ...lines },
);

function faceOf(side: Schema<FaceSide<"mm">>): Schema<Face<"mm">> {
  return record<Face<"mm">>(
    {
      right: side,
      left: side,
      midline: record<MidlineLandmarks<"mm">>({}, each(MIDLINE_LANDMARKS, place)),
    },
    {
      source,
      standIns,
      symmetricPoints: record<SymmetricPoints<"mm">>({
        pairs: list(sides(place), MOST_PAIRS),
        middle: list(place, MOST_PAIRS),
      }),
      notes: notes(FACE_NOTE_CODES),
    },
  );
}

const onFace = faceOf(anySide);

/** A face whose landmarks suffice for a plan. */
export const plannableFace: Schema<PlannableFace> = faceOf(
  plannableSide as unknown as Schema<FaceSide<"mm">>,
) as unknown as Schema<PlannableFace>;

const onPhoto = (onFace as unknown as Schema<Face<"px">>).check(
  z.refine(
    (face) => !looksNormalised(face),
    "pixels: shares of the picture times its width and height",
  ),
);

/**
 * Landmarks of a face in one of the two spaces; the unit is what the reader knows of the data.
 *
 * @example
 * ```ts
 * import { faceSchema } from "brow-geometry/schema";
 * import * as z from "zod/mini";
 * const visit = z.object({ client: z.string(), face: faceSchema("px") });
 * visit.safeParse({ client: "A.", face: { right: {}, left: {}, midline: {} } }).success; // → true
 * ```
 */
export function faceSchema<U extends Unit>(unit: U): Schema<Face<U>> {
  return (unit === "px" ? onPhoto : onFace) as unknown as Schema<Face<U>>;
}

/** Shares of a picture lie in 0…1; a detector may place a point somewhat outside of it. */
function looksNormalised(face: Face<"px">): boolean {
  const { right, left, midline, symmetricPoints = {} } = face;
  const coordinates = coordinatesIn([right, left, midline, symmetricPoints]);
  return coordinates.length > 0 && coordinates.every((value) => value > -0.5 && value < 1.5);
}

/** What stands for x and y wherever there is a point. */
function coordinatesIn(part: object): readonly number[] {
  const parts: readonly unknown[] = Object.values(part);
  return typeof parts[0] === "number"
    ? (parts.slice(0, 2) as number[])
    : parts.flatMap((one) => coordinatesIn(one as object));
}

/**
 * Reads landmarks from outside, such as parsed JSON, and returns a copy that the types can trust.
 *
 * `unit` is what the reader knows of the data: pixels of a photo, or millimetres of the face space.
 * Coordinates that are shares of the picture's size are refused as pixels: nothing may be measured
 * in them.
 *
 * @throws GeometryError `not-parsed`, naming the path, what stood there and what is needed
 *
 * @example
 * ```ts
 * import { parseFace } from "brow-geometry/schema";
 * const json = { right: { pupil: [431, 502] }, left: { pupil: [560, "498"] }, midline: {} };
 * parseFace(json, "px"); // throws GeometryError: left.pupil[1] is "498"; needs a finite number
 * ```
 */
export function parseFace<U extends Unit>(json: unknown, unit: U): Face<U> {
  return parse("parseFace", "face", faceSchema(unit), json);
}
