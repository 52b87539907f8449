import { mm, planBrows, type PlannableFace } from "brow-geometry";
import { drawPractice, type Paper } from "brow-geometry/drawing";
import { mapFace } from "brow-geometry/landmarks";
import { DOT_NAMES } from "../../../src/landmarks/internal.js";
import { ENGLISH } from "brow-geometry/words";
import { describe, expect, it } from "vitest";
import type { Spot } from "../../../src/drawing/canvas/box.js";
import { allElements, parseXml } from "../../support/parse-xml.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { expectInside, expectNoCollisions } from "../expect-tidy.js";
import { PICTURED_PLANS } from "../pictured-plans.js";
import { linesOf, pathSpots, type Picture, picturesOf, withClass } from "../picture.js";

const face = syntheticFace();
const plan = planBrows(face, { arch: "exocanthion-vertical" });
const sheet = drawPractice(plan);
const map = picturesOf(sheet)[0] as Picture;

/** The ends of a guide in the picture. */
function guide(mark: string, side: string): readonly Spot[] {
  const [group] = withClass(map, mark).filter(({ attributes }) =>
    attributes.class?.endsWith(`${mark} ${side}`),
  );
  return pathSpots(group?.children[0]?.children[0]?.attributes.d ?? "");
}

describe("a practice sheet", () => {
  it("shows no brow and no dot, neither as it grows nor as planned", () => {
    for (const word of ["natural", "planned", "guess", "dot", "move", "length", "eye", "pin"]) {
      expect(withClass(map, word), word).toEqual([]);
    }
  });

  it("gives guides through their landmarks at true size, as high on both sides", () => {
    const ends = ["start", "arch", "tail"].flatMap((mark) =>
      ["right", "left"].map((side) => guide(mark, side).at(-1)?.[1]),
    );
    expect(new Set(ends).size).toBe(1);
    // From alare through exocanthion on the left: both lie on the line as far apart as on the face.
    const [from, to] = guide("tail", "left") as readonly [Spot, Spot];
    const [alare, exocanthion] = [face.left.alare, face.left.exocanthion] as const;
    const slope = (to[1] - from[1]) / (to[0] - from[0]);
    expect(slope).toBeCloseTo(-(exocanthion[1] - alare[1]) / (exocanthion[0] - alare[0]), 3);
    const [right, left] = ["right", "left"].map((side) => guide("start", side)[0]?.[0] ?? NaN);
    expect((left ?? NaN) - (right ?? NaN)).toBeCloseTo(face.left.alare[0] - face.right.alare[0], 2);
    expect(map.root.attributes.width).toBe(`${map.viewBox.width.toFixed(3)}mm`);
  });

  it("tells nothing of the plan's dots: the same guides give the same sheet", () => {
    const thicker = { start: mm(9), body: mm(8), arch: mm(7) };
    const other = planBrows(face, { arch: "exocanthion-vertical", thickness: thicker });
    expect(other.dots).not.toEqual(plan.dots);
    expect(drawPractice(other)).toBe(sheet);
  });

  it("names every dot, in the picture on its guide and beneath with a line for each distance", () => {
    const written = map.texts.map(({ text }) => text);
    for (const name of ["start, lower start", "arch, lower arch", "tail end"]) {
      expect(written.filter((text) => text === name)).toHaveLength(2);
    }
    const lines = linesOf(sheet);
    for (const side of ["right", "left"]) {
      for (const dot of DOT_NAMES) {
        expect(lines).toContain(`${side} ${ENGLISH.terms.dots[dot]}, from the midline`);
        expect(lines).toContain(`${side} ${ENGLISH.terms.dots[dot]}, height`);
      }
    }
    const blanks = allElements(parseXml(sheet)).filter(
      ({ name, attributes, text }) => name === "td" && attributes.class === "number" && text === "",
    );
    expect(blanks).toHaveLength(2 * 2 * DOT_NAMES.length);
  });

  it("gives no guide where there is none: an arch that follows the hair", () => {
    const natural = picturesOf(drawPractice(planBrows(face, { arch: "natural" })))[0] as Picture;
    expect(withClass(natural, "arch")).toEqual([]);
    expect(withClass(natural, "start").length).toBeGreaterThan(0);
  });

  it.each(PICTURED_PLANS)("keeps its picture inside its frame, texts apart: %s", (_, of) => {
    for (const paper of ["A4", "letter"] as const) {
      for (const picture of picturesOf(drawPractice(of, { paper, leastType: 10 }))) {
        expectInside(picture);
        expectNoCollisions(picture);
      }
    }
  });

  it("refuses a face that is wider than the paper, and paper that there is not", () => {
    const giant = mapFace(face, ([x, y]) => mm([2 * x, 2 * y])) as PlannableFace;
    expect(() => drawPractice(planBrows(giant))).toThrow(/drawPractice: width of the face is/);
    expect(() => drawPractice(plan, { paper: "A5" as Paper })).toThrow(
      'drawPractice: paper is "A5"; needs one of A4, letter',
    );
  });
});
