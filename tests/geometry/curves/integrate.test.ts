import { integrate } from "../../../src/geometry/internal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

describe("an integral", () => {
  it("of a polynomial of degree 31 is exact to rounding", () => {
    expect(integrate(0, 1, (x) => 32 * x ** 31)).toBeCloseTo(1, 14);
    expect(integrate(-1, 2, (x) => 5 * x ** 4)).toBeCloseTo(33, 12);
  });

  // Arc length of a cubic Bézier in closed form: (0,0) (1/3,0) (2/3,1/3) (1,1), √5/2 + asinh(2)/4.
  it("gives the length of y = x² on 0…1", () => {
    const length = Math.sqrt(5) / 2 + Math.asinh(2) / 4;
    expect(length).toBeCloseTo(1.4789428575446, 13);
    expect(integrate(0, 1, (x) => Math.hypot(1, 2 * x))).toBeCloseTo(length, 13);
  });

  it("closes in on a kink", () => {
    expect(integrate(-1, 2, Math.abs)).toBeCloseTo(2.5, 11);
    expect(integrate(0, 1, Math.sqrt)).toBeCloseTo(2 / 3, 11);
  });

  it("settles where parts cancel, and where there is no answer", () => {
    expect(integrate(0, 2, (x) => Math.sin(Math.PI * x))).toBeCloseTo(0, 14);
    expect(integrate(0, 1, (x) => 1e-9 * Math.sin(1e6 * x) + (x < 1 / 3 ? 0 : 1))).toBeCloseTo(
      2 / 3,
      8,
    );
    expect(integrate(0, 1, () => Number.NaN)).toBeNaN();
  });

  it("changes its sign with its direction and is 0 over nothing", () => {
    fc.assert(
      fc.property(fc.double({ min: -9, max: 9, noNaN: true }), (to) => {
        expect(integrate(0, to, Math.cos)).toBeCloseTo(Math.sin(to), 11);
        expect(integrate(to, 0, Math.cos)).toBeCloseTo(-Math.sin(to), 11);
        expect(integrate(to, to, Math.cos)).toBeCloseTo(0, 15);
      }),
    );
  });
});
