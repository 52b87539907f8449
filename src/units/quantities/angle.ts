const DEGREES_PER_RADIAN = 180 / Math.PI;

export function toDegrees(radians: number): number {
  return radians * DEGREES_PER_RADIAN;
}

export function toRadians(degrees: number): number {
  return degrees / DEGREES_PER_RADIAN;
}
