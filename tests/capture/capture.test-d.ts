import { checkCapture, type Face, type Finding, headPose, type Note, px } from "brow-geometry";
import { describe, expectTypeOf, it } from "vitest";

declare const onPhoto: Face<"px">;
declare const inMillimetres: Face<"mm">;

describe("checkCapture", () => {
  it("takes a face on a photo and a purpose", () => {
    expectTypeOf(checkCapture(onPhoto, { purpose: "map" })).toEqualTypeOf<readonly Finding[]>();
    // @ts-expect-error a face in millimetres is no capture
    checkCapture(inMillimetres, { purpose: "map" });
    // @ts-expect-error somebody has to say what for
    checkCapture(onPhoto, {});
    // @ts-expect-error no such purpose
    checkCapture(onPhoto, { purpose: "art" });
    // @ts-expect-error a distance from the camera is no length of the photo
    checkCapture(onPhoto, { purpose: "map", cameraDistance: { value: px(500), u: px(5) } });
    // @ts-expect-error a baseline is a photo too
    checkCapture(onPhoto, { purpose: "map", baseline: inMillimetres });
  });

  it("finds notes", () => {
    expectTypeOf<Finding>().toExtend<Note>();
  });
});

describe("headPose", () => {
  it("takes a face on a photo", () => {
    // @ts-expect-error the face space is upright by its definition
    headPose(inMillimetres);
  });
});
