import { inspect } from "node:util";
import { expect } from "vitest";

/**
 * Expects every number of `actual` to lie within `tolerance` of its counterpart, through arrays,
 * typed arrays and objects; anything that is no number has to be equal. The error names the path.
 */
export function expectClose(actual: unknown, expected: unknown, tolerance: number): void {
  const difference = firstDifference(actual, expected, tolerance, "value");
  if (difference !== undefined) {
    expect.fail(`${difference} (tolerance ${String(tolerance)})`);
  }
}

function firstDifference(
  actual: unknown,
  expected: unknown,
  tolerance: number,
  path: string,
): string | undefined {
  if (typeof actual === "number" && typeof expected === "number") {
    if (Object.is(actual, expected) || Math.abs(actual - expected) <= tolerance) return undefined;
    return `${path} is ${String(actual)}, expected ${String(expected)}`;
  }
  if (isList(actual) && isList(expected)) {
    if (actual.length !== expected.length) {
      return `${path} has ${String(actual.length)} elements, expected ${String(expected.length)}`;
    }
    return firstOf(
      Array.from(expected, (_, index) => index),
      (index) =>
        firstDifference(actual[index], expected[index], tolerance, `${path}[${String(index)}]`),
    );
  }
  if (isRecord(actual) && isRecord(expected)) {
    const keys = new Set([...Object.keys(expected), ...Object.keys(actual)]);
    return firstOf([...keys], (key) =>
      firstDifference(actual[key], expected[key], tolerance, `${path}.${key}`),
    );
  }
  if (Object.is(actual, expected)) return undefined;
  return `${path} is ${inspect(actual)}, expected ${inspect(expected)}`;
}

function firstOf<Item>(
  items: readonly Item[],
  differenceAt: (item: Item) => string | undefined,
): string | undefined {
  for (const item of items) {
    const difference = differenceAt(item);
    if (difference !== undefined) return difference;
  }
  return undefined;
}

function isList(value: unknown): value is ArrayLike<unknown> {
  return Array.isArray(value) || (ArrayBuffer.isView(value) && "length" in value);
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !isList(value);
}
