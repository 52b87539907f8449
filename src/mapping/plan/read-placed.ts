import { type CompleteDots, type Skin } from "../../landmarks/index.js";
import { byRuler, numbersOf, skinWith } from "../../landmarks/internal.js";
import {
  type BrowCurves,
  type BrowEdge,
  edgeOfCurves,
  edgeOfDots,
  readSide,
  type SideReading,
} from "../../proportions/internal.js";
import { eachSide, type Point, type Side } from "../../units/index.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { curvesOfDrawn } from "./edge-of-drawn.js";
import { fillFrom, isAlike, type Row, zeros } from "./mean-slopes.js";
import { fillMoves, MOVED } from "./moves.js";
import { AFTER_DOTS, AFTER_UPPER, dotsIn, eyeIn, PLACED } from "./placed-row.js";
import { BETWEEN, fillSide, READ } from "./reading-rows.js";

/** The last stage: what is read on planned dots, and how far their borders lie from the hair's. */
export function plannedReader(plan: PlannedDots): (placed: Row) => Row {
  const readers = eachSide((side) => plannedSideReader(plan, side));
  const own = numbersOf(plan.skin);
  return (placed) => {
    const numbers = placed.slice(2 * PLACED);
    const skin = isAlike(numbers, own, own.length) ? plan.skin : skinWith(numbers, plan.skin);
    const row = zeros(READ + 2 * MOVED);
    const [right, left] = [
      readers.right(placed.slice(0, PLACED), skin),
      readers.left(placed.slice(PLACED, 2 * PLACED), skin),
    ];
    fillSide(row, "right", right.reading);
    fillSide(row, "left", left.reading);
    row[BETWEEN] = byRuler(right.start, left.start, skin);
    fillFrom(row, READ, right.moves);
    fillFrom(row, READ + MOVED, left.moves);
    return row;
  };
}

interface PlannedSide {
  readonly start: Point<"mm">;
  readonly reading: SideReading;
  readonly moves: Row;
}

/** Reads one side, of it only what moved: of two sides, or of dots, eyes and skin, one moves at a time. */
function plannedSideReader(
  { face, choices, natural }: PlannedDots,
  side: Side,
): (at: Row, skin: Skin) => PlannedSide {
  let last: DrawnSide | undefined;
  return (at, skin) => {
    const known = last !== undefined && isAlike(at, last.at, AFTER_DOTS) ? last : undefined;
    if (known?.skin === skin && isAlike(at, known.at, PLACED)) return known;
    const landmarks = eyeIn(at, face[side]);
    const dots = known?.dots ?? dotsIn(at);
    const curves = known === undefined ? curvesOfDrawn(dots, choices.shape) : known.curves;
    const edge = curves === undefined ? edgeOfDots(dots, skin) : edgeOfCurves(curves, skin);
    // Tape lies along the upper border.
    const along =
      last?.skin === skin && isAlike(at, last.at, AFTER_UPPER) ? last.reading : undefined;
    const reading = readSide(dots, { side, landmarks, skin, edge }, along);
    const moves = known?.moves ?? zeros(MOVED);
    if (known === undefined) fillMoves(moves, 0, dots, natural[side].dots, face[side].brow);
    last = { at, skin, dots, curves, edge, start: dots.upperStart, reading, moves };
    return last;
  };
}

/** A side with what it was read on. */
interface DrawnSide extends PlannedSide {
  readonly at: Row;
  readonly skin: Skin;
  readonly dots: CompleteDots<"mm">;
  readonly curves: BrowCurves | undefined;
  readonly edge: BrowEdge;
}
