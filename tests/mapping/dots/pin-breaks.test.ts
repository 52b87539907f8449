import {
  type Choices,
  type Dot,
  NOTICED_BY_OTHERS,
  type Pin,
  planDots,
  type Side,
  WORKING_TOLERANCES,
} from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { syntheticFace } from "../../support/synthetic-face.js";

const face = syntheticFace();

/** A pin that moves a dot of the free plan outward and up. */
function pin(side: Side, dot: Dot, outward: number, up: number, choices: Choices = {}): Pin {
  const [x, y] = planDots(face, choices).dots[side][dot];
  return { side, dot, at: flatPoint(x + (side === "left" ? outward : -outward), y + up) };
}

const breaks = (pins: readonly Pin[], choices: Choices = {}): readonly string[] =>
  planDots(face, { ...choices, pins })
    .reasons.filter(({ code }) => code.startsWith("pins-break"))
    .map(({ text }) => text);

const bothSides = (dot: Dot, outward: number, up: number): readonly Pin[] => [
  pin("right", dot, 0, 0),
  pin("left", dot, outward, up),
];

describe("a plan with pins says what they break", () => {
  it("nothing where the other side follows the pin, or nothing is pinned", () => {
    expect(breaks([])).toEqual([]);
    expect(breaks([pin("left", "upperArch", 2, 3)])).toEqual([]);
  });

  it.each<[Dot, number, number, readonly string[]]>([
    ["upperStart", 0.9, -0.9, []],
    [
      "upperStart",
      0,
      1.2,
      [
        "Pins break the levels: the start dots lie 1.2 mm unequally high, more than 1 mm; the left one is higher.",
      ],
    ],
    [
      "upperArch",
      -1.4,
      -2,
      [
        "Pins break the levels: the arch dots lie 2.0 mm unequally high, more than 1 mm; the right one is higher.",
        "Pins leave the arch dots 1.4 mm unequally far from the midline, more than 1 mm; the right one is farther out.",
      ],
    ],
    [
      "tailEnd",
      0,
      1.5,
      ["Pins leave the tail ends 1.5 mm unequally high, more than 1 mm; the left one is higher."],
    ],
    ["lowerArch", 0, 0.4, []],
    [
      "lowerArch",
      0,
      0.6,
      [
        "Pins leave the brows 0.6 mm unequally thick at the arch, more than 0.5 mm; the right one is thicker.",
      ],
    ],
  ])("%s moved by (%d, %d) on one side alone", (dot, outward, up, expected) => {
    expect(breaks(bothSides(dot, outward, up))).toEqual(expected);
  });

  it("under the tolerances that were chosen", () => {
    const pins = bothSides("upperStart", 0, 2.5);
    expect(breaks(pins)).toHaveLength(1);
    // Others notice 3.5 mm.
    expect(breaks(pins, { tolerances: NOTICED_BY_OTHERS })).toEqual([]);
    const oneWay = { ...WORKING_TOLERANCES.tolerances.position, limits: { lower: -2 } };
    const tolerances = { name: "one way", tolerances: { position: oneWay } };
    expect(breaks(pins, { tolerances })).toEqual([]);
    expect(breaks(bothSides("upperStart", 0, -2.5), { tolerances })).toEqual([
      "Pins break the levels: the start dots lie 2.5 mm unequally high, more than 2 mm; the right one is higher.",
    ]);
  });

  it("the front share, where one was asked for", () => {
    const asked: Choices = { arch: "brow-length-share" };
    const moved = [pin("left", "upperArch", -3, 0, asked)];
    expect(breaks(moved)).toEqual([]);
    const [right, left, ...more] = breaks(moved, asked);
    expect(more).toEqual([]);
    expect(right).toMatch(/^Pins break the front share: that of the right brow is 0\.[56]\d, /);
    expect(left).toMatch(/left brow is 0\.[56]\d, asked for was 0\.67 ± 0\.03\.$/);
    expect(breaks([pin("left", "upperArch", -1, 0, asked)], asked)).toEqual([]);
  });
});
