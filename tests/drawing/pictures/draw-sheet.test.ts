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
import { linesOf, pathSpots, type Picture, picturesOf, withClass } from "../picture.js";
import { allElements, parseXml } from "../../support/parse-xml.js";

describe.each(PICTURED_PLANS)("the sheet of a plan: %s", (_, plan) => {
  let sheet: string;
  let written: string;
  beforeAll(() => {
    sheet = drawSheet(plan);
    written = wordsOf(sheet);
  });

  it("keeps its picture inside its frame, texts apart", () => {
    for (const picture of picturesOf(sheet)) {
      expectInside(picture);
      expectNoCollisions(picture);
    }
  });

  it("explains the arrows of moves where there are any", () => {
    const arrows = withClass(mapOf(sheet), "move").length > 0;
    expect(written.includes("move, numbered as below")).toBe(arrows);
  });

  it("says every move once, as the step of its number, and every caution", () => {
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
    const { differences } = plan.comparison;
    for (const measure of ["front", "exocanthionToTailEnd"]) {
      const { right, decision, difference } =
        differences.find((one) => one.measure === measure) ?? {};
      expect(written).toContain(`${right?.value.toFixed(1)} ± ${right?.u.toFixed(1)}`);
      if (difference?.u.toFixed(1) !== "0.0") expect(written).toContain(decision?.outcome);
    }
  });

  it("prints nothing that the plan holds by construction as if it had been read", () => {
    expect(written).not.toMatch(/ ± 0(?:\.0+)?(?![\d.])|held/);
  });
});

describe.each(["A4", "letter"] as const)("a sheet on %s", (paper: Paper) => {
  const plan = syntheticPlan;
  const sheet = drawSheet(plan, { paper });
  const map = mapOf(sheet);

  it("names the size of its paper", () => {
    expect(sheet).toContain(`@page{size:${paper};`);
  });

  it("draws the face at true size, one unit a millimetre", () => {
    const { width, height, preserveAspectRatio } = map.root.attributes;
    expect(Number.parseFloat(width ?? "")).toBe(map.viewBox.width);
    expect(Number.parseFloat(height ?? "")).toBe(map.viewBox.height);
    expect([width, height].every((side) => side?.endsWith("mm"))).toBe(true);
    expect(preserveAspectRatio).toBe("none");
    const [right, left] = (["right", "left"] as const).map((side): Spot => {
      const dot = withClass(map, "dot").find(
        ({ attributes }) =>
          attributes["data-side"] === side && attributes["data-dot"] === "lowerBody",
      );
      return [Number(dot?.attributes.cx), Number(dot?.attributes.cy)];
    }) as [Spot, Spot];
    const { dots } = plan;
    expect(left[0] - right[0]).toBeCloseTo(dots.left.lowerBody[0] - dots.right.lowerBody[0], 2);
    expect(right[1] - left[1]).toBeCloseTo(dots.left.lowerBody[1] - dots.right.lowerBody[1], 2);
  });

  it("carries a ruler of 100 mm across at its foot and one of 50 mm upright", () => {
    const [upright = [], across = []] = picturesOf(sheet).flatMap(rulersOf);
    const ticks = across.slice(2).filter((_spot, index) => index % 2 === 0);
    expect(ticks).toHaveLength(101);
    for (const [millimetre, [x]] of ticks.entries()) {
      expect(x - (ticks[0] as Spot)[0]).toBeCloseTo(millimetre, 6);
    }
    const heights = upright.map(([, y]) => y);
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(50, 6);
    expect(sheet.split("<tfoot>")[1]).toContain("true-size-ruler");
  });
});

