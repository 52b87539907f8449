import { test } from "@fast-check/vitest";
import {
  checkCapture,
  GeometryError,
  mm,
  planBrows,
  type PlannableFace,
  planOnPhoto,
  requirePlannable,
  say,
  scaleFromIris,
  turnToFront,
  workSteps,
} from "brow-geometry";
import { drawSheet, type Paper } from "brow-geometry/drawing";
import { mapFace } from "brow-geometry/landmarks";
import { cautionsToSay } from "brow-geometry/mapping";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import type { Spot } from "../../../src/drawing/canvas/box.js";
import { faceOfMesh, meshSamples, type SampleFace } from "../../support/sample-faces.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { syntheticPlan } from "../../support/synthetic-plan.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { PICTURED_PLANS } from "../pictured-plans.js";
import { pathSpots, type Picture, pictureOf, withClass } from "../picture.js";

describe.each(PICTURED_PLANS)("the sheet of a plan: %s", (_, plan) => {
  let pages: readonly Picture[];
  beforeAll(() => {
    pages = drawSheet(plan).map(pictureOf);
  });

  it("stays on its paper, texts apart", () => {
    for (const page of pages) {
      expectInside(page);
      expectNoCollisions(page);
    }
  });

  it.each(["A4", "letter"] as const)(
    "begins no page of %s in the middle of a list item",
    (paper) => {
      const onPaper = drawSheet(plan, { paper }).map(pictureOf);
      for (const { texts } of onPaper) {
        const rows = texts.map(({ text }) => text);
        if (rows[0] !== "•") continue;
        // The rest of a list: not its last item alone.
        expect(rows.filter((text) => text === "•").length).toBeGreaterThan(1);
      }
      const items = new Set([...plan.cautions, ...plan.reasons].map((note) => say(note)));
      const inOnePiece = onPaper.map((page) => wordsOf([page]));
      for (const item of items) {
        expect(
          inOnePiece.some((words) => words.includes(item)),
          item,
        ).toBe(true);
      }
    },
  );

  it.each(["A4", "letter"] as const)("leaves no page of %s nearly blank", (paper) => {
    for (const { texts, viewBox } of drawSheet(plan, { paper }).map(pictureOf)) {
      const foot = viewBox.height - 30;
      const used = texts.map(({ box }) => box.y).filter((y) => y < foot);
      expect(Math.max(...used)).toBeGreaterThan(0.2 * viewBox.height);
    }
  });

  it("explains the arrows of moves where there are any", () => {
    const arrows = pages.some((page) =>
      withClass(page, "move").some(({ attributes }) => attributes.class !== "move"),
    );
    expect(wordsOf(pages).includes("move, numbered as below")).toBe(arrows);
  });

  it("says every move once, as the step of its number, and every caution", () => {
    const written = wordsOf(pages);
    const steps = workSteps(plan);
    for (const [index, move] of plan.moves.filter(({ kind }) => kind !== "stay").entries()) {
      expect(steps[index]).toMatchObject({ side: move.side });
      if (move.kind === "move") expect(written.split(say(move))).toHaveLength(2);
    }
    let from = 0;
    for (const [index, step] of steps.entries()) {
      const text = say(step);
      const at = written.indexOf(`${index + 1}. ${text}`, from);
      expect(at, text).toBeGreaterThanOrEqual(from);
      from = at;
    }
    for (const caution of plan.cautions) expect(written).toContain(say(caution));
  });

  it("prints what is read with its uncertainty and its decision", () => {
    const written = wordsOf(pages);
    const { differences } = plan.comparison;
    for (const measure of ["front", "exocanthionToTailEnd"]) {
      const { right, decision, difference } =
        differences.find((one) => one.measure === measure) ?? {};
      expect(written).toContain(`${right?.value.toFixed(1)} ± ${right?.u.toFixed(1)}`);
      if (difference?.u.toFixed(1) !== "0.0") expect(written).toContain(decision?.outcome);
    }
  });

  it("prints nothing that the plan holds by construction as if it had been read", () => {
    expect(wordsOf(pages)).not.toMatch(/ ± 0(?:\.0+)?(?![\d.])|held/);
  });
});

describe.each([
  ["A4", "210mm", "297mm", "0 0 210 297"],
  ["letter", "215.9mm", "279.4mm", "0 0 215.9 279.4"],
] as const)("a sheet on %s", (paper: Paper, width, height, viewBox) => {
  // Sizes of paper: A4 from ISO 216, letter from ANSI/ASME Y14.1 (from memory).
  const plan = syntheticPlan;
  const pages = drawSheet(plan, { paper }).map(pictureOf);

  it("has the size of the paper, one unit a millimetre", () => {
    for (const { root, elements } of pages) {
      expect(root.attributes).toMatchObject({ width, height, viewBox });
      const style = elements.find(({ name }) => name === "style");
      expect(style?.text).toBe(`@page{size:${width} ${height};margin:0}`);
    }
  });

  it("draws the face at true size", () => {
    const [right, left] = (["right", "left"] as const).map((side): Spot => {
      const dot = withClass(pages[0] as Picture, "dot").find(
        ({ attributes }) =>
          attributes["data-side"] === side && attributes["data-dot"] === "lowerBody",
      );
      return [Number(dot?.attributes.cx), Number(dot?.attributes.cy)];
    }) as [Spot, Spot];
    const { dots } = plan;
    expect(left[0] - right[0]).toBeCloseTo(dots.left.lowerBody[0] - dots.right.lowerBody[0], 2);
    expect(right[1] - left[1]).toBeCloseTo(dots.left.lowerBody[1] - dots.right.lowerBody[1], 2);
  });

  it("carries a ruler of 100 mm across on every page and one of 50 mm upright", () => {
    const across = pages.map((page) => rulersOf(page).at(-1) as readonly Spot[]);
    for (const spots of across) {
      const ticks = spots.slice(2).filter((_spot, index) => index % 2 === 0);
      expect(ticks).toHaveLength(101);
      for (const [millimetre, [x]] of ticks.entries()) {
        expect(x - (ticks[0] as Spot)[0]).toBeCloseTo(millimetre, 6);
      }
    }
    const upright = rulersOf(pages[0] as Picture)[0] as readonly Spot[];
    const heights = upright.map(([, y]) => y);
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(50, 6);
  });

  it("numbers its pages", () => {
    for (const [index, page] of pages.entries()) {
      expect(page.texts.map(({ text }) => text)).toContain(`${index + 1} / ${pages.length}`);
    }
  });
});

