import type { Line } from "../geometry/index.js";
import { heightOver } from "../geometry/internal.js";
import { type Brow, type BrowDots, type Dot, DOTS } from "../landmarks/index.js";
import { BY_HAND } from "../landmarks/internal.js";
import {
  flatPoint,
  type FlatPoint,
  length,
  type Length,
  type Point,
  type Polyline,
} from "../units/index.js";
import { refuse, requireFinite, requirePolyline, refusingAs } from "../units/internal.js";
import { BORDER_END } from "./border-end.js";
import { verticalAt } from "./upwards.js";
import { archPlace } from "./arch-place.js";
import { type NaturalArch, naturalArch } from "./natural-arch.js";

/** The dots that a brow shows before anything is planned. */
export interface NaturalDots {
  /**
   * Without depth. Lower dots are there where the lower border is known, dots of body and arch where
   * the brow is not flat.
   */
  readonly dots: BrowDots<"mm"> & Required<Pick<BrowDots<"mm">, "upperStart" | "tailEnd">>;
  /** The vertical through the more medial of both start dots. */
  readonly startLine: Line<"mm">;
  readonly arch: NaturalArch;
  /** Dots that lie beyond the end of their border, on its tangent. */
  readonly extended: readonly Dot[];
}

/** What {@link naturalDots} takes as known of the points. */
export interface NaturalDotsOptions {
  /**
   * Standard uncertainty of each point of the border, across it. Default 0.26 mm: one rater on
   * photographs (Reliability of Periocular Anthropometry, 2019, 46 adults).
   */
  readonly u?: Length<"mm">;
}

/**
 * Reads the dots of a brow as it grows:
 *
 * - start dots: the first points of its borders; tail end: the last point of the upper one;
 * - arch: the point of the upper border farthest from the chord between start and tail end, read
 *   from a curve fitted to the border, with its uncertainty; a flat brow has none;
 * - body: half-way between start and arch, sideways;
 * - lower dots of body and arch: on the lower border, vertically below the upper ones.
 *
 * A lower border that ends too early is extended along its end's tangent, and the dot is flagged; a
 * dot is left out where even the extension misses.
 *
 * @throws GeometryError `wrong-count` where a border has no points, or the upper one fewer than 2;
 * `coincident-points` where the upper border ends where it starts; `not-finite`; `out-of-range`
 * where u is negative
 *
 * @example
 * ```ts
 * import { mm, naturalDots } from "brow-geometry";
 * const upper = mm([[15, 20], [22, 23], [30, 25.5], [38, 26.5], [45, 25], [51, 22], [57, 17]]);
 * const { arch } = naturalDots({ upper }, { u: mm(0.2) });
 * arch.kind; // → "peak"
 * naturalDots({ upper: mm([[15, 20], [57, 17]]) }).arch.kind; // → "flat"
 * ```
 */
export function naturalDots(brow: Brow<"mm">, options: NaturalDotsOptions = {}): NaturalDots {
  return refusingAs("naturalDots", () => dotsFound(brow, options.u ?? BY_HAND));
}

/** {@link naturalDots}, asked for by another function. */
export function dotsFound(brow: Brow<"mm">, u: Length<"mm">): NaturalDots {
  requireBrow(brow, u);
  const arch = naturalArch(brow.upper, u);
  const dots = dotsOf(brow, arch.kind === "flat" ? undefined : arch.at);
  return {
    dots,
    startLine: verticalAt(moreMedial(dots)),
    arch,
    extended: FOUND_ON_BORDERS.filter((dot) => isBeyondEnds(dots[dot], brow[DOTS[dot].border])),
  };
}

/**
 * The dots of a brow that is a little different: with an arch where it was found to have one.
 *
 * @param isSame whether its upper border is the same, and its arch
 * @param archOff how far towards the tail its arch lies besides, in parts of what the method is off
 */
export function dotsAnew(
  brow: Brow<"mm">,
  found: NaturalDots,
  isSame: boolean,
  archOff = 0,
): NaturalDots {
  const { arch } = found;
  if (isSame) return { ...found, dots: dotsOf(brow, arch.kind === "flat" ? undefined : arch.at) };
  const at = archPlace(brow.upper, archOff);
  if (arch.kind !== "flat" && at !== undefined) {
    return { ...found, dots: dotsOf(brow, at), arch: { ...arch, at } };
  }
  const flat: NaturalArch = { kind: "flat", rise: arch.rise, ...(at && { farthest: at }) };
  return { ...found, dots: dotsOf(brow, undefined), arch: flat };
}

function dotsOf(
  { upper, lower }: Brow<"mm">,
  upperArch: FlatPoint<"mm"> | undefined,
): NaturalDots["dots"] {
  const [upperStart, tailEnd] = [withoutDepth(upper[0]), withoutDepth(upper[upper.length - 1])];
  const upperBody = upperArch && pointOver((upperStart[0] + upperArch[0]) / 2, upper);
  const lowerBody = upperBody && lower && pointOver(upperBody[0], lower);
  const lowerArch = upperArch && lower && pointOver(upperArch[0], lower);
  const dots: { [Name in Dot]?: FlatPoint<"mm"> } = { upperStart };
  if (upperBody) dots.upperBody = upperBody;
  if (upperArch) dots.upperArch = upperArch;
  dots.tailEnd = tailEnd;
  if (lower) dots.lowerStart = withoutDepth(lower[0]);
  if (lowerBody) dots.lowerBody = lowerBody;
  if (lowerArch) dots.lowerArch = lowerArch;
  return dots as NaturalDots["dots"];
}

/** Dots that lie on a border where another dot says, in their order. */
const FOUND_ON_BORDERS = ["upperBody", "lowerBody", "lowerArch"] as const;

function withoutDepth(point: Point<"mm"> | undefined): FlatPoint<"mm"> {
  const [x, y] = point as Point<"mm">;
  return flatPoint(x, y);
}

function pointOver(x: number, border: Polyline<"mm">): FlatPoint<"mm"> | undefined {
  const y = heightOver(length(x), border, BORDER_END);
  return y === undefined ? undefined : flatPoint(x, y);
}

function isBeyondEnds(dot: Point<"mm"> | undefined, border: Polyline<"mm"> = []): boolean {
  if (dot === undefined) return false;
  return border.every(([x]) => x < dot[0]) || border.every(([x]) => x > dot[0]);
}

function moreMedial({ upperStart, lowerStart, tailEnd }: NaturalDots["dots"]): Point<"mm"> {
  if (lowerStart === undefined) return upperStart;
  const outwards = tailEnd[0] < upperStart[0] ? -1 : 1;
  return outwards * lowerStart[0] < outwards * upperStart[0] ? lowerStart : upperStart;
}

function requireBrow({ upper, lower }: Brow<"mm">, u: Length<"mm">): void {
  requirePolyline("brow.upper", upper, 2);
  if (lower !== undefined) requirePolyline("brow.lower", lower, 2);
  requireFinite("options.u", u);
  if (u < 0) refuse("out-of-range", "options.u", u, "0 or more");
  const [first, last] = [upper[0] as Point<"mm">, upper[upper.length - 1] as Point<"mm">];
  if (first[0] === last[0] && first[1] === last[1]) {
    const need = "another last point";
    refuse("coincident-points", "brow.upper", upper, need);
  }
}
