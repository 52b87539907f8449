import type { Skin } from "../../landmarks/index.js";
import type { OutlineDots, OutlineOptions } from "../../proportions/index.js";
import { browCurves, type BrowEdge, edgeOfCurves } from "../../proportions/internal.js";
import { unlessRefused } from "../../units/internal.js";

/** The edge of a brow drawn through its dots, or nothing where none is, as moved by their uncertainty. */
export function edgeOfDrawn(
  dots: OutlineDots,
  shape: OutlineOptions,
  skin: Skin,
): BrowEdge | undefined {
  return unlessRefused(
    () => edgeOfCurves(browCurves(dots, shape), skin),
    (code) => code === "inconsistent",
  );
}
