import { describe, expect, it } from "vitest";
import { expectClose } from "./close.js";

describe("expectClose", () => {
  it("accepts numbers within the tolerance, however deep they lie", () => {
    expectClose(1.05, 1, 0.1);
    expectClose({ dots: [[1.05, 2]], name: "start" }, { dots: [[1, 2]], name: "start" }, 0.1);
    expectClose(new Float64Array([1.05, Number.NaN]), [1, Number.NaN], 0.1);
    expectClose(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 0.1);
  });

  it.each([
    [
      "a number too far off",
      { arch: [1, 2.2] },
      { arch: [1, 2] },
      "value.arch[1] is 2.2, expected 2",
    ],
    ["NaN", Number.NaN, 1, "value is NaN, expected 1"],
    ["a missing key", { a: 1 }, { a: 1, b: 2 }, "value.b is undefined, expected 2"],
    ["a key too many", { a: 1, b: 2 }, { a: 1 }, "value.b is 2, expected undefined"],
    ["another length", [1, 2], [1], "value has 2 elements, expected 1"],
    ["another text", { side: "left" }, { side: "right" }, "value.side is 'left', expected 'right'"],
    ["an object for a number", [[1]], [1], "value[0] is [ 1 ], expected 1"],
  ])("refuses %s and names the path", (_, actual, expected, message) => {
    expect(() => {
      expectClose(actual, expected, 0.1);
    }).toThrow(message);
  });
});
