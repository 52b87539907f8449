import { test } from "@fast-check/vitest";
import { type Choices, mm } from "brow-geometry";
import { type Paper } from "brow-geometry/drawing";
import { drawChoices } from "brow-geometry/drawing";
import { everyChoice, weighChoices } from "brow-geometry/mapping";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allElements, parseXml } from "../../support/parse-xml.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { PICTURED_PLANS } from "../pictured-plans.js";
import { linesOf, pathSpots, picturesOf, withClass } from "../picture.js";

/** Some of everything there is to choose. */
const SOME = everyChoice().filter((_, index) => index % 13 === 0);

const face = syntheticFace();
const weighed = weighChoices(face, SOME);

const wordsOf = (sheet: string): string => linesOf(sheet).join(" ");

describe.each(PICTURED_PLANS)("weighed choices: %s", (_, { face: of }) => {
  it("keep every picture inside its frame, and a figure with its unit", () => {
    const sheet = drawChoices(of, weighChoices(of, SOME));
    const pictures = picturesOf(sheet);
    expect(pictures.length).toBeGreaterThan(2);
    for (const picture of pictures) {
      expectInside(picture);
      expectNoCollisions(picture);
    }
    expect(sheet).not.toMatch(/\d mm\b/);
  });
});

it.each(["A4", "letter"] as const)("weighed choices are for paper of %s", (paper: Paper) => {
  expect(drawChoices(face, weighed, { paper })).toContain(`@page{size:${paper};`);
});

describe("drawChoices", () => {
  it("says of every row what was weighed, in its order", () => {
    const words = wordsOf(drawChoices(face, weighed));
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
    const pictures = picturesOf(drawChoices(face, weighed));
    const planned = weighed.rows.filter(({ kind }) => kind !== "no-solution");
    const groups = (word: string): readonly number[] =>
      pictures.flatMap((page) =>
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
    expect(wordsOf(drawChoices(face, demanding))).toContain("✕ Ruled out: it closes the space");
    const impossible: Choices = {
      pins: [{ side: "left", dot: "upperArch", at: mm([64, 27]) }],
    };
    const none = wordsOf(drawChoices(face, weighChoices(face, [impossible])));
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
    const words = wordsOf(drawChoices(face, weighChoices(face, varied)));
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
    const sheet = drawChoices(face, weighChoices(face, wrong));
    const words = wordsOf(sheet);
    expect(words).toContain("share of the eye’s width is 3, may be 0.4 to 1.4");
    expect(sheet).not.toContain("planBrows");
    expect(sheet).not.toContain("<b>wide");
  });

  it("refuses paper and themes that there are not, by name", () => {
    expect(() => drawChoices(face, weighed, { paper: "A5" as Paper })).toThrow(
      'drawChoices: paper is "A5"; needs one of A4, letter',
    );
    expect(() => drawChoices(face, weighed, { theme: "sepia" as "light" })).toThrow(
      /drawChoices: theme is "sepia"/,
    );
  });

  it("refuses nothing", () => {
    expect(() => drawChoices(face, { rows: [], notes: [] })).toThrow(/weighed.rows/);
  });

  test.prop([fc.string({ unit: "binary", maxLength: 60 })], { numRuns: 10 })(
    "holds a hostile title as text",
    (title) => {
      const headings = allElements(parseXml(drawChoices(face, weighed, { title }))).filter(
        ({ name }) => name === "h1",
      );
      expect(headings).toHaveLength(1);
      if (/^[ -~]*$/.test(title)) expect(headings[0]?.text.replaceAll("\u00A0", " ")).toBe(title);
    },
  );
});
