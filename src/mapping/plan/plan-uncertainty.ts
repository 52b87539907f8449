import type { Direction } from "../../geometry/index.js";
import { depthAt, mapFace, type Skin, skinUncertainty } from "../../landmarks/index.js";
import { deepen, enlargeSkin } from "../../landmarks/internal.js";
import {
  type Camera,
  faceFrame,
  type FaceFrame,
  fitMidline,
  toFace,
  type Turning,
} from "../../symmetry/index.js";
import { BROW_PROMINENCE, type TurningOffset, turningShift } from "../../symmetry/internal.js";
import {
  flatPoint,
  hasDepth,
  type Measured,
  measured,
  mm,
  type Point,
  propagate,
  type Scale,
} from "../../units/index.js";
import { toRadians } from "../../units/internal.js";
import { faceInputs, READ_ON_FACE, READ_ON_PHOTO } from "./face-inputs.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { readPlan, type ReadingsRow, rowOf } from "./plan-readings.js";
import { type PlannableFace, requirePlannable } from "../dots/plannable-face.js";

/** How well the face space itself is known where it does not hang on the landmarks' own places. */
export interface SpaceUncertainty {
  /** Relative standard uncertainty of the face's size. */
  readonly size: number;
  /** The yaw that was corrected, where one was. */
  readonly turning?: Turning;
  /** Standard uncertainty of the midline's tilt, in degrees. */
  readonly tilt: number;
  /** Standard uncertainty of the midline's place at the level of the inner eye corners, in mm. */
  readonly shift: number;
  /** The camera whose perspective was corrected, where one was, and how well its distance is known. */
  readonly camera?: Camera;
  readonly distance: number;
}

const CERTAIN: SpaceUncertainty = { size: 0, tilt: 0, shift: 0, distance: 0 };

/** Standard uncertainty of a plan's readings from landmarks, skin and face space; the midline is given. */
export function uncertaintyOnFace(
  plan: PlannedDots,
  space: SpaceUncertainty = CERTAIN,
): ReadingsRow {
  const { moves, faceWith } = faceInputs(plan.face, READ_ON_FACE, 1, UPRIGHT);
  return propagate(
    ({ skinDepth, times, yaw, tilt, shift, distance, nearer, ...values }) => {
      const turned = { turning: space.turning, yaw, depth: skinDepth - 1 };
      const seen = { camera: space.camera, distance, nearer };
      const truth = { times, turned, tilt, shift, seen };
      const face = seenAs(requirePlannable(faceWith(values)), truth, plan.skin);
      return rowOf(readPlan(face, skinAs(plan.skin, skinDepth, times), plan.choices));
    },
    {
      ...moves,
      skinDepth: depthFactor(plan.skin),
      times: measured(1, space.size),
      yaw: measured(0, space.turning?.yawU ?? 0),
      tilt: measured(0, space.tilt),
      shift: measured(0, space.shift),
      distance: measured(0, space.distance),
      nearer: measured(0, prominenceU(space.camera)),
    },
    { linearity: "averaged" },
  ).u;
}

/** The same for a photo, whose midline is fitted to uncertain landmarks too. */
export function uncertaintyOnPhoto(
  plan: PlannedDots,
  photo: PlannableFace<"px">,
  { scale, midline, turning, camera }: FaceFrame,
): ReadingsRow {
  const { method } = midline;
  if (turning !== undefined || method === "given" || method === "plane") {
    return uncertaintyOnFace(plan, {
      size: scale.u / scale.factor,
      tilt: midline.tiltU,
      shift: midline.throughU * scale.factor,
      distance: distanceU(scale),
      ...(turning === undefined ? {} : { turning }),
      ...(camera === undefined ? {} : { camera }),
    });
  }
  const { cameraDistance: _distance, ...farScale } = scale;
  const { direction } = midline.line;
  const { moves, faceWith } = faceInputs(photo, READ_ON_PHOTO, 1 / scale.factor, direction);
  return propagate(
    ({ skinDepth, factor, distance, prominence, ...values }) => {
      const moved = faceWith(values);
      const fitted = { midline: fitMidline(moved, { method }) };
      const fromAfar = faceFrame(moved, { ...farScale, factor }, fitted);
      const frame = seenBy(camera, fromAfar, distance, prominence, skinDepth);
      const skin = skinAs(plan.skin, skinDepth, factor / scale.factor);
      return rowOf(readPlan(requirePlannable(toFace(moved, frame)), skin, plan.choices));
    },
    {
      ...moves,
      skinDepth: depthFactor(plan.skin),
      factor: measured(scale.factor, scale.u),
      distance: measured(camera?.distance ?? 0, distanceU(scale)),
      prominence: measured(camera?.prominence ?? 0, prominenceU(camera)),
    },
    { linearity: "averaged" },
  ).u;
}

