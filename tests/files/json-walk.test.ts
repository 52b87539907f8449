import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { walkJson } from "../../src/files/json-walk.js";

const SIGNS = Array.from('{}[],:"\\ae1-.0 \n\t');

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe("a walk through JSON", () => {
  it("goes through every value that JSON.stringify writes, and knows the way to each", () => {
    fc.assert(
      fc.property(
        fc.jsonValue({ maxDepth: 4 }),
        fc.integer({ min: 0, max: 3 }),
        (value, indent) => {
          const text = JSON.stringify(value, null, indent);
          expect(walkJson(text)).toBeUndefined();
        },
      ),
    );
    const stops: string[] = [];
    walkJson(' {"a": [1, {"b": "x"}], "c d": null}', (path, offset) =>
      stops.push(`${path}@${offset}`),
    );
    expect(stops).toEqual(["@1", "a@7", "a[0]@8", "a[1]@11", "a[1].b@17", "c d@31"]);
  });

  it("stops exactly where JSON.parse would not go on, on any text", () => {
    fc.assert(
      fc.property(
        fc.string({
          unit: fc.constantFrom(...SIGNS, "null", "true", '"k"'),
          maxLength: 30,
        }),
        (text) => {
          expect(walkJson(text) === undefined).toBe(isJson(text));
        },
      ),
      { numRuns: 3000 },
    );
  });

  it("stops at the first character that is wrong", () => {
    for (const [text, offset] of [
      ["", 0],
      ["  ", 2],
      ["[1 2]", 3],
      ['{"a" 1}', 5],
      ['{"a":1,}', 7],
      ["[1,]", 3],
      ["{1:2}", 1],
      ["[01]", 2],
      ['"\u0001"', 0],
      ["[1]]", 3],
      ["[}", 1],
    ] as const) {
      expect(walkJson(text)).toBe(offset);
    }
  });
});
