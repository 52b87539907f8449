import { test } from "@fast-check/vitest";
import {
  type Brow,
  FACE_MIDLINE,
  faceFrame,
  mirror,
  mm,
  planBrows,
  planDots,
  planOnPhoto,
  planOverlap,
  type PlannableFace,
  px,
  scaleFromReference,
  shapeFindings,
} from "brow-geometry";
import { BROW_HEIGHTS, withoutHair } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { isHair } from "../../../src/mapping/dots/is-hair.js";
import { heightOver } from "../../../src/geometry/internal.js";
import { toFace } from "../../../src/symmetry/index.js";
import { SIDES } from "../../../src/units/internal.js";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { londonFaces } from "../../support/london-faces.js";
import { photograph } from "../../support/photograph.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";

const BROW: Brow<"mm"> = {
  upper: mm([
    [15, 20],
    [38, 27],
    [50, 23],
    [57, 18],
  ]),
  lower: mm([
    [15, 13],
    [38, 21],
    [50, 19],
    [57, 17],
  ]),
};

const side = (sign: 1 | -1) => ({
  endocanthion: mm([sign * 16, 0]),
  exocanthion: mm([sign * 44, 0]),
  alare: mm([sign * 17, -38]),
});
const bare = { right: side(-1), left: side(1), midline: {} };
const leftOnly = { ...bare, left: { ...side(1), brow: BROW } };

describe("one bare brow", () => {
  const plan = planBrows(withoutHair(leftOnly, "right"));

  it("takes the other one's shape, mirrored, and follows it", () => {
    expect(withoutHair(leftOnly, "right").right.brow).toEqual(mirror(BROW, FACE_MIDLINE));
    expect(plan.choices.lead).toBe("left");
    expect(plan.dots.right).toEqual(mirror(plan.dots.left, FACE_MIDLINE));
  });

  it("is placed, neither moved, removed nor filled", () => {
    const kinds = (of: string): ReadonlySet<string> =>
      new Set(plan.moves.filter((move) => move.side === of).map(({ kind }) => kind));
    expect(kinds("right")).toEqual(new Set(["place"]));
    expect(kinds("left").has("place")).toBe(false);
    const { right, left } = planOverlap(plan);
    expect(right).toBeUndefined();
    expect(left).toBeDefined();
  });

  it("stays as guessed as the brow that it mirrors", () => {
    const standIns = [{ landmark: "brow", instead: "brow-template" }] as const;
    const face = withoutHair({ ...leftOnly, standIns }, "right");
    expect(SIDES.map((one) => isHair(face, one))).toEqual([false, false]);
    expect(face.standIns).toEqual([
      { landmark: "brow", instead: "brow-template", side: "left" },
      { landmark: "brow", instead: "mirrored-brow", side: "right" },
    ]);
  });

  it("is drawn through the frame of a photo", () => {
    const face = syntheticFace();
    const photo = photograph(face, { factor: 0.1, tilt: 12, at: [1000, 900] });
    const frame = faceFrame(photo, scaleFromReference(px([0, 0]), px([500, 0]), mm(50)));
    const onPhoto = planOnPhoto(withoutHair(photo, "left", { frame }), frame);
    const inFace = planDots(withoutHair(toFace(photo, frame), "left"));
    expectClose(onPhoto.dots, inFace.dots, 1e-9);
    expect(onPhoto.choices.lead).toBe("right");
  });

  test.prop([anyFace()])("mirrors the other one on every face, whatever stood there", (face) => {
    const { dots } = planDots(withoutHair(face, "right"), { arch: "exocanthion-vertical" });
    expectClose(dots.right, mirror(dots.left, FACE_MIDLINE), 1e-9);
  });

  test.prop([anyFace()])("is planned on the mirrored face as its mirror image", (face) => {
    const choices = { arch: "exocanthion-vertical" } as const;
    const { dots } = planDots(withoutHair(face, "right"), choices);
    const image = planDots(withoutHair(mirror(face, FACE_MIDLINE), "left"), choices);
    expectClose(image.dots.left, mirror(dots.right, FACE_MIDLINE), 1e-9);
    expectClose(image.dots.right, mirror(dots.left, FACE_MIDLINE), 1e-9);
  });
});

