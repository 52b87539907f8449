import { deepPoint, hasDepth } from "brow-geometry/units";
import { type Face, mm, type Point } from "brow-geometry";
import { mapFace, type SymmetricPoints } from "brow-geometry/landmarks";
import { syntheticFace } from "./synthetic-face.js";

/**
 * The synthetic face with depth, and with the relief of a whole head: 220 pairs of points and 28 on
 * the middle, exactly symmetric, about as many as a face mesh has. The surface is invented: it falls
 * back towards the sides as the modelled skin does, and carries a nose. It looks straight ahead: its mouth
 * corners are as far ahead of its outer eye corners as on the canonical face mesh.
 */
export function syntheticHead(): Face<"mm"> {
  const flat = syntheticFace();
  const [eyeX, eyeY] = flat.left.exocanthion;
  const face = mapFace(flat, (point: Point<"mm">, landmark) =>
    landmark === "cheilion"
      ? mm([point[0], point[1], depthOver(eyeX, eyeY) + (eyeY - point[1]) * UPRIGHT_LEAN])
      : onHead(point[0], point[1]),
  );
  const eyes = (depthOver(15.9, 0) + depthOver(-15.9, 0)) / 2;
  const symmetricPoints: SymmetricPoints<"mm"> = {
    pairs: grid().map(([x, y]) => ({ right: onHead(-x, y), left: onHead(x, y) })),
    middle: Array.from({ length: 28 }, (_, index) => onHead(0, 50 - 6 * index)),
  };
  return mapFace({ ...face, symmetricPoints }, (point: Point<"mm">) =>
    deepPoint(point[0], point[1], (hasDepth(point) ? point[2] : 0) - eyes),
  );
}

/** Ahead over below, outer eye corners to mouth corners, on the canonical face mesh: see `PROFILE_LEAN`. */
const UPRIGHT_LEAN = Math.tan((9.03 * Math.PI) / 180);

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

/** A head whose chin is raised by so many degrees, about the middle of its inner eye corners. */
export function raisedHead(head: Face<"mm">, pitch: number): Face<"mm"> {
  const angle = (pitch * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return mapFace(head, (point: Point<"mm">) => {
    const [x, y] = point;
    const depth = hasDepth(point) ? point[2] : 0;
    return mm([x, y * cosine + depth * sine, depth * cosine - y * sine]);
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
