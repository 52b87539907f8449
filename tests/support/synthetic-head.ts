import { deepPoint, hasDepth } from "brow-geometry/units";
import { type Face, mm, type Point } from "brow-geometry";
import { mapFace, type SymmetricPoints } from "brow-geometry/landmarks";
import { syntheticFace } from "./synthetic-face.js";

/**
 * The synthetic face with depth, and with the relief of a whole head: 220 pairs of points and 28 on
 * the middle, exactly symmetric, about as many as a face mesh has. The surface is invented: it falls
 * back towards the sides as the modelled skin does, and carries a nose.
 */
export function syntheticHead(): Face<"mm"> {
  const face = mapFace(syntheticFace(), (point: Point<"mm">) => onHead(point[0], point[1]));
  const eyes = (depthOver(15.9, 0) + depthOver(-15.9, 0)) / 2;
  const symmetricPoints: SymmetricPoints<"mm"> = {
    pairs: grid().map(([x, y]) => ({ right: onHead(-x, y), left: onHead(x, y) })),
    middle: Array.from({ length: 28 }, (_, index) => onHead(0, 50 - 6 * index)),
  };
  return mapFace({ ...face, symmetricPoints }, (point: Point<"mm">) =>
    deepPoint(point[0], point[1], (hasDepth(point) ? point[2] : 0) - eyes),
  );
}

/** A head turned about its own upright axis, in degrees towards the client's left. */
export function turnedHead(head: Face<"mm">, yaw: number): Face<"mm"> {
  const angle = (yaw * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return mapFace(head, (point: Point<"mm">) => {
    const [x, y] = point;
    const depth = hasDepth(point) ? point[2] : 0;
    return mm([x * cosine + depth * sine, y, depth * cosine - x * sine]);
  });
}

function grid(): readonly (readonly [number, number])[] {
  return Array.from({ length: 20 }, (_, row) =>
    Array.from({ length: 11 }, (_, column) => [5 + 6 * column, 55 - 8.5 * row] as const),
  ).flat();
}

function onHead(x: number, y: number): Point<"mm"> {
  return mm([x, y, depthOver(x, y)]);
}

function depthOver(x: number, y: number): number {
  const side = -(Math.abs(x) ** 3) / 87 ** 2;
  const forehead = 8 - (y + 20) ** 2 / 1000;
  const nose = 26 * Math.exp(-((x / 11) ** 2) - ((y + 32) / 17) ** 2);
  return side + forehead + nose;
}
