import { test } from "@fast-check/vitest";
import {
  type BrowPlan,
  checkDrawn,
  type Choices,
  type DrawnCheck,
  drawPlan,
  eachSide,
  measured,
  mm,
  type Pin,
  planBrows,
  planDots,
  planOverlap,
} from "brow-geometry";
import { drawSheet } from "brow-geometry/drawing";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allElements } from "../support/parse-xml.js";
import { syntheticFace } from "../support/synthetic-face.js";
import { syntheticPlan } from "../support/synthetic-plan.js";
import { expectInside, expectNoCollisions } from "./expect-tidy.js";
import { PICTURED_PLANS } from "./pictured-plans.js";
import { linesOf, pathSpots, type Picture, pictureOf, picturesOf, withClass } from "./picture.js";

const plan = syntheticPlan;

/** What an unsteady hand makes of a plan: so far outward and up, dot by dot. */
const SLIPS = {
  upperStart: [0.1, 2.2],
  upperArch: [2.4, -0.3],
  tailEnd: [-0.4, 0.9],
  lowerStart: [0.8, 0.2],
  lowerBody: [0, -2.1],
} as const;

function drawn(of: BrowPlan): DrawnCheck {
  return checkDrawn(of, {
    dots: eachSide((side) => {
      const sign = side === "left" ? 1 : -1;
      const dots = Object.entries(SLIPS) as [keyof typeof SLIPS, readonly [number, number]][];
      return Object.fromEntries(
        dots.map(([dot, [outward, up]]) => {
          const [x, y] = of.dots[side][dot];
          return [dot, mm([x + sign * outward, y + up])];
        }),
      );
    }),
  });
}

const wordsOf = (pictures: readonly Picture[]): string =>
  pictures.flatMap(({ texts }) => texts.map(({ text }) => text)).join(" ");

describe.each(PICTURED_PLANS)("overlap and check in pictures of a plan: %s", (_, shown) => {
  const check = drawn(shown);

  it.each([
    ["overlap", { overlap: true }],
    ["check", { check }],
    ["both, in the dark", { overlap: true, check, theme: "dark" }],
  ] as const)("%s: stays inside, texts apart", (_name, options) => {
    const picture = pictureOf(drawPlan(shown, options));
    expectInside(picture);
    expectNoCollisions(picture);
  });

  it("stays on paper, texts apart", () => {
    for (const picture of picturesOf(drawSheet(shown, { overlap: true, check, paper: "letter" }))) {
      expectInside(picture);
      expectNoCollisions(picture);
    }
  });
});

describe("the overlap of a plan in its picture", () => {
  it("is hatched two ways, as far as it is told by area", () => {
    const areas = planOverlap(plan);
    const picture = pictureOf(drawPlan(plan, { overlap: true }));
    for (const [role, area] of [
      ["remove", areas.left?.hairOutside],
      ["fill", areas.left?.skinInside],
    ] as const) {
      const [group] = withClass(picture, role).filter(({ attributes }) =>
        attributes.class?.endsWith("left"),
      );
      const spots = pathSpots(group?.children[0]?.children[0]?.attributes.d ?? "");
      let length = 0;
      for (let index = 0; index + 1 < spots.length; index += 2) {
        const [[x, y], [toX, toY]] = spots.slice(index, index + 2) as [
          (typeof spots)[number],
          (typeof spots)[number],
        ];
        length += Math.hypot(toX - x, toY - y);
      }
      // Strokes are 1.1 steps apart, slivers are left out: half of a small surface may be lost.
      expect(length * 1.1).toBeGreaterThan(0.4 * (area ?? 0));
      expect(length * 1.1).toBeLessThan(1.3 * (area ?? 0) + 5);
    }
  });

  it("says square millimetres, and when they are not known", () => {
    const { right, left } = planOverlap(plan);
    const words = wordsOf([pictureOf(drawPlan(plan, { overlap: true }))]);
    const said = (one = NaN, other = NaN): string =>
      `right ${one.toFixed(0)}, left ${other.toFixed(0)}`;
    expect(words).toContain(said(right?.hairOutside, left?.hairOutside));
    expect(words).toContain(said(right?.skinInside, left?.skinInside));
    const face = syntheticFace();
    const bare = planBrows({
      ...face,
      left: { ...face.left, brow: { upper: face.left.brow.upper } },
    });
    expect(wordsOf([pictureOf(drawPlan(bare, { overlap: true }))])).toContain("left not known");
  });

  it("is left out where nobody asks", () => {
    const picture = pictureOf(drawPlan(plan));
    expect([...withClass(picture, "remove"), ...withClass(picture, "fill")]).toEqual([]);
  });

  it("differs without colour, by lean and dashes", () => {
    const picture = pictureOf(drawPlan(plan, { overlap: true, theme: "monochrome" }));
    const [remove, fill] = ["remove", "fill"].map(
      (role) => withClass(picture, role)[0]?.children[0],
    );
    expect(remove?.attributes["stroke-dasharray"]).toBeUndefined();
    expect(fill?.attributes["stroke-dasharray"]).toBeDefined();
  });
});

