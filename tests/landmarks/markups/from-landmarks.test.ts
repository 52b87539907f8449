import { fromLandmarks, say } from "brow-geometry";
import { landmarkUncertainty } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { refusal } from "../../support/refusal.js";

const points = {
  "eye R in": [460, 500],
  "eye R out": [380, 498],
  "eye L in": [560, 501],
  "eye L out": [641, 499],
  b1: [470, 430],
  b2: [420, 405],
  b3: { x: 365, y: 430 },
  lipTop: [510, 650],
  lipBottom: [512, 660],
} as const;

const names = {
  right: {
    endocanthion: "eye R in",
    exocanthion: "eye R out",
    brow: { upper: ["b1", "b2", "b3"] },
  },
  left: { endocanthion: "eye L in", exocanthion: "eye L out" },
  midline: { stomion: ["lipTop", "lipBottom"] },
  standIns: [{ landmark: "stomion", instead: "middle of two lip points" }],
} as const;

const pixels = { coordinates: "pixels" } as const;

describe("a face from points that another program named", () => {
  const face = fromLandmarks(points, names, pixels);

  it("has them under the library's names", () => {
    expect(face).toEqual({
      right: {
        endocanthion: [460, 500],
        exocanthion: [380, 498],
        brow: {
          upper: [
            [470, 430],
            [420, 405],
            [365, 430],
          ],
        },
      },
      left: { endocanthion: [560, 501], exocanthion: [641, 499] },
      midline: { stomion: [511, 655] },
      source: {
        markup: "by-hand",
        uncertainty: { default: 0.26, landmarks: {} },
        ringFactor: { value: 1, u: 0 },
        depth: "none",
      },
      standIns: names.standIns,
      notes: [
        {
          code: "stand-in",
          values: { landmark: "stomion", instead: "middle of two lip points" },
        },
      ],
    });
    expect(landmarkUncertainty(face, "stomion")).toBe(0.26);
  });

  it("takes numbers of a list for names, and the options of every markup", () => {
    const list = [
      [0.36, 0.5],
      [0.44, 0.5],
      [0.56, 0.5],
      [0.64, 0.5],
    ];
    const eyes = {
      right: { endocanthion: 1, exocanthion: 0 },
      left: { endocanthion: 2, exocanthion: 3 },
    };
    const image = { width: 1000, height: 800 };
    const { right } = fromLandmarks(list, eyes, { coordinates: "normalised", image });
    expect(right).toEqual({ endocanthion: [440, 400], exocanthion: [360, 400] });
    const flipped = list.map(([x = 0, y = 0]) => [1 - x, y]);
    expect(
      fromLandmarks(flipped, eyes, { coordinates: "normalised", image, mirrored: "coordinates" })
        .right,
    ).toEqual({ endocanthion: [440, 400], exocanthion: [360, 400] });
  });

  it("counts depth as measured", () => {
    const deep = {
      a: [360, 500, 8],
      b: [440, 500, 0],
      c: [560, 500, 2],
      d: [640, 500, 11],
    };
    const eyes = {
      right: { exocanthion: "a", endocanthion: "b" },
      left: { endocanthion: "c", exocanthion: "d" },
    };
    const { right, source } = fromLandmarks(deep, eyes, pixels);
    expect(source?.depth).toBe("measured");
    expect(right.exocanthion).toEqual([360, 500, -7]);
  });

  it("says by its own name which point is missing", () => {
    const { midline, notes } = fromLandmarks({ ...points, lipTop: null }, names, pixels);
    expect(midline).toEqual({});
    expect(notes?.map((note) => say(note))).toEqual([
      "middle of the mouth is not complete: point lipTop of the markup is missing.",
    ]);
  });

  it.each([
    [
      "a name without a point",
      points,
      { ...names, left: { exocanthion: "eye l out" } },
      'names.left.exocanthion is "eye l out"; needs the name of a point',
    ],
    [
      "a landmark that does not exist",
      points,
      { ...names, left: { exocantion: "eye L out" } },
      'names.left.exocantion is "eye L out"; needs to be left out',
    ],
    [
      "a name of every object",
      points,
      { ...names, left: { exocanthion: "toString" } },
      'names.left.exocanthion is "toString"',
    ],
    [
      "a coordinate that is no number",
      { ...points, b2: [420, Number.NaN] },
      names,
      "points.b2.y is NaN",
    ],
    [
      "sides taken for each other",
      points,
      { right: names.left, left: { endocanthion: "eye R in", exocanthion: "eye R out" } },
      "eye corners from the client's right to the left",
    ],
  ])("refuses %s", (_, given, named, message) => {
    expect(refusal(() => fromLandmarks(given as never, named as never, pixels)).message).toContain(
      message,
    );
  });
});
