import {
  archGuide,
  type Face,
  type FaceSide,
  type FaceWith,
  type Guide,
  mm,
  px,
  requireGuideLandmarks,
  startGuide,
  tailGuide,
} from "brow-geometry";
import { describe, expectTypeOf, it } from "vitest";

declare const anyFace: Face<"mm">;
declare const withCorners: FaceWith<"mm", "endocanthion" | "exocanthion">;
declare const onPhoto: FaceWith<"px", "endocanthion" | "exocanthion" | "alare">;

describe("guides", () => {
  it("ask for exactly the landmarks they read", () => {
    startGuide(withCorners, "left", "endocanthion-vertical");
    archGuide(withCorners, "left", "eye-width-share", { share: 0.9 });
    // @ts-expect-error alare is not known
    startGuide(withCorners, "left", "alare-vertical");
    // @ts-expect-error nothing is known
    startGuide(anyFace, "left", "endocanthion-vertical");
    // @ts-expect-error alare is not known
    tailGuide(withCorners, "left");
    // @ts-expect-error limbusLateral is not known
    archGuide(withCorners, "left", "lateral-limbus-vertical");
  });

  it("ask for nothing of the other side", () => {
    const left = { endocanthion: mm([16, 0]) };
    startGuide({ right: {}, left, midline: {} }, "left", "endocanthion-vertical");
    // @ts-expect-error the right inner corner is not known
    startGuide({ right: {}, left, midline: {} }, "right", "endocanthion-vertical");
  });

  it("take faces in millimetres only", () => {
    // @ts-expect-error pixels have no vertical that is the midline's
    startGuide(onPhoto, "left", "endocanthion-vertical");
    const right: FaceSide<"px"> = { endocanthion: px([460, 500]) };
    // @ts-expect-error pixels, once more
    requireGuideLandmarks({ right, left: right, midline: {} }, "endocanthion-vertical");
  });

  it("know their convention", () => {
    expectTypeOf(startGuide(withCorners, "left", "endocanthion-vertical")).toEqualTypeOf<
      Guide<"endocanthion-vertical">
    >();
    expectTypeOf<Guide<"alare-through-exocanthion">>().toExtend<Guide>();
  });

  it("take what was narrowed", () => {
    const ready = requireGuideLandmarks(anyFace, "alare-through-exocanthion");
    tailGuide(ready, "right");
    startGuide(ready, "right", "alare-vertical");
    // @ts-expect-error the pupil was not asked for
    archGuide(ready, "right", "alare-through-pupil");
  });

  it("refuse conventions that are no line, or another mark's", () => {
    // @ts-expect-error the natural arch is no line
    archGuide(withCorners, "left", "natural");
    // @ts-expect-error a start convention
    archGuide(withCorners, "left", "endocanthion-vertical");
  });
});
