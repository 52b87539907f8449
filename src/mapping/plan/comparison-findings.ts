import { DOT_NAMES } from "../../landmarks/internal.js";
import type { CaptureComparison } from "../../symmetry/index.js";
import { type Note, type Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { comparisonFinding, type ComparisonFindingCode } from "./notes.js";

/**
 * What the comparison of two captures says against planning from either, to be carried into the plan
 * as its `findings`: brows that stand elsewhere, where that is proven to be outside of the tolerance,
 * and landmarks that should not have moved and did, as they do where the head was held differently.
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { comparisonFindings } from "brow-geometry/mapping";
 * import { compareCaptures } from "brow-geometry/symmetry";
 * const capture = (up: number) => ({
 *   face: {
 *     right: { endocanthion: mm([-16, 0]), exocanthion: mm([-44, 1]) },
 *     left: { endocanthion: mm([16, 0]), exocanthion: mm([44, 0]) },
 *     midline: { subnasale: mm([0, -44]) },
 *   },
 *   dots: { right: {}, left: { upperArch: mm([42, 26 + up]) } },
 * });
 * comparisonFindings(compareCaptures(capture(0), capture(3))).map(({ code }) => code);
 * // → ["brow-displaced"]
 * comparisonFindings(compareCaptures(capture(0), capture(0))); // → []
 * ```
 */
export function comparisonFindings(comparison: CaptureComparison): readonly Note[] {
  const { note: disagreement } = comparison.registration;
  return [
    ...SIDES.flatMap((side) => raisedOrLowered(comparison, side)),
    ...(disagreement === undefined ? [] : [disagreement]),
  ];
}

/** The dot of a brow that moved most, of those that are outside. */
function raisedOrLowered(
  { displacements }: CaptureComparison,
  side: Side,
): readonly Note<ComparisonFindingCode>[] {
  const outside = DOT_NAMES.flatMap((dot) => {
    const { up, decisions } = displacements[side][dot] ?? {};
    if (up === undefined || decisions?.up.outcome !== "outside") return [];
    const { upper, lower } = decisions.up.limits;
    return [{ up: up.value, limit: Math.abs((up.value > 0 ? upper : lower) ?? 0) }];
  });
  const [most] = [...outside].sort((one, other) => Math.abs(other.up) - Math.abs(one.up));
  if (most === undefined) return [];
  return [
    comparisonFinding("brow-displaced", {
      side,
      size: Math.abs(most.up),
      where: most.up > 0 ? "higher" : "lower",
      limit: most.limit,
    }),
  ];
}
