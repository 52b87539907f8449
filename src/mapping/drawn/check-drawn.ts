import {
  type FaceMeasures,
  MEASURE_KINDS,
  type MeasureName,
  type SideMeasures,
} from "../../landmarks/index.js";
import { BY_HAND, DOT_NAMES, MEASURE_NAMES } from "../../landmarks/internal.js";
import { compareSides, placeOnSide } from "../../symmetry/index.js";
import { type Length, type Measured, measured, type Outcome } from "../../units/index.js";
import {
  refuse,
  refusingAs,
  requireFinite,
  requireFinitePoint,
  requireNames,
  requireUncertainty,
  SIDES,
} from "../../units/internal.js";
import { checkReadings, judge } from "./check-readings.js";
import type { Deviation, DotDeviation, DrawnMap, DrawnCheck, DrawnOptions } from "./deviation.js";
import { readDrawn, readingsOver } from "./drawn-readings.js";
import type { BrowPlan } from "../plan/plan.js";
import { exactly } from "../plan/reading-rows.js";

/**
 * What was drawn against its plan: per dot across and in height, and per measure, how far it is
 * off, and whether that is within tolerance, outside or undecided. `correctionOf` says what to correct.
 *
 * The plan's figures are taken as exact, so only the uncertainty of what was drawn counts. Readings
 * are enough: dots are checked where they are given. By default the tolerances are the plan's.
 *
 * @throws GeometryError `missing-landmark` where nothing was drawn that the plan knows;
 * `not-finite`, `out-of-range` for a dot, a reading or an uncertainty
 *
 * @example
 * ```ts
 * import { checkDrawn, correctionOf, measured, mm, planBrows, type PlannableFace } from "brow-geometry";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 15, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
 * const plan = planBrows(face);
 * const planned = plan.measures.left.archHeight?.value ?? 0;
 * const readings = { right: {}, left: { archHeight: measured(planned + 2, 0.2) } };
 * const { outcome, measures } = checkDrawn(plan, { readings });
 * outcome; // → "outside"
 * measures.map((one) => correctionOf(one)?.code); // → ["too-much"]
 * ```
 */
export function checkDrawn(
  plan: BrowPlan,
  drawn: DrawnMap,
  options: DrawnOptions = {},
): DrawnCheck {
  return refusingAs("checkDrawn", () => {
    requireNames("options", options, ["tolerances", "rule", "confidence"]);
    requireDrawn(drawn);
    const { dots: drawnDots, u = BY_HAND, readings = { right: {}, left: {} } } = drawn;
    const onDots = drawnDots && readDrawn(drawnDots, u, plan);
    const read = onDots === undefined ? readings : readingsOver(readings, onDots.measures);
    const { tolerances = plan.comparison.tolerances } = options;
    const judged = { ...options, tolerances };
    const dots = drawnDots === undefined ? [] : dotDeviations(plan.dots, drawnDots, u, judged);
    const measures = checkReadings(exactly(plan.measures), read, judged);
    if (dots.length + measures.length === 0) {
      const need = "a dot, or a reading that the plan has too";
      refuse("missing-landmark", "drawn", drawn, need);
    }
    const differences = onDots === undefined ? {} : without(onDots.differences, readings);
    return {
      outcome: outcomeOf([...dots.flatMap(({ outward, up }) => [outward, up]), ...measures]),
      dots,
      measures,
      comparison: compareSides(read, { ...judged, differences }),
      tolerances,
    };
  });
}

function dotDeviations(
  planned: BrowPlan["dots"],
  drawn: NonNullable<DrawnMap["dots"]>,
  u: Length<"mm">,
  options: DrawnOptions,
): readonly DotDeviation[] {
  return SIDES.flatMap((side) =>
    DOT_NAMES.flatMap((dot): readonly DotDeviation[] => {
      const at = drawn[side][dot];
      if (at === undefined) return [];
      const [is, asked] = [placeOnSide(at, side), placeOnSide(planned[side][dot], side)];
      const off = (by: number): Measured => measured<number>(by, u);
      const outward = judge(MEASURE_KINDS.distance, off(is.distance - asked.distance), options);
      const up = judge(MEASURE_KINDS.height, off(is.height - asked.height), options);
      return [{ side, dot, outward, up }];
    }),
  );
}

/** Differences of which neither side was read by hand: only those share the dots' errors. */
function without(
  differences: SideMeasures<Measured>,
  byHand: FaceMeasures<Measured>,
): SideMeasures<Measured> {
  const free = Object.entries(differences).filter(([name]) =>
    SIDES.every((side) => byHand[side][name as MeasureName] === undefined),
  );
  return Object.fromEntries(free);
}

function outcomeOf(deviations: readonly Deviation[]): Outcome {
  const outcomes = deviations.map(({ decision }) => decision?.outcome);
  if (outcomes.includes("outside")) return "outside";
  // Nothing that could be decided is no proof of anything.
  return outcomes.includes("undecided") || !outcomes.includes("within") ? "undecided" : "within";
}

function requireDrawn({ dots, u, readings }: DrawnMap): void {
  if (u !== undefined) requireUncertainty("drawn.u", u);
  for (const side of SIDES) {
    for (const dot of DOT_NAMES) {
      const at = dots?.[side][dot];
      if (at !== undefined) requireFinitePoint(`drawn.dots.${side}.${dot}`, at);
    }
    for (const name of MEASURE_NAMES) {
      requireReading(`drawn.readings.${side}.${name}`, readings?.[side][name]);
    }
  }
  requireReading("drawn.readings.startToStart", readings?.startToStart);
}

function requireReading(field: string, reading: Measured | undefined): void {
  if (reading === undefined) return;
  requireFinite(`${field}.value`, reading.value);
  requireUncertainty(`${field}.u`, reading.u);
}
