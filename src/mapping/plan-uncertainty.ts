import {
  deepen,
  depthAt,
  enlargeSkin,
  mapFace,
  type Skin,
  skinUncertainty,
} from "../landmarks/index.js";
import {
  faceFrame,
  type FaceFrame,
  fitMidline,
  toFace,
  type Turning,
  type TurningError,
  turningShift,
} from "../symmetry/index.js";
import {
  deepPoint,
  flatPoint,
  hasDepth,
  type Measured,
  measured,
  propagate,
  toRadians,
} from "../units/index.js";
import { faceInputs, READ_ON_FACE, READ_ON_PHOTO } from "./face-inputs.js";
import type { MarkPlan } from "./plan.js";
import { readPlan, type ReadingsRow, rowOf } from "./plan-readings.js";
import { type PlannableFace, requirePlannable } from "./plannable-face.js";

/** How well the face space itself is known where it does not hang on the landmarks' own places. */
export interface SpaceUncertainty {
  /** Relative standard uncertainty of the face's size. */
  readonly size: number;
  /** The yaw that was taken out, where one was. */
  readonly turning?: Turning;
  /** Standard uncertainty of the midline's tilt, in degrees. */
  readonly tilt: number;
  /** Standard uncertainty of the midline's place at the level of the inner eye corners, in mm. */
  readonly shift: number;
}

/**
 * Standard uncertainty of everything read on a plan, from its landmarks, its skin and how well the
 * face space is known; the midline is taken as given.
 */
export function uncertaintyOnFace(
  plan: MarkPlan,
  space: SpaceUncertainty = { size: 0, tilt: 0, shift: 0 },
): ReadingsRow {
  const { points, faceWith } = faceInputs(plan.face, READ_ON_FACE, 1);
  return propagate(
    ({ skinDepth, times, yaw, tilt, shift, ...values }) => {
      const turned = { turning: space.turning, yaw, depth: skinDepth - 1 };
      const truth = { times, turned, tilt, shift };
      const face = seenAs(requirePlannable(faceWith(values)), truth, plan.skin);
      return rowOf(readPlan(face, skinAs(plan.skin, skinDepth, times), plan.choices));
    },
    {
      ...points,
      skinDepth: depthFactor(plan.skin),
      times: measured(1, space.size),
      yaw: measured(0, space.turning?.yawU ?? 0),
      tilt: measured(0, space.tilt),
      shift: measured(0, space.shift),
    },
    { linearity: "assumed" },
  ).u;
}

/** The same for a photo, whose midline is fitted to uncertain landmarks too. */
export function uncertaintyOnPhoto(
  plan: MarkPlan,
  photo: PlannableFace<"px">,
  { scale, midline, turning }: FaceFrame,
): ReadingsRow {
  const { method } = midline;
  if (turning !== undefined || method === "given" || method === "plane") {
    return uncertaintyOnFace(plan, {
      size: scale.u / scale.factor,
      tilt: midline.tiltU,
      shift: midline.throughU * scale.factor,
      ...(turning === undefined ? {} : { turning }),
    });
  }
  const { points, faceWith } = faceInputs(photo, READ_ON_PHOTO, 1 / scale.factor);
  return propagate(
    ({ skinDepth, factor, ...values }) => {
      const moved = faceWith(values);
      const frame = faceFrame(
        moved,
        { ...scale, factor },
        { midline: fitMidline(moved, { method }) },
      );
      const skin = skinAs(plan.skin, skinDepth, factor / scale.factor);
      return rowOf(readPlan(requirePlannable(toFace(moved, frame)), skin, plan.choices));
    },
    { ...points, skinDepth: depthFactor(plan.skin), factor: measured(scale.factor, scale.u) },
    { linearity: "assumed" },
  ).u;
}

/** How many times as far the skin falls back as it is taken to: 1, give or take. */
function depthFactor(skin: Skin): Measured {
  return measured(1, skinUncertainty(skin));
}

function skinAs(skin: Skin, depth: number, times: number): Skin {
  return enlargeSkin(deepen(skin, depth), times);
}

/** How the face space may truly be, beside what it is taken to be. */
interface TrueSpace {
  readonly times: number;
  /** The scale of depth is that of the skin: one error for both. */
  readonly turned: TurningError & { readonly turning: Turning | undefined };
  readonly tilt: number;
  readonly shift: number;
}

/** A face in a space a little larger, turned, tilted and shifted: depth moves sideways. */
function seenAs(
  face: PlannableFace,
  { times, turned, tilt, shift }: TrueSpace,
  skin: Skin,
): PlannableFace {
  const { turning } = turned;
  if (times === 1 && tilt === 0 && shift === 0 && turning === undefined) return face;
  const lean = toRadians(tilt);
  return requirePlannable(
    mapFace<"mm", "mm">(face, (point) => {
      const [x, y] = point;
      const depth = hasDepth(point) ? point[2] : depthAt(point, skin);
      const aside =
        turning === undefined ? 0 : turningShift(deepPoint(x, y, depth), turning, turned);
      return flatPoint(times * (x + shift + aside + y * lean), times * (y - x * lean));
    }),
  );
}
