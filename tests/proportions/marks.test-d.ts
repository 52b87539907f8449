import {
  archAtShare,
  type Brow,
  type CompleteMarks,
  completeMarks,
  frontShare,
  measureSide,
  mm,
  naturalMarks,
  naturalOutline,
  type Outline,
  outline,
  outlineArea,
  overlapOutlines,
  px,
  type Skin,
  thickness,
} from "brow-geometry";
import { describe, expectTypeOf, it } from "vitest";

declare const onPhoto: Required<Brow<"px">>;
declare const upperOnly: Brow<"mm">;
declare const skin: Skin;
declare const marks: CompleteMarks<"mm">;

describe("marks of brows", () => {
  it("are read in millimetres only", () => {
    // @ts-expect-error a border in pixels
    naturalMarks(onPhoto);
    // @ts-expect-error an uncertainty in pixels
    naturalMarks(upperOnly, { u: px(1) });
    // @ts-expect-error a start in pixels
    archAtShare(upperOnly.upper, px([1, 2]), mm([3, 4]), skin, 0.6);
    // @ts-expect-error a front in pixels beside a tail in millimetres
    frontShare(px(30), mm(15));
    // @ts-expect-error dots in pixels
    measureSide({ upperStart: px([1, 2]) }, { side: "left", landmarks: {}, skin });
  });

  it("always know start and tail end, and an arch only where there is one", () => {
    const natural = naturalMarks(upperOnly);
    expectTypeOf(natural.marks.upperStart).toEqualTypeOf<CompleteMarks<"mm">["upperStart"]>();
    expectTypeOf(natural.marks.upperArch).toEqualTypeOf<
      CompleteMarks<"mm">["upperArch"] | undefined
    >();
    expectTypeOf(natural.arch).not.toHaveProperty("at");
    if (natural.arch.kind !== "flat") expectTypeOf(natural.arch).toHaveProperty("at");
  });
});

describe("outlines", () => {
  it("need every dot they run through, and both borders of hair", () => {
    const { upperArch: _, ...archless } = marks;
    // @ts-expect-error the arch is not known
    outline(archless);
    // @ts-expect-error the lower border is not known
    naturalOutline(upperOnly);
    // @ts-expect-error the lower border is not known
    thickness(marks.upperArch, upperOnly);
    // @ts-expect-error the tail end is not known
    completeMarks({ upperStart: marks.upperStart, upperArch: marks.upperArch });
  });

  it("keep their unit", () => {
    expectTypeOf(outline(marks)).toEqualTypeOf<Outline<"mm">>();
    expectTypeOf(naturalOutline(onPhoto)).toEqualTypeOf<Outline<"px">>();
    expectTypeOf(outlineArea(naturalOutline(onPhoto))).toEqualTypeOf<number>();
    // @ts-expect-error one on the face, one on the photo
    overlapOutlines(outline(marks), naturalOutline(onPhoto));
  });
});
