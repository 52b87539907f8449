import { checkDrawn, checkReadings, measured, planBrows, say } from "brow-geometry";
import { drawSheet } from "brow-geometry/drawing";
import { correctionsOf } from "brow-geometry/mapping";
import { placeOnSide, pointOnSide } from "brow-geometry/symmetry";
import { describe, expect, it } from "vitest";
import { correctionOf } from "../../../src/mapping/drawn/correction.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";

const { measures } = syntheticPlan;

/** The plan's own readings, with some of the left side replaced. */
function sheet(left: Readonly<Record<string, number>>): Parameters<typeof checkReadings>[0] {
  const exact = (values: typeof measures.left): typeof measures.left =>
    Object.fromEntries(
      Object.entries(values).map(([name, { value }]) => [name, measured(value, 0.1)]),
    );
  const more = Object.fromEntries(
    Object.entries(left).map(([name, by]) => {
      const planned = measures.left[name as keyof typeof measures.left]?.value ?? 0;
      return [name, measured(planned + by, 0.1)];
    }),
  );
  return {
    right: exact(measures.right),
    left: { ...exact(measures.left), ...more },
    ...(measures.startToStart === undefined
      ? {}
      : { startToStart: measured(measures.startToStart.value + (left.between ?? 0), 0.1) }),
  };
}

const said = (left: Readonly<Record<string, number>>): readonly string[] => {
  const checked = checkReadings(sheet({}), sheet(left));
  return correctionsOf({ measures: checked }).map((one) => say(one));
};

describe("corrections", () => {
  it("are none where nothing is off", () => {
    expect(said({})).toEqual([]);
  });

  it("tell a front that is too long by ruler, by tape and on the photo once", () => {
    const left = { front: 3, frontAlong: 3, frontOnPhoto: 3, frontShare: 0.5 };
    const checked = checkReadings(sheet({}), sheet(left));
    expect(checked.flatMap((one) => correctionOf(one) ?? [])).toHaveLength(4);
    expect(said(left)).toEqual(["left front: 3 mm too long"]);
  });

  it("tell a tail end that lies too far out by its place, and no length that goes back with it", () => {
    const left = { tailDistance: 2, tail: 2, tailAlong: 2, exocanthionToTailEnd: 2 };
    expect(said(left)).toHaveLength(1);
    expect(said(left)[0]).toContain("tail end from the midline");
  });

  it("tell a start by its distance from the midline, not from the other start too", () => {
    expect(said({ startDistance: -2, between: -2 })).toHaveLength(1);
    expect(said({ between: -2 })).toHaveLength(1);
  });

  it("tell what only a tape shows", () => {
    expect(said({ frontAlong: 3 })).toEqual(["left front by tape: 3 mm too long"]);
  });

  it("tell two faults of one side both", () => {
    expect(said({ archHeight: 3, tailHeight: -3, tail: 4 })).toHaveLength(2);
  });

  it("tell no measure of a side on which a dot says as much", () => {
    const place = placeOnSide(syntheticPlan.dots.left.tailEnd, "left");
    const tailEnd = pointOnSide({ ...place, distance: place.distance + 4 }, "left");
    const dots = { right: {}, left: { ...syntheticPlan.dots.left, tailEnd } };
    const check = checkDrawn(syntheticPlan, { dots });
    expect(check.measures.flatMap((one) => correctionOf(one) ?? []).length).toBeGreaterThan(1);
    expect(correctionsOf(check).map(({ code }) => code)).toEqual(["dot-moves"]);
  });

  it("stand on a sheet in their order, each with its number", () => {
    const readings = sheet({ front: 3, frontAlong: 3 });
    const check = checkDrawn(planBrows(syntheticPlan.face), { readings });
    const printed = drawSheet(syntheticPlan, { check });
    expect(printed).toContain(">C1<");
    expect(printed).not.toContain(">C2<");
  });
});
