import { lengthBetween, type Skin } from "../../landmarks/index.js";
import { edgeOfDots, readSide, type SideReading } from "../../proportions/internal.js";
import { eachSide, type Point, type Side } from "../../units/index.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { edgeOfDrawn } from "./edge-of-drawn.js";
import { type Row, zeros } from "./mean-slopes.js";
import { dotsIn, eyeIn, PLACED } from "./placed-row.js";
import { BETWEEN, fillSide, READ } from "./reading-rows.js";

/** The second stage: what is read on planned dots, the eyes beside them being where the row has them. */
export function plannedReader(plan: PlannedDots): (placed: Row, skin: Skin) => Row {
  const readers = eachSide((side) => plannedSideReader(plan, side));
  return (placed, skin) => {
    const row = zeros(READ);
    const [right, left] = [
      readers.right(placed.slice(0, PLACED), skin),
      readers.left(placed.slice(PLACED), skin),
    ];
    fillSide(row, "right", right.reading);
    fillSide(row, "left", left.reading);
    row[BETWEEN] = lengthBetween(right.start, left.start, skin);
    return row;
  };
}

interface PlannedSide {
  readonly start: Point<"mm">;
  readonly reading: SideReading;
}

/** Reads one side, once for the same dots in a row: of two sides one moves at a time. */
function plannedSideReader(
  { face, choices }: PlannedDots,
  side: Side,
): (at: Row, skin: Skin) => PlannedSide {
  let last: (PlannedSide & { readonly at: Row; readonly skin: Skin }) | undefined;
  return (at, skin) => {
    const isSame =
      last?.skin === skin && at.every((value, index) => Object.is(value, last?.at[index]));
    if (last !== undefined && isSame) return last;
    const dots = dotsIn(at);
    const edge = edgeOfDrawn(dots, choices.shape, skin) ?? edgeOfDots(dots, skin);
    const reading = readSide(dots, { side, landmarks: eyeIn(at, face[side]), skin, edge });
    last = { at, skin, start: dots.upperStart, reading };
    return last;
  };
}
