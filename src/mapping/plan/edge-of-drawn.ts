import type { Skin } from "../../landmarks/index.js";
import type { OutlineDots, OutlineOptions } from "../../proportions/index.js";
import { browCurves, type BrowEdge, edgeOfCurves } from "../../proportions/internal.js";
import { GeometryError } from "../../units/index.js";

/** The edge of a brow drawn through its dots, or nothing where none is, as moved by their uncertainty. */
export function edgeOfDrawn(
  dots: OutlineDots,
  shape: OutlineOptions,
  skin: Skin,
): BrowEdge | undefined {
  try {
    return edgeOfCurves(browCurves(dots, shape), skin);
  } catch (error) {
    if (error instanceof GeometryError && error.code === "inconsistent") return undefined;
    throw error;
  }
}
