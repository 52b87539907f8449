import { type DeepPoint, deepPoint, type Length, length, type Point } from "../../units/index.js";

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

/**
 * The point of the skin over a place of the face; a depth that the point itself carries is replaced.
 */
export function onSkin(at: Point<"mm">, skin: Skin): DeepPoint<"mm"> {
  return deepPoint(at[0], at[1], skinDepth(at[0], skin));
}

/** Depth of the skin at a distance from the midline, as a plain function of x. */
export function skinDepth(x: number, skin: Skin): number {
  switch (skin.kind) {
    case "flat":
      return 0;
    case "modelled":
      return -(Math.abs(x) ** 3) / skin.width ** 2;
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
      return (-3 * x * Math.abs(x)) / skin.width ** 2;
    case "fitted": {
      const { second, fourth } = x < 0 ? skin.right : skin.left;
      return skin.slope - x * (2 * second + 4 * x * x * fourth);
    }
  }
}
