import { test } from "@fast-check/vitest";
import {
  type Brow,
  eachSide,
  type Face,
  FACE_MIDLINE,
  measureFace,
  mirror,
  mm,
  naturalDots,
  outline,
  type Skin,
  skinOf,
} from "brow-geometry";
import {
  type BrowBorders,
  completeDots,
  measureSide,
  naturalOutline,
  outlineArea,
  outlineBorders,
} from "brow-geometry/proportions";
import { describe, expect, it } from "vitest";
import { DOT_NAMES } from "../../src/landmarks/internal.js";
import { anyDrawnBrow, anyFace, anyOutlineShape, squareFront } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { syntheticFace } from "../support/synthetic-face.js";

const flat: Skin = { kind: "flat" };
const face = syntheticFace();
const dots = {
  upperStart: mm([13, 21]),
  upperBody: mm([29, 25]),
  upperArch: mm([45, 29]),
  tailEnd: mm([57, 24]),
  lowerStart: mm([13, 14]),
  lowerBody: mm([29, 18.5]),
  lowerArch: mm([45, 23]),
};

describe("measureSide", () => {
  it("reads every entry on complete dots", () => {
    const read = measureSide(dots, {
      side: "left",
      landmarks: face.left,
      skin: flat,
      borders: bordersOf(dots),
    });
    expectClose(
      read,
      {
        front: Math.hypot(32, 8),
        tail: 13,
        frontAlong: Math.hypot(32, 8),
        tailAlong: 13,
        frontOnPhoto: Math.hypot(32, 8),
        tailOnPhoto: 13,
        frontShare: Math.hypot(32, 8) / (Math.hypot(32, 8) + 13),
        startDistance: 13,
        archDistance: 45,
        tailDistance: 57,
        startHeight: 21,
        archHeight: 29,
        tailHeight: 24,
        startThickness: 7,
        bodyThickness: 6.5,
        archThickness: 6,
        exocanthionToTailEnd: Math.hypot(57 - 43.9, 24),
        // Lower border at x = 31.5: 2.5 × 4.5 / 16 above the body's; lid margin 4.6.
        lidToBrow: 18.5 + 0.703125 - 4.6,
        frontInclination: (Math.atan(8 / 32) * 180) / Math.PI,
        browInclination: (Math.atan(3 / 44) * 180) / Math.PI,
        // Three strips: 16·(7 + 6.5)/2 + 16·(6.5 + 6)/2 + 12·6/2.
        area: 244,
      },
      1e-9,
    );
  });

  it("gives the other side's brow the same readings", () => {
    const mirrored = Object.fromEntries(
      DOT_NAMES.map((dot) => [dot, mm([-dots[dot][0], dots[dot][1]])]),
    );
    expectClose(
      measureSide(mirrored, { side: "right", landmarks: face.right, skin: flat }),
      measureSide(dots, { side: "left", landmarks: face.left, skin: flat }),
      1e-12,
    );
  });

  it("leaves out what cannot be had", () => {
    const bare: Face<"mm">["left"] = {};
    const read = (some: Parameters<typeof measureSide>[0]): readonly string[] =>
      Object.keys(measureSide(some, { side: "left", landmarks: bare, skin: flat })).sort();
    expect(read({})).toEqual([]);
    expect(read({ upperStart: dots.upperStart })).toEqual(["startDistance", "startHeight"]);
    expect(read({ upperStart: dots.upperStart, tailEnd: dots.tailEnd })).toEqual([
      "browInclination",
      "startDistance",
      "startHeight",
      "tailDistance",
      "tailHeight",
    ]);
    const { pupil: _, ...withoutPupil } = face.left;
    expect(
      measureSide(dots, { side: "left", landmarks: withoutPupil, skin: flat }),
    ).not.toHaveProperty("lidToBrow");
  });

  it("reads thickness to the hair where it is known, below a start dot that has no partner", () => {
    const brow = {
      upper: mm([
        [15, 20],
        [38, 26],
        [58, 18],
      ]),
      lower: mm([
        [13, 12],
        [38, 20],
        [56, 17],
      ]),
    };
    const natural = naturalDots(brow).dots;
    const read = measureSide(natural, { side: "left", landmarks: {}, skin: flat, borders: brow });
    expectClose(read.startThickness, 20 - (12 + (2 / 25) * 8), 1e-9);
    expect(
      measureSide(
        { upperStart: dots.upperStart },
        { side: "left", landmarks: {}, skin: flat, borders: { upper: brow.upper } },
      ),
    ).not.toHaveProperty("startThickness");
  });

  it("lays ruler and tape on the skin", () => {
    // On z = −x³/L², L = 87.8: ruler from the depths; tape ∫√(slope² + 1 + 9x⁴/L⁴) dx, by Simpson.
    const modelled: Skin = { kind: "modelled", width: mm(87.8), relativeU: 0.12 };
    const read = measureSide(dots, { side: "left", landmarks: {}, skin: modelled });
    const depth = (x: number): number => -(x ** 3) / 87.8 ** 2;
    expectClose(read.tail, Math.hypot(12, 5, depth(57) - depth(45)), 1e-9);
    const step = (x: number): number => Math.sqrt(1 + (5 / 12) ** 2 + (9 * x ** 4) / 87.8 ** 4);
    const count = 1000;
    let tape = 0;
    for (let index = 0; index < count; index += 1) {
      const x = 45 + (12 * index) / count;
      const width = 12 / count;
      tape += (width / 6) * (step(x) + 4 * step(x + width / 2) + step(x + width));
    }
    expectClose(read.tailAlong, tape, 1e-8);
    expectClose(read.tailOnPhoto, 13, 1e-12);
  });

  it.each([
    ["left", 1],
    ["right", -1],
  ] as const)(
    "reads the slope of a %s brow against the horizontal, up where the tail rises",
    (side, sign) => {
      // A chord of 4 up in 40 out: arctan 0.1 = 5.710593°; trigonometric table.
      const sloping = (up: number) => ({
        upperStart: mm([sign * 15, 20]),
        tailEnd: mm([sign * 55, 20 + up]),
      });
      const context = { side, landmarks: {}, skin: flat };
      expectClose(measureSide(sloping(4), context).browInclination, 5.710593, 1e-6);
      expectClose(measureSide(sloping(-4), context).browInclination, -5.710593, 1e-6);
    },
  );

  it("reads an arch below the start as a falling front", () => {
    const falling = { upperStart: mm([-15, 24]), upperArch: mm([-40, 21]) };
    const read = measureSide(falling, { side: "right", landmarks: {}, skin: flat });
    expectClose(read.frontInclination, (-Math.atan(3 / 25) * 180) / Math.PI, 1e-12);
  });
});

