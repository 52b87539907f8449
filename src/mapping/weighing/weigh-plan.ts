import { type FaceMeasures, type SideMeasures } from "../../landmarks/index.js";
import { byRuler, PLACED_DOTS } from "../../landmarks/internal.js";
import {
  measureFace,
  naturalOutline,
  type Outline,
  type OutlineOverlap,
} from "../../proportions/index.js";
import {
  browCurves,
  edgeOfCurves,
  outlineOfCurves,
  overlapOver,
  readSide,
  type SideReading,
} from "../../proportions/internal.js";
import { compareSides } from "../../symmetry/index.js";
import {
  eachSide,
  type Length,
  length,
  type Note,
  type Side,
  type Sides,
  WORKING_TOLERANCES,
} from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import type { Choices } from "../choices/choices.js";
import { borderMove } from "../dots/border-move.js";
import { isHair } from "../dots/is-hair.js";
import { readFace } from "../dots/plan-dots.js";
import { decideShares } from "../plan/decide-shares.js";
import type { FaceRead, PlannedDots } from "../dots/planned-dots.js";
import { shapeFindings } from "../shape/shape-findings.js";
import type { ShapeCode } from "../shape/notes.js";
import { exactly } from "../plan/reading-rows.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { PlannedChoice } from "./weighed-choice.js";
import { type WeighingCode, weighingNote } from "./notes.js";

/** The brows as they grow, read once for all choices. */
export interface GrownBrows extends FaceRead {
  readonly measures: FaceMeasures<number>;
  /** How a plan lies over the hair of a side, where both of its borders are known. */
  readonly overlaps: Sides<((planned: Outline<"mm">) => OutlineOverlap) | undefined>;
}

export function readGrown(face: PlannableFace): GrownBrows {
  const read = readFace(face);
  const dots = eachSide((side) => read.natural[side].dots);
  const hair = eachSide((side) => face[side].brow);
  const overlaps = eachSide((side) => {
    const { upper, lower } = hair[side];
    return lower === undefined || !isHair(face, side)
      ? undefined
      : overlapOver(naturalOutline({ upper, lower }));
  });
  return { ...read, measures: measureFace(dots, face, read.skin, hair), overlaps };
}

/** What one plan does to a face, in the row of its choices. */
export function weighPlan(
  choices: Choices,
  plan: PlannedDots,
  grown: GrownBrows,
  most: Length<"mm"> | undefined,
): PlannedChoice {
  const { dots, face, skin } = plan;
  const { shape } = plan.choices;
  const curves = eachSide((side) => browCurves(dots[side], shape));
  const measures = eachSide((side) => {
    const landmarks = face[side];
    const edge = edgeOfCurves(curves[side], skin);
    return readSide(dots[side], { side, landmarks, skin, edge });
  });
  const startToStart = byRuler(dots.right.upperStart, dots.left.upperStart, skin);
  // What all choices have in common, the errors of the landmarks, does not tell them apart.
  const exact = exactly({ ...measures, startToStart });
  const { tolerances = WORKING_TOLERANCES } = choices;
  const judged = { tolerances, rule: "simple" } as const;
  const { arch, frontShare: asked } = plan.choices;
  // Where another rule places the arch, the share is what comes of it: nobody asked for one.
  const isAsked = choices.frontShare !== undefined || arch === "brow-length-share";
  const shares = decideShares(exact, asked, tolerances, judged);
  const row: Weighed = {
    choices,
    dots,
    findings: shapeFindings(plan),
    ...movesOf(plan),
    ...areasOf((side) => outlineOfCurves(curves[side], shape), grown.overlaps),
    comparison: compareSides(exact, judged),
    lidRoom: openingOf(grown.measures, measures),
    frontShare: eachSide((side) => ({
      value: measures[side].frontShare ?? 0,
      ...(shares === undefined ? {} : { decision: shares[side] }),
    })),
  };
  const isSeen = SIDES.every((side) => isHair(face, side));
  const broken = most === undefined ? [] : closings(row.lidRoom, most);
  const notGranted = plan.reasons.filter(({ code }) => code === "tail-level-nowhere");
  return {
    kind: broken.length > 0 ? "ruled-out" : "usable",
    ...row,
    reasons: [
      ...broken,
      ...notGranted,
      ...weighingReasons(row, isAsked ? asked : undefined, isSeen),
    ],
  };
}

