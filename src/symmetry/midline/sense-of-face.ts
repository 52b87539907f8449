import { type Face, LANDMARKS } from "../../landmarks/index.js";
import { MIDLINE_LANDMARKS, SIDE_LANDMARKS } from "../../landmarks/internal.js";
import { type Point, type Unit } from "../../units/index.js";
import { toDegrees } from "../../units/internal.js";

type Vector = readonly [x: number, y: number];

/** Where the forehead and the client's left lie in the face's own space, as far as landmarks tell. */
export interface FaceSense {
  /** Roughly from the chin to the forehead, of no particular length. */
  readonly upwards: Vector | undefined;
  /** Roughly from the client's right to the client's left, of no particular length. */
  readonly leftwards: Vector | undefined;
}

/** Which way is up and which is the client's left, from the landmarks' names, in `px` and in `mm`. */
export function senseOf<U extends Unit>(face: Face<U>): FaceSense {
  return { upwards: upwardsOf(face), leftwards: leftwardsOf(face) };
}

/**
 * Whether positive distances from a line towards the forehead lie on the client's left, as in the photo.
 * A face without pairs is taken to stand less than a quarter turn from upright.
 */
export function leftIsPositive(direction: Vector, { leftwards }: FaceSense): boolean {
  return leftwards === undefined
    ? direction[1] < 0
    : direction[0] * leftwards[1] - direction[1] * leftwards[0] > 0;
}

/** Degrees of a direction from the vertical, positive where the chin end lies leftwards. */
export function tiltOf(direction: Vector, sense: FaceSense): number {
  const [x, y] = direction;
  return toDegrees(Math.atan2(0 - x, leftIsPositive(direction, sense) ? -y : y));
}

/** Covariance of the landmarks' places with their levels. */
function upwardsOf<U extends Unit>(face: Face<U>): Vector | undefined {
  let count = 0;
  let levels = 0;
  let x = 0;
  let y = 0;
  let levelX = 0;
  let levelY = 0;
  const add = (point: Point<U> | undefined, level: number): void => {
    if (point === undefined) return;
    count += 1;
    levels += level;
    x += point[0];
    y += point[1];
    levelX += level * point[0];
    levelY += level * point[1];
  };
  for (const name of SIDE_LANDMARKS) {
    add(face.right[name], LANDMARKS.side[name].level);
    add(face.left[name], LANDMARKS.side[name].level);
  }
  for (const name of MIDLINE_LANDMARKS) {
    add(face.midline[name], LANDMARKS.midline[name].level);
  }
  for (const { brow } of [face.right, face.left]) {
    add(brow?.upper[Math.floor(brow.upper.length / 2)], LANDMARKS.lines.brow.level);
  }
  const vector: Vector = [levelX - (levels * x) / count, levelY - (levels * y) / count];
  return Math.hypot(...vector) > 0 ? vector : undefined;
}

function leftwardsOf<U extends Unit>(face: Face<U>): Vector | undefined {
  let x = 0;
  let y = 0;
  for (const name of SIDE_LANDMARKS) {
    const right = face.right[name];
    const left = face.left[name];
    if (right === undefined || left === undefined) continue;
    x += left[0] - right[0];
    y += left[1] - right[1];
  }
  return x === 0 && y === 0 ? undefined : [x, y];
}
