import { test } from "@fast-check/vitest";
import { drawPlan, faceFrame, mm, planBrows, requirePlannable, turnToFront } from "brow-geometry";
import { planOnPhoto, scaleFromIris } from "brow-geometry";
import { nearestDot, placeUnder } from "brow-geometry/drawing";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refusal } from "../../support/refusal.js";
import { faceOfMesh, frontalMesh } from "../../support/sample-faces.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { pictureOf, withClass } from "../picture.js";

const photo = requirePlannable(faceOfMesh(frontalMesh));
const scale = scaleFromIris(photo);
const plans = [
  ["upright, in millimetres", syntheticPlan],
  ["on a photo", planOnPhoto(photo, faceFrame(photo, scale))],
  ["on a photo of a turned head", planOnPhoto(photo, turnToFront(photo, scale))],
] as const;

describe.each(plans)("a place in the picture of a plan %s", (_, plan) => {
  const drawn = withClass(pictureOf(drawPlan(plan)), "dot").flatMap(({ attributes }) => {
    const { "data-side": side, "data-dot": dot, cx, cy } = attributes;
    return cx === undefined ? [] : [{ side, dot, spot: [Number(cx), Number(cy)] as const }];
  });

  it("means the dot that is drawn there", () => {
    expect(drawn.length).toBeGreaterThan(1);
    for (const { side, dot, spot } of drawn) {
      expect(nearestDot(plan, spot, 0.01)).toEqual({ side, dot });
    }
  });

  it("lies on the face where that dot does", () => {
    for (const { side, dot, spot } of drawn) {
      const [x, y] = plan.dots[side as "left"][dot as "tailEnd"];
      const [foundX, foundY] = placeUnder(plan, spot);
      expect(Math.hypot(foundX - x, foundY - y)).toBeLessThan(0.01);
    }
  });

  it("means none beyond reach", () => {
    for (const { spot } of drawn) {
      expect(nearestDot(plan, [spot[0], spot[1] - 1000], 900)).toBeUndefined();
    }
  });
});

describe("nearestDot", () => {
  const anySpot = fc.tuple(
    fc.double({ min: -80, max: 80, noNaN: true }),
    fc.double({ min: -50, max: 20, noNaN: true }),
  );

  test.prop([anySpot])("finds none that lies farther than another", (spot) => {
    const found = nearestDot(syntheticPlan, spot, 1000);
    if (found === undefined) return expect.fail("every dot is within reach");
    const awayOf = (side: "right" | "left", dot: "tailEnd"): number => {
      const [x, y] = syntheticPlan.dots[side][dot];
      return Math.hypot(x - spot[0], -y - spot[1]);
    };
    const nearest = awayOf(found.side, found.dot as "tailEnd");
    for (const side of ["right", "left"] as const) {
      for (const dot of Object.keys(syntheticPlan.dots[side])) {
        expect(awayOf(side, dot as "tailEnd")).toBeGreaterThanOrEqual(nearest);
      }
    }
    expect(nearestDot(syntheticPlan, spot, nearest * 0.999)).toBeUndefined();
  });

  it.each([
    ["spot", [Number.NaN, 0], 3],
    ["reach", [0, 0], 0],
    ["reach", [0, 0], Number.NaN],
  ] as const)("refuses a %s that is none", (field, spot, reach) => {
    expect(refusal(() => nearestDot(syntheticPlan, spot, reach)).detail.field).toBe(field);
  });
});

describe("placeUnder", () => {
  it("refuses a place that is none", () => {
    expect(refusal(() => placeUnder(syntheticPlan, [0, Infinity])).detail.field).toBe("spot");
  });
});

describe("a picture drawn around another plan", () => {
  it("holds still while a dot moves", () => {
    const dragged = planBrows(syntheticFace(), {
      pins: [{ side: "left", dot: "tailEnd", at: mm([66, 12]) }],
    });
    const still = pictureOf(drawPlan(dragged, { around: syntheticPlan })).viewBox;
    expect({ ...still, height: 0 }).toEqual({
      ...pictureOf(drawPlan(syntheticPlan)).viewBox,
      height: 0,
    });
    expect(pictureOf(drawPlan(dragged)).viewBox.width).not.toBe(still.width);
  });
});