describe("the head of a sheet", () => {
  const plan = syntheticPlan;

  it("has lines to write on where nothing is given", () => {
    const written = wordsOf(drawSheet(plan).map(pictureOf));
    for (const name of ["Client", "Date", "Artist"]) expect(written).toContain(name);
  });

  it("carries the caller's own title and fields", () => {
    const written = wordsOf(
      drawSheet(plan, {
        title: "Second session",
        fields: [{ name: "Client", value: "A. Invented" }, { name: "Photo" }],
      }).map(pictureOf),
    );
    expect(written).toContain("Second session");
    expect(written).toContain("A. Invented");
    expect(written).not.toContain("Artist");
  });

  const anyField = fc.record({
    name: fc.string({ unit: "binary", maxLength: 40 }),
    value: fc.string({ unit: "grapheme", maxLength: 60 }),
  });

  test.prop([fc.array(anyField, { maxLength: 6 })], { numRuns: 20 })(
    "holds hostile text without breaking, leaving the paper or colliding",
    (fields) => {
      for (const page of drawSheet(plan, { fields }).map(pictureOf)) {
        expectInside(page);
        expectNoCollisions(page);
      }
    },
  );
});

it("refuses paper and themes that there are not, by name", () => {
  const plan = syntheticPlan;
  expect(() => drawSheet(plan, { paper: "A5" as Paper })).toThrow(
    'drawSheet: paper is "A5"; needs one of A4, letter',
  );
  expect(() => drawSheet(plan, { theme: "sepia" as "light" })).toThrow(
    'drawSheet: theme is "sepia"; needs one of light, dark, monochrome',
  );
});

it("refuses more text at its head than the page has room for", () => {
  const plan = syntheticPlan;
  const long = "word ".repeat(900);
  expect(() => drawSheet(plan, { title: long })).toThrow(/drawSheet: title is/);
  expect(() => drawSheet(plan, { fields: [{ name: "Client", value: long }] })).toThrow(/fields is/);
});

it("says no caution twice where findings of the capture are carried as well", () => {
  const photo = requirePlannable(faceOfMesh(meshSamples[3] as SampleFace));
  const scale = scaleFromIris(photo);
  const findings = checkCapture(photo, { purpose: "map", scale });
  const plan = planOnPhoto(photo, turnToFront(photo, scale), {}, { findings });
  const written = wordsOf(drawSheet(plan).map(pictureOf));
  const said = cautionsToSay(plan);
  expect(said.length).toBeLessThan(plan.cautions.length);
  for (const caution of plan.cautions) {
    expect(written.includes(say(caution)), say(caution)).toBe(said.includes(caution));
  }
});

it("lets a long reason run on to the next page", () => {
  const plan = syntheticPlan;
  const text = "an artist's reason ".repeat(800).trim();
  const pages = drawSheet({
    ...plan,
    reasons: [...plan.reasons, { code: "pinned", text, values: {} }],
  }).map(pictureOf);
  expect(wordsOf(pages).match(/reason /g)?.length).toBeGreaterThan(700);
  for (const page of pages) {
    expectInside(page);
    expectNoCollisions(page);
  }
});

it("lists the steps of work with the readings that check them, the ruler's zero included", () => {
  const plan = syntheticPlan;
  const rulerZero = mm(2);
  const written = wordsOf(drawSheet(plan, { rulerZero }).map(pictureOf));
  const steps = workSteps(plan, { rulerZero });
  expect(steps.flatMap(({ checks }) => checks).length).toBeGreaterThan(20);
  for (const step of steps) {
    expect(written).toContain(say(step).split(" ").slice(0, 4).join(" "));
    for (const { laid, reading, u } of step.checks) {
      expect(written).toContain(say(laid).split(" ").slice(0, 3).join(" "));
      if (reading === undefined) continue;
      expect(written).toContain(`${reading.toFixed(1)} ± ${u?.toFixed(1)}`);
    }
  }
});

it("refuses a face that is wider than the paper", () => {
  const giant = mapFace(syntheticFace(), ([x, y]) => mm([2 * x, 2 * y])) as PlannableFace;
  expect(() => drawSheet(planBrows(giant))).toThrow(GeometryError);
  expect(() => drawSheet(planBrows(giant))).toThrow(/drawSheet: width of the face is/);
});

/** What the pages say, line after line. */
function wordsOf(pages: readonly Picture[]): string {
  return pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(" ");
}

function rulersOf(page: Picture): readonly (readonly Spot[])[] {
  return withClass(page, "true-size-ruler").map(({ children }) =>
    pathSpots(children[0]?.attributes.d ?? ""),
  );
}
