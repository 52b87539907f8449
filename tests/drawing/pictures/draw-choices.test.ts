import { test } from "@fast-check/vitest";
import { type Choices, mm, type PlannableFace } from "brow-geometry";
import { type Paper } from "brow-geometry/drawing";
import { drawChoices } from "brow-geometry/drawing";
import { everyChoice, weighChoices, type WeighedChoices } from "brow-geometry/mapping";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { syntheticFace } from "../../support/synthetic-face.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { PICTURED_PLANS } from "../pictured-plans.js";
import { pathSpots, type Picture, pictureOf, withClass } from "../picture.js";

/** Some of everything there is to choose. */
const SOME = everyChoice().filter((_, index) => index % 13 === 0);

const face = syntheticFace();
const weighed = weighChoices(face, SOME);

const pagesOf = (of: PlannableFace, rows: WeighedChoices, options = {}): readonly Picture[] =>
  drawChoices(of, rows, options).map(pictureOf);

const wordsOf = (pages: readonly Picture[]): string =>
  pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(" ");

describe.each(PICTURED_PLANS)("weighed choices: %s", (_, { face: of }) => {
  let pages: readonly Picture[];
  beforeAll(() => {
    pages = pagesOf(of, weighChoices(of, SOME));
  });

  it("stay on their paper, texts apart", () => {
    for (const page of pages) {
      expectInside(page);
      expectNoCollisions(page);
    }
  });

  it("break no line between a figure and its unit", () => {
    const written = pages.flatMap(({ texts }) => texts);
    expect(written.filter(({ text }) => /^mm\b/.test(text))).toEqual([]);
  });
});

describe.each([
  ["A4", "210mm", "297mm"],
  ["letter", "215.9mm", "279.4mm"],
] as const)("weighed choices on %s", (paper: Paper, width, height) => {
  it("have the size of the paper, and numbered pages", () => {
    const pages = pagesOf(face, weighed, { paper, theme: "dark" });
    expect(pages.length).toBeGreaterThan(1);
    for (const [index, { root, texts }] of pages.entries()) {
      expect(root.attributes).toMatchObject({ width, height });
      expect(texts.map(({ text }) => text)).toContain(`${index + 1} / ${pages.length}`);
    }
  });
});