const UPRIGHT: Direction = [0, 1];

/** How many times as far the skin falls back as it is taken to: 1, give or take. */
function depthFactor(skin: Skin): Measured {
  return measured(1, skinUncertainty(skin));
}

function skinAs(skin: Skin, depth: number, times: number): Skin {
  return enlargeSkin(deepen(skin, depth), times);
}

/** A frame whose camera, and the skin before it, may truly be otherwise. */
function seenBy(
  camera: Camera | undefined,
  frame: FaceFrame,
  distance: number,
  prominence: number,
  skinDepth: number,
): FaceFrame {
  if (camera === undefined) return frame;
  const skin = deepen(camera.skin, skinDepth);
  const truly = { ...camera, distance: mm(distance), prominence: mm(prominence), skin };
  return { ...frame, camera: truly };
}

function distanceU({ cameraDistance }: Scale): number {
  return cameraDistance?.u ?? 0;
}

/** How near the brows lie is the average's where no depth says it. */
function prominenceU(camera: Camera | undefined): number {
  return camera === undefined || camera.skin.kind === "fitted" ? 0 : BROW_PROMINENCE.u;
}

/** How the face space may truly be, beside what it is taken to be. */
interface TrueSpace {
  readonly times: number;
  /** The scale of depth is that of the skin: one error for both. */
  readonly turned: TurningOffset & { readonly turning: Turning | undefined };
  readonly tilt: number;
  readonly shift: number;
  readonly seen: CameraError;
}

/** Millimetres by which a camera truly is farther, and a skin without depth nearer to it. */
interface CameraError {
  readonly camera: Camera | undefined;
  readonly distance: number;
  readonly nearer: number;
}

/** A face in a space a little larger, turned, tilted and shifted: depth moves sideways. */
function seenAs(
  face: PlannableFace,
  { times, turned, tilt, shift, seen }: TrueSpace,
  skin: Skin,
): PlannableFace {
  const { turning } = turned;
  const { camera } = seen;
  const asTaken = times === 1 && tilt === 0 && shift === 0;
  if (asTaken && turning === undefined && camera === undefined) return face;
  const lean = toRadians(tilt);
  return requirePlannable(
    mapFace<"mm", "mm">(face, (point, landmark) => {
      const [x, y] = point;
      const aside = turning === undefined ? 0 : turningShift(point, turning, turned);
      const onSkin = landmark === "brow" && !hasDepth(point);
      const larger = times * (1 + stretchBy(seen, onSkin ? skin : undefined, point));
      return flatPoint(larger * (x + shift + aside + y * lean), larger * (y - x * lean));
    }),
  );
}

/** Share by which a place truly lies farther out, seen by a camera that is not quite where it is taken to be. */
function stretchBy(
  { camera, distance, nearer }: CameraError,
  skin: Skin | undefined,
  point: Point<"mm">,
): number {
  if (camera === undefined) return 0;
  const modelled = skin === undefined ? 0 : camera.prominence + depthAt(point, skin);
  const depth = hasDepth(point) ? point[2] : modelled;
  const closer = skin === undefined ? 0 : nearer;
  return (depth * distance) / camera.distance ** 2 - closer / camera.distance;
}