describe("the document of a sheet", () => {
  const sheet = drawSheet(syntheticPlan, { overlap: true });
  const elements = allElements(parseXml(sheet));

  it("runs nothing and loads nothing", () => {
    const names = new Set(elements.map(({ name }) => name));
    for (const name of ["script", "link", "img", "image", "iframe", "object", "form", "base"]) {
      expect(names).not.toContain(name);
    }
    const attributes = elements.flatMap((one) => Object.keys(one.attributes));
    expect(attributes.filter((name) => /^(?:on|src|href|style$|xlink)/.test(name))).toEqual([]);
    expect(sheet).not.toMatch(/@import|url\(/);
  });

  it("has one style element, with the nonce of the page that it is shown in", () => {
    const styles = elements.filter(({ name }) => name === "style");
    expect(styles.map(({ attributes }) => attributes)).toEqual([{}]);
    // What XML would escape, HTML would not read.
    expect(styles[0]?.text).not.toMatch(/[<&]/);
    const nonce = '2726c7f26c"><script>';
    const [style] = allElements(parseXml(drawSheet(syntheticPlan, { nonce }))).filter(
      ({ name }) => name === "style",
    );
    expect(style?.attributes).toEqual({ nonce });
  });

  it("closes every element as HTML reads it: only those that hold nothing are short", () => {
    const ofHtml = sheet.replace(/<svg[^]*?<\/svg>/g, "");
    const short = [...ofHtml.matchAll(/<(\w+)[^>]*\/>/g)].map(([, name]) => name);
    // Void elements of the HTML standard, 13.1.2 (from memory).
    expect(new Set(short)).toEqual(new Set(["meta"]));
  });

  it("says law and hygiene at its foot, and once", () => {
    const [body = "", foot = ""] = sheet.split("<tfoot>");
    const always = ["local-law", "hygiene", "planning-aid"];
    for (const caution of syntheticPlan.cautions) {
      const isAlways = always.includes(caution.code);
      expect(foot.includes(say(caution)), caution.code).toBe(isAlways);
      expect(body.includes(say(caution)), caution.code).toBe(!isAlways);
    }
  });

  it.each([
    [undefined, 8],
    [8, 8],
    [11, 11],
    [14, 14],
  ])("writes nothing smaller than was asked for: %s points", (leastType, points) => {
    const drawn = drawSheet(syntheticPlan, {
      overlap: true,
      ...(leastType === undefined ? {} : { leastType }),
    });
    expect(drawn).toContain(`@media print{:root{font-size:${points}pt}`);
    const sizes = picturesOf(drawn).flatMap(({ texts }) => texts.map(({ size }) => size));
    expect(Math.min(...sizes)).toBeGreaterThan((points * 25.4) / 72 - 0.001);
    const [rules = ""] = /<style>[^]*<\/style>/.exec(drawn) ?? [];
    const relative = [...rules.matchAll(/font-size:([\d.]+)em/g)].map(([, size]) => Number(size));
    expect(Math.min(...relative)).toBeGreaterThanOrEqual(1);
  });
});

describe("the head of a sheet", () => {
  const plan = syntheticPlan;

  it("has lines to write on where nothing is given", () => {
    const written = wordsOf(drawSheet(plan));
    for (const name of ["Client", "Date", "Artist"]) expect(written).toContain(name);
  });

  it("carries the caller's own title and fields", () => {
    const written = wordsOf(
      drawSheet(plan, {
        title: "Second session",
        fields: [{ name: "Client", value: "A. Invented" }, { name: "Photo" }],
      }),
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
    "holds hostile text as text",
    (fields) => {
      const shown = allElements(parseXml(drawSheet(plan, { fields })))
        .filter(({ name }) => name === "bdi")
        .map(({ text }) => text);
      const given = fields.flatMap(({ name, value }) => [name, value]);
      expect(shown).toHaveLength(given.length);
      for (const [index, text] of shown.entries()) {
        if (/^[ -~]*$/.test(given[index] ?? "")) expect(bare(text)).toBe(given[index]);
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
    'drawSheet: theme is "sepia"; needs one of light, dark, monochrome, transparent',
  );
});

it("says no caution twice where findings of the capture are carried as well", () => {
  const photo = requirePlannable(faceOfMesh(meshSamples[3] as SampleFace));
  const scale = scaleFromIris(photo);
  const findings = checkCapture(photo, { purpose: "map", scale });
  const plan = planOnPhoto(photo, turnToFront(photo, scale), {}, { findings });
  const written = wordsOf(drawSheet(plan));
  const said = cautionsToSay(plan);
  expect(said.length).toBeLessThan(plan.cautions.length);
  for (const caution of plan.cautions) {
    expect(written.includes(say(caution)), say(caution)).toBe(said.includes(caution));
  }
});

it("lists the steps of work with the readings that check them, the ruler's zero included", () => {
  const plan = syntheticPlan;
  const rulerZero = mm(2);
  const written = wordsOf(drawSheet(plan, { rulerZero }));
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

const bare = (text: string): string => text.replaceAll("\u00A0", " ");

/** What a sheet says, element after element. */
function wordsOf(sheet: string): string {
  return linesOf(sheet).join(" ");
}

function mapOf(sheet: string): Picture {
  return picturesOf(sheet)[0] as Picture;
}

function rulersOf(picture: Picture): readonly (readonly Spot[])[] {
  return withClass(picture, "true-size-ruler").map(({ children }) =>
    pathSpots(children[0]?.attributes.d ?? ""),
  );
}
