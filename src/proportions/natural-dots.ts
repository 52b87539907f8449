import { intersectPolyline, type Line, lineAlong, type PolylinePlace } from "../geometry/index.js";
import { type Brow, type BrowDots, type Dot } from "../landmarks/index.js";
import { BY_HAND, DOT_NAMES } from "../landmarks/internal.js";
import { flatPoint, type Length, type Point, type Polyline } from "../units/index.js";
import { refuse, requireFinite, requirePolyline, refusingAs } from "../units/internal.js";
import { UPWARDS } from "./upwards.js";
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
  return refusingAs("naturalDots", () => {
    const { u = BY_HAND } = options;
    requireBrow(brow, u);
    const { upper, lower } = brow;
    const upperStart = drawn(upper[0] as Point<"mm">);
    const tailEnd = drawn(upper[upper.length - 1] as Point<"mm">);
    const lowerStart = lower && drawn(lower[0] as Point<"mm">);
    const arch = naturalArch(upper, u);
    const upperArch = arch.kind === "flat" ? undefined : drawn(arch.at);
    const upperBody = upperArch && onVertical(upper, (upperStart.at[0] + upperArch.at[0]) / 2);
    const found: { readonly [Name in Dot]: Found | undefined } = {
      upperStart,
      upperBody,
      upperArch,
      tailEnd,
      lowerStart,
      lowerBody: lower && upperBody && onVertical(lower, upperBody.at[0]),
      lowerArch: lower && upperArch && onVertical(lower, upperArch.at[0]),
    };
    const dots: { [Name in Dot]?: Point<"mm"> } = {};
    const extended: Dot[] = [];
    for (const dot of DOT_NAMES) {
      const place = found[dot];
      if (place === undefined) continue;
      dots[dot] = place.at;
      if (place.extended) extended.push(dot);
    }
    return {
      dots: dots as NaturalDots["dots"],
      startLine: lineAlong(moreMedial(upperStart, lowerStart, tailEnd).at, UPWARDS),
      arch,
      extended,
    };
  });
}

type Found = Pick<PolylinePlace<"mm">, "at" | "extended">;

function drawn(point: Point<"mm">): Found {
  return { at: flatPoint(point[0], point[1]), extended: false };
}

function onVertical(border: Polyline<"mm">, x: number): Found | undefined {
  return intersectPolyline(lineAlong(flatPoint<"mm">(x, 0), UPWARDS), border)[0];
}

function moreMedial(upper: Found, lower: Found | undefined, tail: Found): Found {
  if (lower === undefined) return upper;
  const outwards = tail.at[0] < upper.at[0] ? -1 : 1;
  return outwards * lower.at[0] < outwards * upper.at[0] ? lower : upper;
}

function requireBrow({ upper, lower }: Brow<"mm">, u: Length<"mm">): void {
  const where = "naturalDots";
  requirePolyline(where, "brow.upper", upper, 2);
  if (lower !== undefined) requirePolyline(where, "brow.lower", lower, 2);
  requireFinite(where, "options.u", u);
  if (u < 0) refuse("out-of-range", where, "options.u", u, "0 or more");
  const [first, last] = [upper[0] as Point<"mm">, upper[upper.length - 1] as Point<"mm">];
  if (first[0] === last[0] && first[1] === last[1]) {
    const need = "a last point that differs from the first";
    refuse("coincident-points", where, "brow.upper", upper, need);
  }
}