function bordersOf(of: typeof dots): Brow<"mm"> {
  return {
    upper: [of.upperStart, of.upperBody, of.upperArch, of.tailEnd],
    lower: [of.lowerStart, of.lowerBody, of.lowerArch, of.tailEnd],
  };
}

describe("outer eye corner to tail end", () => {
  it("is read from an eye corner that lies behind the skin of the brow", () => {
    // Canonical face mesh (open model, Apache-2.0), in mm about the middle of the inner canthi:
    // exocanthion (44.5, 0) and tail end (57.2, 15.9) lie 3.4 apart in depth, 20.66 by ruler.
    const skin = { kind: "modelled", width: mm(0.987 * 88.9), relativeU: 0.12 } as const;
    const { exocanthionToTailEnd } = measureSide(
      { tailEnd: mm([57.2, 15.9]) },
      { side: "left", landmarks: { exocanthion: mm([44.5, 0]) }, skin },
    );
    expect(exocanthionToTailEnd).toBeCloseTo(20.66, 0);
    expect(Math.abs((exocanthionToTailEnd ?? 0) - 20.66)).toBeLessThan(0.2);
  });
});

describe("measureSide on borders", () => {
  it("lays the tape along the outline, along hair, or from dot to dot", () => {
    // y = 26 − 6 ((45 − x) / 30)²: with a = 6/900 and u = 30, u/2 √(1 + 4a²u²) + asinh(2au) / 4a.
    const dots = { upperStart: mm([15, 20]), upperArch: mm([45, 26]), tailEnd: mm([60, 18]) };
    const round = { angularity: 0 };
    const complete = completeDots(dots, undefined, round);
    const drawn = outline(complete, round);
    const context = { side: "left", landmarks: {}, skin: flat } as const;
    const parabola = (a: number, u: number): number =>
      (u / 2) * Math.sqrt(1 + 4 * a * a * u * u) + Math.asinh(2 * a * u) / (4 * a);
    const onOutline = measureSide(complete, { ...context, borders: drawn });
    expectClose(onOutline.frontAlong, parabola(6 / 900, 30), 1e-9);
    expectClose(onOutline.tailAlong, parabola(8 / 225, 15), 1e-9);
    expectClose(onOutline.area, outlineArea(drawn), 1e-12);

    const hair = {
      upper: mm([
        [15, 20],
        [30, 28],
        [45, 26],
        [52, 25],
        [60, 18],
      ]),
    };
    const onHair = measureSide(dots, { ...context, borders: hair });
    expectClose(onHair.frontAlong, Math.hypot(15, 8) + Math.hypot(15, 2), 1e-12);
    expectClose(onHair.tailAlong, Math.hypot(7, 1) + Math.hypot(8, 7), 1e-12);
    expectClose(measureSide(dots, context).tailAlong, 17, 1e-12);
  });

  test.prop([anyDrawnBrow(), anyOutlineShape()])(
    "reads an outline as its borders are read, on the skin",
    ({ upper, stations }, anyShape) => {
      // As polylines, borders end where the front begins.
      const shape = squareFront(anyShape);
      const complete = completeDots(upper, stations, shape);
      const drawn = outline(complete, shape);
      const skin: Skin = { kind: "modelled", width: mm(87.8), relativeU: 0.12 };
      const landmarks = { ...face.left, pupil: mm([upper.upperStart[0] + 9, 0]) };
      const read = (borders: BrowBorders): ReturnType<typeof measureSide> =>
        measureSide(complete, { side: "left", landmarks, skin, borders });
      expectClose(read(drawn), read(outlineBorders(drawn, mm(0.0002))), 0.02);
    },
  );

  it("reads an outline that turns back, too", () => {
    const brow = {
      upper: mm([
        [15, 20],
        [60, 20],
      ]),
      lower: mm([
        [15, 12],
        [40, 16],
        [38, 18],
        [60, 20],
      ]),
    };
    const read = measureSide(
      { upperStart: mm([15, 20]) },
      { side: "left", landmarks: {}, skin: flat, borders: naturalOutline(brow) },
    );
    expectClose(read.startThickness, 8, 1e-12);
  });
});

