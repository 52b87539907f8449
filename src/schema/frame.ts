import { type PointLandmark, type Skin, type SkinCurve } from "../landmarks/index.js";
import { MIDLINE_LANDMARKS, SIDE_LANDMARKS } from "../landmarks/internal.js";
import type { Camera, FaceFrame, Midline, Turning } from "../symmetry/index.js";
import { MIDLINE_METHODS } from "../symmetry/internal.js";
import type { Length, Measured, Scale } from "../units/index.js";
import { SCALE_NOTE_CODES, SCALE_SOURCES } from "../units/internal.js";
import {
  flatPoint,
  length,
  line,
  measured,
  notes,
  point,
  positiveLength,
  size,
  spread,
} from "./quantity.js";
import {
  each,
  finite,
  flag,
  kinds,
  list,
  positive,
  record,
  type Schema,
  within,
  word,
} from "./schema.js";

const names: readonly PointLandmark[] = [...SIDE_LANDMARKS, ...MIDLINE_LANDMARKS];

const angle = within(-180, 180);

const midline = record<Midline<"px">>({
  line: line<"px">(),
  tilt: angle,
  tiltU: spread,
  throughU: spread as unknown as Schema<Length<"px">>,
  method: word([...MIDLINE_METHODS, "plane"]),
  offsets: record<Midline<"px">["offsets"]>(
    {},
    each(names, finite as unknown as Schema<Length<"px">>),
  ),
  weights: record<Midline<"px">["weights"]>({}, each(names, finite)),
  trimmed: list(word(names), names.length),
  astray: list(word(names), names.length),
  robust: flag,
});

const scale: Schema<Scale> = record<Scale>(
  {
    from: word(["px"]),
    to: word(["mm"]),
    factor: positive,
    u: spread,
    source: word(SCALE_SOURCES),
    notes: notes(SCALE_NOTE_CODES),
  },
  { cameraDistance: measured as unknown as Schema<Measured<Length<"mm">>> },
);

const skinCurve = record<SkinCurve>({ second: finite, fourth: finite });

/** The skin on which a ruler lies. */
export const skin: Schema<Skin> = kinds<Skin>({
  flat: [{}],
  modelled: [{ width: size, relativeU: spread }],
  fitted: [
    {
      atMidline: length,
      slope: finite,
      right: skinCurve,
      left: skinCurve,
      relativeU: spread,
    },
  ],
});

const turning = record<Turning>(
  { depthU: spread, yaw: angle, pivot: length, skin, yawU: spread, yawPerDepth: finite },
  { pitch: angle },
);

const camera = record<Camera>({
  distance: positiveLength,
  axis: flatPoint<"mm">(),
  prominence: length,
  skin,
});

export const faceFrame: Schema<FaceFrame> = record<FaceFrame>(
  { midline, scale, origin: point<"px">() },
  { turning, pitchU: spread, camera },
);