describe("the check of what was drawn in a picture", () => {
  const check = drawn(plan);
  const picture = pictureOf(drawPlan(plan, { check }));

  it("dots every drawn dot where it was drawn", () => {
    const dots = withClass(picture, "drawn");
    expect(dots).toHaveLength(10);
    const arch = dots.find(
      ({ attributes }) =>
        attributes["data-side"] === "left" && attributes["data-dot"] === "upperArch",
    );
    const parts = arch === undefined ? [] : allElements(arch);
    const spots = parts.flatMap(({ attributes: { d } }) => (d === undefined ? [] : pathSpots(d)));
    const [x, y] = [0, 1].map(
      (axis) => spots.reduce((sum, spot) => sum + (spot[axis] ?? NaN), 0) / spots.length,
    ) as [number, number];
    expect(x).toBeCloseTo(plan.dots.left.upperArch[0] + 2.4, 2);
    expect(y).toBeCloseTo(-(plan.dots.left.upperArch[1] - 0.3), 2);
  });

  it("leads back from what is outside, and says by how much", () => {
    expect(withClass(picture, "correction")).toHaveLength(6);
    const words = wordsOf([picture]);
    expect(words).toContain("C1 right start: down 2 mm");
    expect(words).toContain("C6 left lower body: up 2 mm");
    expect(words).toContain("the check says: outside");
  });

  it("puts a question mark where nobody knows yet", () => {
    // The lower start lies 0.8 mm outward, the tail end 0.9 mm up: too near to 1 mm for u = 0.26.
    expect(picture.texts.filter(({ text }) => text === "?")).toHaveLength(5);
  });

  it("says what readings ask for where no dots were looked at", () => {
    const front = plan.measures.left.front?.value ?? NaN;
    const readings = { right: {}, left: { front: measured(front + 3, 0.2) } };
    const only = pictureOf(drawPlan(plan, { check: checkDrawn(plan, { readings }) }));
    expect(withClass(only, "drawn")).toEqual([]);
    expect(wordsOf([only])).toContain("C1 left front: 3 mm too long");
  });

  it("fills a table of the sheet", () => {
    const words = linesOf(drawSheet(plan, { check })).join(" ");
    expect(words).toContain("Check of what was drawn");
    const { upperArch } = plan.dots.left;
    const planned = upperArch[0].toFixed(1);
    const is = (upperArch[0] + 2.4).toFixed(1);
    expect(words).toContain(
      `left arch, from the midline ${planned} ${is} ± 0.3 +2.4 ± 0.3 outside`,
    );
  });
});

it("writes figures below zero with a true minus", () => {
  const falling = planBrows(syntheticFace(), { tailHeight: "level-with-lower-start" });
  expect(falling.measures.left.browInclination?.value).toBeLessThan(0);
  const sheet = drawSheet(falling, { check: drawn(falling), overlap: true });
  const figures = linesOf(sheet).filter((text) => /^[-−]\d/.test(text));
  expect(figures.length).toBeGreaterThan(5);
  for (const text of figures) expect(text).toMatch(/^−/);
});

describe("pins in a picture", () => {
  const { upperBody } = planDots(syntheticFace()).dots.left;
  const pinsOf = (by: string, reason: string): readonly Pin[] => [
    { side: "left", dot: "upperBody", at: mm([upperBody[0], upperBody[1] + 0.8]), by, reason },
    { side: "right", dot: "tailEnd", at: mm([-57, 19]) },
  ];
  // Pins say no more in a picture where what is read on the plan is taken from another one.
  const pinned = (by: string, reason: string): BrowPlan => ({
    ...plan,
    ...planDots(syntheticFace(), { pins: pinsOf(by, reason) }),
  });

  it("ring their dots, and say who fixed them and why", () => {
    const picture = pictureOf(drawPlan(pinned("Ada", "the client wants it fuller")));
    const rings = withClass(picture, "pin");
    expect(rings.map(({ attributes }) => attributes["data-dot"])).toEqual(["upperBody", "tailEnd"]);
    expectInside(picture);
    expectNoCollisions(picture);
    const words = wordsOf([picture]);
    expect(words).toContain("where Ada fixed it: the client wants it fuller.");
    expect(words).toContain("the artist fixed it.");
    const keys = picture.texts.filter(({ text }) => /^P\d$/.test(text));
    expect(keys.map(({ text }) => text).sort()).toEqual(["P1", "P1", "P2", "P2"]);
  });

  it("are what a legend says of an arch, unless a guide is drawn", () => {
    const [x, y] = plan.dots.left.upperArch;
    const pins: readonly Pin[] = [{ side: "left", dot: "upperArch", at: mm([x + 1, y]) }];
    const archOf = (choices: Choices): string =>
      pictureOf(drawPlan(planBrows(syntheticFace(), choices))).texts.find(({ text }) =>
        text.startsWith("arch: "),
      )?.text ?? "";
    expect(archOf({})).toBe("arch: where it grows");
    expect(archOf({ pins })).toBe("arch: where it is pinned");
    expect(archOf({ pins, arch: "exocanthion-vertical" })).toContain("outer eye corner");
  });

  test.prop([fc.string({ unit: "binary", maxLength: 60 })], { numRuns: 20 })(
    "hold hostile text without breaking or colliding",
    (text) => {
      const shown = pinned(text, text);
      for (const picture of [drawPlan(shown), drawSheet(shown)].flatMap(picturesOf)) {
        expectInside(picture);
        expectNoCollisions(picture);
      }
    },
  );
});
