import {
  deepPoint,
  type DeepPoint,
  hasDepth,
  length,
  type Length,
  type Measured,
  type Point,
} from "../../units/index.js";

/** How the brow's skin of one side falls back from the face's middle: −second·x² − fourth·x⁴. */
export interface SkinCurve {
  /** Per millimetre. */
  readonly second: number;
  /** Per cubic millimetre. */
  readonly fourth: number;
}

/**
 * The skin on which a ruler lies: its depth over the frontal plane, a function of x alone, since the
 * upper border of a brow says nothing about what lies above or below it.
 *
 * - `"flat"`: no depth at all; lengths are those of the frontal photo.
 * - `"modelled"`: −|x|³/width², for faces without depth. With width = 0.987 × biocular width it
 *   follows the canonical face mesh.
 * - `"fitted"`: atMidline + slope·x less each side's curve, through a face's own deep points.
 *
 * `relativeU` is the relative standard uncertainty of how far the skin falls back.
 */
export type Skin =
  | { readonly kind: "flat" }
  | { readonly kind: "modelled"; readonly width: Length<"mm">; readonly relativeU: number }
  | FittedSkin;

/** Skin through the points of a face that carry depth. */
export interface FittedSkin {
  readonly kind: "fitted";
  readonly atMidline: Length<"mm">;
  /** Depth gained for each millimetre towards the client's left: what a turned head leaves. */
  readonly slope: number;
  readonly right: SkinCurve;
  readonly left: SkinCurve;
  readonly relativeU: number;
}

/**
 * Depth of the skin over a place of the face, positive towards the viewer.
 *
 * @example
 * ```ts
 * import { depthAt } from "brow-geometry/landmarks";
 * import { mm } from "brow-geometry";
 * depthAt(mm([50, 20]), { kind: "modelled", width: mm(87.8), relativeU: 0.12 }); // → -16.215
 * ```
 */
export function depthAt(at: Point<"mm">, skin: Skin): Length<"mm"> {
  return length(skinDepth(at[0], skin));
}

/** The point of the skin over a place of the face; a depth of the point's own is replaced. */
export function onSkin(at: Point<"mm">, skin: Skin): DeepPoint<"mm"> {
  return deepPoint(at[0], at[1], skinDepth(at[0], skin));
}

/** Depth of the skin at a distance from the midline, as a plain function of x. */
export function skinDepth(x: number, skin: Skin): number {
  switch (skin.kind) {
    case "flat":
      return 0;
    case "modelled":
      return (-x * x * Math.abs(x)) / (skin.width * skin.width);
    case "fitted": {
      const { second, fourth } = x < 0 ? skin.right : skin.left;
      return skin.atMidline + x * (skin.slope - x * (second + x * x * fourth));
    }
  }
}

/** Depth gained for each millimetre towards the client's left, at a distance from the midline. */
export function skinSlope(x: number, skin: Skin): number {
  switch (skin.kind) {
    case "flat":
      return 0;
    case "modelled":
      return (-3 * x * Math.abs(x)) / (skin.width * skin.width);
    case "fitted": {
      const { second, fourth } = x < 0 ? skin.right : skin.left;
      return skin.slope - x * (2 * second + 4 * x * x * fourth);
    }
  }
}

/**
 * Relative standard uncertainty of how far a skin falls back: 0.12 where it is modelled, 0.1 where a
 * detector estimated its points, 0 where they were measured or the skin is taken as flat.
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { skinUncertainty } from "brow-geometry/landmarks";
 * skinUncertainty({ kind: "modelled", width: mm(87.8), relativeU: 0.12 }); // → 0.12
 * skinUncertainty({ kind: "flat" }); // → 0
 * ```
 */
export function skinUncertainty(skin: Skin): number {
  return skin.kind === "flat" ? 0 : skin.relativeU;
}

/**
 * A skin that falls back so many times as far, on a face so many times as large, to carry the uncertainty
 * of depth and of scale into lengths.
 */
export function deepen(skin: Skin, factor: number, times = 1): Skin {
  switch (skin.kind) {
    case "flat":
      return skin;
    case "modelled":
      return { ...skin, width: length((times * skin.width) / Math.sqrt(factor)) };
    case "fitted":
      return skinWith(
        numbersOf(skin).map(
          (number, index) => factor * number * times ** (1 - (POWERS[index] as number)),
        ),
        skin,
      );
  }
}

/**
 * How far the outer eye corner lies behind the brow's skin at its x, over its distance from the midline.
 * Measured by us on the canonical face mesh: exocanthion (44.5, 31.7 deep), tail end (57.2, 28.3 deep),
 * and a modelled skin that falls 12.85 mm between them: (12.85 − 3.4) / 44.5. On 102 faces, as deep as a
 * face mesh found them, the same is 0.27 ± 0.035: off by 0.07 (rms).
 */
export const SET_BACK: Measured = { value: 0.212, u: 0.07 };

/** A skin with another set-back of the outer eye corner behind it. */
export type SkinWithSetBack = Skin & { readonly setBack?: number };

/**
 * The outer corner of an eye with its depth. It lies in the orbit, behind the brow's skin, so it is not
 * lifted onto that. Where the skin is fitted, its own depth comes from the same source and is kept;
 * without one it is set back by 0.212 of its distance from the midline. On a flat skin it is flat.
 */
export function atEyeCorner(exocanthion: Point<"mm">, skin: SkinWithSetBack): DeepPoint<"mm"> {
  if (skin.kind === "fitted" && hasDepth(exocanthion)) return exocanthion;
  const [x, y] = exocanthion;
  const setBack = skin.kind === "flat" ? 0 : (skin.setBack ?? SET_BACK.value) * Math.abs(x);
  return deepPoint(x, y, skinDepth(x, skin) - setBack);
}

/** The power of x that each number of a fitted skin belongs to; no skin has more numbers. */
export const POWERS: readonly number[] = [0, 2, 4, 2, 4, 1];

/** The numbers that say how deep a skin lies: a sum of them, each so many times. */
export function numbersOf(skin: SkinWithSetBack): number[] {
  switch (skin.kind) {
    case "flat":
      return [];
    case "modelled":
      return [1 / skin.width ** 2, skin.setBack ?? SET_BACK.value];
    case "fitted": {
      const { atMidline, slope, right, left } = skin;
      return [atMidline, right.second, right.fourth, left.second, left.fourth, slope];
    }
  }
}

/** A skin of the same kind, by its numbers. */
export function skinWith(numbers: readonly number[], skin: Skin): SkinWithSetBack {
  switch (skin.kind) {
    case "flat":
      return skin;
    case "modelled": {
      const [fall, setBack] = numbers as [number, number];
      return { ...skin, width: length(1 / Math.sqrt(fall)), setBack };
    }
    case "fitted":
      return fittedWith(numbers, skin.relativeU);
  }
}

/** A fitted skin by its numbers; without the last it has no slope. */
export function fittedWith(numbers: readonly number[], relativeU: number): FittedSkin {
  const [atMidline, second, fourth, secondLeft, fourthLeft, slope = 0] = numbers as SkinNumbers;
  return {
    kind: "fitted",
    atMidline: length(atMidline),
    slope,
    right: { second, fourth },
    left: { second: secondLeft, fourth: fourthLeft },
    relativeU,
  };
}

type SkinNumbers = readonly [number, number, number, number, number, slope?: number];
