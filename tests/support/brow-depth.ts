import { type Face, mm, type Point } from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { mapFace } from "brow-geometry/landmarks";

/**
 * Upper edge of the left brow of the canonical face mesh, from start to tail, vertices 336, 296,
 * 334, 293, 300, in millimetres with depth towards the viewer; and its outer eye corner. Source: the
 * open canonical face model of 468 vertices (Apache-2.0).
 */
export const CANONICAL_UPPER: readonly (readonly [number, number, number])[] = [
  [14.0, 50.1, 53.2],
  [27.6, 51.0, 50.2],
  [39.9, 51.1, 44.7],
  [49.9, 48.0, 37.5],
  [57.2, 42.5, 28.3],
];
export const CANONICAL_EXOCANTHION: readonly [number, number, number] = [44.45, 26.6, 31.7];

/** The canonical face mesh as far as its skin goes: both upper borders and the outer eye corners. */
export function canonicalFace(): Face<"mm"> {
  const sideOf = (sign: 1 | -1): Face<"mm">["left"] => ({
    exocanthion: mm([
      sign * CANONICAL_EXOCANTHION[0],
      CANONICAL_EXOCANTHION[1],
      CANONICAL_EXOCANTHION[2],
    ]),
    brow: { upper: CANONICAL_UPPER.map(([x, y, z]) => mm([sign * x, y, z])) },
  });
  return { right: sideOf(-1), left: sideOf(1), midline: {} };
}

/** The same face as a photo sees it. */
export function withoutDepth(face: Face<"mm">): Face<"mm"> {
  return mapFace(face, (point: Point<"mm">) => flatPoint(point[0], point[1]));
}
