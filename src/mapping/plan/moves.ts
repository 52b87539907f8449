import { type Brow, type BrowDots, type CompleteDots, type Dot } from "../../landmarks/index.js";
import { PLACED_DOTS } from "../../landmarks/internal.js";
import { placeOnSide, type Way } from "../../symmetry/index.js";
import { type Length, length, type Measured, type Note, type Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { borderMove } from "../dots/border-move.js";
import { isHair } from "../dots/is-hair.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import type { Row } from "./mean-slopes.js";
import { moveNote, type MoveNotes, type WayCode } from "./move-notes.js";

/** What to do at one dot: leave its border, move it from the hair's, or place the dot where no hair says. */
export type Move = DotMove | DotPlacing;

interface OneDot {
  readonly side: Side;
  readonly dot: Dot;
}

/**
 * The planned border less the hair's in the same place; `"stay"` where neither way is half a millimetre and
 * twice its own uncertainty.
 */
export interface DotMove extends OneDot {
  readonly kind: "move" | "stay";
  /** Parallel to the midline, positive towards the forehead; of a tail end from the middle of the hair. */
  readonly up: Measured<Length<"mm">>;
  /** Where a border starts or ends: across, positive away from the midline. */
  readonly outward?: Measured<Length<"mm">>;
}

/** A dot on a border that the hair does not have, or that is not known. */
export interface DotPlacing extends OneDot {
  readonly kind: "place";
  /** From the midline. */
  readonly distance: Length<"mm">;
  /** Above the level of the inner eye corners. */
  readonly height: Length<"mm">;
}

/** Moves of one side in a row: each dot's way up, and its way outward. */
export const MOVED: number = 2 * PLACED_DOTS.length;

/** Writes how far planned borders lie from the hair's into a row, from a place on. */
export function fillMoves(
  row: Row,
  start: number,
  planned: CompleteDots<"mm">,
  natural: BrowDots<"mm">,
  hair: Brow<"mm">,
): void {
  PLACED_DOTS.forEach((dot, index) => {
    const move = borderMove(dot, planned, natural, hair);
    row[start + 2 * index] = move[0];
    row[start + 2 * index + 1] = move[1];
  });
}

/**
 * What leads from the hair to the planned brows, dot by dot, right before left, of rows of both sides. A
 * detector's guess at a brow is no hair: its dots are placed.
 */
export function movesFrom(
  { face, dots: planned }: PlannedDots,
  values: Row,
  u: Row,
): readonly Move[] {
  const by = (at: number): Measured<Length<"mm">> | undefined => {
    const [value, unsure] = [values[at] as number, u[at] as number];
    if (Number.isNaN(value)) return undefined;
    // Adding 0 turns −0 into 0.
    return { value: length(value + 0), u: length(Number.isNaN(unsure) ? Infinity : unsure) };
  };
  return PLACED_DOTS.flatMap((dot, index) =>
    SIDES.map((side): Move => {
      const at = 2 * index + (side === "left" ? MOVED : 0);
      const [up, outward] = [by(at), by(at + 1)];
      if (up === undefined || !isHair(face, side)) {
        const { distance, height } = placeOnSide(planned[side][dot], side);
        return { kind: "place", side, dot, distance: length(distance), height: length(height) };
      }
      const ways = { up, ...(outward && { outward }) };
      return { kind: isTold(up) || isTold(outward) ? "move" : "stay", side, dot, ...ways };
    }),
  );
}

/** Moves that ask for something to be done. */
export function movesToMake({ moves }: { readonly moves: readonly Move[] }): readonly Move[] {
  return moves.filter(({ kind }) => kind !== "stay");
}

/** A pencil draws half millimetres; a finer figure would promise too much. */
export function inHalves(amount: number): number {
  // Adding 0 turns −0 into 0.
  return Math.round(2 * amount) / 2 + 0;
}

/**
 * Whether a way is worth a word: half a millimetre, and twice its uncertainty where anybody asked for that.
 */
export function isTold(by: Measured | undefined): boolean {
  if (by === undefined) return false;
  const size = Math.abs(by.value);
  return size >= 0.5 && (size >= 2 * by.u || by.u === Infinity);
}

/** What to do with one dot, rounded to half a millimetre: what `say` makes a sentence of. */
export function noteOfMove(move: Move): Note<keyof MoveNotes> {
  const { side, dot } = move;
  if (move.kind === "place") {
    const { distance, height } = move;
    const at = { distance: inHalves(distance), height: inHalves(height) };
    return moveNote("dot-placed", { side, dot, ...at });
  }
  const ways = [...wayOf(move.up, "up", "down"), ...wayOf(move.outward, "outward", "inward")];
  return ways.length === 0
    ? moveNote("dot-stays", { side, dot })
    : moveNote("dot-moves", { side, dot, ways });
}

function wayOf(by: Measured | undefined, positive: Way, negative: Way): readonly Note<WayCode>[] {
  if (by === undefined || !isTold(by)) return [];
  const { value } = by;
  return [moveNote(`way-${value > 0 ? positive : negative}`, { by: inHalves(Math.abs(value)) })];
}
