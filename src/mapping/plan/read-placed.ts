import { type CompleteDots, lengthBetween, type Skin } from "../../landmarks/index.js";
import {
  type BrowEdge,
  edgeOfDots,
  readFromEye,
  readSide,
  type SideReading,
} from "../../proportions/internal.js";
import { eachSide, type Point, type Side } from "../../units/index.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { edgeOfDrawn } from "./edge-of-drawn.js";
import { fillFrom, isAlike, type Row, zeros } from "./mean-slopes.js";
import { fillMoves, MOVED } from "./moves.js";
import { AFTER_DOTS, AFTER_UPPER, dotsIn, eyeIn, PLACED } from "./placed-row.js";
import { BETWEEN, fillSide, READ } from "./reading-rows.js";

/**
 * The last stage: what is read on planned dots, the eyes beside them being where the row has them, and then
 * how far their borders lie from the hair's.
 */
export function plannedReader(plan: PlannedDots): (placed: Row, skin: Skin) => Row {
  const readers = eachSide((side) => plannedSideReader(plan, side));
  return (placed, skin) => {
    const row = zeros(READ + 2 * MOVED);
    const [right, left] = [
      readers.right(placed.slice(0, PLACED), skin),
      readers.left(placed.slice(PLACED), skin),
    ];
    fillSide(row, "right", right.reading);
    fillSide(row, "left", left.reading);
    row[BETWEEN] = lengthBetween(right.start, left.start, skin);
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

/** Reads one side, once for the same dots in a row: of two sides, or of dots and eyes, one moves at a time. */
function plannedSideReader(
  { face, choices, natural }: PlannedDots,
  side: Side,
): (at: Row, skin: Skin) => PlannedSide {
  let last: DrawnSide | undefined;
  return (at, skin) => {
    const isSame = (before: DrawnSide, size: number): boolean =>
      before.skin === skin && isAlike(at, before.at, size);
    if (last !== undefined && isSame(last, PLACED)) return last;
    const landmarks = eyeIn(at, face[side]);
    if (last !== undefined && isSame(last, AFTER_DOTS)) {
      const { dots, edge, reading } = last;
      const fromEye = readFromEye(dots, { side, landmarks, skin, edge });
      last = { ...last, at, reading: { ...reading, ...fromEye } };
      return last;
    }
    const dots = dotsIn(at);
    const edge = edgeOfDrawn(dots, choices.shape, skin) ?? edgeOfDots(dots, skin);
    // Tape lies along the upper border.
    const along = last !== undefined && isSame(last, AFTER_UPPER) ? last.reading : undefined;
    const reading = readSide(dots, { side, landmarks, skin, edge }, along);
    const moves = zeros(MOVED);
    fillMoves(moves, 0, dots, natural[side].dots, face[side].brow);
    last = { at, skin, dots, edge, start: dots.upperStart, reading, moves };
    return last;
  };
}

/** A side with what it was read on. */
interface DrawnSide extends PlannedSide {
  readonly at: Row;
  readonly skin: Skin;
  readonly dots: CompleteDots<"mm">;
  readonly edge: BrowEdge;
}
