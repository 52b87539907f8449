import { BROW_PROMINENCE } from "../../src/symmetry/internal.js";
import {
  correctIrises,
  depthAt,
  landmarkUncertainty,
  mapFace,
  skinUncertainty,
} from "brow-geometry/landmarks";
import { deepen, SET_BACK } from "../../src/landmarks/internal.js";
import {
  type Face,
  faceFrame,
  fitMidline,
  type FlatPoint,
  IRIS_WIDTH,
  type Length,
  type Measured,
  measured,
  type Midline,
  mm,
  type Point,
  px,
  type Scale,
  scaleFromIris,
  scaleFromReference,
  skinOf,
  toFace,
} from "brow-geometry";
import {
  flatPoint,
  type MeasuredPoint,
  measuredPoint,
  type Propagated,
  propagate,
} from "brow-geometry/units";
import { type LengthName, type Lengths, lengthsOn } from "./lengths.js";
import { type Photo, PITCH_U, RULER_LENGTH, RULER_PLACEMENT } from "./people.js";

/** Where the millimetres come from. */
export type ScaleKind = "ruler" | "iris";

/** What is believed beside the photo: the library's priors, or something else on purpose. */
export interface Beliefs {
  readonly irisWidth: Measured<Length<"mm">>;
  /** Default: what the photo's source states. */
  readonly ringFactor?: Measured;
  readonly skin: "modelled" | "flat";
  readonly perspective: "corrected" | "ignored";
}

export const PRIORS: Beliefs = {
  irisWidth: IRIS_WIDTH,
  skin: "modelled",
  perspective: "corrected",
};

/** The lengths of a photo, by either scale. */
export type ScaledLengths = { readonly [Name in `${ScaleKind}.${LengthName}`]: number | undefined };

/** The lengths of a photo with their uncertainties, from nothing but what is known of it. */
export function estimate(photo: Photo, beliefs: Beliefs = PRIORS): Propagated<ScaledLengths> {
  const { face, ruler, cameraDistance } = photo;
  const known = {
    irisWidth: beliefs.irisWidth,
    ringFactor: beliefs.ringFactor ?? face.source?.ringFactor ?? measured(1, 0),
    prominence: BROW_PROMINENCE,
    cameraDistance,
    setBack: SET_BACK,
    pitch: measured(0, PITCH_U),
    depth: measured(1, beliefs.skin === "flat" ? 0 : skinU(face)),
    from: measuredPoint(flat(ruler[0]), RULER_PLACEMENT),
    to: measuredPoint(flat(ruler[1]), RULER_PLACEMENT),
  };
  const rough = scaleFromReference(ruler[0], ruler[1], mm(RULER_LENGTH));
  const { points, faceWith } = namedPoints(face, 1 / rough.factor);
  return propagate(
    (values) => {
      const drawn = faceWith(values as unknown as Readonly<Record<string, FlatPoint<"px">>>);
      const seen = correctIrises(drawn, measured(values.ringFactor, 0));
      const midline = fitMidline(seen);
      const lengths = (kind: ScaleKind): Lengths => {
        const scale = kind === "ruler" ? rulerScale(values) : irisScale(seen, values);
        return lengthsIn(seen, midline, scale, beliefs, values);
      };
      return {
        ...named("ruler", lengths("ruler")),
        ...named("iris", lengths("iris")),
      } as ScaledLengths;
    },
    { ...points, ...known },
    { linearity: "averaged" },
  );
}

function named(kind: ScaleKind, lengths: Lengths): object {
  return Object.fromEntries(
    Object.entries(lengths).map(([name, value]) => [`${kind}.${name}`, value]),
  );
}

/** Values of what is known beside the landmarks. */
interface KnownValues {
  readonly irisWidth: Length<"mm">;
  readonly ringFactor: number;
  readonly prominence: Length<"mm">;
  readonly cameraDistance: Length<"mm">;
  readonly from: FlatPoint<"px">;
  readonly to: FlatPoint<"px">;
  /** How many times as deep the skin lies as the model has it. */
  readonly depth: number;
  readonly setBack: number;
  /** How far the chin was raised, in radians. */
  readonly pitch: number;
}

/** The scale of the plane of the eye corners, from a ruler that lies as near as the brows' start. */
function rulerScale({ from, to, prominence, cameraDistance }: KnownValues): Scale {
  return scaleFromReference(from, to, mm(RULER_LENGTH), {
    depth: { nearer: exactly(prominence), cameraDistance: exactly(cameraDistance) },
  });
}

function irisScale(seen: Face<"px">, { irisWidth }: KnownValues): Scale {
  return scaleFromIris(seen, { width: exactly(irisWidth) });
}

function exactly(value: Length<"mm">): Measured<Length<"mm">> {
  return { value, u: mm(0) };
}

function lengthsIn(
  seen: Face<"px">,
  midline: Midline<"px">,
  { cameraDistance: _distance, ...far }: Scale,
  { skin: kind, perspective }: Beliefs,
  { prominence, cameraDistance, depth, setBack, pitch }: KnownValues,
): Lengths {
  const scale =
    perspective === "ignored" ? far : { ...far, cameraDistance: exactly(cameraDistance) };
  const frame = faceFrame(seen, scale, { midline, prominence });
  const { camera } = frame;
  const skin = deepen(skinOf(toFace(seen, frame), kind), depth);
  const face = toFace(
    seen,
    camera === undefined ? frame : { ...frame, camera: { ...camera, skin } },
  );
  const sine = Math.sin(pitch);
  const level = mapFace<"mm", "mm">(face, (point, landmark) => {
    const ahead = landmark === "brow" ? prominence + depthAt(point, skin) : 0;
    // A raised chin takes what lies above the eyes away from the camera.
    const times = camera === undefined ? 1 : 1 + (point[1] * sine) / cameraDistance;
    return flatPoint(times * point[0], (times * point[1] - ahead * sine) / Math.cos(pitch));
  });
  return lengthsOn(level, { ...skin, setBack });
}

/** The relative uncertainty of the modelled skin does not depend on the face's size. */
function skinU(face: Face<"px">): number {
  const inMillimetres = mapFace<"px", "mm">(face, ([x, y]) => mm([x, y]));
  return skinUncertainty(skinOf(inMillimetres, "modelled"));
}

interface NamedPoints {
  readonly points: Readonly<Record<`p${number}`, MeasuredPoint<"px", FlatPoint<"px">>>>;
  readonly faceWith: (values: Readonly<Record<string, FlatPoint<"px">>>) => Face<"px">;
}

/** The points of a face by name, each with the uncertainty of its landmark, and the way back. */
function namedPoints(face: Face<"px">, pixels: number): NamedPoints {
  const points: Record<`p${number}`, MeasuredPoint<"px", FlatPoint<"px">>> = {};
  let count = 0;
  mapFace<"px", "px">(face, (point, landmark) => {
    const u = landmark === undefined ? 0 : landmarkUncertainty(face, landmark);
    points[`p${count++}`] = measuredPoint(flat(point), px(pixels * u));
    return point;
  });
  return {
    points,
    faceWith: (values) => {
      let next = 0;
      return mapFace<"px", "px">(face, (point) => values[`p${next++}`] ?? point);
    },
  };
}

function flat(point: Point<"px">): FlatPoint<"px"> {
  return flatPoint(point[0], point[1]);
}
