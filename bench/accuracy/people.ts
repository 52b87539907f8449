import {
  type Brow,
  type Face,
  type FaceSide,
  IRIS_WIDTH,
  type Length,
  type Measured,
  measured,
  mm,
  px,
  type Point,
  skinOf,
} from "brow-geometry";
import { BROW_PROMINENCE, UPRIGHT_U } from "../../src/symmetry/internal.js";
import { deepen, SET_BACK, type SkinWithSetBack } from "../../src/landmarks/internal.js";
import { depthAt, mapFace, skinUncertainty } from "brow-geometry/landmarks";
import { flatPoint } from "brow-geometry/units";
import type { Deviations } from "../../src/units/uncertainty/random.js";
import { syntheticFace } from "../../tests/support/synthetic-face.js";

/** From a phone at arm's length to where portraits count as free of distortion, evenly. */
const CAMERA = { nearest: 400, farthest: 1500 };
/** What somebody's tape says of the camera's distance is off by so much of it; ours. */
export const DISTANCE_U = 0.05;

/** How far people who sit upright raise their chins, in radians. */
export const PITCH_U: number = (UPRIGHT_U * Math.PI) / 180;

/** Millimetres a pixel in the plane of the eye corners, which nobody tells the estimator. */
const SCALE = 0.1;

/** How landmarks get into the photo's coordinates. */
export interface Source {
  readonly name: string;
  /** Standard uncertainty in each axis, in millimetres. */
  readonly placement: number;
  /** The same for the edges of the iris. */
  readonly limbus: number;
  /** How many times too wide it draws the iris. */
  readonly ring: Measured;
}

export const SOURCES: readonly Source[] = [
  { name: "by hand, 0.3 mm", placement: 0.3, limbus: 0.3, ring: measured(1, 0) },
  { name: "by detector, 1.3 mm", placement: 1.3, limbus: 0.5, ring: measured(1.11, 0.02) },
];

/** One simulated person, as she is. */
export interface Person {
  readonly face: Face<"mm">;
  readonly skin: SkinWithSetBack;
  readonly prominence: number;
  readonly cameraDistance: number;
  /** How far she raises her chin, in radians. */
  readonly pitch: number;
}

/** Draws a person from the priors that the library states; her size varies by 4 % (invented). */
export function drawPerson({ normal, rectangular }: Deviations, brow: Brow<"mm"> = BROW): Person {
  const size = 1 + 0.04 * normal();
  const iris = IRIS_WIDTH.value + IRIS_WIDTH.u * normal();
  const face = withIris(scaled(usedLandmarks(brow), size), iris);
  const modelled = skinOf(face, "modelled");
  const skin = deepen(modelled, 1 + skinUncertainty(modelled) * normal());
  return {
    face,
    skin: { ...skin, setBack: SET_BACK.value + SET_BACK.u * normal() },
    prominence: BROW_PROMINENCE.value + BROW_PROMINENCE.u * normal(),
    cameraDistance:
      (CAMERA.nearest + CAMERA.farthest) / 2 +
      ((CAMERA.farthest - CAMERA.nearest) / Math.sqrt(12)) * rectangular(),
    pitch: PITCH_U * normal(),
  };
}

/** The landmarks that the lengths of the study read; the rest would only take time. */
function usedLandmarks(brow: Brow<"mm">): Face<"mm"> {
  const { right, left, midline } = syntheticFace();
  return {
    right: pointsOf(right),
    left: { ...pointsOf(left), brow },
    midline: { sellion: midline.sellion, subnasale: midline.subnasale, stomion: midline.stomion },
  };
}

/** The left brow of everybody, before she is scaled: five points a border, as a face mesh has (invented). */
const BROW: Brow<"mm"> = {
  upper: mm([
    [14.5, 20],
    [25, 23.3],
    [36, 25.6],
    [47, 24.3],
    [58, 17.6],
  ]),
  lower: mm([
    [14.5, 12.5],
    [25, 16.7],
    [36, 19.5],
    [47, 20],
    [58, 17.2],
  ]),
};

function pointsOf(side: FaceSide<"mm">): FaceSide<"mm"> {
  const { brow: _brow, upperLid: _upper, lowerLid: _lower, ...points } = side;
  return points;
}

function scaled(face: Face<"mm">, size: number): Face<"mm"> {
  return mapFace<"mm", "mm">(face, ([x, y]) => mm([size * x, size * y]));
}

function withIris(face: Face<"mm">, width: number): Face<"mm"> {
  const edges = ({ pupil }: Face<"mm">["left"], outwards: 1 | -1): object => {
    const [x, y] = pupil ?? mm([0, 0]);
    return {
      limbusMedial: mm([x - (outwards * width) / 2, y]),
      limbusLateral: mm([x + (outwards * width) / 2, y]),
    };
  };
  return {
    ...face,
    right: { ...face.right, ...edges(face.right, -1) },
    left: { ...face.left, ...edges(face.left, 1) },
  };
}

/** A photo of a person, and what somebody who took it knows. */
export interface Photo {
  readonly face: Face<"px">;
  /** The ends of 50 mm of a ruler held across the forehead, level with the brows' start. */
  readonly ruler: readonly [from: Point<"px">, to: Point<"px">];
  readonly cameraDistance: Measured<Length<"mm">>;
}

export const RULER_LENGTH = 50;
/** Whoever dots the ruler does it by hand. */
export const RULER_PLACEMENT: Length<"px"> = px(0.3 / SCALE);

/** Takes a photo by a pinhole camera, and places its landmarks as well as the source can. */
export function takePhoto(person: Person, source: Source, { normal }: Deviations): Photo {
  const { face, skin, prominence, cameraDistance, pitch } = person;
  const seen = ([x, y]: Point<"mm">, depth: number, scatter: number): Point<"px"> => {
    const size = cameraDistance / (cameraDistance - depth) / SCALE;
    const noise = (): number => (scatter / SCALE) * normal();
    return px([2000 + size * x + noise(), 2000 - size * y + noise()]);
  };
  const ring = source.ring.value + source.ring.u * normal();
  const [cosine, sine] = [Math.cos(pitch), Math.sin(pitch)];
  const drawn = mapFace<"mm", "px">(ringed(face, ring), (point, landmark) => {
    const [x, y] = point;
    const ahead = landmark === "brow" ? prominence + depthAt(point, skin) : 0;
    return seen(
      flatPoint(x, y * cosine + ahead * sine),
      ahead * cosine - y * sine,
      landmark?.startsWith("limbus") === true ? source.limbus : source.placement,
    );
  });
  const half = RULER_LENGTH / 2;
  return {
    face: { ...drawn, source: landmarkSource(source) },
    ruler: [seen(mm([-half, 45]), prominence, 0.3), seen(mm([half, 45]), prominence, 0.3)],
    cameraDistance: measured(
      mm(cameraDistance * (1 + DISTANCE_U * normal())),
      mm(DISTANCE_U * cameraDistance),
    ),
  };
}

function ringed(face: Face<"mm">, ring: number): Face<"mm"> {
  const width = (face.left.limbusLateral?.[0] ?? 0) - (face.left.limbusMedial?.[0] ?? 0);
  return withIris(face, ring * width);
}

function landmarkSource({
  name,
  placement,
  limbus,
  ring,
}: Source): NonNullable<Face<"px">["source"]> {
  return {
    markup: name,
    uncertainty: {
      default: mm(placement),
      landmarks: { limbusMedial: mm(limbus), limbusLateral: mm(limbus) },
    },
    ringFactor: ring,
    depth: "estimated",
  };
}
