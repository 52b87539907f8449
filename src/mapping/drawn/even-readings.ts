import type { FaceMeasures, MeasureName } from "../../landmarks/index.js";
import { compareSides, type ComparisonOptions, type SideDifference } from "../../symmetry/index.js";
import {
  type Measured,
  measured,
  type Note,
  otherSide,
  type Outcome,
  type Side,
} from "../../units/index.js";
import { keysOf, requireWord, SIDES, refusingAs } from "../../units/internal.js";
import { type Lead, LEADS } from "../choices/choice-tables.js";
import { measureCorrection } from "./correction.js";
import { type EvennessNotes, readingNote } from "./notes.js";

/** What one side asks for so that it reads like the one that leads. */
export interface ReadingMove extends Note<keyof EvennessNotes> {
  readonly side: Side;
  readonly measure: MeasureName;
  /** What it should read. */
  readonly target: number;
  /** How far it is off: reading minus target. */
  readonly off: Measured;
  readonly outcome: Outcome;
}

/**
 * What to change so that both sides of a sheet read alike, from the readings only: the side that
 * does not lead takes what the other reads, or both meet half-way. One entry for each measure that
 * both sides have and that has a tolerance; `say` tells it in words.
 *
 * @throws GeometryError `out-of-range` for an unknown lead, as {@link compareSides}
 *
 * @example
 * ```ts
 * import { measuresFromReadings, say } from "brow-geometry";
 * import { evenReadings } from "brow-geometry/mapping";
 * const sheet = measuresFromReadings({
 *   right: { archHeight: "25 mm", tail: "16.5 mm" },
 *   left: { archHeight: "27 mm", tail: "16.5 mm" },
 * });
 * evenReadings(sheet, "right").map((move) => say(move));
 * // → ["left tail: even with the right one", "left height of the arch: 2 mm too high"]
 * ```
 */
export function evenReadings(
  readings: FaceMeasures<Measured>,
  lead: Lead,
  options: ComparisonOptions = {},
): readonly ReadingMove[] {
  return refusingAs("evenReadings", () => {
    requireWord("lead", lead, keysOf(LEADS));
    const followers: readonly Side[] = lead === "middle" ? SIDES : [otherSide(lead)];
    return compareSides(readings, options).differences.flatMap((difference) =>
      followers.flatMap((side) => moveOf(difference, side, lead)),
    );
  });
}

function moveOf(
  { measure, decision, difference, right, left }: SideDifference,
  side: Side,
  lead: Lead,
): readonly ReadingMove[] {
  if (decision === undefined) return [];
  const share = lead === "middle" ? 0.5 : 1;
  const sign = side === "left" ? 1 : -1;
  const off = measured<number>(sign * share * difference.value, share * difference.u);
  const own = side === "left" ? left : right;
  const { outcome } = decision;
  const which = { side, measure };
  const note =
    measureCorrection({ ...which, difference: off, decision }) ?? evenness(outcome, side, measure);
  return [{ ...note, ...which, target: own.value - off.value, off, outcome }];
}

function evenness(outcome: Outcome, side: Side, measure: MeasureName): Note<keyof EvennessNotes> {
  return outcome === "within"
    ? readingNote("even", { side, other: otherSide(side), measure })
    : readingNote("evenness-unknown", { side, measure });
}
