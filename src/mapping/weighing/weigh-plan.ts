import { type FaceMeasures, landmarkUncertainty, skinOf } from "../../landmarks/index.js";
import { measureFace, naturalDots, outline } from "../../proportions/index.js";
import { compareSides, toleranceFor } from "../../symmetry/index.js";
import {
  decide,
  eachSide,
  type Length,
  length,
  type Measured,
  measured,
  type Note,
  note,
  type Side,
  type ToleranceSet,
} from "../../units/index.js";
import type { Choices } from "../choices/choices.js";
import { movesBetween } from "../plan/moves.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { planOverlap } from "../plan/plan-overlap.js";
import { mapSideReadings } from "../plan/plan-readings.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { PlannedChoice } from "./weighed-choice.js";
import { type Weighed, weighingReasons } from "./weighing-reasons.js";
import { WEIGHING, type WeighingCode } from "./words.js";

/** The brows as they grow, read once for all choices. */
export interface GrownBrows {
  readonly face: PlannableFace;
  readonly measures: FaceMeasures<number>;
}

/** Reads the brows of a face as they grow. */
export function readGrown(face: PlannableFace): GrownBrows {
  const u = landmarkUncertainty(face, "brow");
  const dots = eachSide((side) => naturalDots(face[side].brow, { u }).dots);
  const hair = eachSide((side) => face[side].brow);
  return { face, measures: measureFace(dots, face, skinOf(face), hair) };
}

/** What one plan does to a face, in the row of its choices. */
export function weighPlan(
  choices: Choices,
  plan: PlannedDots,
  grown: GrownBrows,
  most: Length<"mm"> | undefined,
  tolerances: ToleranceSet,
): PlannedChoice {
  const { dots, face, skin } = plan;
  const outlines = eachSide((side) => outline(dots[side], plan.choices.shape));
  const measures = measureFace(dots, face, skin, outlines);
  const comparison = compareSides(exactly(measures), { tolerances, rule: "simple" });
  const row: Weighed = {
    choices,
    dots,
    ...movesOf(plan),
    ...areasOf(plan),
    comparison,
    lidRoom: openingOf(grown.measures, measures),
    frontShare: eachSide((side) =>
      decidedShare(measures[side].frontShare ?? 0, plan.choices.frontShare, tolerances),
    ),
  };
  const broken = most === undefined ? [] : closings(row.lidRoom, most);
  return {
    kind: broken.length > 0 ? "ruled-out" : "usable",
    ...row,
    reasons: [...broken, ...weighingReasons(row, plan.choices.frontShare)],
  };
}

/** Readings on the same landmarks: what they have in common does not tell choices apart. */
function exactly(measures: FaceMeasures<number>): FaceMeasures<Measured> {
  const readings = { measures, differences: {} };
  return mapSideReadings(readings, (value: number) => measured<number>(value, 0)).measures;
}

function movesOf({ natural, dots }: PlannedDots): Pick<Weighed, "greatestMove" | "meanMove"> {
  const grown = eachSide((side) => natural[side].dots);
  const moves = movesBetween(grown, dots).flatMap((move) =>
    move.kind === "place"
      ? []
      : [{ side: move.side, dot: move.dot, by: length<"mm">(Math.hypot(move.up, move.outward)) }],
  );
  return {
    greatestMove: moves.reduce((greatest, move) => (move.by > greatest.by ? move : greatest)),
    meanMove: length(moves.reduce((sum, { by }) => sum + by, 0) / moves.length),
  };
}

function areasOf(plan: PlannedDots): Pick<Weighed, "areas"> {
  const { right, left } = planOverlap(plan);
  if (right === undefined || left === undefined) return {};
  return {
    areas: {
      hairToRemove: right.hairOutside + left.hairOutside,
      skinToFill: right.skinInside + left.skinInside,
    },
  };
}

function openingOf(
  grown: FaceMeasures<number>,
  planned: FaceMeasures<number>,
): PlannedChoice["lidRoom"] {
  const opening: { [Name in Side]?: Length<"mm"> } = {};
  for (const side of ["right", "left"] as const) {
    const [before, after] = [grown[side].lidToBrow, planned[side].lidToBrow];
    if (before !== undefined && after !== undefined) opening[side] = length(after - before);
  }
  return opening;
}

function decidedShare(
  value: number,
  asked: number,
  tolerances: ToleranceSet,
): PlannedChoice["frontShare"]["right"] {
  const tolerance = toleranceFor("frontShare", tolerances);
  return tolerance === undefined
    ? { value }
    : { value, decision: decide(measured(value - asked, 0), tolerance.limits, { rule: "simple" }) };
}

function closings(
  opening: PlannedChoice["lidRoom"],
  most: Length<"mm">,
): readonly Note<WeighingCode>[] {
  return (["right", "left"] as const).flatMap((side) => {
    const by = -(opening[side] ?? 0);
    return by > most ? [note(WEIGHING, "lid-room-closes", { side, by, most })] : [];
  });
}
