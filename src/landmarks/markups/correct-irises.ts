import { midpoint } from "../../geometry/index.js";
import {
  deepPoint,
  flatPoint,
  hasDepth,
  type Measured,
  type Point,
  type Unit,
} from "../../units/index.js";
import { measuredAs, refusingAs, requirePositive } from "../../units/internal.js";
import type { Face, FaceSide } from "../face/face.js";
import { faceNote } from "../face/notes.js";

/**
 * A face whose irises are as wide as they are: the limbus points of a source that draws its rings too
 * wide move together, about their middle.
 *
 * Guides through the lateral limbus need it: the face mesh's ring would put them 0.6 mm too far
 * outwards. Adapters of markups do it by themselves; a note on the face says so. The source's ring
 * factor becomes 1, with the relative uncertainty that it had, so that a scale by iris stays what it
 * was.
 *
 * @throws GeometryError `not-finite`, `out-of-range` for a factor that is not more than 0
 *
 * @example
 * ```ts
 * import { correctIrises } from "brow-geometry/landmarks";
 * import { type Face, measured, mm } from "brow-geometry";
 * const face: Face<"mm"> = {
 *   right: {},
 *   left: { limbusMedial: mm([25, 0]), limbusLateral: mm([38, 0]) },
 *   midline: {},
 * };
 * correctIrises(face, measured(1.11, 0.02)).left.limbusLateral; // → [37.36, 0.00]
 * ```
 */
export function correctIrises<U extends Unit>(face: Face<U>, ringFactor?: Measured): Face<U> {
  return refusingAs("correctIrises", () => withIrises(face, ringFactor));
}

/** {@link correctIrises}, asked for by another function. */
export function withIrises<U extends Unit>(
  face: Face<U>,
  ringFactor: Measured = face.source?.ringFactor ?? { value: 1, u: 0 },
): Face<U> {
  const { value, u } = measuredAs(ringFactor.value, ringFactor.u);
  requirePositive("ringFactor", value);
  const [right, left] = [withNarrower(face.right, value), withNarrower(face.left, value)];
  const { source, notes = [] } = face;
  const changed = right !== face.right || left !== face.left;
  return {
    ...face,
    right,
    left,
    ...(source === undefined
      ? {}
      : { source: { ...source, ringFactor: { value: 1, u: u / value } } }),
    ...(changed ? { notes: [...notes, faceNote("irises-narrowed", { factor: value, u })] } : {}),
  };
}

function withNarrower<U extends Unit>(side: FaceSide<U>, times: number): FaceSide<U> {
  const { limbusMedial, limbusLateral } = side;
  if (times === 1 || limbusMedial === undefined || limbusLateral === undefined) return side;
  const middle = midpoint(limbusMedial, limbusLateral);
  return {
    ...side,
    limbusMedial: nearer(limbusMedial, middle, times),
    limbusLateral: nearer(limbusLateral, middle, times),
  };
}

function nearer<U extends Unit>(point: Point<U>, middle: Point<U>, times: number): Point<U> {
  const x = middle[0] + (point[0] - middle[0]) / times;
  const y = middle[1] + (point[1] - middle[1]) / times;
  return hasDepth(point) ? deepPoint(x, y, point[2]) : flatPoint(x, y);
}
