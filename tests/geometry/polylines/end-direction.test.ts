import { fc, test } from "@fast-check/vitest";
import { mm, type Polyline } from "brow-geometry";
import { densify, intersectPolyline, lineAlong } from "brow-geometry/geometry";
import { describe, expect, it } from "vitest";
import { endDirection } from "../../../src/geometry/polylines/end-direction.js";
import { heightOver } from "../../../src/geometry/internal.js";
import { expectClose } from "../../support/close.js";
import { anyPolyline } from "../../support/arbitraries.js";

describe("endDirection", () => {
  const bend = mm([
    [-3, 0],
    [0, 0],
    [3, 3],
  ]);

  it("is that of the last leg where nothing shorter is asked for", () => {
    expectClose(endDirection(bend, 0), [Math.SQRT1_2, Math.SQRT1_2], 1e-12);
    expectClose(endDirection(bend, mm(4)), [Math.SQRT1_2, Math.SQRT1_2], 1e-12);
  });

  it("fits a line through the end to the whole stretch: half of it along one leg, half along another", () => {
    // From the end inwards 1 mm up, then 1 mm across: by hand ∫ s·y = 1/3 + 3/2, ∫ s·x = 5/6.
    const corner = mm([
      [9, -1],
      [0, -1],
      [0, 0],
    ]);
    const size = Math.hypot(11 / 6, 5 / 6);
    expectClose(endDirection(corner, mm(2)), [-5 / 6 / size, 11 / 6 / size], 1e-12);
  });

  it("has none where no two points differ", () => {
    expect(endDirection(mm([[1, 1]]), mm(5))).toBeUndefined();
    expect(endDirection<"mm">([], mm(5))).toBeUndefined();
  });

  test.prop([anyPolyline<"mm">(100), fc.double({ min: 0.1, max: 50, noNaN: true })])(
    "does not depend on points added on the legs",
    (polyline, step) => {
      const dense = densify(polyline, mm(step));
      // A leg is never shorter than itself cut into pieces.
      const last = Math.hypot(
        (polyline.at(-1)?.[0] ?? 0) - (polyline.at(-2)?.[0] ?? 0),
        (polyline.at(-1)?.[1] ?? 0) - (polyline.at(-2)?.[1] ?? 0),
      );
      fc.pre(last > 1e-3);
      expectClose(endDirection(dense, mm(last)), endDirection(polyline, mm(last)), 1e-6);
    },
  );
});

describe("a border drawn freehand", () => {
  /** Points 0.4 mm apart on a line that falls by 1 in 4, each off by 0.26 mm across it. */
  const jittering = (jitter: readonly number[]): Polyline<"mm"> =>
    jitter.map((off, index) => mm([20 + 0.4 * index, 20 - 0.1 * index + 0.26 * off]));
  const anyJitter = fc.array(fc.constantFrom(-1, 1), { minLength: 60, maxLength: 60 });

  test.prop([anyJitter])("goes on as it ran, not as its last two points stand", (jitter) => {
    const border = jittering(jitter);
    // 3 mm past either end; a single leg would be up to 3.9 mm off.
    for (const [x, y] of [
      [17, 20.75],
      [46.6, 13.35],
    ] as const) {
      const met = heightOver(mm(x), border, mm(5)) ?? Number.NaN;
      expect(Math.abs(met - y)).toBeLessThan(1.2);
      const [place] = intersectPolyline(lineAlong(mm([x, 0]), [0, 1]), border, mm(5));
      expectClose(place?.at, [x, met], 1e-9);
      expect(place?.extended).toBe(true);
    }
  });
});
