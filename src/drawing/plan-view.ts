import type { BrowPlan } from "../mapping/index.js";
import { toPhoto } from "../symmetry/index.js";
import { uprightView, type View } from "./view.js";

/** The view of a plan: over its photo, or upright in millimetres where it has none. */
export function planView({ frame }: BrowPlan): View {
  if (frame === undefined) return uprightView([0, 0], 1);
  return {
    place: (point) => {
      const [x, y] = toPhoto(point, frame);
      return [x, y];
    },
    size: 1 / frame.scale.factor,
  };
}
