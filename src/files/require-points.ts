import { refuse, requireFinite } from "../units/internal.js";
import type { PointSet } from "./point-set.js";

/**
 * Refuses points that are not finite, or flat and deep ones in one set; returns how many numbers
 * each has, or nothing where all of them are missing.
 */
export function requireFinitePoints(
  where: string,
  points: PointSet["points"],
  field: string,
): 2 | 3 | undefined {
  let size: 2 | 3 | undefined;
  points.forEach((point, index) => {
    if (point === null) return;
    const place = `${field}.points[${index}]`;
    const length: number = point.length;
    size ??= length === 3 ? 3 : 2;
    if (length !== size) {
      const need = "two numbers in every point of a set, or three in every one";
      refuse("out-of-range", where, place, point, need);
    }
    point.forEach((coordinate, axis) => {
      requireFinite(where, `${place}[${axis}]`, coordinate);
    });
  });
  return size;
}
