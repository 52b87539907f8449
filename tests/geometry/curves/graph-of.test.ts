import { test } from "@fast-check/vitest";
import { mm } from "brow-geometry";
import {
  cubicsOf,
  graphOf,
  type HermiteCurve,
  hermiteAt,
  pchip,
  pointOnCubic,
  reversePath,
  straightCubic,
} from "../../../src/geometry/internal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyNumber } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

const anyPoints = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 20 }), anyNumber(10)), { minLength: 2, maxLength: 8 })
  .map((steps) => {
    let x = 0;
    return steps.map(([step, y]): readonly [number, number] => [(x += step), y]);
  });

describe("graphOf", () => {
  test.prop([anyPoints])("is the way back from a curve to its cubics, run either way", (points) => {
    const curve = pchip(points);
    const path = cubicsOf<"mm">(curve);
    for (const run of [path, reversePath(path)]) {
      const graph = graphOf(run) as HermiteCurve;
      expect(graph.map(({ x }) => x)).toEqual(curve.map(({ x }) => x));
      for (const cubic of path) {
        const [x, y] = pointOnCubic(cubic, 0.3);
        expectClose(hermiteAt(graph, x), y, 1e-9);
      }
    }
  });

  it("is nothing where a path turns back, has a gap, stands upright or goes unevenly", () => {
    const [here, there, far] = [mm([0, 0]), mm([4, 1]), mm([9, 0])];
    expect(graphOf([straightCubic(here, far), straightCubic(far, there)])).toBeUndefined();
    expect(graphOf([straightCubic(here, there), straightCubic(mm([4, 2]), far)])).toBeUndefined();
    expect(graphOf([straightCubic(there, mm([4, 5]))])).toBeUndefined();
    expect(graphOf([[here, mm([3, 0]), mm([3.5, 1]), there]])).toBeUndefined();
    expect(graphOf([])).toBeUndefined();
  });
});
