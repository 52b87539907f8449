import { type DeepPoint, deepPoint, hasDepth, type Point } from "../../units/index.js";
import { type Skin, skinDepth } from "./skin.js";

/**
 * How far the outer eye corner lies behind the skin of the brow at the same x, over its distance
 * from the midline.
 *
 * Measured by us on the canonical face mesh: exocanthion (44.5, 31.7 deep), tail end (57.2, 28.3
 * deep), and a modelled skin that falls 12.85 mm between them: (12.85 − 3.4) / 44.5.
 */
const SET_BACK = 0.212;

/**
 * The outer corner of an eye with its depth. It lies in the orbit, behind the skin of the brow, so
 * it is not lifted onto that: it keeps the depth it has where the skin is fitted to the same source,
 * and is set back by 0.212 of its distance from the midline where not. On a flat skin it is flat.
 */
export function atEyeCorner(exocanthion: Point<"mm">, skin: Skin): DeepPoint<"mm"> {
  if (skin.kind === "fitted" && hasDepth(exocanthion)) return exocanthion;
  const [x, y] = exocanthion;
  const setBack = skin.kind === "flat" ? 0 : SET_BACK * Math.abs(x);
  return deepPoint(x, y, skinDepth(x, skin) - setBack);
}
