import { type Point, type Unit } from "../../units/index.js";
import { toDegrees } from "../../units/internal.js";
import type { Face } from "./face.js";
import { LANDMARKS, MIDLINE_LANDMARKS, SIDE_LANDMARKS } from "./landmarks.js";

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

/** Sums over landmarks of their places, their levels, and the products of both. */
interface LevelSums {
  count: number;
  levels: number;
  x: number;
  y: number;
  levelX: number;
  levelY: number;
}

/** Covariance of the landmarks' places with their levels. */
function upwardsOf<U extends Unit>({ right, left, midline }: Face<U>): Vector | undefined {
  const sums: LevelSums = { count: 0, levels: 0, x: 0, y: 0, levelX: 0, levelY: 0 };
  for (const name of SIDE_LANDMARKS) {
    const { level } = LANDMARKS.side[name];
    addPoint(sums, right[name], level);
    addPoint(sums, left[name], level);
  }
  for (const name of MIDLINE_LANDMARKS) {
    addPoint(sums, midline[name], LANDMARKS.midline[name].level);
  }
  for (const { brow } of [right, left]) {
    const { level } = LANDMARKS.lines.brow;
    addPoint(sums, brow?.upper[Math.floor(brow.upper.length / 2)], level);
  }
  const { count, levels, x, y, levelX, levelY } = sums;
  const vector: Vector = [levelX - (levels * x) / count, levelY - (levels * y) / count];
  return vector[0] !== 0 || vector[1] !== 0 ? vector : undefined;
}

function addPoint<U extends Unit>(
  sums: LevelSums,
  point: Point<U> | undefined,
  level: number,
): void {
  if (point === undefined) return;
  sums.count += 1;
  sums.levels += level;
  sums.x += point[0];
  sums.y += point[1];
  sums.levelX += level * point[0];
  sums.levelY += level * point[1];
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
