import { type Choices, mm } from "brow-geometry";
import { drawVariants, type VariantsDrawing } from "brow-geometry/drawing";
import { everyChoice, weighChoices } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { refusal } from "../../support/refusal.js";
import { allElements } from "../../support/parse-xml.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { PICTURED_PLANS } from "../pictured-plans.js";
import { type Picture, pictureOf, withClass } from "../picture.js";

const face = syntheticFace();
const THICK: Choices = { thickness: { start: mm(9), body: mm(9), arch: mm(8) } };
const THIN: Choices = { thickness: { start: mm(5), body: mm(5), arch: mm(4) } };
/** One after the other in their own order: weighing puts rows into another. */
const weighed = {
  rows: [{}, THICK, { pins: [] }, THIN].flatMap((choice) => weighChoices(face, [choice]).rows),
  notes: [],
};

function drawn(options: VariantsDrawing = {}): Picture {
  return pictureOf(drawVariants(face, weighed, options));
}

/** How long the hatching of a role is in a picture. */
function hatched(picture: Picture, role: string): number {
  const strokes = withClass(picture, role)
    .flatMap(allElements)
    .flatMap(({ attributes: { d } }) => d ?? []);
  return strokes.join("").length;
}

const wordsOf = ({ texts }: Picture): readonly string[] => texts.map(({ text }) => text);

describe.each(PICTURED_PLANS)("variants: %s", (_, { face: of }) => {
  const some = everyChoice().filter((_choice, index) => index % 29 === 0);

  it.each([1, 2, 3])("stay inside their frame, texts apart, in %d columns", (columns) => {
    const picture = pictureOf(drawVariants(of, weighChoices(of, some), { columns }));
    expectInside(picture);
    expectNoCollisions(picture);
  });
});

describe("drawVariants", () => {
  it("shows each result once, named by every choice that leads to it", () => {
    const picture = drawn();
    expect(withClass(picture, "planned").length).toBe(2 * 3);
    expect(wordsOf(picture)).toContain("1, 3");
    expect(wordsOf(picture).filter((text) => text.startsWith("1. "))).toHaveLength(1);
    expect(wordsOf(picture).filter((text) => text.startsWith("3. "))).toHaveLength(1);
  });

  it("hatches what a variant has more, and what it has less, than the current one", () => {
    const only = (choice: Choices, options?: VariantsDrawing): Picture => {
      const rows = [...weighChoices(face, [{}]).rows, ...weighChoices(face, [choice]).rows];
      return pictureOf(drawVariants(face, { rows, notes: [] }, options));
    };
    const [thick, thin] = [only(THICK), only(THIN)];
    expect(hatched(thick, "fill")).toBeGreaterThan(4 * hatched(thick, "remove"));
    expect(hatched(thin, "remove")).toBeGreaterThan(4 * hatched(thin, "fill"));
    const back = only(THICK, { current: 1 });
    expect(hatched(back, "remove")).toBeGreaterThan(4 * hatched(back, "fill"));
    expect(withClass(thick, "current")).toHaveLength(1);
  });

  it("tells how far the dots of a variant lie off the current one", () => {
    // Thickness comes off the lower border: the body's lower dot goes farthest. Worked from the rows themselves.
    const [one, , , other] = weighed.rows;
    if (one?.kind !== "usable" || other?.kind !== "usable") return expect.fail("not planned");
    const { lowerBody, lowerStart } = one.dots.left;
    const ways = [
      [lowerBody, other.dots.left.lowerBody],
      [lowerStart, other.dots.left.lowerStart],
    ].map(([[x = NaN, y = NaN] = [], [toX = NaN, toY = NaN] = []]) => Math.hypot(toX - x, toY - y));
    const told = wordsOf(drawn()).filter((text) => text.endsWith(" from choice 1, 3"));
    expect(told).toHaveLength(2);
    const figures = told.map((text) => Number(/[\d.]+/.exec(text)?.[0]));
    expect(figures[1]).toBeGreaterThanOrEqual(Math.max(...ways) - 0.05);
  });

  it("draws all at one scale, in as many columns as asked for, and no more than there are variants", () => {
    const [one, two, many] = [1, 2, 9].map((columns) => drawn({ columns }).viewBox);
    if (!one || !two || !many) return expect.fail("not drawn");
    expect(two.width / one.width).toBeCloseTo(2, 4);
    expect(many.width / one.width).toBeCloseTo(3, 4);
  });

  it("is cropped to the brows", () => {
    const picture = drawn({ columns: 1 });
    expect(withClass(picture, "eye")).toEqual([]);
    // Brows of the synthetic face end at 58 mm; about them 4 mm.
    expect(picture.viewBox.width).toBeLessThan(2 * (58 + 6));
  });

  it("says beneath why a choice cannot be planned", () => {
    const pins = [{ side: "left", dot: "upperArch", at: mm([10, 80]) }] as const;
    const rows = [...weighed.rows, ...weighChoices(face, [{ pins }]).rows];
    const words = wordsOf(pictureOf(drawVariants(face, { rows, notes: [] }))).join(" ");
    expect(words).toContain("5. ");
    expect(words).toContain("Cannot be planned on this face");
  });

  it("refuses columns and a current row that there are not, and nothing that can be planned", () => {
    expect(refusal(() => drawVariants(face, weighed, { columns: 1.5 })).message).toBe(
      "drawVariants: columns is 1.5; needs a whole number from 1 on",
    );
    expect(refusal(() => drawVariants(face, weighed, { current: 4 })).message).toBe(
      "drawVariants: current is 4; needs the place of a row that can be planned",
    );
    expect(refusal(() => drawVariants(face, { rows: [], notes: [] })).message).toContain(
      "needs at least one choice that can be planned",
    );
  });
});
