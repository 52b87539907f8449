import { test } from "@fast-check/vitest";
import {
  completeDots,
  naturalOutline,
  outlineArea,
  overlapOutlines,
} from "brow-geometry/proportions";
import { mapOutline } from "../../src/proportions/internal.js";
import { mm, naturalDots, outline } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyBetween, anyBrow } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";

const plan = outline(
  completeDots({ upperStart: mm([15, 20]), upperArch: mm([45, 26]), tailEnd: mm([60, 18]) }),
);

describe("overlapOutlines", () => {
  it("finds nothing to do where hair and plan are one", () => {
    expectClose(
      overlapOutlines(plan, plan),
      { shared: outlineArea(plan), hairOutside: 0, skinInside: 0 },
      1e-9,
    );
  });

  it("finds nothing shared where they lie apart", () => {
    const far = mapOutline(plan, ([x, y]) => mm([x, y + 40]));
    const area = outlineArea(plan);
    expectClose(
      overlapOutlines(far, plan),
      { shared: 0, hairOutside: area, skinInside: area },
      1e-9,
    );
  });

  it("raised by d, lays bare d times its width on either side", () => {
    // Where both borders are graphs, a rise of d less than the thickness swaps ∫ d dx.
    const raised = mapOutline(plan, ([x, y]) => mm([x, y + 0.5]));
    const { hairOutside, skinInside } = overlapOutlines(raised, plan);
    expectClose(hairOutside, skinInside, 1e-6);
    // All of the 45 mm but the stretch at the tail where the brow is thinner than the rise.
    expect(hairOutside).toBeGreaterThan(0.5 * 43);
    expect(hairOutside).toBeLessThan(0.5 * 45);
  });

  it.each([0, Number.NaN])("refuses an error of %s", (error) => {
    expect(refusal(() => overlapOutlines(plan, plan, mm(error))).detail.field).toBe("error");
  });

  test.prop([anyBrow(), anyBetween(-3, 3)])("divides both areas", (brow, lift) => {
    const { dots } = naturalDots(brow);
    if (dots.upperArch === undefined) return;
    const drawn = outline(completeDots({ ...dots, upperArch: dots.upperArch }));
    const planned = mapOutline(drawn, ([x, y]) => mm([x, y + lift]));
    const natural = naturalOutline(brow);
    const { shared, hairOutside, skinInside } = overlapOutlines(planned, natural);
    expectClose(shared + hairOutside, outlineArea(natural), 1e-9);
    expectClose(shared + skinInside, outlineArea(planned), 1e-9);
    for (const area of [shared, hairOutside, skinInside]) expect(area).toBeGreaterThan(-1e-9);
  });
});
