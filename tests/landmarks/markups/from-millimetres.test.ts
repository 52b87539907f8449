import { type AxisDirection, mapFace } from "brow-geometry/landmarks";
import { faceFromMillimetres, type PlainFace, say } from "brow-geometry";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

const scan: PlainFace = {
  right: { endocanthion: [102, 60, 31], exocanthion: [74, 58, 26] },
  left: { endocanthion: [134, 60, 33], exocanthion: [162, 59, 25] },
  midline: { subnasale: [118, 101, 47] },
};

describe("a face from millimetres", () => {
  it("is turned into the axes of the face space, its origin between the inner eye corners", () => {
    expect(faceFromMillimetres(scan, { axes: { left: "x", up: "-y", viewer: "z" } })).toEqual({
      right: { endocanthion: [-16, 0, -1], exocanthion: [-44, 2, -6] },
      left: { endocanthion: [16, 0, 1], exocanthion: [44, 1, -7] },
      midline: { subnasale: [0, -41, 15] },
    });
  });

  it("keeps the source that it is told", () => {
    const source = {
      markup: "scan",
      uncertainty: { default: 0.1 as never },
      ringFactor: { value: 1, u: 0 },
      depth: "measured",
    } as const;
    const axes = { left: "x", up: "-y", viewer: "z" } as const;
    expect(faceFromMillimetres(scan, { axes, source }).source).toBe(source);
  });

  it.each([
    ["no face", undefined, { axes: { left: "x", up: "y" } }, "face is missing"],
    ["half a face", { right: {}, left: {} }, { axes: {} }, "midline is missing"],
    ["no options", scan, undefined, "options is missing; needs an object with axes"],
    ["no axes", scan, {}, "options.axes is missing"],
    ["half the axes", scan, { axes: { left: "x" } }, "axes is"],
  ])("is refused from %s", (_, face, options, message) => {
    expect(refusal(() => faceFromMillimetres(face as never, options as never)).message).toContain(
      message,
    );
  });

  it("keeps its stand-ins, and notes those that it holds", () => {
    const axes = { left: "x", up: "-y", viewer: "z" } as const;
    const standIns = [
      { landmark: "subnasale", instead: "base of the septum" },
      { landmark: "menton", instead: "edge of the scan" },
    ] as const;
    const face = faceFromMillimetres({ ...scan, standIns }, { axes });
    expect(face.standIns).toEqual(standIns);
    expect(face.notes?.map((note) => [note.code, say(note)])).toEqual([
      [
        "stand-in",
        "The base of the nose is only approximated: base of the septum. Check by eye whatever rests on it.",
      ],
    ]);
  });

  it("is the same whatever axes the other program has, and wherever its origin lies", () => {
    const turns: readonly (readonly [AxisDirection, AxisDirection, AxisDirection])[] = [
      ["x", "y", "z"],
      ["-x", "y", "-z"],
      ["y", "z", "x"],
      ["z", "-y", "x"],
    ];
    fc.assert(
      fc.property(
        anyFace(),
        fc.constantFrom(...turns),
        fc.tuple(fc.integer({ min: -500, max: 500 }), fc.integer({ min: -500, max: 500 })),
        (face, [left, up, viewer], [dx, dy]) => {
          const deep = mapFace(face, (p) => [p[0], p[1], 0.2 * p[0] - 0.1 * p[1]] as never);
          const foreign = mapFace<"mm", "mm">(deep, (point) => {
            const place: Partial<Record<string, number>> = {};
            [left, up, viewer].forEach((direction, index) => {
              const sign = direction.startsWith("-") ? -1 : 1;
              place[direction.replace("-", "")] = sign * (point[index] ?? 0);
            });
            return [(place["x"] ?? 0) + dx, (place["y"] ?? 0) + dy, place["z"]] as never;
          });
          const plain = faceFromMillimetres(deep, {
            axes: { left: "x", up: "y", viewer: "z" },
          });
          const axes = { left, up, viewer };
          expectClose(faceFromMillimetres(foreign, { axes }), plain, 1e-9);
        },
      ),
    );
  });

  it("takes flat points by two axes", () => {
    const flat: PlainFace = {
      right: { endocanthion: [1, -16] },
      left: { endocanthion: [1, 16] },
      midline: {},
    };
    expect(faceFromMillimetres(flat, { axes: { left: "y", up: "x" } }).right).toEqual({
      endocanthion: [-16, 0],
    });
  });

  it("leaves depth where it is when a corner has none", () => {
    const partly: PlainFace = { ...scan, right: { endocanthion: [102, 60] } };
    const axes = { left: "x", up: "-y", viewer: "z" } as const;
    expect(faceFromMillimetres(partly, { axes }).left.exocanthion).toEqual([44, 1, 25]);
  });

  it.each([
    [
      "one axis twice",
      scan,
      { left: "x", up: "-x", viewer: "z" },
      "out-of-range",
      "different axes",
    ],
    ["an unknown axis", scan, { left: "x", up: "up" }, "out-of-range", "different axes"],
    ["depth without a word on it", scan, { left: "x", up: "-y" }, "out-of-range", "axes.viewer"],
    [
      "an axis that flat points do not have",
      { right: { endocanthion: [1, 2] }, left: {}, midline: {} },
      { left: "x", up: "z" },
      "out-of-range",
      "axes.up is [1, 2]; needs an axis that every point has",
    ],
    [
      "no inner corner",
      { ...scan, left: {} },
      { left: "x", up: "-y", viewer: "z" },
      "missing-landmark",
      "left.endocanthion is missing",
    ],
    [
      "axes that turn the face over",
      scan,
      { left: "-x", up: "-y", viewer: "z" },
      "sides-swapped",
      "the client's own right and left, y up",
    ],
    [
      "a landmark under another name",
      { ...scan, left: { ...scan.left, canthus: [150, 60, 30] } },
      { left: "x", up: "-y", viewer: "z" },
      "out-of-range",
      "left.canthus is [150, 60, 30]; needs another name: one of endocanthion",
    ],
    [
      "a landmark of a side on the midline",
      { ...scan, midline: { pupil: [118, 101, 47] } },
      { left: "x", up: "-y", viewer: "z" },
      "out-of-range",
      "midline.pupil is [118, 101, 47]; needs another name: one of glabella",
    ],
    [
      "a landmark that is nothing",
      { ...scan, midline: { menton: null } },
      { left: "x", up: "-y", viewer: "z" },
      "not-parsed",
      "midline.menton is null; needs [x, y], [x, y, z]",
    ],
    [
      "a brow without its upper border",
      { ...scan, left: { ...scan.left, brow: {} } },
      { left: "x", up: "-y", viewer: "z" },
      "not-parsed",
      "left.brow.upper is missing; needs a list of points",
    ],
    [
      "a coordinate that is no number",
      { ...scan, midline: { subnasale: [1, Number.NaN, 2] } },
      { left: "x", up: "-y", viewer: "z" },
      "not-finite",
      "subnasale is [1, NaN, 2]",
    ],
  ])("refuses %s", (_, face, axes, code, message) => {
    const error = refusal(() => faceFromMillimetres(face as never, { axes: axes as never }));
    expect(error.code).toBe(code);
    expect(error.message).toContain(message);
  });
});
