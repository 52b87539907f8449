import { type Cubic, distance } from "../geometry/index.js";
import {
  cubicsOf,
  type HermiteCurve,
  type HermiteKnot,
  hermiteAt,
  hermiteDifference,
  mapPath,
  pchip,
  straightCubic,
} from "../geometry/internal.js";
import type { BrowDots, CompleteDots } from "../landmarks/index.js";
import { type FlatPoint, flatPoint, type Unit } from "../units/index.js";
import { refuse, shownValue } from "../units/internal.js";
import { borderThroughBody, outwardsOf, requireOutwards, SAME_HEIGHT } from "./upper-border.js";
import { type OutlineOptions, requireShape } from "./outline-shape.js";

/** The edge of a brow as exact curves. Its four parts join end to end. */
export interface Outline<U extends Unit> {
  /** From the upper start dot to the tail end. */
  readonly upper: readonly Cubic<U>[];
  /** From the end of the upper border to the end of the lower one; empty where they meet in a point. */
  readonly tail: readonly Cubic<U>[];
  /** From the lower start dot to the tail end. */
  readonly lower: readonly Cubic<U>[];
  /** From the lower start dot to the upper one. */
  readonly front: readonly Cubic<U>[];
}

/** The dots through which an outline is drawn; that of the upper border's body may be left out. */
export type OutlineDots = Omit<CompleteDots<"mm">, "upperBody"> & Pick<BrowDots<"mm">, "upperBody">;

/**
 * The outline of a brow through its dots, in the face space.
 *
 * Both borders are graphs over the distance from the midline, so that the outline is exact cubics
 * and never crosses itself. The upper border is two cubic pieces that meet at the arch, with their
 * highest point there where the arch lies above both ends; a body dot that was moved off it is one
 * more knot of the front. The lower border is the upper one less a
 * shape-preserving curve (PCHIP) of vertical thickness through the lower dots, down to nothing at
 * the tail end. A flat brow is drawn by the same rule.
 *
 * @throws GeometryError `not-finite`; `inconsistent` where the dots of a border do not follow each
 * other outwards, where the upper body is not between start and arch in height, where a lower dot is not below the upper border, or where a border crosses the
 * front edge; `out-of-range` where an option is; each naming the field
 *
 * @example
 * ```ts
 * import { mm, outline } from "brow-geometry";
 * const { upper, lower } = outline({
 *   upperStart: mm([15, 20]), upperArch: mm([45, 26]), tailEnd: mm([60, 18]),
 *   lowerStart: mm([15, 12]), lowerBody: mm([30, 17.5]), lowerArch: mm([45, 20]),
 * });
 * upper.length; // → 2
 * lower.map(([, , , to]) => to); // → [[30, 17.5], [45, 20], [60, 18]]
 * ```
 */
export function outline(dots: OutlineDots, options: OutlineOptions = {}): Outline<"mm"> {
  const { frontRoundness = 0 } = options;
  requireShape("outline", "options", options);
  requireOutwards("outline", dots, [...LOWER_DOTS, "tailEnd"]);
  const upper = borderThroughBody("outline", dots, options);
  const lower = hermiteDifference(upper, thicknessOver(upper, dots));
  if (!frontIsClear(upper, lower)) {
    refuseDot(dots, "lowerStart", "a front edge that does not cross a border");
  }
  const outwards = outwardsOf(dots);
  return {
    upper: onSide(cubicsOf(upper), outwards),
    tail: [],
    lower: onSide(cubicsOf(lower), outwards),
    front: onSide([frontEdge(lower, upper, frontRoundness)], outwards),
  };
}

const LOWER_DOTS = ["lowerStart", "lowerBody", "lowerArch"] as const;

/** Vertical thickness over the distance from the midline, from the lower dots to the tail end. */
function thicknessOver(upper: HermiteCurve, dots: OutlineDots): HermiteCurve {
  const outwards = outwardsOf(dots);
  const stations = LOWER_DOTS.map((dot): readonly [x: number, thickness: number] => {
    const [x, y] = dots[dot];
    const height = hermiteAt(upper, outwards * x);
    if (height <= y)
      refuseDot(
        dots,
        dot,
        `a y under ${shownValue(height, 4)}, the height of the upper border there`,
      );
    return [outwards * x, height - y];
  });
  return pchip([...stations, [outwards * dots.tailEnd[0], 0]]);
}

function onSide(path: readonly Cubic<"mm">[], outwards: 1 | -1): readonly Cubic<"mm">[] {
  return mapPath(path, ([x, y]) => flatPoint(outwards * x, y));
}

/** From the lower to the upper start, bulging towards the midline by so many half thicknesses. */
function frontEdge(lower: HermiteCurve, upper: HermiteCurve, roundness: number): Cubic<"mm"> {
  const [from, to] = [startOf(lower), startOf(upper)];
  const straight = straightCubic(from, to);
  if (roundness === 0) return straight;
  // A cubic reaches three quarters as far as its inner points.
  const reach = (4 / 3) * roundness * (distance(from, to) / 2);
  return [from, flatPoint(from[0] - reach, from[1]), flatPoint(to[0] - reach, to[1]), to];
}

function startOf(curve: HermiteCurve): FlatPoint<"mm"> {
  const { x, y } = curve[0] as HermiteKnot;
  return flatPoint(x, y);
}

/** Whether the line between the starts crosses no border: by the control points of the difference. */
function frontIsClear(upper: HermiteCurve, lower: HermiteCurve): boolean {
  const [top, bottom] = [startOf(upper), startOf(lower)];
  if (top[0] === bottom[0]) return true;
  const slope = (top[1] - bottom[1]) / (top[0] - bottom[0]);
  const chord = [top, bottom]
    .sort((one, other) => one[0] - other[0])
    .map(([x, y]) => ({ x, y, before: slope, after: slope }));
  const [border, side] = bottom[0] < top[0] ? [lower, -1] : [upper, 1];
  return cubicsOf<"mm">(hermiteDifference(border, chord))
    .flat()
    .every(([, y]) => side * y > -SAME_HEIGHT);
}

function refuseDot(dots: OutlineDots, dot: keyof OutlineDots, need: string): never {
  refuse("inconsistent", "outline", `dots.${dot}`, dots[dot], need);
}
