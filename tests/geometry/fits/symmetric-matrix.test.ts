import { fc, test } from "@fast-check/vitest";
import { eigenPairs } from "../../../src/geometry/internal.js";
import { type SymmetricMatrix } from "brow-geometry/geometry";
import { EigenvalueDecomposition, Matrix } from "ml-matrix";
import { describe, expect } from "vitest";
import { anyNumber } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

const entry = fc.oneof(anyNumber(1), anyNumber(1e4), fc.constant(0));
const anySymmetric: fc.Arbitrary<SymmetricMatrix> = fc.record({
  xx: entry,
  yy: entry,
  zz: entry,
  xy: entry,
  xz: entry,
  yz: entry,
});

const rowsOf = ({ xx, yy, zz, xy, xz, yz }: SymmetricMatrix): number[][] => [
  [xx, xy, xz],
  [xy, yy, yz],
  [xz, yz, zz],
];

describe("eigenPairs", () => {
  test.prop([anySymmetric])("stretch their own directions only, and come in order", (matrix) => {
    const pairs = eigenPairs(matrix);
    for (const { value, vector } of pairs) {
      const image = rowsOf(matrix).map(
        ([a = 0, b = 0, c = 0]) => a * vector[0] + b * vector[1] + c * vector[2],
      );
      expectClose(
        image,
        vector.map((part) => value * part),
        1e-9,
      );
      expectClose(Math.hypot(...vector), 1, 1e-12);
    }
    const [least, middle, greatest] = pairs.map(({ value }) => value);
    expect(least).toBeLessThanOrEqual(middle ?? Number.NaN);
    expect(middle).toBeLessThanOrEqual(greatest ?? Number.NaN);
  });

  test.prop([anySymmetric])("agree with the npm package ml-matrix", (matrix) => {
    const expected = new EigenvalueDecomposition(new Matrix(rowsOf(matrix))).realEigenvalues;
    const sorted = [...expected].sort((one, other) => one - other);
    expectClose(
      eigenPairs(matrix).map(({ value }) => value),
      sorted,
      1e-8,
    );
  });
});
