import type { Unit } from "../../units/index.js";
import type { Direction } from "../lines/line.js";
import type { MirrorPair } from "./labelled-pair.js";
import { type MirrorAxis, type MirrorTerm, squaredShare } from "./mirror-axis.js";

/** Standard uncertainty of an axis: of its angle, in radians, and of its place at the centroid. */
export interface AxisDoubt {
  readonly turn: number;
  readonly shift: number;
}

/**
 * How far the axis follows its points, to first order, each of them uncertain by its own u.
 *
 * The axis is where turning and shifting it change nothing: so what a moved point changes there is
 * undone by a turn and a shift, through the curvature of what all terms leave. That weights change
 * with the points is in both; that spreads grow with them is not.
 */
export function doubtOf<U extends Unit>(
  terms: readonly MirrorTerm[],
  pairs: readonly MirrorPair<U>[],
  axis: MirrorAxis,
  growth: number,
  [cosine, sine]: Direction,
): AxisDoubt {
  // Curvature by turn and shift, and variance of what errors change there.
  let [turning, both, shifting] = [0, 0, 0];
  let [turned, mixed, shifted] = [0, 0, 0];
  for (let index = 0; index < terms.length; index++) {
    const term = terms[index] as MirrorTerm;
    const { other, spread, u = spread } = pairs[index] as MirrorPair<U>;
    // What the bisquare leaves of the weight, and how fast that changes with the squared mismatch.
    const left = Math.max(0, 1 - squaredShare(term, axis) / growth);
    const kept = term.weight * left * left;
    const rate = (-4 * term.weight * left * term.perLimit) / growth;
    const [oneX, oneY] = [term.oneX - axis.x, term.oneY - axis.y];
    const [otherX, otherY] = [term.otherX - axis.x, term.otherY - axis.y];
    const [along, across] = [oneX * cosine + oneY * sine, oneY * cosine - oneX * sine];
    const [level, aside] = [otherX * cosine + otherY * sine, otherY * cosine - otherX * sine];
    // How the squared mismatch changes as the axis turns and as it shifts.
    const turn = along * aside + level * across;
    const shift = across + aside;
    turning += kept * (along * level - across * aside) + rate * turn * turn;
    both += rate * turn * shift;
    const byShift = kept + rate * shift * shift;
    shifting += byShift;
    // What either point changes there, moved along the axis and moved across it.
    const lag = rate * (along - level);
    const [oneAlong, otherAlong] = [kept * aside + lag * turn, kept * across - lag * turn];
    const byTurn = rate * turn * shift;
    const [oneAcross, otherAcross] = [kept * level + byTurn, kept * along + byTurn];
    // A point that is its own partner moves both ends of its mismatch at once.
    const variance = u * u * (other === undefined ? 2 : 1);
    turned += variance * (oneAlong ** 2 + otherAlong ** 2 + oneAcross ** 2 + otherAcross ** 2);
    mixed +=
      variance * (lag * shift * (oneAlong - otherAlong) + byShift * (oneAcross + otherAcross));
    shifted += 2 * variance * ((lag * shift) ** 2 + byShift ** 2);
  }
  const curvature = 2 * Math.abs(turning * shifting - both * both);
  const varianceOf = (own: number, cross: number, square: number, other: number): number =>
    Math.max(0, own * own * square - 2 * own * cross * mixed + cross * cross * other);
  return {
    turn: Math.sqrt(varianceOf(shifting, both, turned, shifted)) / curvature,
    shift: Math.sqrt(varianceOf(turning, both, shifted, turned)) / curvature,
  };
}
