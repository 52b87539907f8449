const DEGREES_PER_RADIAN = 180 / Math.PI;

/**
 * Radians as degrees: the library's angles are degrees throughout.
 *
 * @example
 * ```ts
 * import { toDegrees } from "brow-geometry/units";
 * toDegrees(Math.PI / 6); // → 30.0000
 * ```
 */
export function toDegrees(radians: number): number {
  return radians * DEGREES_PER_RADIAN;
}

/**
 * Degrees as radians, for the trigonometric functions.
 *
 * @example
 * ```ts
 * import { toRadians } from "brow-geometry/units";
 * Math.sin(toRadians(30)); // → 0.5000
 * ```
 */
export function toRadians(degrees: number): number {
  return degrees / DEGREES_PER_RADIAN;
}
