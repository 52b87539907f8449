import { mm } from "brow-geometry";
import { drawAreas } from "brow-geometry/drawing";
import type { SkinArea } from "brow-geometry/mapping";
import { expect, it } from "vitest";
import { syntheticPlan } from "../../support/synthetic-plan.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { pictureOf, withClass } from "../picture.js";

const AREAS: readonly SkinArea[] = [
  {
    name: "old <pigment>",
    aim: "cover",
    edge: mm([
      [-20, 10],
      [-34, 14],
      [-34, 22],
      [-20, 18],
    ]),
    margin: mm(0.5),
  },
  {
    name: "scar",
    aim: "stay-off",
    edge: mm([
      [46, 27],
      [49, 27],
      [53, 12],
      [50, 11],
    ]),
  },
];

it("draws every area with its key, and says what is beyond the plan", () => {
  const picture = pictureOf(drawAreas(syntheticPlan, AREAS));
  expectInside(picture);
  expectNoCollisions(picture);
  const texts = picture.texts.map(({ text }) => text);
  expect(texts.filter((text) => text === "A1")).toHaveLength(2);
  expect(texts).toContain("old <pigment>, to cover");
  expect(texts).toContain("scar, to stay off");
  expect(texts.join(" ")).toContain(
    "Whether pigment may go there is for licensed practice to judge.",
  );
  for (const word of ["area", "edge", "beyond"]) {
    expect(withClass(picture, word), word).toHaveLength(2);
  }
});

it("shades an area as far as its margin", () => {
  const [shade] = withClass(pictureOf(drawAreas(syntheticPlan, AREAS)), "area");
  // In millimetres of the face: half a millimetre to either side of the edge.
  expect(Number(shade?.children[0]?.attributes["stroke-width"])).toBe(1);
});

it("explains no hatching where there is none", () => {
  const inside: SkinArea = {
    name: "faded",
    aim: "cover",
    edge: mm([
      [30, 20],
      [36, 21],
      [36, 22],
      [30, 21],
    ]),
  };
  const picture = pictureOf(drawAreas(syntheticPlan, [inside]));
  const texts = picture.texts.map(({ text }) => text);
  expect(texts).toContain("faded: covered, its margin included.");
  expect(texts).not.toContain("sticks out of the planned brow");
});

it("refuses as the check does, by its own name", () => {
  expect(() => drawAreas(syntheticPlan, [{ name: "a", aim: "cover", edge: [] }])).toThrow(
    "drawAreas: areas[0].edge",
  );
});
