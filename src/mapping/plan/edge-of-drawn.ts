import type { Skin } from "../../landmarks/index.js";
import type { OutlineDots, OutlineOptions } from "../../proportions/index.js";
import {
  type BrowCurves,
  browCurves,
  type BrowEdge,
  edgeOfCurves,
} from "../../proportions/internal.js";
import { unlessRefused } from "../../units/internal.js";

/** The edge of a brow drawn through its dots, or nothing where none is, as moved by their uncertainty. */
export function edgeOfDrawn(
  dots: OutlineDots,
  shape: OutlineOptions,
  skin: Skin,
): BrowEdge | undefined {
  const curves = curvesOfDrawn(dots, shape);
  return curves && edgeOfCurves(curves, skin);
}

/** What is drawn through dots, likewise. */
export function curvesOfDrawn(dots: OutlineDots, shape: OutlineOptions): BrowCurves | undefined {
  return unlessRefused(
    () => browCurves(dots, shape),
    (code) => code === "inconsistent",
  );
}
