import { fc, test } from "@fast-check/vitest";
import {
  compareSides,
  type FaceMeasures,
  type Measured,
  measured,
  NOTICED_BY_CLIENTS,
  NOTICED_BY_OTHERS,
  type SideMeasures,
  WORKING_TOLERANCES,
} from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";

const anyReading: fc.Arbitrary<Measured> = fc
  .tuple(fc.double({ min: 0, max: 60, noNaN: true }), fc.double({ min: 0, max: 2, noNaN: true }))
  .map(([value, u]) => measured(value, u));

const anySide: fc.Arbitrary<SideMeasures<Measured>> = fc.record(
  {
    front: anyReading,
    frontShare: anyReading,
    archHeight: anyReading,
    bodyThickness: anyReading,
    frontInclination: anyReading,
  },
  { requiredKeys: [] },
);

const anyMeasures: fc.Arbitrary<FaceMeasures<Measured>> = fc.record({
  right: anySide,
  left: anySide,
});

describe("compareSides", () => {
  it("subtracts right from left and adds independent uncertainties in squares", () => {
    const { differences, tolerances } = compareSides({
      right: { front: measured(33, 0.3) },
      left: { front: measured(32, 0.4) },
    });
    expect(tolerances).toBe(WORKING_TOLERANCES);
    expect(differences).toHaveLength(1);
    expectClose(differences[0]?.difference, { value: -1, u: 0.5 }, 1e-12);
  });

  it("decides lengths by 1 mm, thickness by 0.5 mm, front share by 0.03, angles and areas not", () => {
    const sharp = (value: number): Measured => measured(value, 0.001);
    const { differences } = compareSides({
      right: {
        archHeight: sharp(0),
        bodyThickness: sharp(0),
        frontShare: sharp(0),
        frontInclination: sharp(0),
        area: sharp(0),
      },
      left: {
        archHeight: sharp(0.9),
        bodyThickness: sharp(0.9),
        frontShare: sharp(0.04),
        frontInclination: sharp(9),
        area: sharp(9),
      },
    });
    expect(
      Object.fromEntries(differences.map(({ measure, decision }) => [measure, decision?.outcome])),
    ).toEqual({
      frontShare: "outside",
      archHeight: "within",
      bodyThickness: "outside",
      frontInclination: undefined,
      area: undefined,
    });
  });

  it("tells how much more one brow slopes than the other", () => {
    const { differences } = compareSides({
      right: { browInclination: measured(-2, 0.6) },
      left: { browInclination: measured(1, 0.8) },
    });
    expect(differences).toHaveLength(1);
    expect(differences[0]?.measure).toBe("browInclination");
    expectClose(differences[0]?.difference, { value: 3, u: 1 }, 1e-12);
  });

  it("asks what clients and what others would notice", () => {
    const measures = {
      right: { archHeight: measured(20, 0.1), bodyThickness: measured(6, 0.1) },
      left: { archHeight: measured(22.7, 0.1), bodyThickness: measured(8, 0.1) },
    };
    const outcomes = (tolerances: typeof NOTICED_BY_CLIENTS | typeof NOTICED_BY_OTHERS): unknown =>
      compareSides(measures, { tolerances }).differences.map(({ decision }) => decision?.outcome);
    expect(outcomes(NOTICED_BY_CLIENTS)).toEqual(["outside", undefined]);
    expect(outcomes(NOTICED_BY_OTHERS)).toEqual(["within", undefined]);
  });

  it("is left undecided by detector landmarks, decided by the simple rule", () => {
    const measures = {
      right: { startHeight: measured(20, 1.2) },
      left: { startHeight: measured(20.5, 1.2) },
    };
    expect(compareSides(measures).differences[0]?.decision?.outcome).toBe("undecided");
    expect(compareSides(measures, { rule: "simple" }).differences[0]?.decision?.outcome).toBe(
      "within",
    );
  });

  it("takes differences whose uncertainty is known", () => {
    const measures = {
      right: { startHeight: measured(20, 1) },
      left: { startHeight: measured(20.5, 1) },
    };
    const given = { startHeight: measured(0.5, 0.1) };
    expect(compareSides(measures, { differences: given }).differences[0]).toMatchObject({
      difference: given.startHeight,
      decision: { outcome: "within", u: 0.1 },
    });
  });

  test.prop([anyMeasures])("swapping the sides flips signs only", ({ right, left }) => {
    const straight = compareSides({ right, left }).differences;
    const swapped = compareSides({ right: left, left: right }).differences;
    expectClose(
      swapped.map(({ measure, difference: { value, u }, decision }) => [
        measure,
        0 - value,
        u,
        decision?.outcome,
      ]),
      straight.map(({ measure, difference: { value, u }, decision }) => [
        measure,
        value,
        u,
        decision?.outcome,
      ]),
      1e-12,
    );
  });

  test.prop([anySide])("says nothing about equal sides", (side) => {
    for (const { difference } of compareSides({ right: side, left: side }).differences) {
      expect(difference.value).toBe(0);
    }
  });

  test.prop([anyMeasures])("compares what both sides have, and nothing else", ({ right, left }) => {
    const both = Object.keys(right).filter((name) => name in left);
    const names = compareSides({ right, left }).differences.map(({ measure }) => measure);
    expect([...names].sort()).toEqual(both.sort());
  });
});
