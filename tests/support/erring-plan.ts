import {
  type BrowPlan,
  eachSide,
  type Face,
  faceFrame,
  type FaceFrame,
  naturalDots,
  type PlannableFace,
  requirePlannable,
  skinOf,
  toFace,
  toPhoto,
} from "brow-geometry";
import { depthAt, landmarkUncertainty, mapFace, skinUncertainty } from "brow-geometry/landmarks";
import {
  deepPoint,
  flatPoint,
  GeometryError,
  hasDepth,
  type Side,
  type Sides,
} from "brow-geometry/units";
import {
  deepen,
  errorSources,
  LANDMARK_NAMES,
  MEASURE_NAMES,
  type PointMoves,
  SET_BACK,
  type SkinWithSetBack,
  withMoves,
} from "../../src/landmarks/internal.js";
import { edgeOfDrawn } from "../../src/mapping/plan/edge-of-drawn.js";
import { grownThickness, plannedThickness } from "../../src/mapping/dots/settle-thickness.js";
import { asksOf, solveDots } from "../../src/mapping/dots/solve-dots.js";
import { dotsAnew, edgeOfDots, edgeOfHair, readSide } from "../../src/proportions/internal.js";
import { intoSpace, prominenceOf, raisedBy, turningShift } from "../../src/symmetry/internal.js";

/** What a plan may err by, beside its landmarks, in standard deviations of each. */
const BESIDE = [
  "pitch",
  "size",
  "depth",
  "setBack",
  "yaw",
  "lean",
  "shift",
  "rightArch",
  "leftArch",
] as const;

type Beside = { readonly [Name in (typeof BESIDE)[number]]: number };

/** A plan on a photo whose every error can be chosen: what it then reads, all of it anew. */
export interface ErringPlan {
  /** How many independent errors it has. */
  readonly errors: number;
  /** What is read where each error is so many standard deviations; NaN for what does not exist. */
  readonly readAt: (amounts: readonly number[]) => readonly number[];
  /** What each of these readings is called. */
  readonly names: readonly string[];
}

/**
 * Errors are put on the face, which then goes back to its photo; a new frame is laid through what stands
 * there, and both brows are read and planned by the choices that were settled. Where a head was turned,
 * the errors that its turning states stand for a new frame.
 */
export function erringPlan({ face, frame, choices }: BrowPlan, pitchU: number): ErringPlan {
  if (frame === undefined) throw new Error("not planned on a photo");
  const sources = errorSources(face, LANDMARK_NAMES);
  const frames = frame.turning === undefined ? reframed : turnedOtherwise;
  return {
    errors: sources.length + BESIDE.length,
    names: ["natural", "planned"].flatMap((map) =>
      ["right", "left"].flatMap((side) => MEASURE_NAMES.map((name) => `${map} ${side} ${name}`)),
    ),
    readAt: (amounts) => {
      const beside = Object.fromEntries(
        BESIDE.map((name, index) => [name, amounts[sources.length + index]]),
      ) as Beside;
      const erring = withMoves(face, sumOf(sources, amounts), 1);
      const held = raised(erring, beside.pitch * pitchU, frame);
      return refusedAsNaN(() => {
        const seen = requirePlannable(frames(held, frame, beside));
        const own = skinOf(seen);
        const deepened = deepen(own, 1 + beside.depth * skinUncertainty(own));
        const skin = { ...deepened, setBack: SET_BACK.value + beside.setBack * SET_BACK.u };
        // A detector's patterns have in them what its arches are off.
        const finding = face.source?.corrected === true ? 0 : 1;
        const arches = { right: finding * beside.rightArch, left: finding * beside.leftArch };
        return readings(seen, skin, choices, arches);
      }, 2 * OF_ONE_MAP);
    },
  };
}

function sumOf(sources: readonly PointMoves[], amounts: readonly number[]): PointMoves {
  const sum: Record<string, Record<string, [number, number, number][]>> = {};
  sources.forEach((source, index) => {
    for (const [part, places] of Object.entries(source)) {
      for (const [place, moves] of Object.entries(places)) {
        const points = ((sum[part] ??= {})[place] ??= []);
        moves.forEach((move, point) => {
          if (move === undefined) return;
          const at = (points[point] ??= [0, 0, 0]);
          const [x, y, depth = 0] = move;
          [x, y, depth].forEach((by, axis) => {
            at[axis as 0 | 1 | 2] += (amounts[index] as number) * by;
          });
        });
      }
    }
  });
  return sum;
}

