import { test } from "@fast-check/vitest";
import { archGuide, distanceFromLine, FACE_MIDLINE, mirror, mm } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyFace } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";
import { syntheticFace } from "../support/synthetic-face.js";

const face = syntheticFace();

describe("archGuide", () => {
  it.each([
    ["lateral-limbus-vertical", 31.5 + 11.71 / 2],
    ["exocanthion-vertical", 43.9],
    ["eye-width-share", 15.9 + 0.953 * 28],
  ] as const)("draws %s parallel to the midline", (convention, x) => {
    for (const [side, sign] of [
      ["right", -1],
      ["left", 1],
    ] as const) {
      const { line } = archGuide(face, side, convention);
      expectClose(line, { through: [sign * x, 0], direction: [0, 1] }, 1e-12);
    }
  });

  it.each([
    ["alare-through-pupil", ["alare", "pupil"]],
    ["alare-through-lateral-limbus", ["alare", "limbusLateral"]],
  ] as const)("draws %s upwards from the nose wing", (convention, names) => {
    const { line, from } = archGuide(face, "right", convention);
    expect(from).toEqual(names);
    expect(line.through).toEqual([-15.7, -38]);
    expect(line.direction[1]).toBeGreaterThan(0);
    for (const name of names) expectClose(distanceFromLine(face.right[name], line), 0, 1e-12);
  });

  it("takes the mean of the published shares of eye width, unless told otherwise", () => {
    // Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239: 0.978 (n = 100), 0.929 (n = 105).
    const mean = (100 * 0.978 + 105 * 0.929) / 205;
    expectClose(archGuide(face, "left", "eye-width-share").line.through[0], 15.9 + mean * 28, 0.01);
    expectClose(
      archGuide(face, "left", "eye-width-share", { share: 0.978 }).line.through[0],
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
      archGuide(slanting, "left", "eye-width-share", { share: 0.5 }).line.through[0],
      30,
      1e-12,
    );
  });

  it.each([
    [0, "out-of-range"],
    [-0.9, "out-of-range"],
    [Number.NaN, "not-finite"],
  ])("refuses a share of %s", (share, code) => {
    const error = refusal(() => archGuide(face, "left", "eye-width-share", { share }));
    expect(error.code).toBe(code);
    expect(error.detail).toMatchObject({ where: "archGuide", field: "options.share" });
  });

  it("refuses two landmarks in one place", () => {
    const flat = { right: {}, left: { alare: mm([16, -38]), pupil: mm([16, -38]) }, midline: {} };
    expect(refusal(() => archGuide(flat, "left", "alare-through-pupil")).code).toBe(
      "coincident-points",
    );
  });

  test.prop([anyFace()])("is the mirrored guide on the mirrored face", (any) => {
    const image = mirror(any, FACE_MIDLINE) as typeof any;
    for (const convention of ["alare-through-pupil", "eye-width-share"] as const) {
      const guide = archGuide(any, "right", convention).line;
      expectClose(
        archGuide(image, "left", convention).line,
        {
          through: mirror(guide.through, FACE_MIDLINE),
          direction: [-guide.direction[0], guide.direction[1]],
        },
        1e-9,
      );
    }
  });
});
