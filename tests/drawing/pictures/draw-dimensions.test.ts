import type { BrowPlan } from "brow-geometry";
import { drawDimensions } from "brow-geometry/drawing";
import { describe, expect, it } from "vitest";
import { syntheticPlan } from "../../support/synthetic-plan.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { PICTURED_PLANS } from "../pictured-plans.js";
import { pathSpots, type Picture, pictureOf, withClass } from "../picture.js";

const NAMES = [
  ...(["startHeight", "archHeight", "tailHeight"] as const),
  ...(["startThickness", "bodyThickness", "archThickness"] as const),
];

/** What is written of a length: to a tenth, ± where that shows. */
function writtenOf({ measures }: BrowPlan): readonly string[] {
  return (["right", "left"] as const).flatMap((side) =>
    NAMES.flatMap((name) => {
      const { value, u } = measures[side][name] ?? { value: NaN, u: NaN };
      return `${value.toFixed(1)}${u < 0.05 ? "" : ` ± ${u.toFixed(1)}`} mm`.replace("-", "−");
    }),
  );
}

/** The lines of a picture that are read as lengths, each as its own stroke and those across its ends. */
function linesOf(picture: Picture): readonly (readonly ReturnType<typeof pathSpots>[])[] {
  return withClass(picture, "length").map(({ children }) =>
    (children.at(-1)?.children ?? []).map(({ attributes }) => pathSpots(attributes.d ?? "")),
  );
}

describe.each(PICTURED_PLANS)("dimensions: %s", (_, plan) => {
  const picture = pictureOf(drawDimensions(plan));

  it("stay inside their frame, texts apart", () => {
    expectInside(picture);
    expectNoCollisions(picture);
  });

  it("are all written, each with its uncertainty", () => {
    const texts = picture.texts.map(({ text }) => text);
    for (const written of writtenOf(plan)) expect(texts).toContain(written);
  });
});

describe("the lines of dimensions", () => {
  const picture = pictureOf(drawDimensions(syntheticPlan));

  it("are as long as what they say, both ends marked across", () => {
    const lines = linesOf(picture);
    expect(lines).toHaveLength(2 * NAMES.length);
    const lengths = lines.map(([line = []]) =>
      Math.abs((line[0]?.[1] ?? NaN) - (line[1]?.[1] ?? NaN)),
    );
    const { measures } = syntheticPlan;
    const read = (["right", "left"] as const).flatMap((side) =>
      NAMES.map((name) => measures[side][name]?.value ?? NaN),
    );
    for (const [index, value] of read.entries()) expect(lengths[index]).toBeCloseTo(value, 2);
    for (const [line = [], ...ends] of lines) {
      expect(ends.map((end) => end[0]?.[1])).toEqual(line.map(([, y]) => y));
      for (const end of ends)
        expect(Math.abs((end[0]?.[0] ?? 0) - (end[1]?.[0] ?? 0))).toBeGreaterThan(1);
    }
  });
});