/** The chin raised; without depth a brow lies on its skin, and the rest level with the inner eye corners. */
function raised(face: Face<"mm">, degrees: number, { camera }: FaceFrame): Face<"mm"> {
  const skin = skinOf(face);
  const prominence = camera?.prominence ?? prominenceOf(skin);
  return mapFace<"mm", "mm">(face, (point, landmark) => {
    const [x, y] = point;
    const onSkin = landmark === "brow" ? prominence + depthAt(point, skin) : 0;
    const moved = raisedBy(degrees, deepPoint(x, y, hasDepth(point) ? point[2] : onSkin));
    return hasDepth(point) ? moved : flatPoint(moved[0], moved[1]);
  });
}

function reframed(face: Face<"mm">, { scale, ...frame }: FaceFrame, { size }: Beside): Face<"mm"> {
  const photo = toPhoto(face, { ...frame, scale });
  return toFace(photo, faceFrame(photo, { ...scale, factor: scale.factor + size * scale.u }));
}

function turnedOtherwise(
  face: Face<"mm">,
  { scale, midline, turning }: FaceFrame,
  { size, depth, yaw, lean, shift }: Beside,
): Face<"mm"> {
  if (turning === undefined) throw new Error("not turned");
  const { right, left } = requirePlannable(face);
  const space = intoSpace({
    x: shift * midline.throughU * scale.factor,
    y: (right.endocanthion[1] + left.endocanthion[1]) / 2,
    lean: (lean * midline.tiltU * Math.PI) / 180,
  });
  const times = 1 + (size * scale.u) / scale.factor;
  return mapFace<"mm", "mm">(face, (point) => {
    const error = { yaw: yaw * turning.yawU, depth: depth * turning.depthU };
    const across = point[0] + turningShift(point, turning, error);
    const turned = hasDepth(point)
      ? deepPoint<"mm">(across, point[1], point[2])
      : flatPoint<"mm">(across, point[1]);
    const [x, y, deep] = space(turned) as readonly [number, number, number?];
    return deep === undefined
      ? flatPoint<"mm">(times * x, times * y)
      : deepPoint<"mm">(times * x, times * y, times * deep);
  });
}

function readings(
  face: PlannableFace,
  skin: SkinWithSetBack,
  choices: BrowPlan["choices"],
  arches: Sides<number>,
): readonly number[] {
  const natural = eachSide((side) => {
    const { brow } = face[side];
    const found = naturalDots(brow, { u: landmarkUncertainty(face, "brow") });
    return dotsAnew(brow, found, false, arches[side]);
  });
  const grown = bothSides((side) =>
    readSide(natural[side].dots, {
      side,
      landmarks: face[side],
      skin,
      edge: edgeOfHair(face[side].brow, skin),
    }),
  );
  const { lead, frontShare, shape } = choices;
  const thickness = plannedThickness(face, grownThickness(face, natural, skin, lead, frontShare));
  const planned = refusedAsNaN(() => {
    const settled = { ...choices, thickness };
    const asks = eachSide((side) => asksOf(face, side, natural[side], settled));
    const { dots } = solveDots(asks, skin, settled);
    return bothSides((side) =>
      readSide(dots[side], {
        side,
        landmarks: face[side],
        skin,
        edge: edgeOfDrawn(dots[side], shape, skin) ?? edgeOfDots(dots[side], skin),
      }),
    );
  });
  return [...grown, ...planned];
}

/** What is read of both sides of one map. */
const OF_ONE_MAP = 2 * MEASURE_NAMES.length;

/** What is read where there is an answer: errors may exchange borders, or leave no place for a dot. */
function refusedAsNaN(read: () => readonly number[], count = OF_ONE_MAP): readonly number[] {
  try {
    return read();
  } catch (error) {
    if (error instanceof GeometryError) return new Array<number>(count).fill(Number.NaN);
    throw error;
  }
}

function bothSides(read: (side: Side) => ReturnType<typeof readSide>): readonly number[] {
  return (["right", "left"] as const).flatMap((side) => {
    const reading = read(side);
    return MEASURE_NAMES.map((name) => reading[name] ?? Number.NaN);
  });
}

/** What a plan states of the same readings. */
export function statedU({ naturalMeasures, measures }: BrowPlan): readonly number[] {
  return [naturalMeasures, measures].flatMap((map) =>
    [map.right, map.left].flatMap((side) =>
      MEASURE_NAMES.map((name) => side[name]?.u ?? Number.NaN),
    ),
  );
}
