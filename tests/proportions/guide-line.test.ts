import { test } from "@fast-check/vitest";
import { distanceFromLine } from "brow-geometry/geometry";
import {
  type Face,
  FACE_MIDLINE,
  type GuideConvention,
  guideLine,
  GUIDES,
  mirror,
  mm,
} from "brow-geometry";
import { requireGuideLandmarks } from "../../src/proportions/internal.js";
import { keysOf } from "../../src/units/internal.js";
import { describe, expect, it } from "vitest";
import { anyFace } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";
import { syntheticFace } from "../support/synthetic-face.js";

const face = syntheticFace();

describe("guideLine", () => {
  it.each([
    ["alare-vertical", 15.7, -38],
    ["endocanthion-vertical", 15.9, 0],
    ["lateral-limbus-vertical", 31.5 + 11.71 / 2, 0],
    ["exocanthion-vertical", 43.9, 0],
    ["eye-width-share", 15.9 + 0.953 * 28, 0],
  ] as const)("draws %s parallel to the midline", (convention, x, y) => {
    for (const [side, sign] of [
      ["right", -1],
      ["left", 1],
    ] as const) {
      const guide = guideLine(face, side, convention);
      expectClose(guide.line, { through: [sign * x, y], direction: [0, 1] }, 1e-12);
      expect(guide).toMatchObject({ mark: GUIDES[convention].mark, convention, side });
      expect(guide.standIns).toEqual([]);
    }
  });

  it.each([
    ["alare-through-pupil", ["alare", "pupil"]],
    ["alare-through-lateral-limbus", ["alare", "limbusLateral"]],
    ["alare-through-exocanthion", ["alare", "exocanthion"]],
  ] as const)("draws %s upwards from the nose wing", (convention, names) => {
    for (const side of ["right", "left"] as const) {
      const { line, from, mark } = guideLine(face, side, convention);
      expect(mark).toBe(GUIDES[convention].mark);
      expect(from).toEqual(names);
      expect(line.through).toEqual(face[side].alare);
      expect(line.direction[1]).toBeGreaterThan(0);
      for (const name of names) expectClose(distanceFromLine(face[side][name], line), 0, 1e-12);
    }
  });

  it.each(keysOf(GUIDES))("draws %s from the landmarks of its table alone", (convention) => {
    const places = Object.fromEntries(
      GUIDES[convention].through.map((name) => [name, face.left[name]]),
    );
    const bare: Face<"mm"> = { right: {}, left: places, midline: {} };
    const guide = guideLine(bare as typeof face, "left", convention);
    expect(guide).toEqual(guideLine(face, "left", convention));
    expect(guide.mark).toBe(GUIDES[convention].mark);
  });

  it("names the landmarks it was drawn from, and what stood in for them", () => {
    const standIns = [
      { landmark: "alare", instead: "outer point of the nostril row" },
      { landmark: "pupil", instead: "middle of the eye" },
    ] as const;
    const guide = guideLine({ ...face, standIns }, "right", "alare-vertical");
    expect(guide.from).toEqual(["alare"]);
    expect(guide.standIns).toEqual([standIns[0]]);
    expect(guideLine({ ...face, standIns }, "right", "endocanthion-vertical").standIns).toEqual([]);
  });

  it("takes the mean of the published shares of eye width, unless told otherwise", () => {
    // Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239: 0.978 (n = 100), 0.929 (n = 105).
    const mean = (100 * 0.978 + 105 * 0.929) / 205;
    expectClose(guideLine(face, "left", "eye-width-share").line.through[0], 15.9 + mean * 28, 0.01);
    expectClose(
      guideLine(face, "left", "eye-width-share", { share: 0.978 }).line.through[0],
      15.9 + 0.978 * 28,
      1e-12,
    );
  });

  it("measures the share parallel to the midline, on slanting eyes too", () => {
    const slanting = {
      right: {},
      left: { endocanthion: mm([16, 0]), exocanthion: mm([44, 7]) },
      midline: {},
    };
    expectClose(
      guideLine(slanting, "left", "eye-width-share", { share: 0.5 }).line.through[0],
      30,
      1e-12,
    );
  });

  it.each([
    [0, "out-of-range"],
    [-0.9, "out-of-range"],
    [Number.NaN, "not-finite"],
  ])("refuses a share of %s", (share, code) => {
    const error = refusal(() => guideLine(face, "left", "eye-width-share", { share }));
    expect(error.code).toBe(code);
    expect(error.detail).toMatchObject({ where: "guideLine", field: "options.share" });
  });

  it("refuses two landmarks in one place", () => {
    const flat = { right: {}, left: { alare: mm([16, -38]), pupil: mm([16, -38]) }, midline: {} };
    expect(refusal(() => guideLine(flat, "left", "alare-through-pupil"))).toMatchObject({
      code: "coincident-points",
      detail: { where: "guideLine", field: "pupil" },
    });
  });

  it("refuses a face whose landmarks are missing at run time, naming them", () => {
    const bare: Face<"mm"> = { right: {}, left: { alare: mm([17, -40]) }, midline: {} };
    expect(refusal(() => requireGuideLandmarks(bare, "alare-vertical"))).toMatchObject({
      code: "missing-landmark",
      detail: { field: "right.alare" },
    });
    const tail = () => guideLine(bare as typeof face, "left", "alare-through-exocanthion");
    expect(refusal(tail)).toMatchObject({
      code: "missing-landmark",
      detail: { where: "guideLine", field: "left.exocanthion" },
    });
  });

  it("refuses a word that is no guide, and says which there are", () => {
    const word = "natural" as GuideConvention;
    const error = refusal(() => guideLine(face, "left", word));
    expect(error.detail).toMatchObject({ where: "guideLine", field: "convention", value: word });
    expect(error.detail.need).toContain("alare-vertical");
  });

  test.prop([anyFace()])("is the mirrored guide on the mirrored face", (any) => {
    const image = mirror(any, FACE_MIDLINE) as typeof any;
    for (const convention of [
      "alare-vertical",
      "alare-through-pupil",
      "eye-width-share",
    ] as const) {
      const guide = guideLine(any, "right", convention).line;
      expectClose(
        guideLine(image, "left", convention).line,
        {
          through: mirror(guide.through, FACE_MIDLINE),
          direction: [-guide.direction[0], guide.direction[1]],
        },
        1e-9,
      );
    }
  });
});
