import * as z from "zod/mini";
import {
  type Brow,
  type Face,
  type FaceNoteCode,
  type FaceSide,
  type LandmarkName,
  type LandmarkSource,
  type LandmarkUncertainty,
  mapFace,
  type MidlineLandmarks,
  type PairedPoints,
  type StandIn,
} from "../landmarks/index.js";
import type { Length, Unit } from "../units/index.js";
import { parse } from "./parse.js";
import { measured, notes, point, polyline, sides, size, words } from "./quantity.js";
import { list, record, type Schema, word } from "./schema.js";

/** Twice what the densest face mesh in use has. */
const MOST_PAIRS = 1000;
const MOST_STAND_INS = 100;

const landmarkNames: { readonly [Name in LandmarkName]: true } = {
  endocanthion: true,
  exocanthion: true,
  pupil: true,
  limbusMedial: true,
  limbusLateral: true,
  alare: true,
  cheilion: true,
  upperLid: true,
  lowerLid: true,
  brow: true,
  glabella: true,
  sellion: true,
  pronasale: true,
  subnasale: true,
  labialeSuperius: true,
  stomion: true,
  menton: true,
};

const noteCodes: { readonly [Code in FaceNoteCode]: true } = {
  "sides-swapped": true,
  "irises-swapped": true,
  "mirroring-undone": true,
  "scaled-to-pixels": true,
  "point-missing": true,
  "stand-in": true,
  "repeated-points": true,
};

const landmark = word<LandmarkName>(landmarkNames);

const uncertainty = record<LandmarkUncertainty>(
  { default: size<"mm">() },
  {
    landmarks: record<NonNullable<LandmarkUncertainty["landmarks"]>>(
      {},
      Object.fromEntries(Object.keys(landmarkNames).map((name) => [name, size<"mm">()])) as {
        readonly [Name in LandmarkName]: Schema<Length<"mm">>;
      },
    ),
  },
);

const source = record<LandmarkSource>(
  {
    markup: words,
    uncertainty,
    ringFactor: measured,
    depth: word<LandmarkSource["depth"]>({ none: true, estimated: true, measured: true }),
  },
  {},
);

const standIn = record<StandIn>({ landmark, instead: words }, {});

/** Landmarks of a face in one of the two spaces; the unit is what the reader knows of the data. */
export function faceSchema<U extends Unit>(unit: U): Schema<Face<U>> {
  return (unit === "px" ? onPhoto : onFace) as unknown as Schema<Face<U>>;
}

const onFace = faceOf<"mm">();

const onPhoto = faceOf<"px">().check(
  z.refine((face) => !looksNormalised(face), {
    error: "pixels: shares of the picture have to be multiplied by its width and its height",
  }),
);

function faceOf<U extends Unit>(): Schema<Face<U>> {
  const relief = record<PairedPoints<U>>(
    { pairs: list(sides(point<U>()), MOST_PAIRS), middle: list(point<U>(), MOST_PAIRS) },
    {},
  );
  return record<Face<U>>(
    { right: side<U>(), left: side<U>(), midline: midline<U>() },
    { source, standIns: list(standIn, MOST_STAND_INS), relief, notes: notes(noteCodes) },
  );
}

function side<U extends Unit>(): Schema<FaceSide<U>> {
  return record<FaceSide<U>>(
    {},
    {
      endocanthion: point<U>(),
      exocanthion: point<U>(),
      pupil: point<U>(),
      limbusMedial: point<U>(),
      limbusLateral: point<U>(),
      alare: point<U>(),
      cheilion: point<U>(),
      upperLid: polyline<U>(),
      lowerLid: polyline<U>(),
      brow: record<Brow<U>>({ upper: polyline<U>() }, { lower: polyline<U>() }),
    },
  );
}

function midline<U extends Unit>(): Schema<MidlineLandmarks<U>> {
  return record<MidlineLandmarks<U>>(
    {},
    {
      glabella: point<U>(),
      sellion: point<U>(),
      pronasale: point<U>(),
      subnasale: point<U>(),
      labialeSuperius: point<U>(),
      stomion: point<U>(),
      menton: point<U>(),
    },
  );
}

/** Shares of a picture lie in 0…1; a detector may place a point somewhat outside of it. */
function looksNormalised(face: Face<"px">): boolean {
  const coordinates: number[] = [];
  mapFace(face, (point) => {
    coordinates.push(point[0], point[1]);
    return point;
  });
  return coordinates.length > 0 && coordinates.every((value) => value > -0.5 && value < 1.5);
}

/**
 * Reads landmarks from outside, such as parsed JSON, and answers a copy that the types can trust.
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
