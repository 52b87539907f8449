import { type Brow, type BrowDots, type CompleteDots, mapBrow } from "../../landmarks/index.js";
import {
  eachSide,
  type Length,
  length,
  requirePositive,
  type Side,
  type Sides,
} from "../../units/index.js";
import { mapDots } from "./shape.js";
import { placeOnSide } from "./side-place.js";
import { type Knot, warp } from "./warp.js";

/** Whose heights both brows take; `"middle"`: they meet half-way. */
export type LevelRule = Side | "higher" | "middle";

/** The dots whose heights are evened; the others go along with them. */
export type LevelDot = "upperStart" | "upperArch" | "tailEnd";

const LEVEL_DOTS: readonly LevelDot[] = ["upperStart", "upperArch", "tailEnd"];

/** How {@link levelHeights} works. */
export interface LevelOptions {
  /** Default `"middle"`. */
  readonly follow?: LevelRule;
  /** How far a dot may leave the height of its natural hair, in millimetres. Default: as far as it takes. */
  readonly limit?: Length<"mm">;
  /** Where the hair grows. Default: where the dots are. */
  readonly natural?: Sides<BrowDots<"mm">>;
  /** Whole borders to be taken along. */
  readonly brows?: Sides<Brow<"mm">>;
}

/** Brows whose heights were evened. */
export interface LevelledBrows {
  readonly dots: Sides<CompleteDots<"mm">>;
  readonly brows?: Sides<Brow<"mm">>;
  /** How far each dot was moved, upwards positive. */
  readonly moved: Sides<{ readonly [Name in LevelDot]: Length<"mm"> }>;
  /** Left minus right of the heights that are left: 0 where the limit did not hold a dot back. */
  readonly uneven: { readonly [Name in LevelDot]: Length<"mm"> };
  /** The dots that the limit held back. */
  readonly heldBack: Sides<readonly LevelDot[]>;
}

/**
 * Evens the heights of start, arch and tail end of both brows, each dot on its own vertical; what
 * lies between them goes along, and vertical thickness stays.
 *
 * @throws GeometryError `out-of-range` for a limit that is not more than 0, or where start, arch and
 * tail end do not stand in order from the midline
 *
 * @example
 * ```ts
 * import { levelHeights, mm } from "brow-geometry";
 * const dots = (sign: 1 | -1, up: number) => ({
 *   upperStart: mm([sign * 15, 20 + up]), upperBody: mm([sign * 27, 24 + up]),
 *   upperArch: mm([sign * 39, 26 + up]), tailEnd: mm([sign * 56, 18]),
 *   lowerStart: mm([sign * 15, 13 + up]), lowerBody: mm([sign * 27, 18 + up]),
 *   lowerArch: mm([sign * 39, 21 + up]),
 * });
 * const { uneven, moved, heldBack } = levelHeights(
 *   { right: dots(-1, 0), left: dots(1, 3) },
 *   { follow: "left", limit: mm(2) },
 * );
 * moved.right; // → { upperStart: 2, upperArch: 2, tailEnd: 0 }
 * uneven.upperArch; // → 1
 * heldBack.right; // → ["upperStart", "upperArch"]
 * ```
 */
export function levelHeights(
  dots: Sides<CompleteDots<"mm">>,
  options: LevelOptions = {},
): LevelledBrows {
  const { follow = "middle", limit, natural = dots, brows } = options;
  if (limit !== undefined) requirePositive("levelHeights", "limit", limit);
  const levels = LEVEL_DOTS.map((dot) => levelOf(dot, dots, natural, follow, limit));
  const carry = eachSide((side) =>
    warp(
      "levelHeights",
      levels.map((level) => level.knots[side]),
      side,
      side,
    ),
  );
  return {
    dots: eachSide((side) => mapDots(dots[side], carry[side])),
    ...(brows === undefined
      ? {}
      : { brows: eachSide((side) => mapBrow(brows[side], carry[side])) }),
    moved: eachSide((side) => byDot(levels, ({ knots }) => upOf(knots[side]))),
    uneven: byDot(levels, ({ knots }) => knots.left.to.height - knots.right.to.height),
    heldBack: eachSide((side) =>
      levels.filter((level) => level.heldBack[side]).map(({ dot }) => dot),
    ),
  };
}

/** One dot on both sides: where it goes, and whether it was kept from going all the way. */
interface Level {
  readonly dot: LevelDot;
  readonly knots: Sides<Knot>;
  readonly heldBack: Sides<boolean>;
}

function levelOf(
  dot: LevelDot,
  dots: Sides<CompleteDots<"mm">>,
  natural: Sides<BrowDots<"mm">>,
  follow: LevelRule,
  limit: Length<"mm"> | undefined,
): Level {
  const places = eachSide((side) => placeOnSide(dots[side][dot], side));
  const aim = aimOf(
    follow,
    eachSide((side) => places[side].height),
  );
  const heights = eachSide((side) => {
    const grown = natural[side][dot];
    if (limit === undefined || grown === undefined) return aim;
    const { height } = placeOnSide(grown, side);
    return Math.min(Math.max(aim, height - limit), height + limit);
  });
  return {
    dot,
    knots: eachSide((side) => ({
      from: places[side],
      to: { distance: places[side].distance, height: heights[side] },
    })),
    heldBack: eachSide((side) => heights[side] !== aim),
  };
}

function aimOf(follow: LevelRule, { right, left }: Sides<number>): number {
  switch (follow) {
    case "right":
      return right;
    case "left":
      return left;
    case "higher":
      return Math.max(right, left);
    case "middle":
      return (right + left) / 2;
  }
}

function upOf({ from, to }: Knot): number {
  return to.height - from.height;
}

function byDot(
  levels: readonly Level[],
  read: (level: Level) => number,
): { readonly [Name in LevelDot]: Length<"mm"> } {
  return Object.fromEntries(levels.map((level) => [level.dot, length(read(level))])) as {
    readonly [Name in LevelDot]: Length<"mm">;
  };
}
