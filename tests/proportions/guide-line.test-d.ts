import {
  type ArchConvention,
  type FaceWith,
  type StartConvention,
  type TailConvention,
} from "brow-geometry/landmarks";
import {
  type Face,
  type FaceSide,
  type Guide,
  type GuideConvention,
  mm,
  px,
  guideLine,
} from "brow-geometry";
import { requireGuideLandmarks } from "../../src/proportions/internal.js";
import { describe, expectTypeOf, it } from "vitest";

declare const anyFace: Face<"mm">;
declare const withCorners: FaceWith<"mm", "endocanthion" | "exocanthion">;
declare const onPhoto: FaceWith<"px", "endocanthion" | "exocanthion" | "alare">;

describe("guides", () => {
  it("ask for exactly the landmarks they read", () => {
    guideLine(withCorners, "left", "endocanthion-vertical");
    guideLine(withCorners, "left", "eye-width-share", { share: 0.9 });
    // @ts-expect-error alare is not known
    guideLine(withCorners, "left", "alare-vertical");
    // @ts-expect-error nothing is known
    guideLine(anyFace, "left", "endocanthion-vertical");
    // @ts-expect-error alare is not known
    guideLine(withCorners, "left", "alare-through-exocanthion");
    // @ts-expect-error limbusLateral is not known
    guideLine(withCorners, "left", "lateral-limbus-vertical");
  });

  it("ask for nothing of the other side", () => {
    const left = { endocanthion: mm([16, 0]) };
    guideLine({ right: {}, left, midline: {} }, "left", "endocanthion-vertical");
    // @ts-expect-error the right inner corner is not known
    guideLine({ right: {}, left, midline: {} }, "right", "endocanthion-vertical");
  });

  it("take faces in millimetres only", () => {
    // @ts-expect-error pixels have no vertical that is the midline's
    guideLine(onPhoto, "left", "endocanthion-vertical");
    const right: FaceSide<"px"> = { endocanthion: px([460, 500]) };
    // @ts-expect-error pixels, once more
    requireGuideLandmarks({ right, left: right, midline: {} }, "endocanthion-vertical");
  });

  it("know their convention", () => {
    expectTypeOf(guideLine(withCorners, "left", "endocanthion-vertical")).toEqualTypeOf<
      Guide<"endocanthion-vertical">
    >();
    expectTypeOf<Guide<"alare-through-exocanthion">>().toExtend<Guide>();
  });

  it("take what was narrowed", () => {
    const ready = requireGuideLandmarks(anyFace, "alare-through-exocanthion");
    guideLine(ready, "right", "alare-through-exocanthion");
    guideLine(ready, "right", "alare-vertical");
    // @ts-expect-error the pupil was not asked for
    guideLine(ready, "right", "alare-through-pupil");
  });

  it("refuse conventions that are no line, or another mark's", () => {
    // @ts-expect-error the natural arch is no line
    guideLine(withCorners, "left", "natural");
    expectTypeOf<"endocanthion-vertical">().toExtend<StartConvention>();
    expectTypeOf<"endocanthion-vertical">().not.toExtend<ArchConvention>();
    expectTypeOf<"endocanthion-vertical">().not.toExtend<TailConvention>();
    expectTypeOf<"natural">().not.toExtend<GuideConvention>();
  });
});
