import { midpoint, type SpaceVector } from "../geometry/index.js";
import { dotProduct, spaceAdvance } from "../geometry/internal.js";
import type { Face, SymmetricPoints, SideLandmark } from "../landmarks/index.js";
import { PROFILE_LEAN } from "../symmetry/internal.js";
import { type DeepPoint, hasDepth, type Point, type Sides } from "../units/index.js";
import { toRadians } from "../units/internal.js";

/** A direction or a way in the picture's space: right, down, towards the viewer. */
export type Way = SpaceVector;

/** Two of a face's own axes, each of length 1. */
export interface FacialAxes {
  /** To the client's left. */
  readonly across: Way;
  /** Along the forehead of somebody who looks ahead. */
  readonly up: Way;
}

/** Pairs that lie on the skin, and not on the eyeball, which turns in its orbit. */
const PAIRS_ON_SKIN: readonly SideLandmark[] = ["endocanthion", "exocanthion", "alare", "cheilion"];

/** Mirror partners that both carry depth: those of a mesh where there is one. */
export function deepPairs({
  right,
  left,
  symmetricPoints,
}: Face<"px">): readonly Sides<DeepPoint<"px">>[] {
  const named: SymmetricPoints<"px">["pairs"] = PAIRS_ON_SKIN.flatMap((name) => {
    const pair = { right: right[name], left: left[name] };
    return pair.right === undefined || pair.left === undefined
      ? []
      : [{ right: pair.right, left: pair.left }];
  });
  return [...named, ...(symmetricPoints?.pairs ?? [])].flatMap((pair) =>
    hasDepth(pair.right) && hasDepth(pair.left) ? [{ right: pair.right, left: pair.left }] : [],
  );
}

/** From the right to the left partners, all pairs together: wide pairs count for more. */
export function wayAcross(pairs: readonly Sides<DeepPoint<"px">>[]): Way {
  return pairs.reduce<Way>(
    (sum, { right, left }) => spaceAdvance(sum, wayFrom(right, left), 1),
    [0, 0, 0],
  );
}

const PROFILE = toRadians(PROFILE_LEAN);

/** The axes in space, where the corners of eyes and mouth have depth. */
export function axesInSpace(face: Face<"px">): FacialAxes | undefined {
  const { right, left } = face;
  const eyes = middleOf(right.exocanthion, left.exocanthion);
  const mouth = middleOf(right.cheilion, left.cheilion);
  if (eyes === undefined || mouth === undefined || !hasDepth(eyes) || !hasDepth(mouth)) {
    return undefined;
  }
  const across = unit(wayAcross(deepPairs(face)));
  const rise = wayFrom(mouth, eyes);
  const backwards = unit(spaceAdvance(rise, across, -dotProduct(rise, across)));
  const forwards = cross(backwards, across);
  return {
    across,
    up: spaceAdvance(scaled(backwards, Math.cos(PROFILE)), forwards, Math.sin(PROFILE)),
  };
}

/** The axes in the picture's plane, where the outer eye corners are known. */
export function axesInPicture({ right, left }: Face<"px">): FacialAxes | undefined {
  if (right.exocanthion === undefined || left.exocanthion === undefined) return undefined;
  const [x, y] = wayFrom(right.exocanthion, left.exocanthion);
  const across = unit([x, y, 0]);
  return { across, up: [across[1], -across[0], 0] };
}

export function middleOf(
  one: Point<"px"> | undefined,
  other: Point<"px"> | undefined,
): Point<"px"> | undefined {
  return one === undefined || other === undefined ? undefined : midpoint(one, other);
}

export function wayFrom(from: Point<"px">, to: Point<"px">): Way {
  const ahead = hasDepth(from) && hasDepth(to) ? to[2] - from[2] : 0;
  return [to[0] - from[0], to[1] - from[1], ahead];
}

function cross(one: Way, other: Way): Way {
  return [
    one[1] * other[2] - one[2] * other[1],
    one[2] * other[0] - one[0] * other[2],
    one[0] * other[1] - one[1] * other[0],
  ];
}

export function unit(way: Way): Way {
  return scaled(way, 1 / Math.hypot(...way));
}

function scaled(way: Way, by: number): Way {
  return [way[0] * by, way[1] * by, way[2] * by];
}
