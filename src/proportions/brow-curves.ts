import {
  hermiteAt,
  type HermiteCurve,
  hermiteDifference,
  type HermiteKnot,
  hermiteKnotAt,
  pchip,
} from "../geometry/internal.js";
import type { Cubic } from "../geometry/index.js";
import type { BrowDots, CompleteDots } from "../landmarks/index.js";
import { flatPoint } from "../units/index.js";
import { refuse, shownValue } from "../units/internal.js";
import { type OutlineOptions, requireShape } from "./outline-shape.js";
import { borderThroughBody, outwardsOf, requireOutwards, SAME_HEIGHT } from "./upper-border.js";

/** The dots through which an outline is drawn; that of the upper border's body may be left out. */
export type OutlineDots = Omit<CompleteDots<"mm">, "upperBody"> & Pick<BrowDots<"mm">, "upperBody">;

/** A drawn brow as heights over the distance from the midline, alike on both sides. */
export interface BrowCurves {
  /** 1 where that distance grows with x, on the client's left; −1 on the right. */
  readonly outwards: 1 | -1;
  readonly upper: HermiteCurve;
  readonly lower: HermiteCurve;
  /** What of the borders is seen, from the corners of the front on. */
  readonly seen: { readonly upper: HermiteCurve; readonly lower: HermiteCurve };
  /** The front edge, from the lower corner to the upper one. */
  readonly front: Cubic<"mm">;
}

/** The curves of {@link outline}, refused as it refuses. */
export function browCurves(dots: OutlineDots, options: OutlineOptions): BrowCurves {
  const { frontRoundness = 0, softFront = 0 } = options;
  requireShape("options", options);
  requireOutwards(dots, [...LOWER_DOTS, "tailEnd"]);
  const upper = borderThroughBody(dots, options);
  const lower = hermiteDifference(upper, thicknessOver(upper, dots));
  const [top, bottom] = [startOf(upper), startOf(lower)];
  // So many half thicknesses.
  const back = (frontRoundness * Math.hypot(top.x - bottom.x, top.y - bottom.y)) / 2;
  const seen = {
    upper: curveFrom(upper, top.x + back + softFront),
    lower: curveFrom(lower, bottom.x + back),
  };
  if (!frontIsClear(seen.upper, seen.lower)) {
    const need = "a front edge that crosses no border";
    // A slanted front may be clear of its borders until it is made soft.
    if (softFront > 0 && frontIsClear(curveFrom(upper, top.x + back), seen.lower)) {
      refuse("inconsistent", "softFront", softFront, need);
    }
    refuseDot(dots, "lowerStart", need);
  }
  const front = frontEdge(startOf(seen.lower), startOf(seen.upper), back, back + softFront);
  return { outwards: outwardsOf(dots), upper, lower, seen, front };
}

/** A curve from an x on. */
function curveFrom(curve: HermiteCurve, x: number): HermiteCurve {
  return [hermiteKnotAt(curve, x), ...curve.filter((knot) => knot.x > x)];
}

/**
 * The front edge between corners that lie so far behind the start line: it leaves either border as that runs, and
 * lies (√back·(1 − t) − √upperBack·t)² behind the start line, so that it touches the line and never passes it.
 */
function frontEdge(
  lower: HermiteKnot,
  upper: HermiteKnot,
  back: number,
  upperBack: number,
): Cubic<"mm"> {
  const turn = Math.sqrt(back * upperBack);
  const [leaving, arriving] = [(-2 * (back + turn)) / 3, (-2 * (upperBack + turn)) / 3];
  return [
    flatPoint(lower.x, lower.y),
    flatPoint(lower.x + leaving, lower.y + leaving * lower.after),
    flatPoint(upper.x + arriving, upper.y + arriving * upper.after),
    flatPoint(upper.x, upper.y),
  ];
}

export function startOf(curve: HermiteCurve): HermiteKnot {
  return curve[0] as HermiteKnot;
}

export const LOWER_DOTS = ["lowerStart", "lowerBody", "lowerArch"] as const;

/** Vertical thickness over the distance from the midline, from the lower dots to the tail end. */
function thicknessOver(upper: HermiteCurve, dots: OutlineDots): HermiteCurve {
  const outwards = outwardsOf(dots);
  const stations = LOWER_DOTS.map((dot): readonly [x: number, thickness: number] => {
    const [x, y] = dots[dot];
    const height = hermiteAt(upper, outwards * x);
    if (height <= y) {
      const most = shownValue(height);
      refuseDot(dots, dot, `a y under ${most}, the upper border`);
    }
    return [outwards * x, height - y];
  });
  return pchip([...stations, [outwards * dots.tailEnd[0], 0]]);
}

/** Whether the line between the starts crosses no border: by the control points of the difference. */
function frontIsClear(upper: HermiteCurve, lower: HermiteCurve): boolean {
  const [top, bottom] = [startOf(upper), startOf(lower)];
  if (top.x === bottom.x) return true;
  const slope = (top.y - bottom.y) / (top.x - bottom.x);
  const chord = [top, bottom]
    .sort((one, other) => one.x - other.x)
    .map(({ x, y }) => ({ x, y, before: slope, after: slope }));
  const [border, side] = bottom.x < top.x ? [lower, -1] : [upper, 1];
  const apart = hermiteDifference(border, chord);
  return apart.every(({ x, y, before, after }, index) => {
    const toLast = (x - (apart[index - 1]?.x ?? x)) / 3;
    const toNext = ((apart[index + 1]?.x ?? x) - x) / 3;
    return [y, y - toLast * before, y + toNext * after].every(
      (height) => side * height > -SAME_HEIGHT,
    );
  });
}

function refuseDot(dots: OutlineDots, dot: keyof OutlineDots, need: string): never {
  refuse("inconsistent", `dots.${dot}`, dots[dot], need);
}
