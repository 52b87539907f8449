import type { BrowDots, CompleteDots, Dot } from "../../landmarks/index.js";
import { PLACED_DOTS } from "../../landmarks/internal.js";
import { placeOnSide, type Way } from "../../symmetry/index.js";
import { type Length, length, type Note, type Side, type Sides } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { moveNote, type MoveNotes, type WayCode } from "./move-notes.js";

/** What to do with one dot: leave it, move it from where it grows, or place it where none grows. */
export type Move = DotMove | DotPlacing;

interface OneDot {
  readonly side: Side;
  readonly dot: Dot;
}

/** A dot that the natural brow has too; `"stay"` where the move rounds to nothing. */
export interface DotMove extends OneDot {
  readonly kind: "move" | "stay";
  /** Parallel to the midline, positive towards the forehead. */
  readonly up: Length<"mm">;
  /** Across, positive away from the midline. */
  readonly outward: Length<"mm">;
}

/** A dot that the natural brow lacks: the arch of a flat brow, a lower border that is not known. */
export interface DotPlacing extends OneDot {
  readonly kind: "place";
  /** From the midline. */
  readonly distance: Length<"mm">;
  /** Above the level of the inner eye corners. */
  readonly height: Length<"mm">;
}

/** What leads from the natural brows to the planned ones, dot by dot, right before left. */
export function movesBetween(
  natural: Sides<BrowDots<"mm">>,
  planned: Sides<CompleteDots<"mm">>,
): readonly Move[] {
  return PLACED_DOTS.flatMap((dot) =>
    SIDES.map((side) => moveOf(dot, side, natural[side], planned[side])),
  );
}

function moveOf(dot: Dot, side: Side, natural: BrowDots<"mm">, planned: CompleteDots<"mm">): Move {
  const to = placeOnSide(planned[dot], side);
  const grown = natural[dot];
  if (grown === undefined) {
    const { distance, height } = to;
    return { kind: "place", side, dot, distance: length(distance), height: length(height) };
  }
  const from = placeOnSide(grown, side);
  const up = to.height - from.height;
  const outward = to.distance - from.distance;
  const moves = [up, outward].some((by) => inHalves(by) !== 0);
  return { kind: moves ? "move" : "stay", side, dot, up: length(up), outward: length(outward) };
}

/** A pencil draws half millimetres; a finer figure would promise too much. */
export function inHalves(amount: number): number {
  // Adding 0 turns −0 into 0.
  return Math.round(2 * amount) / 2 + 0;
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

function wayOf(value: number, positive: Way, negative: Way): readonly Note<WayCode>[] {
  const by = inHalves(Math.abs(value));
  return by === 0 ? [] : [moveNote(`way-${value > 0 ? positive : negative}`, { by })];
}
