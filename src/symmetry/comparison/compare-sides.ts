import { type FaceMeasures, type MeasureName, type SideMeasures } from "../../landmarks/index.js";
import { toleranceNameOf, MEASURE_NAMES } from "../../landmarks/internal.js";
import {
  type Decision,
  type DecisionOptions,
  type Measured,
  measured,
  type ToleranceSet,
  WORKING_TOLERANCES,
} from "../../units/index.js";
import { decideUnder, refusingAs } from "../../units/internal.js";

/** One measure of both sides, and how they differ. */
export interface SideDifference {
  readonly measure: MeasureName;
  readonly right: Measured;
  readonly left: Measured;
  /** Left minus right. */
  readonly difference: Measured;
  /** Present where the tolerance set covers the measure. */
  readonly decision?: Decision;
}

/** How the two sides differ, measure by measure. */
export interface SideComparison {
  /** Those measures that are known on both sides. */
  readonly differences: readonly SideDifference[];
  /** The set of tolerances that was decided by. */
  readonly tolerances: ToleranceSet;
}

/** How {@link compareSides} works. */
export interface ComparisonOptions extends DecisionOptions {
  /** Default {@link WORKING_TOLERANCES}: 1 mm in position, 0.5 mm in thickness, 0.03 in front share. */
  readonly tolerances?: ToleranceSet;
  /**
   * Differences, left minus right, whose uncertainty is known: readings that share an error, such as
   * that of the midline, do not differ by it. Default: the sides are independent.
   */
  readonly differences?: { readonly [Name in MeasureName]?: Measured };
}

/**
 * Compares the two sides measure by measure: natural brows, plans, drawn maps and readings taken by
 * hand alike. Differences are left minus right.
 *
 * @throws GeometryError as {@link measured} and `decide`
 *
 * @example
 * ```ts
 * import { compareSides, measured } from "brow-geometry";
 * const { differences } = compareSides({
 *   right: { archHeight: measured(24.6, 0.2), tailHeight: measured(17.9, 0.2) },
 *   left: { archHeight: measured(26.6, 0.2) },
 * });
 * differences[0]?.difference; // → { value: 2.0, u: 0.28 }
 * differences[0]?.decision?.outcome; // → "outside"
 * differences.length; // → 1
 * ```
 */
export function compareSides(
  measures: FaceMeasures<Measured>,
  options: ComparisonOptions = {},
): SideComparison {
  return refusingAs("compareSides", () => {
    const differences: { [Name in MeasureName]?: Measured } = { ...options.differences };
    for (const name of MEASURE_NAMES) {
      const [right, left] = [measures.right[name], measures.left[name]];
      if (right === undefined || left === undefined) continue;
      differences[name] ??= measured(left.value - right.value, Math.hypot(left.u, right.u));
    }
    return comparisonOf({ measures, differences }, options);
  });
}

/** {@link compareSides} where every difference is known, asked for by another function. */
export function comparisonOf(
  { measures, differences }: SidesRead,
  options: ComparisonOptions,
): SideComparison {
  const { tolerances = WORKING_TOLERANCES } = options;
  return {
    differences: MEASURE_NAMES.flatMap((measure): readonly SideDifference[] => {
      const right = measures.right[measure];
      const left = measures.left[measure];
      const difference = differences[measure];
      if (right === undefined || left === undefined || difference === undefined) return [];
      const decided = decideUnder(tolerances, toleranceNameOf(measure), difference, options);
      return [{ measure, right, left, difference, ...decided }];
    }),
    tolerances,
  };
}

/** What is read on both sides, and left minus right. */
interface SidesRead {
  readonly measures: FaceMeasures<Measured>;
  readonly differences: SideMeasures<Measured>;
}
