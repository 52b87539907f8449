import { test } from "@fast-check/vitest";
import {
  FACE_MIDLINE,
  mirror,
  requireGuideLandmarks,
  type Face,
  mm,
  startGuide,
} from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyFace } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";
import { syntheticFace } from "../support/synthetic-face.js";

describe("startGuide", () => {
  const face = syntheticFace();

  it.each([
    ["alare-vertical", 15.7],
    ["endocanthion-vertical", 15.9],
  ] as const)("draws %s parallel to the midline", (convention, x) => {
    const guide = startGuide(face, "left", convention);
    expect(guide.line).toEqual({
      through: [x, face.left[guide.from[0] ?? "alare"][1]],
      direction: [0, 1],
    });
    expect(guide).toMatchObject({ mark: "start", convention, side: "left", standIns: [] });
  });

  it("names the landmarks it was drawn from, and what stood in for them", () => {
    const standIns = [
      { landmark: "alare", instead: "outer point of the nostril row" },
      { landmark: "pupil", instead: "middle of the eye" },
    ] as const;
    const guide = startGuide({ ...face, standIns }, "right", "alare-vertical");
    expect(guide.from).toEqual(["alare"]);
    expect(guide.standIns).toEqual([standIns[0]]);
    expect(startGuide({ ...face, standIns }, "right", "endocanthion-vertical").standIns).toEqual(
      [],
    );
  });

  it("reads nothing else", () => {
    const bare = { right: {}, left: { alare: mm([17, -40]) }, midline: {} };
    expectClose(startGuide(bare, "left", "alare-vertical").line.through, [17, -40], 0);
  });

  it("names a landmark that outside data lacks", () => {
    const bare: Face<"mm"> = { right: {}, left: { alare: mm([17, -40]) }, midline: {} };
    expect(refusal(() => requireGuideLandmarks(bare, "alare-vertical"))).toMatchObject({
      code: "missing-landmark",
      detail: { field: "right.alare" },
    });
  });

  test.prop([anyFace()])("is the mirrored guide on the mirrored face", (any) => {
    const image = mirror(any, FACE_MIDLINE) as typeof any;
    const { through } = startGuide(any, "right", "alare-vertical").line;
    expectClose(
      startGuide(image, "left", "alare-vertical").line.through,
      mirror(through, FACE_MIDLINE),
      1e-9,
    );
  });
});
