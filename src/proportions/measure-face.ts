import {
  type BrowDots,
  type Face,
  type FaceMeasures,
  lengthBetween,
  type Skin,
} from "../landmarks/index.js";
import { eachSide, type Sides } from "../units/index.js";
import { refusingAs } from "../units/internal.js";
import type { BrowBorders } from "./brow-edge.js";
import { measureSide } from "./measure-side.js";

/**
 * Everything that is read on both brows and between them, as {@link measureSide}.
 *
 * `borders` are the hair or the outlines on which tape, thickness, lid distance and area are read;
 * without them they are read on the joined dots, and the area is left out.
 *
 * @throws GeometryError `out-of-range` where start, arch and tail end are one place
 *
 * @example
 * ```ts
 * import { measureFace, mm } from "brow-geometry";
 * const dots = {
 *   right: { upperStart: mm([-15, 20]), lowerStart: mm([-15, 12.5]), tailEnd: mm([-58, 17]) },
 *   left: { upperStart: mm([16, 21]), lowerStart: mm([16, 13]), tailEnd: mm([58, 17]) },
 * };
 * const face = { right: {}, left: {}, midline: {} };
 * const measures = measureFace(dots, face, { kind: "flat" });
 * measures.startToStart; // → 31.016
 * measures.left.startThickness; // → 8
 * ```
 */
export function measureFace(
  dots: Sides<BrowDots<"mm">>,
  face: Face<"mm">,
  skin: Skin,
  borders?: Sides<BrowBorders | undefined>,
): FaceMeasures<number> {
  return refusingAs("measureFace", () => {
    const sides = eachSide((side) => {
      const hair = borders?.[side];
      const context = { side, landmarks: face[side], skin };
      return measureSide(dots[side], hair === undefined ? context : { ...context, borders: hair });
    });
    const { right, left } = dots;
    return right.upperStart === undefined || left.upperStart === undefined
      ? sides
      : { ...sides, startToStart: lengthBetween(right.upperStart, left.upperStart, skin) };
  });
}