describe("two bare brows", () => {
  it("stand at published heights over corners and pupil, and end level with their start", () => {
    const pupil = mm([29, 1]);
    const seen = { ...bare, left: { ...bare.left, pupil } };
    const { upper, lower } = withoutHair(seen, "both", { heights: "women-20-30" }).left.brow;
    // Matros et al., Plast Reconstr Surg 2009;124:1296.
    const places = upper.map(([x, y]) => [x, y]);
    expect(places.slice(0, 3)).toEqual([
      [16, 15.7],
      [29, 19.8],
      [44, 21.3],
    ]);
    // The line from (17, −38) through (44, 0) is at 15.7 after 27 · 53.7/38.
    expectClose(places[3] ?? [], [55.155, 15.7], 1e-3);
    expect(lower).toBeUndefined();
  });

  it("stand in the mean of both groups where nobody says which", () => {
    const { upper } = withoutHair(bare, "both").right.brow;
    // Half of 15.7 and 19.1, of 19.8 and 22.4, of 21.3 and 22.4; the pupil half-way between the corners.
    expectClose(
      upper.slice(0, 3).map(([x, y]) => [x, y]),
      [
        [-16, 17.4],
        [-30, 21.1],
        [-44, 21.85],
      ],
      1e-9,
    );
  });

  it("stand on guides, as uncertain in height as people and groups differ", () => {
    const plan = planBrows(withoutHair(bare, "both"));
    expect(plan.dots.left.upperStart[0]).toBe(17);
    expect(plan.measures.left.startHeight?.u).toBeGreaterThan(6.7);
    expect(plan.measures.left.startHeight?.u).toBeLessThan(7.4);
    expect(new Set(plan.moves.map(({ kind }) => kind))).toEqual(new Set(["place"]));
    expect(planOverlap(plan)).toEqual({ right: undefined, left: undefined });
    expect(shapeFindings(plan)).toEqual([]);
  });

  it("stand where the artist pins them", () => {
    const at = mm([18, 24]);
    const pins = [{ side: "left", dot: "upperStart", at }] as const;
    const { dots } = planDots(withoutHair(bare, "both"), { pins });
    expect([...dots.left.upperStart]).toEqual([18, 24]);
    expect([...dots.right.upperStart]).toEqual([-18, 24]);
  });

  it("forget what a detector guessed, and how sure it was", () => {
    const guessed: PlannableFace = {
      ...leftOnly,
      right: { ...side(-1), brow: mirror(BROW, FACE_MIDLINE) },
      standIns: [
        { landmark: "alare", instead: "wing-base" },
        { landmark: "brow", instead: "brow-template" },
      ],
      source: {
        markup: "mesh-478",
        uncertainty: { default: mm(1.3) },
        ringFactor: { value: 1.11, u: 0.03 },
        depth: "estimated",
      },
    };
    const { source, standIns } = withoutHair(guessed, "both");
    expect(standIns).toEqual([
      { landmark: "alare", instead: "wing-base" },
      { landmark: "brow", instead: "average-heights" },
    ]);
    expect(source?.uncertainty.default).toBe(1.3);
    expectClose(source?.uncertainty.landmarks?.brow ?? NaN, Math.SQRT2 * Math.hypot(4, 5.5), 1e-12);
  });
});

it("takes people to differ in height as 102 faces drawn by hand do", () => {
  // Face Research Lab London Set, doi 10.6084/m9.figshare.5047666.v5: heights of the upper border.
  const places = ["endocanthion", "pupil", "exocanthion"] as const;
  const off: number[] = [];
  for (const place of places) {
    const heights = londonFaces().flatMap(({ hand, millimetres }) => {
      const scale = scaleFromReference(px([0, 0]), px([100, 0]), mm(100 * millimetres));
      const face = toFace(hand, faceFrame(hand, scale));
      return SIDES.flatMap((one) => {
        const { brow, [place]: landmark } = face[one];
        const height = brow && landmark && heightOver(mm(landmark[0]), brow.upper);
        return height === undefined ? [] : [height];
      });
    });
    const mean = heights.reduce<number>((sum, height) => sum + height, 0) / heights.length;
    const spread = Math.sqrt(
      heights.reduce<number>((sum, height) => sum + (height - mean) ** 2, 0) / (heights.length - 1),
    );
    expect(heights).toHaveLength(204);
    expectClose(spread, 4, 0.5);
    const groups = Object.values(BROW_HEIGHTS).map((group) => group[place]);
    const published = groups.reduce((sum, height) => sum + height, 0) / groups.length;
    expectClose(mean - published, 5.5, 0.9);
    off.push(...heights.map((height) => height - published));
    for (const group of Object.values(BROW_HEIGHTS)) {
      expect(mean - group[place]).toBeGreaterThan(3.4);
      expect(mean - group[place]).toBeLessThan(8);
    }
  }
  const squares = off.reduce((sum, one) => sum + one ** 2, 0);
  expectClose(Math.sqrt(squares / off.length), Math.hypot(4, 5.5), 0.1);
});

describe("withoutHair refuses", () => {
  it("a side whose other brow is missing too", () => {
    expect(refusal(() => withoutHair(bare, "right")).message).toContain(
      'withoutHair: left.brow is missing; needs a brow to mirror, or "both" where neither has hair',
    );
  });

  it("a face that lacks another landmark of a plan", () => {
    const { alare: _, ...eye } = side(1);
    expect(refusal(() => withoutHair({ ...bare, left: eye }, "both")).detail.field).toBe(
      "left.alare",
    );
  });

  it("a word that is no side or no group", () => {
    expect(() => withoutHair(leftOnly, "one" as "right")).toThrow("withoutHair: bare");
    expect(() => withoutHair(bare, "both", { heights: "men" as "women-20-30" })).toThrow(
      "withoutHair: heights",
    );
  });

  it("an eye below the nose wing", () => {
    const low = { ...side(1), exocanthion: mm([44, -40]) };
    expect(refusal(() => withoutHair({ ...bare, left: low }, "both")).code).toBe("no-solution");
  });
});
