import {
  distanceAlongLine,
  distanceFromLine,
  type Line,
  midpoint,
  pointOnLine,
} from "../../geometry/index.js";
import { type Face, type PointLandmark } from "../../landmarks/index.js";
import {
  MIDLINE_LANDMARKS,
  SIDE_LANDMARKS,
  type FaceSense,
  leftIsPositive,
  tiltOf,
} from "../../landmarks/internal.js";
import { type Length, length, type Point, type Unit } from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import type { Midline } from "./midline.js";

/** A line that knows where the face's forehead and left side are. */
export interface PlacedLine<U extends Unit> {
  readonly line: Line<U>;
  readonly tilt: number;
  /** Whether positive distances from the line lie towards the client's left, as in the photo. */
  readonly leftIsPositive: boolean;
  /** From the fitted line's centre to the foot, along the line. */
  readonly fromCentre: Length<U>;
}

/** A fitted line with its foot at a level of the face, turned towards the forehead. */
export function placeOnFace<U extends Unit>(
  fitted: Line<U>,
  level: Point<U>,
  sense: FaceSense,
): PlacedLine<U> {
  const { upwards } = sense;
  const [x, y] = fitted.direction;
  const direction: Line<U>["direction"] =
    upwards !== undefined && x * upwards[0] + y * upwards[1] < 0 ? [-x, -y] : [x, y];
  const fromCentre = distanceAlongLine(level, { through: fitted.through, direction });
  const line = { through: pointOnLine({ ...fitted, direction }, fromCentre), direction };
  const downwards = leftIsPositive(direction, sense);
  const tilt = tiltOf(direction, sense);
  if (!downwards && Math.abs(tilt) > 90) refuseMirrored(direction);
  return { line, tilt, leftIsPositive: downwards, fromCentre };
}

/** Upright by its landmarks, upside down by its sides: the labels belong to the other person's view. */
function refuseMirrored(direction: Line<"px">["direction"]): never {
  const need = "the client's own right and left";
  refuse("sides-swapped", "right, left", direction, need);
}

/** How far each midline landmark and the middle of each pair lie off, where that can be said. */
export function offsetsFrom<U extends Unit>(
  face: Face<U>,
  offsetOf: (point: Point<U>) => Length<U> | undefined,
): Midline<U>["offsets"] {
  const offsets: { [Name in PointLandmark]?: Length<U> } = {};
  for (const name of SIDE_LANDMARKS) {
    const right = face.right[name];
    const left = face.left[name];
    if (right === undefined || left === undefined) continue;
    const offset = offsetOf(midpoint(right, left));
    if (offset !== undefined) offsets[name] = offset;
  }
  for (const name of MIDLINE_LANDMARKS) {
    const point = face.midline[name];
    const offset = point === undefined ? undefined : offsetOf(point);
    if (offset !== undefined) offsets[name] = offset;
  }
  return offsets;
}

/** Signed distance from the line, positive towards the client's left. */
export function leftwardsFrom<U extends Unit>(
  point: Point<U>,
  { line, leftIsPositive }: Pick<PlacedLine<U>, "line" | "leftIsPositive">,
): Length<U> {
  const apart = distanceFromLine(point, line);
  return leftIsPositive ? apart : length(0 - apart);
}
