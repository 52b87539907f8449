import type { FaceWith } from "../../landmarks/index.js";
import type { BrowPlan } from "../../mapping/index.js";
import { toPhoto } from "../../symmetry/index.js";
import type { Point } from "../../units/index.js";
import type { Spot } from "./box.js";
import { sizeFor, uprightView, type View } from "./view.js";

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
