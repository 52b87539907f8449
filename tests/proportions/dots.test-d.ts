import {
  archAtShare,
  completeDots,
  frontShare,
  measureSide,
  naturalOutline,
  outlineArea,
  overlapOutlines,
  thickness,
} from "brow-geometry/proportions";
import {
  type Brow,
  type CompleteDots,
  mm,
  naturalDots,
  type Outline,
  outline,
  px,
  type Skin,
} from "brow-geometry";
import { describe, expectTypeOf, it } from "vitest";

declare const onPhoto: Required<Brow<"px">>;
declare const upperOnly: Brow<"mm">;
declare const skin: Skin;
declare const dots: CompleteDots<"mm">;

describe("dots of brows", () => {
  it("are read in millimetres only", () => {
    // @ts-expect-error a border in pixels
    naturalDots(onPhoto);
    // @ts-expect-error an uncertainty in pixels
    naturalDots(upperOnly, { u: px(1) });
    // @ts-expect-error a start in pixels
    archAtShare(upperOnly.upper, px([1, 2]), mm([3, 4]), skin, 0.6);
    // @ts-expect-error a front in pixels beside a tail in millimetres
    frontShare(px(33), mm(16.5));
    // @ts-expect-error dots in pixels
    measureSide({ upperStart: px([1, 2]) }, { side: "left", landmarks: {}, skin });
  });

  it("always know start and tail end, and an arch only where there is one", () => {
    const natural = naturalDots(upperOnly);
    expectTypeOf(natural.dots.upperStart).toEqualTypeOf<CompleteDots<"mm">["upperStart"]>();
    expectTypeOf(natural.dots.upperArch).toEqualTypeOf<
      CompleteDots<"mm">["upperArch"] | undefined
    >();
    expectTypeOf(natural.arch).not.toHaveProperty("at");
    if (natural.arch.kind !== "flat") expectTypeOf(natural.arch).toHaveProperty("at");
  });
});

describe("outlines", () => {
  it("need every dot they run through, and both borders of hair", () => {
    const { upperArch: _, ...archless } = dots;
    // @ts-expect-error the arch is not known
    outline(archless);
    // @ts-expect-error the lower border is not known
    naturalOutline(upperOnly);
    // @ts-expect-error the lower border is not known
    thickness(dots.upperArch, upperOnly);
    // @ts-expect-error the tail end is not known
    completeDots({ upperStart: dots.upperStart, upperArch: dots.upperArch });
  });

  it("keep their unit", () => {
    expectTypeOf(outline(dots)).toEqualTypeOf<Outline<"mm">>();
    expectTypeOf(naturalOutline(onPhoto)).toEqualTypeOf<Outline<"px">>();
    expectTypeOf(outlineArea(naturalOutline(onPhoto))).toEqualTypeOf<number>();
    // @ts-expect-error one on the face, one on the photo
    overlapOutlines(outline(dots), naturalOutline(onPhoto));
  });
});
