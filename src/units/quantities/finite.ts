import type { Point, Polyline, Unit } from "./quantity.js";
import { refuse } from "./geometry-error.js";

/**
 * Refuses a number that is NaN or infinite, naming the function and the field.
 *
 * @throws GeometryError `not-finite`
 */
export function requireFinite(where: string, field: string, value: number): void {
  if (!Number.isFinite(value)) refuse("not-finite", where, field, value, "a finite number");
}

/**
 * Refuses a number that is not finite and greater than zero.
 *
 * @throws GeometryError `not-finite`, `out-of-range`
 */
export function requirePositive(where: string, field: string, value: number): void {
  requireFinite(where, field, value);
  if (value <= 0) refuse("out-of-range", where, field, value, "more than 0");
}

/**
 * Refuses a number that is not finite, or less than the least or more than the most that is allowed.
 *
 * @throws GeometryError `not-finite`, `out-of-range`
 */
export function requireWithin(
  where: string,
  field: string,
  value: number,
  least: number,
  most: number,
): void {
  requireFinite(where, field, value);
  if (value < least || value > most) {
    refuse("out-of-range", where, field, value, `a number from ${least} to ${most}`);
  }
}

/**
 * Refuses a point with a coordinate that is missing, NaN or infinite.
 *
 * @throws GeometryError `not-finite`
 */
export function requireFinitePoint<U extends Unit>(
  where: string,
  field: string,
  point: Point<U>,
): void {
  if (!isFinitePoint(point)) {
    refuse("not-finite", where, field, point, "two or three finite numbers");
  }
}

/**
 * Refuses a line with fewer points than `atLeast`, or with a point that is not finite.
 *
 * @throws GeometryError `wrong-count`, `not-finite`
 */
export function requirePolyline<U extends Unit>(
  where: string,
  field: string,
  polyline: Polyline<U>,
  atLeast: number,
): void {
  if (!Array.isArray(polyline) || polyline.length < atLeast) {
    refuse("wrong-count", where, field, polyline, `at least ${atLeast} points`);
  }
  // Looked for first: naming every point of every line would cost more than the geometry itself.
  const index = polyline.findIndex((point) => !isFinitePoint(point));
  if (index >= 0) requireFinitePoint(where, `${field}[${index}]`, polyline[index] as Point<U>);
}

function isFinitePoint(point: unknown): boolean {
  if (!Array.isArray(point)) return false;
  const [x, y, depth = 0] = point as readonly unknown[];
  return (
    (point.length === 2 || point.length === 3) &&
    Number.isFinite(x) &&
    Number.isFinite(y) &&
    Number.isFinite(depth)
  );
}
