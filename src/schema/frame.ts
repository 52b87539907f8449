import type {
  FaceFrame,
  Midline,
  MidlineMethod,
  MirroredLandmark,
  OtherMidline,
} from "../symmetry/index.js";
import type { Scale, ScaleNoteCode, ScaleSource } from "../units/index.js";
import { midlineLandmarks, sideLandmarks } from "./face.js";
import { length, line, measuredLength, notes, point, size, spread } from "./quantity.js";
import {
  each,
  finite,
  flag,
  list,
  positive,
  record,
  type Schema,
  within,
  word,
  type Words,
} from "./schema.js";

const names: Words<MirroredLandmark> = { ...sideLandmarks, ...midlineLandmarks };

const method = word<MidlineMethod>({
  mirror: true,
  endocanthia: true,
  midpoints: true,
  given: true,
});

const midline = record<Midline<"px">>(
  {
    line: line<"px">(),
    tilt: within(-180, 180),
    tiltU: spread,
    throughU: size<"px">(),
    method,
    offsets: record<Midline<"px">["offsets"]>({}, each(names, length<"px">())),
    weights: record<Midline<"px">["weights"]>({}, each(names, finite)),
    trimmed: list(word<MirroredLandmark>(names), Object.keys(names).length),
    robust: flag,
    others: list(
      record<OtherMidline<"px">>({ method, tilt: within(-180, 180), offset: length<"px">() }, {}),
      10,
    ),
  },
  {},
);

/** The conversion between the pixels of a photo and millimetres. */
export const scale: Schema<Scale> = record<Scale>(
  {
    from: word<"px">({ px: true }),
    to: word<"mm">({ mm: true }),
    factor: positive,
    u: spread,
    source: word<ScaleSource>({
      reference: true,
      ruler: true,
      marker: true,
      iris: true,
      combined: true,
      given: true,
    }),
    notes: notes<ScaleNoteCode>({
      "population-average": true,
      "ring-factor": true,
      "one-iris": true,
      "irises-differ": true,
      "perspective-unknown": true,
      "perspective-corrected": true,
      "ruler-recedes": true,
      "marker-tilted": true,
      "reading-rejected": true,
      "readings-scatter": true,
      "sources-disagree": true,
    }),
  },
  { cameraDistance: measuredLength<"mm">() },
);

/** The conversion between a photo and the face on it. */
export const faceFrame: Schema<FaceFrame> = record<FaceFrame>(
  { midline, scale, origin: point<"px">() },
  {},
);
