import type { FaceWith } from "../../landmarks/index.js";
import type { BrowPlan } from "../../mapping/index.js";
import { toPhoto } from "../../symmetry/index.js";
import { type FlatPoint, flatPoint, type Point, type Polyline } from "../../units/index.js";
import { type Spot, wayBetween } from "./box.js";
import { TYPE_SIZES } from "./text-size.js";

/** How the face space lies in a picture. */
export interface View {
  readonly place: (point: Point<"mm">) => Spot;
  /** Picture units to a millimetre on the face. */
  readonly millimetre: number;
  /**
   * Picture units to one step of letters, strokes and the room around them: a millimetre on the face of
   * an adult, so that they suit the face's size in the picture even where its scale is wrong.
   */
  readonly size: number;
  /** Picture units of the smallest type that may be written. */
  readonly least?: number;
}

/** The size of letters of a kind: at least the smallest that may be written. */
export function typeSize(kind: keyof typeof TYPE_SIZES, { size, least = 0 }: View): number {
  return Math.max(TYPE_SIZES[kind] * size, least);
}

/** The view of a face drawn upright in millimetres: its origin at a spot, y turned downwards. */
export function uprightView(origin: Spot, size = 1, least = 0): View {
  return { place: ([x, y]) => [origin[0] + x, origin[1] - y], millimetre: 1, size, least };
}

/**
 * Distance between the outer eye corners on which letters and strokes are designed, in millimetres:
 * about the mean of women, 88.39 ± 3.74 (Hong Kong periocular norms, BioMed Res Int 2013:821428).
 */
const DESIGN_WIDTH = 88;

/** The step of letters and strokes that suits a face which is so wide between its outer eye corners. */
export function sizeFor(right: Spot, left: Spot): number {
  return Math.hypot(left[0] - right[0], left[1] - right[1]) / DESIGN_WIDTH;
}

export function placed(polyline: Polyline<"mm">, view: View): readonly Spot[] {
  return polyline.map(view.place);
}

/** The direction, of length 1 in the picture, in which a direction of the face is seen. */
export function seenDirection([x, y]: readonly [number, number], view: View): Spot {
  const origin: FlatPoint<"mm"> = flatPoint(0, 0);
  return wayBetween(view.place(origin), view.place(flatPoint(x, y))).along;
}

/** The view of a plan: over its photo, or upright in millimetres where it has none. */
export function planView({ frame, face }: BrowPlan): View {
  if (frame === undefined) return uprightView([0, 0], uprightSize(face));
  const place = (point: Point<"mm">): Spot => {
    const [x, y] = toPhoto(point, frame);
    return [x, y];
  };
  const size = sizeFor(place(face.right.exocanthion), place(face.left.exocanthion));
  return { place, millimetre: 1 / frame.scale.factor, size };
}

/** The step of letters and strokes for a face that is drawn in its own millimetres. */
export function uprightSize({ right, left }: FaceWith<"mm", "exocanthion">): number {
  const { place } = uprightView([0, 0]);
  return sizeFor(place(right.exocanthion), place(left.exocanthion));
}
