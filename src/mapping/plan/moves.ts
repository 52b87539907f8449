import { type BrowDots, type CompleteDots, type Dot, DOTS } from "../../landmarks/index.js";
import { PLACED_DOTS } from "../../landmarks/internal.js";
import { placeOnSide, type Way } from "../../symmetry/index.js";
import { WAYS } from "../../symmetry/internal.js";
import { type Length, length, type Side, type Sides } from "../../units/index.js";
import { fill, SIDES } from "../../units/internal.js";
import { MOVES } from "./words.js";

/** What to do with one dot: leave it, move it from where it grows, or place it where none grows. */
export type Move = DotMove | DotPlacing;

interface OneDot {
  readonly side: Side;
  readonly dot: Dot;
  /** In English, rounded to half a millimetre: "left arch: up 1.5 mm, outward 1 mm". */
  readonly text: string;
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
  const name = { side, dot: DOTS[dot].words };
  if (grown === undefined) {
    return {
      kind: "place",
      side,
      dot,
      distance: length(to.distance),
      height: length(to.height),
      text: fill(MOVES.place, {
        ...name,
        distance: inHalves(to.distance),
        height: inHalves(to.height),
      }),
    };
  }
  const from = placeOnSide(grown, side);
  const up = to.height - from.height;
  const outward = to.distance - from.distance;
  const ways = [inWords(up, "up", "down"), inWords(outward, "outward", "inward")].filter(
    (way) => way !== "",
  );
  return {
    kind: ways.length > 0 ? "move" : "stay",
    side,
    dot,
    up: length(up),
    outward: length(outward),
    text:
      ways.length > 0
        ? fill(MOVES.move, { ...name, ways: ways.join(", ") })
        : fill(MOVES.stay, name),
  };
}

function inWords(by: number, positive: Way, negative: Way): string {
  const amount = inHalves(Math.abs(by));
  return amount === 0 ? "" : fill(WAYS[by > 0 ? positive : negative], { by: `${amount} mm` });
}

/** A pencil draws half millimetres; a finer figure would promise too much. */
export function inHalves(amount: number): number {
  // Adding 0 turns −0 into 0.
  return Math.round(2 * amount) / 2 + 0;
}
