import type { Point, Polyline, Unit } from "./quantity.js";
import { refuse } from "./geometry-error.js";

export function requireFinite(field: string, value: number): void {
  if (!Number.isFinite(value)) refuse("not-finite", field, value, "a finite number");
}

export function requirePositive(field: string, value: number): void {
  requireFinite(field, value);
  if (value <= 0) refuse("out-of-range", field, value, "more than 0");
}

export function requireWithin(field: string, value: number, least: number, most: number): void {
  requireFinite(field, value);
  if (value < least || value > most) {
    refuse("out-of-range", field, value, `a number from ${least} to ${most}`);
  }
}

export function requireFinitePoint<U extends Unit>(field: string, point: Point<U>): void {
  if (!isFinitePoint(point)) {
    refuse("not-finite", field, point, "two or three finite numbers");
  }
}

export function requirePolyline<U extends Unit>(
  field: string,
  polyline: Polyline<U>,
  atLeast: number,
): void {
  if (!Array.isArray(polyline) || polyline.length < atLeast) {
    refuse("wrong-count", field, polyline, `at least ${atLeast} points`);
  }
  // Looked for first: naming every point of every line would cost more than the geometry itself.
  const index = polyline.findIndex((point) => !isFinitePoint(point));
  if (index >= 0) requireFinitePoint(`${field}[${index}]`, polyline[index] as Point<U>);
}

function isFinitePoint(point: unknown): boolean {
  if (!Array.isArray(point)) return false;
  return (point.length === 2 || point.length === 3) && point.every(Number.isFinite);
}

export function requireObject(field: string, value: unknown, need: string): void {
  if (typeof value === "object" && value !== null) return;
  refuse("not-parsed", field, value, need);
}

/** Refuses an answer that is neither yes nor no; what was left out passes. */
export function requireFlag(field: string, value: unknown): void {
  if (value === undefined || typeof value === "boolean") return;
  refuse("not-parsed", field, value, "true or false");
}

/** Refuses a word of no list, which programs in JavaScript can pass; what was left out passes. */
export function requireWord(
  field: string,
  value: string | undefined,
  words: readonly string[],
): void {
  if (value === undefined || words.includes(value)) return;
  refuse("out-of-range", field, value, `one of ${words.join(", ")}`);
}

/**
 * Refuses what has another name than those that are known, which would be ignored without a word: a misspelt
 * option. The names that share most with it come first.
 */
export function requireNames<Given extends object>(
  field: string,
  given: Given,
  names: readonly (keyof Given & string)[],
): void {
  requireObject(field, given, "an object");
  const known: readonly string[] = names;
  for (const [name, value] of Object.entries(given)) {
    if (known.includes(name)) continue;
    const likeness = (other: string): number =>
      Array.from(name, (_, at) => other.includes(name.slice(at, at + 2))).filter(Boolean).length;
    const near = [...known].sort((one, other) => likeness(other) - likeness(one));
    refuse("out-of-range", `${field}.${name}`, value, `another name: one of ${near.join(", ")}`);
  }
}
