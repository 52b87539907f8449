import { type Point, type Unit } from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import type { Face } from "./face.js";

/**
 * Refuses a face whose right and left are swapped or whose picture is mirrored: along the eye corners,
 * nose and mouth lie on the side that only an unmirrored picture has. A tilted head passes.
 */
export function requireSideOrder<U extends Unit>(
  where: string,
  face: Face<U>,
  yAxis: "down" | "up",
): void {
  const right = present([face.right.exocanthion, face.right.endocanthion]);
  const left = present([face.left.endocanthion, face.left.exocanthion]);
  const first = right[0];
  const last = left[left.length - 1];
  if (first === undefined || last === undefined) return;
  const eyes = [...right, ...left];
  const axis = [last[0] - first[0], last[1] - first[1]] as const;
  const along = eyes.map(([x, y]) => (x - first[0]) * axis[0] + (y - first[1]) * axis[1]);
  const inOrder = along.every(
    (place, index) => index === 0 || place > (along[index - 1] as number),
  );
  const [x, y] = downwards(face, eyes, yAxis);
  const turn = axis[0] * y - axis[1] * x;
  if (inOrder && (yAxis === "down" ? turn > 0 : turn < 0)) return;
  refuse(
    "sides-swapped",
    where,
    "eye corners from the client's right to the left",
    eyes.map((point) => [point[0], point[1]]),
    `the client's own right and left, y ${yAxis}; of a flipped picture, mirrored: "frame" or "coordinates"`,
  );
}

function downwards<U extends Unit>(
  face: Face<U>,
  eyes: readonly Point<U>[],
  yAxis: "down" | "up",
): readonly [number, number] {
  const { midline, right, left } = face;
  const below = present([
    midline.subnasale,
    midline.labialeSuperius,
    midline.stomion,
    midline.menton,
    ...[right, left].flatMap((side) => [side.alare, side.cheilion]),
  ]);
  if (below.length === 0) return [0, yAxis === "down" ? 1 : -1];
  const [fromX, fromY] = meanOf(eyes);
  const [toX, toY] = meanOf(below);
  return [toX - fromX, toY - fromY];
}

function present<U extends Unit>(points: readonly (Point<U> | undefined)[]): readonly Point<U>[] {
  return points.filter((point) => point !== undefined);
}

function meanOf<U extends Unit>(points: readonly Point<U>[]): readonly [number, number] {
  const sum = (axis: 0 | 1): number => points.reduce((total, point) => total + point[axis], 0);
  return [sum(0) / points.length, sum(1) / points.length];
}
