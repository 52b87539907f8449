import { length } from "../../units/index.js";
import type { Skin } from "./skin.js";

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
 * A skin that falls back so many times as far: with it, the uncertainty of depth is carried into any
 * length. A flat skin stays flat.
 */
export function deepen(skin: Skin, factor: number): Skin {
  switch (skin.kind) {
    case "flat":
      return skin;
    case "modelled":
      return { ...skin, width: length(skin.width / Math.sqrt(factor)) };
    case "fitted":
      return {
        ...skin,
        atMidline: length(factor * skin.atMidline),
        slope: factor * skin.slope,
        right: deeperCurve(skin.right, factor),
        left: deeperCurve(skin.left, factor),
      };
  }
}

function deeperCurve(
  { second, fourth }: { readonly second: number; readonly fourth: number },
  factor: number,
): { readonly second: number; readonly fourth: number } {
  return { second: factor * second, fourth: factor * fourth };
}
