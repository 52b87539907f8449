import { test } from "@fast-check/vitest";
import {
  FACE_MIDLINE,
  intersectPolyline,
  lineAlong,
  mirror,
  mm,
  naturalMarks,
} from "brow-geometry";
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

describe("naturalMarks", () => {
  it("takes start and tail end from the ends of the borders", () => {
    const { marks, startLine } = naturalMarks({ upper, lower });
    expect(marks.upperStart).toEqual([15, 20]);
    expect(marks.lowerStart).toEqual([13.5, 12]);
    expect(marks.tailEnd).toEqual([57, 17]);
    // The lower start is the more medial one.
    expect(startLine).toEqual({ through: [13.5, 12], direction: [0, 1] });
  });

  it("hangs the lower dots vertically below the upper ones", () => {
    const { marks, arch, extended } = naturalMarks({ upper, lower });
    if (arch.kind === "flat") expect.fail("flat");
    expect(marks.upperArch).toEqual(arch.at);
    expectClose(marks.upperBody?.[0], (15 + arch.at[0]) / 2, 1e-12);
    expectClose(marks.lowerBody?.[0], marks.upperBody?.[0], 1e-12);
    expectClose(marks.lowerArch?.[0], arch.at[0], 1e-12);
    for (const [dot, border] of [
      [marks.upperBody, upper],
      [marks.lowerBody, lower],
      [marks.lowerArch, lower],
    ] as const) {
      const [on] = intersectPolyline(lineAlong(mm([dot?.[0] ?? 0, 0]), [0, 1]), border);
      expectClose(dot, on?.at, 1e-12);
    }
    expect(extended).toEqual([]);
  });

  it("leaves out what a brow does not show", () => {
    expect(Object.keys(naturalMarks({ upper }).marks)).toEqual([
      "upperStart",
      "upperBody",
      "upperArch",
      "tailEnd",
    ]);
    const flat = naturalMarks({
      upper: mm([
        [15, 20],
        [57, 17],
      ]),
      lower,
    });
    expect(flat.arch.kind).toBe("flat");
    expect(Object.keys(flat.marks)).toEqual(["upperStart", "tailEnd", "lowerStart"]);
  });

  it("extends a lower border that ends too early, and says which dots lie there", () => {
    const short = naturalMarks({ upper, lower: lower.slice(3) });
    expect(short.extended).toEqual(["lowerBody"]);
    expectClose(short.marks.lowerBody?.[1], 20, 1e-12);
  });

  it("carries no depth: the skin says how deep marks lie", () => {
    const deep = upper.map(([x, y]) => mm([x, y, -x / 4]));
    expectClose(naturalMarks({ upper: deep }).marks, naturalMarks({ upper }).marks, 0);
  });

  it("takes 0.26 mm for the points unless told otherwise", () => {
    expect(naturalMarks({ upper }).arch).toEqual(naturalMarks({ upper }, { u: mm(0.26) }).arch);
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
    const error = refusal(() => naturalMarks(brow));
    expect(error.code).toBe(code);
    expect(error.detail).toMatchObject({ where: "naturalMarks", field });
  });

  it.each([
    [-0.1, "out-of-range"],
    [Number.NaN, "not-finite"],
  ])("refuses an uncertainty of %s", (u, code) => {
    expect(refusal(() => naturalMarks({ upper }, { u: mm(u) })).code).toBe(code);
  });

  test.prop([anyBrow()])("gives a mirrored brow mirrored marks", (brow) => {
    const own = naturalMarks(brow);
    const image = naturalMarks({
      upper: mirror(brow.upper, FACE_MIDLINE),
      lower: mirror(brow.lower, FACE_MIDLINE),
    });
    expectClose(image.marks, mirror(own.marks, FACE_MIDLINE), 1e-9);
    expectClose(image.startLine.through, mirror(own.startLine.through, FACE_MIDLINE), 1e-9);
    expectClose(image.arch.rise, own.arch.rise, 1e-9);
    expect(image.arch.kind).toBe(own.arch.kind);
    expect(image.extended).toEqual(own.extended);
  });
});
