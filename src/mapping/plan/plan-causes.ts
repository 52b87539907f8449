import {
  depthAt,
  GUIDES,
  type LandmarkName,
  type PointMap,
  type Skin,
  skinUncertainty,
} from "../../landmarks/index.js";
import {
  deepen,
  errorSources,
  type KnownErrors,
  type PointMoves,
  SET_BACK,
  skinsNear,
  type SkinWithSetBack,
  withMoves,
} from "../../landmarks/internal.js";
import type { FaceFrame, Turning } from "../../symmetry/index.js";
import {
  BROW_PROMINENCE,
  MIDLINE_PAIRS,
  MIDLINE_POINTS,
  pitchUncertainty,
  prominenceOf,
  raisedBy,
  spaceOf,
  type SpaceShift,
  type TurningOffset,
  turningShift,
} from "../../symmetry/internal.js";
import { deepPoint, flatPoint, hasDepth, type Point } from "../../units/index.js";
import { keysOf, SIDES, toRadians } from "../../units/internal.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { Cause } from "./read-plan.js";
import { seenBy, type Variation } from "./variation.js";

/** Landmarks on whose place a plan depends once the face space is given: those of guides and of readings. */
const PLANNED_ON: readonly LandmarkName[] = /* @__PURE__ */ (() => [
  ...new Set<LandmarkName>([
    ...keysOf(GUIDES).flatMap((guide): readonly LandmarkName[] => GUIDES[guide].through),
    "limbusLateral",
    "pupil",
    "upperLid",
    "brow",
  ]),
])();

/** Landmarks that a face space is laid through, and on which a plan depends in no other way. */
const FITTED_TO: readonly LandmarkName[] = /* @__PURE__ */ [
  ...MIDLINE_PAIRS,
  ...MIDLINE_POINTS,
].filter((name) => !PLANNED_ON.includes(name));

/** What is uncertain of a plan in a face space that is given: landmarks, and how the skin falls back. */
export function causesOnFace(truth: Variation): readonly Cause[] {
  return [
    ...landmarkCauses(truth, PLANNED_ON, refitOf(truth)),
    skinCause(truth, undefined),
    ...setBackCauses(truth),
    ...archCauses(truth),
  ];
}

/**
 * What is uncertain of a plan on a photo: the face space too. Its midline follows the landmarks that it
 * was fitted to, or is as uncertain as it was given; its level follows the inner eye corners.
 *
 * @param known what is known of detectors; left out for the tables that the library has
 */
export function causesOnPhoto(
  truth: Variation,
  frame: FaceFrame,
  known?: KnownErrors,
): readonly Cause[] {
  const { midline, scale, turning } = frame;
  const { method } = midline;
  const errs = (map: (amount: number) => PointMap<"mm", "mm">): Cause => ({
    faceAt: (amount) => seenBy(map(amount), truth),
  });
  const refit = refitOf(truth);
  const causes = [
    skinCause(truth, turning),
    ...setBackCauses(truth),
    ...archCauses(truth),
    sizeCause(truth, scale.u / scale.factor),
    pitchCause(truth, frame, refit),
    ...cameraCauses(truth, frame).map(errs),
  ];
  if (turning === undefined && method !== "given" && method !== "plane") {
    const space = (face: PlannableFace): SpaceShift => spaceOf(face, method);
    const fitted = landmarkCauses(truth, FITTED_TO, undefined, space, known);
    return [
      ...landmarkCauses(truth, PLANNED_ON, refit, space, known),
      ...fitted.map(({ faceAt: _, ...moves }) => moves),
      ...causes,
    ];
  }
  const shift = midline.throughU * scale.factor;
  return [
    ...landmarkCauses(truth, PLANNED_ON, refit, levelOf, known),
    ...causes,
    { space: [0, 0, toRadians(midline.tiltU)] },
    { space: [shift, 0, 0] },
    ...(turning === undefined
      ? []
      : [errs((amount) => turnedBy(turning, { yaw: amount * turning.yawU, depth: 0 }))]),
  ];
}

/**
 * Where a border arches is uncertain beside its points, on each side by itself. A detector's patterns have that in
 * them: they are what its arches are off those drawn by hand.
 */
function archCauses(truth: Variation): readonly Cause[] {
  if (truth.face.source?.corrected === true) return [];
  return SIDES.map((side) => ({
    faceAt: (amount) => ({ ...truth, arches: { [side]: amount } }),
  }));
}

/** Fits the skin to a face that differs a little, where a skin is fitted. */
type Refit = ((face: PlannableFace) => Skin) | undefined;

function refitOf({ face, skin }: Variation): Refit {
  return skin.kind === "fitted" ? skinsNear(face) : undefined;
}

/** Every independent error of landmarks, and what it does to the space that hangs on them. */
function landmarkCauses(
  { face, skin, pins }: Variation,
  uncertain: readonly LandmarkName[],
  refit: Refit,
  spaceIn?: (face: PlannableFace) => SpaceShift,
  known?: KnownErrors,
): readonly Cause[] {
  return errorSources(face, uncertain, known).map((source): Cause => {
    const moved = (amount: number): PlannableFace =>
      withMoves(face, source, amount) as PlannableFace;
    const skinAt = movesSkin(source) ? refit : undefined;
    const faceAt = (amount: number): Variation => {
      const face = moved(amount);
      return { face, skin: skinAt?.(face) ?? skin, pins };
    };
    if (spaceIn === undefined || !movesSpace(source)) return { faceAt };
    const [from, to] = [spaceIn(moved(-1)), spaceIn(moved(1))];
    const space = [(to.x - from.x) / 2, (to.y - from.y) / 2, (to.lean - from.lean) / 2];
    return { faceAt, space };
  });
}

