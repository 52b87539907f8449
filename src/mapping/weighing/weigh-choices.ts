import { type FaceMeasures, GUIDES, landmarkUncertainty } from "../../landmarks/index.js";
import { isGuide, type MeasureKind, measureKindOf } from "../../landmarks/internal.js";
import { GeometryError, type Length } from "../../units/index.js";
import {
  refuse,
  refusingAs,
  requireFinite,
  requireNames,
  requireObject,
  SIDES,
} from "../../units/internal.js";
import type { Choices } from "../choices/choices.js";
import { planAcross } from "../dots/plan-dots.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { ShapeCode } from "../shape/notes.js";
import { type GrownBrows, readGrown, weighPlan } from "./weigh-plan.js";
import type { WeighedChoice, WeighedChoices, WeighOptions } from "./weighed-choice.js";
import { weighingNote } from "./notes.js";
import { whyNot } from "./why-not.js";

/**
 * What each of several choices would do to a face: how far dots move, how much hair is removed and
 * how much skin is filled, how the sides still differ, what happens to the space over the lid, the
 * front share.
 *
 * The rows come in an order that the note `order` states, each with its reasons: the fewest findings first. Of a brow
 * that a detector guesses no hair is known: among rows that are alike in findings and in their tails, guides through
 * landmarks that are seen come first there, and then the brow nearest to the guess, as far as that is known.
 * For an artist the guess is the best that is there, and no more than that. A choice that breaks a demand is
 * ruled out, one that cannot be planned says why. Each is decided by its own tolerances, as its plan would
 * be under the simple rule. The artist decides.
 *
 * @throws GeometryError `not-finite` for a demand, `missing-landmark` where a demand cannot be
 * checked: the space over the lid needs pupil, upper lid and lower border on both sides
 *
 * @example
 * ```ts
 * import { mm, type PlannableFace } from "brow-geometry";
 * import { weighChoices } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1, up: number) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 17, 20 + up], [sign * 38, 27 + up], [sign * 57, 18 + up]]) },
 * });
 * const face: PlannableFace = { right: side(-1, 0), left: side(1, 2), midline: {} };
 * const { rows } = weighChoices(face, [{ lead: "right", arch: "alare-through-pupil" }, { lead: "left" }]);
 * rows.map(({ kind, choices }) => [kind, choices.lead]); // → [["usable", "left"], ["no-solution", "right"]]
 * rows[1]?.reasons[0]?.code; // → "no-solution"
 * ```
 */
export function weighChoices(
  face: PlannableFace,
  choices: readonly Choices[],
  options: WeighOptions = {},
): WeighedChoices {
  return refusingAs("weighChoices", () => {
    requireObject("face", face, "a face");
    requireNames("options", options, ["lidRoom"]);
    const given: unknown = choices;
    if (!Array.isArray(given)) {
      refuse("not-parsed", "choices", given, "a list of choices");
    }
    const { lidRoom } = options;
    const grown = readGrown(face);
    if (lidRoom !== undefined) requireLidRoom(lidRoom.most, grown.measures);
    // Moves that differ by less than the brows are known are alike.
    const known = landmarkUncertainty(face, "brow");
    const rows = choices.map((one) => weigh(one, grown, lidRoom?.most));
    return {
      rows: inOrder(
        rows.map((row) => ({ row, ranks: ranksOf(row, face) })),
        [0, 0, 0, 0, 0, 0, known, known],
      ).map(({ row }) => row),
      notes: [
        weighingNote("same-landmarks"),
        weighingNote("order"),
        weighingNote("artist-decides"),
      ],
    };
  });
}

function weigh(choices: Choices, grown: GrownBrows, most: Length<"mm"> | undefined): WeighedChoice {
  try {
    return weighPlan(choices, planAcross(0, grown, choices), grown, most);
  } catch (error) {
    if (!(error instanceof GeometryError)) throw error;
    return { kind: "no-solution", choices, reasons: [whyNot(error)] };
  }
}

/** A row, and what it is sorted by. */
interface RankedRow {
  readonly row: WeighedChoice;
  readonly ranks: readonly number[];
}

/**
 * Rows by their ranks, the most telling first. Those that differ from the least by no more than its
 * tolerance tie; those that tie in all keep the order in which their choices were given.
 */
function inOrder(
  rows: readonly RankedRow[],
  [tolerance, ...tolerances]: readonly number[],
  rank = 0,
): readonly RankedRow[] {
  if (tolerance === undefined || rows.length < 2) return rows;
  const at = ({ ranks }: RankedRow): number => ranks[rank] ?? 0;
  const least = Math.min(...rows.map(at));
  const isTied = (one: RankedRow): boolean => at(one) - least <= tolerance;
  return [
    ...inOrder(rows.filter(isTied), tolerances, rank + 1),
    ...inOrder(
      rows.filter((one) => !isTied(one)),
      [tolerance, ...tolerances],
      rank,
    ),
  ];
}

/** What a shape does to hair and eye, where the brow drawn may still be sound. */
const AGAINST_FACE: readonly ShapeCode[] = ["lid-space-closes", "dot-far-off"];

/** Measures that tell where dots lie, on either side of the midline alike. */
const OF_PLACES: readonly MeasureKind[] = ["distance", "height", "thickness"];

/**
 * What rows are sorted by: kind, findings in the brow drawn, all findings, tails that turn up,
 * approximated guides, places that differ, mean and greatest move.
 */
function ranksOf(row: WeighedChoice, { standIns = [] }: PlannableFace): readonly number[] {
  if (row.kind === "no-solution") return [2];
  // Lengths on skin, and those from the eyes, differ as the face does, however even its brows are drawn.
  const apart = row.comparison.differences.filter(
    ({ measure, decision }) =>
      OF_PLACES.includes(measureKindOf(measure)) && decision?.outcome === "outside",
  ).length;
  const { kind, choices, dots, findings, meanMove, greatestMove } = row;
  // Its lower border turns up, as on three of 204 brows drawn by hand: others come first.
  const upturned = SIDES.filter((side) => dots[side].tailEnd[1] > dots[side].lowerArch[1]);
  const approximated = [choices.start, choices.arch, choices.tail].filter(
    (rule) =>
      rule !== undefined &&
      isGuide(rule) &&
      GUIDES[rule].through.some((name) => standIns.some(({ landmark }) => landmark === name)),
  );
  // Where hair grows as a hook, every choice has findings: a sound brow far from it comes before a hook.
  const inShape = findings.filter(({ code }) => !AGAINST_FACE.includes(code));
  return [
    kind === "usable" ? 0 : 1,
    inShape.length,
    findings.length,
    upturned.length,
    approximated.length,
    apart,
    meanMove,
    greatestMove.by,
  ];
}

function requireLidRoom(most: Length<"mm">, measures: FaceMeasures<number>): void {
  requireFinite("options.lidRoom.most", most);
  for (const side of SIDES) {
    if (measures[side].lidToBrow !== undefined) continue;
    const fields = `${side}.pupil, ${side}.upperLid, ${side}.brow.lower`;
    const need = "all three, where the space over the lid is to be kept open";
    refuse("missing-landmark", fields, undefined, need);
  }
}
