import { test } from "@fast-check/vitest";
import { GeometryError, measured, mm } from "brow-geometry";
import { drawCaptures, type NamedCapture } from "brow-geometry/drawing";
import { mapFace } from "brow-geometry/landmarks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type SyntheticFace, syntheticFace } from "../../support/synthetic-face.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { pictureOf, withClass } from "../picture.js";

/** The synthetic face with its brows elsewhere: up by so much, and more so towards the tail. */
function moved(up: number, tail: number): SyntheticFace {
  const face = syntheticFace();
  const lifted = mapFace(face, ([x, y]) => mm([x, y + up + (tail * Math.abs(x)) / 58]));
  return {
    ...face,
    right: { ...face.right, brow: lifted.right.brow },
    left: { ...face.left, brow: lifted.left.brow },
  } as SyntheticFace;
}

const captures: readonly NamedCapture[] = [
  { name: "upright", face: syntheticFace() },
  { name: "lying", face: moved(0.5, 1.16) },
  { name: "raised", face: moved(3, 0) },
];

describe("drawCaptures", () => {
  const picture = pictureOf(drawCaptures(captures));

  it("stays inside its view box, texts apart", () => {
    expectInside(picture);
    expectNoCollisions(picture);
  });

  it("names every capture and lays it over the first", () => {
    const written = picture.texts.map(({ text }) => text);
    for (const { name } of captures) expect(written).toContain(name);
    expect(withClass(picture, "capture")).toHaveLength(6);
    expect(withClass(picture, "natural")).toHaveLength(4);
  });

  it("writes heights, and how far up or down the others lie, with uncertainty", () => {
    const written = picture.texts.map(({ text }) => text);
    // The synthetic brow starts at a height of 20 and ends at 17.6, 14.5 and 58 from the midline. Placed by hand,
    // a point is sure to 0.26 mm, the level to that by the root of two.
    expect(written.filter((text) => text === "20.0 ± 0.3 mm")).toHaveLength(2);
    expect(written.filter((text) => text === "17.6 ± 0.3 mm")).toHaveLength(2);
    expect(written.filter((text) => text.startsWith("+3.0 ± 0."))).toHaveLength(6);
    expect(written.filter((text) => text.startsWith("+1.7 ± 0."))).toHaveLength(2);
    expect(picture.root.children[1]?.text).toContain("lying: right start +0.8 ± 0.");
  });

  it("doubts heights that a detector found as much as it does their landmarks", () => {
    const face = syntheticFace();
    const uncertainty = { default: mm(1), landmarks: { brow: mm(2), endocanthion: mm(1.5) } };
    const ringFactor = measured(1, 0);
    const source = { markup: "mesh-478", uncertainty, ringFactor, depth: "none" } as const;
    const drawn = drawCaptures([{ name: "one", face: { ...face, source } }]);
    // √(2² + 1.5²/2) is 2.26.
    expect(drawn).toContain(">20.0 ± 2.3 mm<");
    expect(drawn).toContain("tail end 17.6 ± 2.3 mm");
  });

  it("lays a capture over the first, wherever it lies in its own space and whatever its scale", () => {
    const elsewhere = mapFace(syntheticFace(), ([x, y]) => mm([0.5 * x + 3, 0.5 * y - 2]));
    const drawn = pictureOf(
      drawCaptures([
        { name: "one", face: syntheticFace() },
        { name: "the same", face: elsewhere as SyntheticFace },
      ]),
    );
    expect(drawn.texts.filter(({ text }) => text.startsWith("0.0 ± 0."))).toHaveLength(6);
  });

  it("says where more has changed than the brows", () => {
    const face = syntheticFace();
    const { left } = face;
    const changed = { ...face, left: { ...left, exocanthion: mm([52, 6]) } } as SyntheticFace;
    const doubt = "eye corners and nose do not fit the first capture";
    const texts = (of: SyntheticFace): readonly string[] =>
      pictureOf(
        drawCaptures([
          { name: "one", face },
          { name: "other", face: of },
        ]),
      ).texts.map(({ text }) => text);
    expect(texts(changed)).toContain(doubt);
    expect(texts(face)).not.toContain(doubt);
  });

  it("takes one capture alone, and refuses none", () => {
    const alone = pictureOf(drawCaptures(captures.slice(0, 1)));
    expect(withClass(alone, "natural")).toHaveLength(0);
    expectInside(alone);
    expect(() => drawCaptures([])).toThrow(GeometryError);
  });

  test.prop(
    [
      fc.array(
        fc.record({
          name: fc.string({ unit: "binary", maxLength: 300 }),
          face: fc
            .tuple(
              fc.double({ min: -4, max: 6, noNaN: true }),
              fc.double({ min: -4, max: 4, noNaN: true }),
            )
            .map(([up, tail]) => moved(up, tail)),
        }),
        { minLength: 1, maxLength: 4 },
      ),
      fc.constantFrom("light" as const, "dark" as const, "monochrome" as const),
    ],
    { numRuns: 25 },
  )("holds any names and any brows", (any, theme) => {
    const drawn = pictureOf(drawCaptures(any, { theme }));
    expectInside(drawn);
    expectNoCollisions(drawn);
  });
});

it("refuses a theme that there is not, by name", () => {
  const capture = { name: "upright", face: syntheticFace() };
  expect(() => drawCaptures([capture], { theme: "sepia" as "light" })).toThrow(
    'drawCaptures: theme is "sepia"; needs one of light, dark, monochrome, transparent',
  );
});
