import {
  hermiteAt,
  type HermiteCurve,
  hermiteDifference,
  type HermiteKnot,
  pchip,
} from "../geometry/internal.js";
import type { BrowDots, CompleteDots } from "../landmarks/index.js";
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
  /** How far the front edge bulges towards the midline, in mm: 0 is straight. */
  readonly bulge: number;
}

/** The curves of {@link outline}, refused as it refuses. */
export function browCurves(dots: OutlineDots, options: OutlineOptions): BrowCurves {
  const { frontRoundness = 0 } = options;
  requireShape("outline", "options", options);
  requireOutwards("outline", dots, [...LOWER_DOTS, "tailEnd"]);
  const upper = borderThroughBody("outline", dots, options);
  const lower = hermiteDifference(upper, thicknessOver(upper, dots));
  const [top, bottom] = [startOf(upper), startOf(lower)];
  if (!frontIsClear(upper, lower)) {
    refuseDot(dots, "lowerStart", "a front edge that crosses no border");
  }
  // So many half thicknesses; a cubic reaches three quarters as far as its inner points.
  const half = Math.hypot(top.x - bottom.x, top.y - bottom.y) / 2;
  return { outwards: outwardsOf(dots), upper, lower, bulge: (4 / 3) * frontRoundness * half };
}

export function startOf(curve: HermiteCurve): HermiteKnot {
  return curve[0] as HermiteKnot;
}

const LOWER_DOTS = ["lowerStart", "lowerBody", "lowerArch"] as const;

/** Vertical thickness over the distance from the midline, from the lower dots to the tail end. */
function thicknessOver(upper: HermiteCurve, dots: OutlineDots): HermiteCurve {
  const outwards = outwardsOf(dots);
  const stations = LOWER_DOTS.map((dot): readonly [x: number, thickness: number] => {
    const [x, y] = dots[dot];
    const height = hermiteAt(upper, outwards * x);
    if (height <= y) {
      const most = shownValue(height, 4);
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
  refuse("inconsistent", "outline", `dots.${dot}`, dots[dot], need);
}
