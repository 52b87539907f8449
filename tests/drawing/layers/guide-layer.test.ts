import {
  type BrowPlan,
  drawPlan,
  faceFrame,
  mm,
  planOnPhoto,
  type Point,
  px,
  requirePlannable,
  scaleFromReference,
  type Side,
  toPhoto,
  turnToFront,
} from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { allElements } from "../../support/parse-xml.js";
import { type Pose, photograph } from "../../support/photograph.js";
import { syntheticHead, turnedHead } from "../../support/synthetic-head.js";
import { pictureOf } from "../picture.js";

const pose: Pose = { factor: 0.1, tilt: 8, at: [1000, 900] };

const size = { width: 2000, height: 1800 };
const scale = scaleFromReference(px([0, 0]), px([500, 0]), mm(50));

/** The points of the strokes that a picture draws for a guide. */
function linesOf(svg: string, name: string): readonly (readonly (readonly number[])[])[] {
  const { root, elements } = pictureOf(svg);
  const group = elements.find(({ attributes }) => attributes["class"] === name);
  const strokes = allElements(group ?? root).flatMap(({ attributes }) => attributes["d"] ?? []);
  return [...new Set(strokes)].flatMap((d) =>
    d
      .split("M")
      .slice(1)
      .map((line) =>
        Array.from(line.matchAll(/(-?[\d.]+)[ ,](-?[\d.]+)/g), ([, x, y]) => [
          Number(x),
          Number(y),
        ]),
      ),
  );
}

/** Expects a stroke of three places to go on at the middle one as it came. */
function expectStraight(line: readonly (readonly number[])[] = []): void {
  const directions = line.slice(1).map(([x = 0, y = 0], index) => {
    const [fromX = 0, fromY = 0] = line[index] ?? [];
    return Math.atan2(y - fromY, x - fromX);
  });
  expect(directions).toHaveLength(2);
  expectClose(directions[0], directions[1], 1e-4);
}

describe("a guide on a photo of a turned head", () => {
  const photo = requirePlannable(photograph(turnedHead(syntheticHead(), 9), pose));
  const frame = turnToFront(photo, scale);
  const plan: BrowPlan = planOnPhoto(photo, frame, {
    start: "endocanthion-vertical",
    keepHair: mm(0),
  });
  const svg = drawPlan(plan, { photo: size });

  it.each(["right", "left"] as const)("leaves its landmark on the %s side", (side: Side) => {
    const at = ([x, y]: Point<"px">): readonly number[] => [x, y];
    expectClose(linesOf(svg, `guide start ${side}`)[0]?.[0], at(photo[side].endocanthion), 0.02);
    expectClose(linesOf(svg, `guide tail ${side}`)[0]?.[0], at(photo[side].alare), 0.02);
  });

  it("goes through its dot", () => {
    const [stroke] = linesOf(svg, "guide start left");
    expect(stroke).toHaveLength(3);
    const [x, y] = toPhoto(plan.dots.left.upperStart, frame);
    expectClose(stroke?.[1], [x, y], 0.02);
  });

  it.each(["guide start right", "guide start left"])("is one straight line: %s", (name) => {
    expectStraight(linesOf(svg, name)[0]);
  });

  it.each(["guide tail right", "guide tail left"])(
    "is straight from the outer eye corner to past the tail end, and said to bend at the eye: %s",
    (name) => {
      expectStraight(linesOf(svg, name).at(-1));
      const legend = pictureOf(drawPlan(plan)).texts.map(({ text }) => text);
      expect(legend.join(" ")).toContain("; bent at the eye, since the head is turned");
    },
  );

  it("is straight where the head is not turned", () => {
    const front = requirePlannable(photograph(syntheticHead(), pose));
    const straight = planOnPhoto(front, faceFrame(front, scale), {
      start: "endocanthion-vertical",
    });
    expectStraight(linesOf(drawPlan(straight, { photo: size }), "guide start left")[0]);
    const legend = pictureOf(drawPlan(straight)).texts.map(({ text }) => text);
    expect(legend.join(" ")).not.toContain("head is turned");
  });
});