describe("drawChoices", () => {
  it("says of every row what was weighed, in its order", () => {
    const words = wordsOf(pagesOf(face, weighed));
    let from = 0;
    for (const [index, row] of weighed.rows.entries()) {
      const at = words.indexOf(`${index + 1}. `, from);
      expect(at).toBeGreaterThanOrEqual(from);
      from = at;
      if (row.kind === "no-solution") continue;
      const here = words.slice(from);
      expect(here).toContain(`mean move ${row.meanMove.toFixed(1)} mm`);
      expect(here).toContain(`${row.greatestMove.by.toFixed(1)} mm, ${row.greatestMove.side}`);
      expect(here).toContain(`hair to remove ${row.areas?.hairToRemove.toFixed(0)} mm²`);
      expect(here).toContain(`skin to fill ${row.areas?.skinToFill.toFixed(0)} mm²`);
    }
  });

  it("draws both brows of every row as they grow and as planned, all alike in scale", () => {
    const pages = pagesOf(face, weighed);
    const planned = weighed.rows.filter(({ kind }) => kind !== "no-solution");
    const groups = (word: string): readonly number[] =>
      pages.flatMap((page) =>
        withClass(page, word).flatMap(({ children }) => {
          const xs = children.flatMap((child) =>
            child.children.flatMap(({ attributes }) =>
              pathSpots(attributes.d ?? "").map(([x]) => x),
            ),
          );
          return [Math.max(...xs) - Math.min(...xs)];
        }),
      );
    expect(groups("planned")).toHaveLength(2 * planned.length);
    const grown = groups("natural");
    expect(grown).toHaveLength(2 * planned.length);
    expect(Math.max(...grown) - Math.min(...grown)).toBeLessThan(0.01);
  });

  it("says what was ruled out, and what has no solution", () => {
    const demanding = weighChoices(face, [{ lead: "right" }], { lidRoom: { most: mm(-20) } });
    expect(wordsOf(pagesOf(face, demanding))).toContain("✕ Ruled out: it closes the space");
    const impossible: Choices = {
      pins: [{ side: "left", dot: "upperArch", at: mm([64, 27]) }],
    };
    const none = wordsOf(pagesOf(face, weighChoices(face, [impossible])));
    expect(none).toContain("1 dot pinned");
    expect(none).toContain("✕ Cannot be planned on this face");
  });

  it("names every choice that a plan follows from, so that no two rows are called alike", () => {
    const varied: readonly Choices[] = [
      {},
      { lead: "left" },
      { lead: "left", carry: "measure" },
      { levels: "higher" },
      { levelLimit: mm(2) },
      { noseBent: true },
      { noseBent: false },
      { start: "endocanthion-vertical" },
      { arch: "eye-width-share" },
      { arch: "eye-width-share", eyeWidthShare: 0.8 },
      { arch: "brow-length-share" },
      { arch: "brow-length-share", frontShare: 0.6 },
      { tailHeight: "level-with-upper-start" },
      { thickness: { start: mm(7), body: mm(6), arch: mm(5) } },
      { shape: { angularity: 0 } },
      { shape: { angularity: 0.8 } },
      { shape: { startSlope: 0 } },
      { shape: { tailSlope: 2 } },
      { shape: { frontRoundness: 0.5 } },
    ];
    const words = wordsOf(pagesOf(face, weighChoices(face, varied)));
    const titles = varied.map((_, row) => {
      const [, after = ""] = words.split(` ${row + 1}. `);
      return after.split(/ (?:mean move|✕)/)[0] ?? "";
    });
    expect(new Set(titles).size).toBe(varied.length);
    for (const part of [
      "heights at most 2.0 mm off the hair",
      "share of the eye’s width 0.80",
      "front share 0.60",
      "7.0, 6.0, 5.0 mm thick",
      "angularity 0.00",
      "slope at the start 0.00",
      "nose taken as straight",
    ]) {
      expect(titles.join(" | ")).toContain(part);
    }
  });

  it("says in words why a choice cannot be planned, whatever was given", () => {
    const wrong: readonly Choices[] = [
      { arch: "eye-width-share", eyeWidthShare: 3 },
      { eyeWidthShare: "<b>wide</b>" as unknown as number },
      { thickness: {} as NonNullable<Choices["thickness"]> },
    ];
    const pages = drawChoices(face, weighChoices(face, wrong));
    const words = wordsOf(pages.map(pictureOf));
    expect(words).toContain("share of the eye’s width is 3, may be 0.4 to 1.4");
    for (const page of pages) {
      expect(page).not.toContain("planBrows");
      expect(page).not.toContain("<b>");
    }
  });

  it("refuses paper and themes that there are not, by name", () => {
    expect(() => drawChoices(face, weighed, { paper: "A5" as Paper })).toThrow(
      'drawChoices: paper is "A5"; needs one of A4, letter',
    );
    expect(() => drawChoices(face, weighed, { theme: "sepia" as "light" })).toThrow(
      /drawChoices: theme is "sepia"/,
    );
  });

  it("refuses nothing, and a title without end", () => {
    expect(() => drawChoices(face, { rows: [], notes: [] })).toThrow(/weighed.rows/);
    const title = "word ".repeat(900);
    expect(() => drawChoices(face, weighed, { title })).toThrow(/drawChoices: title is/);
  });

  test.prop([fc.string({ unit: "binary", maxLength: 60 })], { numRuns: 10 })(
    "holds a hostile title",
    (title) => {
      for (const page of pagesOf(face, weighed, { title })) {
        expectInside(page);
        expectNoCollisions(page);
      }
    },
  );
});
