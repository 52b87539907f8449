import type { Direction } from "../../geometry/index.js";
import {
  type Face,
  type LandmarkName,
  landmarkUncertainty,
  mapFace,
} from "../../landmarks/index.js";
import { deepPoint, flatPoint, hasDepth, type Point, type Unit } from "../../units/index.js";

type Moves = readonly (Direction | undefined)[];
const PARTS = ["right", "left", "midline"] as const;

export type ErrorSource = { readonly [Part in (typeof PARTS)[number]]?: Moves };

const NOTHING = { right: {}, left: {}, midline: {} };

export function errorSources<U extends Unit>(
  face: Face<U>,
  read: readonly LandmarkName[],
  unitsPerMillimetre: number,
  [alongX, alongY]: Direction,
): readonly ErrorSource[] {
  const sources: ErrorSource[] = [];
  for (const part of PARTS) {
    let count = 0;
    mapFace<U, U>({ ...NOTHING, [part]: face[part] }, (point, landmark) => {
      const index = count++;
      if (landmark === undefined || !read.includes(landmark)) return point;
      const u = landmarkUncertainty(face, landmark) * unitsPerMillimetre;
      for (const [x, y] of [
        [alongY, -alongX],
        [alongX, alongY],
      ] as const) {
        const source: (Direction | undefined)[] = [];
        source[index] = [u * x, u * y];
        sources.push({ [part]: source });
      }
      return point;
    });
  }
  return sources;
}

/** A face that errs by a source, so many standard deviations of it; a part that nothing moves stays the same object. */
export function withError<U extends Unit>(
  face: Face<U>,
  source: ErrorSource,
  times: number,
): Face<U> {
  const moved = { ...face };
  for (const part of PARTS) {
    const moves = source[part];
    if (moves === undefined) continue;
    let next = 0;
    const map = (point: Point<U>): Point<U> => {
      const move = moves[next++];
      if (move === undefined) return point;
      const x = point[0] + times * move[0];
      const y = point[1] + times * move[1];
      return hasDepth(point) ? deepPoint<U>(x, y, point[2]) : flatPoint<U>(x, y);
    };
    if (part === "midline")
      moved.midline = mapFace<U, U>({ ...NOTHING, midline: face.midline }, map).midline;
    else moved[part] = mapFace<U, U>({ ...NOTHING, right: face[part] }, map).right;
  }
  return moved;
}
