const DEGREES_PER_RADIAN = 180 / Math.PI;

/** Radians as degrees: the library's angles are degrees throughout. */
export function toDegrees(radians: number): number {
  return radians * DEGREES_PER_RADIAN;
}

/** Degrees as radians, for the trigonometric functions. */
export function toRadians(degrees: number): number {
  return degrees / DEGREES_PER_RADIAN;
}
