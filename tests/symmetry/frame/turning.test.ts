import { type FaceFrame, mm, px, toPhoto } from "brow-geometry";
import { type Turning } from "brow-geometry/symmetry";
import { describe, it } from "vitest";
import { expectClose } from "../../support/close.js";

/** The frame of a head so turned, one pixel a millimetre. */
function turnedBy(yaw: number): FaceFrame {
  const turning: Turning = {
    yaw,
    yawU: 0,
    depthU: 0,
    yawPerDepth: 0,
    pivot: mm(0),
    skin: { kind: "flat" },
  };
  return {
    midline: {
      line: { through: px([0, 0]), direction: [0, -1] },
      tilt: 0,
      tiltU: 0,
      throughU: px(0),
      method: "plane",
      offsets: {},
      weights: {},
      trimmed: [],
      robust: true,
      astray: [],
    },
    scale: { from: "px", to: "mm", factor: 1, u: 0, source: "given", notes: [] },
    origin: px([0, 0, 0]),
    turning,
  };
}

// Closed forms: 1 − cos, and relief × sin.
describe("a yaw of the head", () => {
  it.each([
    [5, 0.003805],
    [10, 0.015192],
  ])("of %s° shortens what lies across the face by a share of %s", (yaw, share) => {
    const frame = turnedBy(yaw);
    const [right, left] = [toPhoto(mm([-50, 0, 0]), frame), toPhoto(mm([50, 0, 0]), frame)];
    expectClose(1 - (left[0] - right[0]) / 100, share, 5e-7);
  });

  it("of 5° shifts symmetricPoints of 10 mm by 0.8716 mm: a false difference of 1.743 mm between the sides", () => {
    const shiftOf = (symmetricPoints: number): number =>
      toPhoto(mm([0, 0, symmetricPoints]), turnedBy(5))[0];
    expectClose(shiftOf(10), 0.8716, 5e-5);
    const distances = [-30, 30].map((x) => toPhoto(mm([x, 20, 10]), turnedBy(5))[0] / Math.sign(x));
    expectClose((distances[1] ?? 0) - (distances[0] ?? 0), 1.743, 5e-4);
  });
});
