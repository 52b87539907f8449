import type { BrowPlan } from "brow-geometry";
import { type FlatPoint, mm } from "brow-geometry/units";

type Move = BrowPlan["moves"][number];
type DotMove = Exclude<Move, { kind: "place" }>;

/** A move as an arrow on the face. */
export interface Arrow {
  readonly move: DotMove;
  readonly from: FlatPoint<"mm">;
  readonly to: FlatPoint<"mm">;
}

/** How many moves an artist has in her head at a time. */
const MOST = 3;

/** The moves that matter most: the greatest ones that are told, from the hair to the plan. */
export function greatestMoves({ moves, dots }: BrowPlan): readonly Arrow[] {
  return moves
    .flatMap((move) => (move.kind === "move" ? [{ move, size: sizeOf(move) }] : []))
    .sort((one, other) => other.size - one.size)
    .slice(0, MOST)
    .map(({ move }) => {
      const [x, y] = dots[move.side][move.dot];
      const out = (move.outward?.value ?? 0) * (move.side === "left" ? 1 : -1);
      return { move, from: mm([x - out, y - move.up.value]), to: mm([x, y]) };
    });
}

function sizeOf({ up, outward }: DotMove): number {
  return Math.hypot(up.value, outward?.value ?? 0);
}