function movesOf({ face, natural, dots }: PlannedDots): Pick<Weighed, "greatestMove" | "meanMove"> {
  const moves = PLACED_DOTS.flatMap((dot) =>
    SIDES.flatMap((side) => {
      const [up, outward] = borderMove(dot, dots[side], natural[side].dots, face[side].brow);
      const by = length<"mm">(Math.hypot(up, outward || 0));
      return Number.isNaN(by) ? [] : [{ side, dot, by }];
    }),
  );
  return {
    greatestMove: moves.reduce((greatest, move) => (move.by > greatest.by ? move : greatest)),
    meanMove: length(moves.reduce((sum, { by }) => sum + by, 0) / moves.length),
  };
}

function areasOf(
  drawn: (side: Side) => Outline<"mm">,
  overlaps: GrownBrows["overlaps"],
): Pick<Weighed, "areas"> {
  if (overlaps.right === undefined || overlaps.left === undefined) return {};
  const right = overlaps.right(drawn("right"));
  const left = overlaps.left(drawn("left"));
  return {
    areas: {
      hairToRemove: right.hairOutside + left.hairOutside,
      skinToFill: right.skinInside + left.skinInside,
    },
  };
}

function openingOf(
  grown: Sides<SideMeasures<number>>,
  planned: Sides<SideReading>,
): PlannedChoice["lidRoom"] {
  const opening: { [Name in Side]?: Length<"mm"> } = {};
  for (const side of SIDES) {
    const [before, after] = [grown[side].lidToBrow, planned[side].lidToBrow];
    if (before !== undefined && after !== undefined) opening[side] = length(after - before);
  }
  return opening;
}

function closings(
  opening: PlannedChoice["lidRoom"],
  most: Length<"mm">,
): readonly Note<WeighingCode>[] {
  return SIDES.flatMap((side) => {
    const by = -(opening[side] ?? 0);
    return by > most ? [weighingNote("lid-room-closes", { side, by, most })] : [];
  });
}

/** What was weighed of one choice, before it is judged. */
export type Weighed = Omit<PlannedChoice, "kind" | "reasons">;

function weighingReasons(
  row: Weighed,
  asked: number | undefined,
  isSeen: boolean,
): readonly Note<WeighingCode | ShapeCode>[] {
  const { greatestMove, meanMove: mean, areas, comparison, lidRoom, frontShare } = row;
  const share = { right: frontShare.right.value, left: frontShare.left.value };
  const { side, dot, by: greatest } = greatestMove;
  const apart = comparison.differences
    .filter(({ decision }) => decision?.outcome === "outside")
    .map(({ measure, difference: { value: difference } }) =>
      weighingNote(measure === "frontShare" ? "differs-in-share" : "differs", {
        measure,
        difference,
      }),
    );
  return [
    ...row.findings,
    ...(isSeen ? [weighingNote("moves", { mean, side, dot, greatest })] : []),
    areas === undefined
      ? weighingNote("areas-unknown")
      : weighingNote("areas", { hair: areas.hairToRemove, skin: areas.skinToFill }),
    apart.length === 0
      ? weighingNote("sides-even")
      : weighingNote("sides-differ", { measures: apart }),
    lidRoom.right === undefined || lidRoom.left === undefined
      ? weighingNote("lid-room-unknown")
      : weighingNote("lid-room", { right: lidRoom.right, left: lidRoom.left }),
    asked === undefined
      ? weighingNote("front-share-measured", share)
      : weighingNote("front-share", { ...share, asked }),
  ];
}