describe("measureFace", () => {
  it("reads a symmetric face alike on both sides", () => {
    const face = syntheticFace();
    const dots = eachSide((side) => naturalDots(face[side].brow).dots);
    const { right, left, startToStart } = measureFace(dots, face, skinOf(face));
    expectClose(right, left, 1e-12);
    expectClose(startToStart, 29, 1e-12);
  });

  it("leaves out the distance between starts where one is unknown", () => {
    const face = { right: {}, left: {}, midline: {} };
    const dots = { right: {}, left: { upperStart: mm([13, 21]) } };
    expect(measureFace(dots, face, { kind: "flat" })).toEqual({
      right: {},
      left: { startDistance: 13, startHeight: 21 },
    });
  });

  test.prop([anyFace(1.5)])("exchanges the sides of a mirrored face", (face) => {
    const image = mirror(face, FACE_MIDLINE) as typeof face;
    const read = (of: typeof face): ReturnType<typeof measureFace> =>
      measureFace(
        eachSide((side) => naturalDots(of[side].brow).dots),
        of,
        skinOf(of),
        eachSide((side) => of[side].brow),
      );
    const [own, mirrored] = [read(face), read(image)];
    expectClose(mirrored, { ...own, right: own.left, left: own.right }, 1e-6);
  });
});
