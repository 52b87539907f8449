import { test } from "@fast-check/vitest";
import {
  eachSide,
  FACE_MIDLINE,
  measureFace,
  mirror,
  mm,
  naturalDots,
  skinOf,
} from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyFace } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { syntheticFace } from "../support/synthetic-face.js";

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
