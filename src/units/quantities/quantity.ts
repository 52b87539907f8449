import { refuse, refusingAs } from "./geometry-error.js";

/** Units of length the library knows: `px` in the photo, `mm` on the face. */
export type Unit = "px" | "mm";

/**
 * Compile-time tag that ties a value to a unit.
 *
 * The unit is a *key* of the tag, so a value in `px` and one in `mm` have no common type that a
 * function generic over its unit could fall back to. Nothing of it exists at run time.
 */
export interface UnitTag<U extends Unit, Kind> {
  readonly "~unit": { readonly [Name in U]: Kind };
}

/** A length in a known unit; at run time a plain number. */
export type Length<U extends Unit> = number & UnitTag<U, "length">;

/**
 * A point of the picture plane or of the face's frontal plane; at run time a pair.
 *
 * In `px`: x to the right, y **down**. In `mm`: x to the client's left, y **up**.
 */
export type FlatPoint<U extends Unit> = readonly [x: number, y: number] & UnitTag<U, "point">;

/** A point whose source also knows its depth, positive **towards the viewer**, in the same unit. */
export type DeepPoint<U extends Unit> = readonly [x: number, y: number, depth: number] &
  UnitTag<U, "point">;

/** A point with or without depth. */
export type Point<U extends Unit> = FlatPoint<U> | DeepPoint<U>;

/** Points in the order in which a line visits them. */
export type Polyline<U extends Unit> = readonly Point<U>[];

type Pair = readonly [x: number, y: number];
type Triple = readonly [x: number, y: number, depth: number];

/**
 * Marks a number, a point or a list of points as millimetres; the value itself is unchanged. Whether numbers are
 * finite is asked where they are used.
 *
 * @throws GeometryError `not-parsed` for a text or another value that is none of them: see `parseLength` for texts
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * mm(54); // → 54
 * mm([31.5, 0]); // → [31.5, 0]
 * ```
 */
export function mm(value: number): Length<"mm">;
export function mm(value: Pair): FlatPoint<"mm">;
export function mm(value: Triple): DeepPoint<"mm">;
export function mm(value: readonly Pair[]): readonly FlatPoint<"mm">[];
export function mm(value: readonly Triple[]): readonly DeepPoint<"mm">[];
export function mm(value: unknown): unknown {
  return refusingAs("mm", () => requireNumbers(value));
}

/**
 * Marks a number, a point or a list of points as pixels; the value itself is unchanged. Whether numbers are finite is
 * asked where they are used.
 *
 * @throws GeometryError `not-parsed` for a text or another value that is none of them
 *
 * @example
 * ```ts
 * import { px } from "brow-geometry";
 * px([1024, 768]); // → [1024, 768]
 * ```
 */
export function px(value: number): Length<"px">;
export function px(value: Pair): FlatPoint<"px">;
export function px(value: Triple): DeepPoint<"px">;
export function px(value: readonly Pair[]): readonly FlatPoint<"px">[];
export function px(value: readonly Triple[]): readonly DeepPoint<"px">[];
export function px(value: unknown): unknown {
  return refusingAs("px", () => requireNumbers(value));
}

function requireNumbers(value: unknown): unknown {
  return isOfNumbers(value)
    ? value
    : refuse("not-parsed", "value", value, "a number, a point or a list of points");
}

function isOfNumbers(value: unknown): boolean {
  return Array.isArray(value) ? value.every(isOfNumbers) : typeof value === "number";
}

/**
 * A length in the unit that the caller's types ask for: for code that is generic over the unit.
 *
 * @example
 * ```ts
 * import { length } from "brow-geometry/units";
 * import { type Length, type Unit } from "brow-geometry";
 * const twice = <U extends Unit>(one: Length<U>): Length<U> => length(2 * one);
 * ```
 */
export function length<U extends Unit>(value: number): Length<U> {
  return value as Length<U>;
}

/**
 * A point without depth in the unit that the caller's types ask for: for code generic over the unit.
 *
 * @example
 * ```ts
 * import { flatPoint } from "brow-geometry/units";
 * import { type FlatPoint } from "brow-geometry";
 * const corner: FlatPoint<"mm"> = flatPoint(15.9, 0); // → [15.9, 0]
 * ```
 */
export function flatPoint<U extends Unit>(x: number, y: number): FlatPoint<U> {
  return [x, y] as unknown as FlatPoint<U>;
}

/**
 * A point with depth in the unit that the caller's types ask for: for code generic over the unit.
 *
 * @example
 * ```ts
 * import { deepPoint, type DeepPoint } from "brow-geometry/units";
 * const start: DeepPoint<"mm"> = deepPoint(14, 22, 4.5); // → [14, 22, 4.5]
 * ```
 */
export function deepPoint<U extends Unit>(x: number, y: number, depth: number): DeepPoint<U> {
  return [x, y, depth] as unknown as DeepPoint<U>;
}

/**
 * Whether a point carries depth.
 *
 * @example
 * ```ts
 * import { hasDepth } from "brow-geometry/units";
 * import { mm } from "brow-geometry";
 * hasDepth(mm([14, 22, 4.5])); // → true
 * hasDepth(mm([14, 22])); // → false
 * ```
 */
export function hasDepth<U extends Unit>(point: Point<U>): point is DeepPoint<U> {
  return point.length === 3;
}
