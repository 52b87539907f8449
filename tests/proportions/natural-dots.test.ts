import { test } from "@fast-check/vitest";
import { FACE_MIDLINE, mirror, mm, naturalDots } from "brow-geometry";
import { intersectPolyline, lineAlong } from "brow-geometry/geometry";
import { describe, expect, it } from "vitest";
import { anyBrow } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";

const upper = mm([
  [15, 20],
  [22, 23],
  [30, 25.5],
  [38, 26.5],
  [45, 25],
  [51, 22],
  [57, 17],
]);
const lower = mm([
  [13.5, 12],
  [22, 15],
  [30, 18],
  [38, 20],
  [45, 20],
  [51, 19],
  [56, 16.5],
]);

describe("naturalDots", () => {
  it("takes start and tail end from the ends of the borders", () => {
    const { dots, startLine } = naturalDots({ upper, lower });
    expect(dots.upperStart).toEqual([15, 20]);
    expect(dots.lowerStart).toEqual([13.5, 12]);
    expect(dots.tailEnd).toEqual([57, 17]);
    // The lower start is the more medial one.
    expect(startLine).toEqual({ through: [13.5, 12], direction: [0, 1] });
  });

  it("hangs the lower dots vertically below the upper ones", () => {
    const { dots, arch, extended } = naturalDots({ upper, lower });
    if (arch.kind === "flat") expect.fail("flat");
    expect(dots.upperArch).toEqual(arch.at);
    expectClose(dots.upperBody?.[0], (15 + arch.at[0]) / 2, 1e-12);
    expectClose(dots.lowerBody?.[0], dots.upperBody?.[0], 1e-12);
    expectClose(dots.lowerArch?.[0], arch.at[0], 1e-12);
    for (const [dot, border] of [
      [dots.upperBody, upper],
      [dots.lowerBody, lower],
      [dots.lowerArch, lower],
    ] as const) {
      const [on] = intersectPolyline(lineAlong(mm([dot?.[0] ?? 0, 0]), [0, 1]), border);
      expectClose(dot, on?.at, 1e-12);
    }
    expect(extended).toEqual([]);
  });

  it("leaves out what a brow does not show", () => {
    expect(Object.keys(naturalDots({ upper }).dots)).toEqual([
      "upperStart",
      "upperBody",
      "upperArch",
      "tailEnd",
    ]);
    const flat = naturalDots({
      upper: mm([
        [15, 20],
        [57, 17],
      ]),
      lower,
    });
    expect(flat.arch.kind).toBe("flat");
    expect(Object.keys(flat.dots)).toEqual(["upperStart", "tailEnd", "lowerStart"]);
  });

  it("extends a lower border that ends too early, and says which dots lie there", () => {
    const short = naturalDots({ upper, lower: lower.slice(3) });
    expect(short.extended).toEqual(["lowerBody"]);
    expectClose(short.dots.lowerBody?.[1], 20, 1e-12);
  });

  it("carries no depth: the skin says how deep dots lie", () => {
    const deep = upper.map(([x, y]) => mm([x, y, -x / 4]));
    expectClose(naturalDots({ upper: deep }).dots, naturalDots({ upper }).dots, 0);
  });

  it("takes 0.26 mm for the points unless told otherwise", () => {
    expect(naturalDots({ upper }).arch).toEqual(naturalDots({ upper }, { u: mm(0.26) }).arch);
  });

  it.each([
    ["an empty brow", [], undefined, "wrong-count", "brow.upper"],
    ["a single point", [[15, 20]], undefined, "wrong-count", "brow.upper"],
    [
      "points in one place",
      [
        [15, 20],
        [15, 20],
      ],
      undefined,
      "coincident-points",
      "brow.upper",
    ],
    [
      "a border that returns to its start",
      [
        [15, 20],
        [40, 26],
        [15, 20],
      ],
      undefined,
      "coincident-points",
      "brow.upper",
    ],
    [
      "a lower border of one point",
      [
        [15, 20],
        [57, 17],
      ],
      [[15, 12]],
      "wrong-count",
      "brow.lower",
    ],
    [
      "a point that is no number",
      [
        [15, 20],
        [Number.NaN, 17],
      ],
      undefined,
      "not-finite",
      "brow.upper[1]",
    ],
  ] as const)("refuses %s", (_, points, below, code, field) => {
    const brow = { upper: mm(points), ...(below === undefined ? {} : { lower: mm(below) }) };
    const error = refusal(() => naturalDots(brow));
    expect(error.code).toBe(code);
    expect(error.detail).toMatchObject({ where: "naturalDots", field });
  });

  it.each([
    [-0.1, "out-of-range"],
    [Number.NaN, "not-finite"],
  ])("refuses an uncertainty of %s", (u, code) => {
    expect(refusal(() => naturalDots({ upper }, { u: mm(u) })).code).toBe(code);
  });

  test.prop([anyBrow()])("gives a mirrored brow mirrored dots", (brow) => {
    const own = naturalDots(brow);
    const image = naturalDots({
      upper: mirror(brow.upper, FACE_MIDLINE),
      lower: mirror(brow.lower, FACE_MIDLINE),
    });
    expectClose(image.dots, mirror(own.dots, FACE_MIDLINE), 1e-9);
    expectClose(image.startLine.through, mirror(own.startLine.through, FACE_MIDLINE), 1e-9);
    expectClose(image.arch.rise, own.arch.rise, 1e-9);
    expect(image.arch.kind).toBe(own.arch.kind);
    expect(image.extended).toEqual(own.extended);
  });
});
