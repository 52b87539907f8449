import { AXES } from "./measured-inputs.js";
import { refuse } from "../quantities/geometry-error.js";
import type { DeepPoint, FlatPoint, Length, Point } from "../quantities/quantity.js";

/** A number or a point. */
export type ResultPart = number | Point<"px"> | Point<"mm">;

/**
 * What a measure may return: a number, a point, or a record of them, in which an entry may be
 * undefined.
 */
export type MeasureResult<Result> = (number | object) &
  (ResultPart | { readonly [Name in keyof Result]: ResultPart | undefined });

/** Standard uncertainty in the shape of what it belongs to; a point has one for each axis. */
export type UncertaintyOf<Result> = Result extends number
  ? Result
  : Result extends FlatPoint<infer U>
    ? readonly [x: Length<U>, y: Length<U>]
    : Result extends DeepPoint<infer U>
      ? readonly [x: Length<U>, y: Length<U>, depth: Length<U>]
      : { readonly [Name in keyof Result]: UncertaintyOf<Result[Name]> };

/** Where one number of a result stands. */
export interface Component {
  /** `"value"` for a scalar result, `x` for a point's, `front` or `arch.x` within a record. */
  readonly name: string;
  readonly entry: string | undefined;
  readonly axis: number | undefined;
}

/** The numbers that a result is made of, in order; what is undefined has none. */
export function componentsOf(result: unknown): readonly Component[] {
  if (isPart(result)) return partComponents(result, undefined);
  return Object.entries(result as Readonly<Record<string, unknown>>).flatMap(([entry, part]) =>
    isPart(part) ? partComponents(part, entry) : [],
  );
}

function isPart(value: unknown): value is number | readonly number[] {
  return typeof value === "number" || Array.isArray(value);
}

function partComponents(
  part: number | readonly number[],
  entry: string | undefined,
): readonly Component[] {
  if (typeof part === "number") return [{ name: entry ?? "value", entry, axis: undefined }];
  return part.map((_, axis) => {
    const coordinate = AXES[axis] ?? String(axis);
    return { name: entry === undefined ? coordinate : `${entry}.${coordinate}`, entry, axis };
  });
}

/** The number of a result at a component; undefined where this result has none there. */
export function componentAt(result: unknown, { name, entry, axis }: Component): number | undefined {
  const part = entry === undefined ? result : (result as Readonly<Record<string, unknown>>)[entry];
  const value = axis === undefined ? part : (part as readonly number[] | undefined)?.[axis];
  if (value === undefined) return undefined;
  if (!Number.isFinite(value)) {
    refuse("not-finite", `measure(…): ${name}`, value, "a finite number");
  }
  return value as number;
}

/** What belongs to each component, put together in the shape of the result. */
export function inShapeOf(
  result: unknown,
  components: readonly Component[],
  parts: readonly unknown[],
): unknown {
  if (typeof result === "number") return parts[0];
  if (Array.isArray(result)) return parts;
  const shape: Record<string, unknown> = Object.fromEntries(
    Object.keys(result as object).map((entry) => [entry, undefined]),
  );
  components.forEach(({ entry, axis }, index) => {
    const part = parts[index];
    if (axis === undefined) shape[entry as string] = part;
    else if (axis === 0) shape[entry as string] = [part];
    else (shape[entry as string] as unknown[]).push(part);
  });
  return shape;
}