/** Whether something is moved that a space is laid through. */
function movesSpace({ midline, right = {}, left = {} }: PointMoves): boolean {
  return midline !== undefined || MIDLINE_PAIRS.some((name) => name in right || name in left);
}

/** Whether something is moved that a skin is fitted to. */
function movesSkin({ right = {}, left = {} }: PointMoves): boolean {
  return "upper" in right || "upper" in left;
}

/** A space whose midline does not hang on the landmarks: its level does. */
function levelOf({ right, left }: PlannableFace): SpaceShift {
  return { x: 0, y: (right.endocanthion[1] + left.endocanthion[1]) / 2, lean: 0 };
}

/** How far the skin falls back; where a head was turned, its depth entered the turning too. */
function skinCause(truth: Variation, turning: FaceFrame["turning"]): Cause {
  const u = skinUncertainty(truth.skin);
  const faceAt = (amount: number): Variation => {
    const skin = deepen(truth.skin, 1 + amount * u);
    if (turning === undefined) return { ...truth, skin };
    return seenBy(turnedBy(turning, { yaw: 0, depth: amount * u }), truth, skin);
  };
  return { faceAt };
}

/** How far outer eye corners lie behind a skin that is modelled; beside a fitted one their own depth says it. */
function setBackCauses(truth: Variation): readonly Cause[] {
  if (truth.skin.kind !== "modelled") return [];
  const faceAt = (amount: number): Variation => {
    const setBack = SET_BACK.value + amount * SET_BACK.u;
    const skin: SkinWithSetBack = { ...truth.skin, setBack };
    return { ...truth, skin };
  };
  return [{ faceAt }];
}

/** How far the chin was raised. The skin, a fitted one, turns with the head. */
function pitchCause(truth: Variation, frame: FaceFrame, refit: Refit): Cause {
  const u = pitchUncertainty(truth.face, frame);
  const prominence = frame.camera?.prominence ?? prominenceOf(truth.skin);
  const faceAt = (amount: number): Variation => {
    const held = seenBy((point, landmark) => {
      const depth = depthOf(point, landmark === "brow", truth.skin, prominence);
      const [x, y, ahead] = raisedBy(amount * u, deepPoint(point[0], point[1], depth));
      return hasDepth(point) ? deepPoint<"mm">(x, y, ahead) : flatPoint<"mm">(x, y);
    }, truth);
    return refit === undefined ? held : { ...held, skin: refit(held.face) };
  };
  return { faceAt };
}

/** How deep a point lies: by its own depth, on a brow's skin, or else level with the inner eye corners. */
function depthOf(point: Point<"mm">, onSkin: boolean, skin: Skin, prominence: number): number {
  if (hasDepth(point)) return point[2];
  return onSkin ? prominence + depthAt(point, skin) : 0;
}

/** Where points lie if the head was turned otherwise than it was taken to be. */
function turnedBy(turning: Turning, by: TurningOffset): PointMap<"mm", "mm"> {
  return (point) => {
    const x = point[0] + turningShift(point, turning, by);
    return hasDepth(point) ? deepPoint<"mm">(x, point[1], point[2]) : flatPoint(x, point[1]);
  };
}

/** The size of the whole face. */
function sizeCause(truth: Variation, relativeU: number): Cause {
  const faceAt = (amount: number): Variation => {
    const times = 1 + amount * relativeU;
    return seenBy(
      enlargedBy(() => times),
      truth,
      deepen(truth.skin, 1, times),
    );
  };
  return { faceAt };
}

function enlargedBy(times: (point: Point<"mm">, onSkin: boolean) => number): PointMap<"mm", "mm"> {
  return (point, landmark) => {
    const by = times(point, landmark === "brow" && !hasDepth(point));
    const [x, y] = [by * point[0], by * point[1]];
    return hasDepth(point) ? deepPoint<"mm">(x, y, by * point[2]) : flatPoint<"mm">(x, y);
  };
}

/**
 * How far away the camera was, and how much nearer to it brows without depth lie: what perspective takes
 * a place to be larger by, in shares.
 */
function cameraCauses(
  { skin }: Variation,
  { scale, camera }: FaceFrame,
): readonly ((amount: number) => PointMap<"mm", "mm">)[] {
  if (camera === undefined) return [];
  const distanceU = scale.cameraDistance?.u ?? 0;
  const farther = (amount: number): PointMap<"mm", "mm"> =>
    enlargedBy(
      (point, onSkin) =>
        1 +
        (amount * depthOf(point, onSkin, skin, camera.prominence) * distanceU) /
          camera.distance ** 2,
    );
  const nearer = (amount: number): PointMap<"mm", "mm"> =>
    enlargedBy((_, onSkin) => (onSkin ? 1 - (amount * BROW_PROMINENCE.u) / camera.distance : 1));
  // How near the brows lie is the average's where no depth says it.
  return camera.skin.kind === "fitted" ? [farther] : [farther, nearer];
}
