import type { BrowDots, SideMeasures } from "../../landmarks/index.js";
import {
  compareSides,
  placeOnSide,
  type Registration,
  type SideComparison,
} from "../../symmetry/index.js";
import { eachSide, type Measured, measured, type Sides } from "../../units/index.js";
import { toRadians } from "../../units/internal.js";
import type { JudgedOptions } from "./result.js";

/** The dots whose evenness is followed, with their measures. */
const FOLLOWED = [
  ["upperStart", "startDistance", "startHeight"],
  ["upperArch", "archDistance", "archHeight"],
  ["tailEnd", "tailDistance", "tailHeight"],
] as const;

type Read = { -readonly [Name in keyof SideMeasures<Measured>]: Measured };

/** Distances and heights of both sides, whose errors of registration are shared. */
export function evennessOf(
  dots: Sides<BrowDots<"mm">>,
  registration: Registration | undefined,
  dotU: number,
  options: JudgedOptions,
): SideComparison {
  const { shiftU = 0, turnU = 0, stretchU = 0, similarity } = registration ?? {};
  const [centreX, centreY] = similarity?.to ?? [0, 0];
  const turn = toRadians(turnU);
  const differences: Read = {};
  const sides = eachSide((side) => {
    const read: Read = {};
    for (const [dot, distance, height] of FOLLOWED) {
      const at = dots[side][dot];
      if (at === undefined) continue;
      const [x, y] = [at[0] - centreX, at[1] - centreY];
      const place = placeOnSide(at, side);
      const acrossU = Math.hypot(dotU, shiftU, turn * y, stretchU * x);
      read[distance] = measured<number>(place.distance, acrossU);
      read[height] = measured<number>(
        place.height,
        Math.hypot(dotU, shiftU, turn * x, stretchU * y),
      );
    }
    return read;
  });
  for (const [dot, distance, height] of FOLLOWED) {
    const [right, left] = [dots.right[dot], dots.left[dot]];
    if (right === undefined || left === undefined) continue;
    const both = [right[0] + left[0] - 2 * centreX, right[1] + left[1] - 2 * centreY] as const;
    const apart = [left[0] - right[0], left[1] - right[1]] as const;
    const ofDots = Math.SQRT2 * dotU;
    // What shifts both sides alike brings one nearer to the midline, the other farther from it.
    const across = Math.hypot(ofDots, 2 * shiftU, turn * both[1], stretchU * both[0]);
    const up = Math.hypot(ofDots, turn * apart[0], stretchU * apart[1]);
    differences[distance] = measured<number>(left[0] + right[0], across);
    differences[height] = measured<number>(apart[1], up);
  }
  return compareSides(sides, { ...options, differences });
}
