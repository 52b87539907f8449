import { fc, test } from "@fast-check/vitest";
import { drawStrip } from "brow-geometry/drawing";
import { beforeAll, describe, expect, it } from "vitest";
import { isHair } from "../../../src/mapping/dots/is-hair.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { PICTURED_PLANS } from "../pictured-plans.js";
import { type Picture, pictureOf, withClass } from "../picture.js";

describe.each(PICTURED_PLANS)("the strip of a plan: %s", (_, plan) => {
  let picture: Picture;
  beforeAll(() => {
    picture = pictureOf(drawStrip(plan));
  });

  it("stays inside its view box, texts apart", () => {
    expectInside(picture);
    expectNoCollisions(picture);
  });

  it("names all four brows and writes their lengths", () => {
    const written = picture.texts.map(({ text }) => text);
    for (const side of ["right", "left"] as const) {
      const grown = isHair(plan.face, side) ? "as it grows" : "a guess";
      expect(written).toContain(`client’s ${side}, ${grown}`);
      expect(written).toContain(`client’s ${side}, as planned`);
      for (const measures of [plan.measures, plan.naturalMeasures]) {
        const { front } = measures[side];
        if (front === undefined) continue;
        const doubt = front.u < 0.05 ? "" : ` ± ${front.u.toFixed(1)}`;
        expect(written).toContain(`${front.value.toFixed(1)}${doubt} mm`);
      }
    }
  });
});

it("shows natural and planned brow side by side at the same height and scale", () => {
  const picture = pictureOf(drawStrip(syntheticPlan));
  const spots = withClass(picture, "dot")
    .filter(({ attributes }) => attributes["data-dot"] === "lowerBody")
    .map(({ attributes }) => ({
      side: attributes["data-side"],
      x: Number(attributes.cx),
      y: Number(attributes.cy),
    }));
  const right = spots.filter(({ side }) => side === "right");
  const left = spots.filter(({ side }) => side === "left");
  const column = picture.viewBox.width / 2;
  // The natural body of this face lies half-way to its arch as the planned one does, a little lower.
  expect(Math.abs((right[1]?.x ?? NaN) - (right[0]?.x ?? NaN) - column)).toBeLessThan(1);
  expect(Math.abs((left[1]?.x ?? NaN) - (left[0]?.x ?? NaN) - column)).toBeLessThan(1);
  expect(Math.abs((right[1]?.y ?? NaN) - (right[0]?.y ?? NaN))).toBeLessThan(1);
});

const plain = pictureOf(drawStrip(syntheticPlan));

test.prop([fc.string({ unit: "binary", maxLength: 60 })], { numRuns: 20 })(
  "never lets its title become markup",
  (title) => {
    const { elements } = pictureOf(drawStrip(syntheticPlan, { title }));
    expect(elements.map(({ name }) => name)).toEqual(plain.elements.map(({ name }) => name));
  },
);

it("escapes its title", () => {
  const title = `<b>"Ana" & Bo</b>`;
  const picture = pictureOf(drawStrip(syntheticPlan, { title }));
  expect(picture.root.children[0]?.text).toBe(title);
});

it("refuses a theme that there is not, by name", () => {
  expect(() => drawStrip(syntheticPlan, { theme: "sepia" as "light" })).toThrow(
    'drawStrip: theme is "sepia"; needs one of light, dark, monochrome, transparent',
  );
});
