import { type Direction, distance, type Line, midpoint } from "../../geometry/index.js";
import { lineBetween, mirrorFitOf, mirrorLineOf } from "../../geometry/internal.js";
import type { Face, FaceWith, PointLandmark } from "../../landmarks/index.js";
import { BY_HAND, requirePair } from "../../landmarks/internal.js";
import { flatPoint, type Length, length, type Point, type Unit } from "../../units/index.js";
import { refuse, requireFinitePoint, requireUncertainty, toDegrees } from "../../units/internal.js";
import type { MidlineMethod } from "./midline.js";
import {
  biocularWidth,
  namedPairs,
  type NamedPair,
  TYPICAL_WIDTH,
  uncertaintyOf,
} from "./mirror-pairs.js";

/** A midline before it is known which way is up. */
export interface FittedLine<U extends Unit> {
  readonly line: Line<U>;
  /** Standard uncertainty of its angle, in degrees. */
  readonly angleU: number;
  /** Standard uncertainty of its place, across itself, at `line.through`. */
  readonly throughU: Length<U>;
  /** What it was fitted to, and what each counted for in the end. */
  readonly names: readonly PointLandmark[];
  readonly weights: readonly number[];
  /** How far each lies off, in its own spreads. */
  readonly mismatches: readonly number[];
  readonly robust: boolean;
}

/** What an artist who marks two points is asked for, the upper one first. */
export type GivenPoints<U extends Unit> = readonly [upper: Point<U>, lower: Point<U>];

/** The points that an artist marked, and how well, where that is known. */
export interface MarkedMidline<U extends Unit> {
  readonly given?: GivenPoints<U>;
  readonly givenU?: Length<U>;
}

/** Methods that find a midline in a face's own landmarks. */
export type FittingMethod = Exclude<MidlineMethod, "given">;

export function lineByMethod<U extends Unit>(face: Face<U>, method: FittingMethod): FittedLine<U> {
  if (method !== "endocanthia") return lineByLandmarks(face, method);
  const { right, left } = requirePair(face, "endocanthion");
  const u = uncertaintyOf(face, "endocanthion", biocularWidth(face) as Length<U>);
  return lineByTwo(right, left, acrossEyes(right, left), u, ["endocanthion"]);
}

/** The line that suits many landmarks best. */
export function lineByLandmarks<U extends Unit>(
  face: Face<U>,
  method: "mirror" | "midpoints",
): FittedLine<U> {
  requirePair(face, "endocanthion");
  const pairs = pairsFor(face, method);
  const names = pairs.map(({ name }) => name);
  return { ...mirrorLineOf(pairs, method === "mirror"), names };
}

/** The line alone, of a face whose line was fitted before. */
export function lineAnew<U extends Unit>(
  face: FaceWith<U, "endocanthion">,
  method: FittingMethod,
): Line<U> {
  if (method !== "endocanthia")
    return mirrorFitOf(pairsFor(face, method), method === "mirror").line;
  const { right, left } = face;
  const [x, y] = midpoint(right.endocanthion, left.endocanthion);
  const direction = acrossEyes(right.endocanthion, left.endocanthion);
  return { through: flatPoint(x, y), direction };
}

/** At a right angle to the line of the inner eye corners. */
function acrossEyes<U extends Unit>(right: Point<U>, left: Point<U>): Direction {
  const [x, y] = lineBetween(right, left).direction;
  return [-y, x];
}

function pairsFor<U extends Unit>(
  face: Face<U>,
  method: "mirror" | "midpoints",
): readonly NamedPair<U>[] {
  const pairs = namedPairs(face, biocularWidth(face) as Length<U>);
  return method === "mirror" ? pairs : middlesOf(pairs);
}

/** Points that are their own partners: the best mirror line is then that of total least squares. */
function middlesOf<U extends Unit>(pairs: readonly NamedPair<U>[]): readonly NamedPair<U>[] {
  return pairs.map(({ name, one, other, spread, u }) =>
    other === undefined
      ? { name, one, weight: 1, spread, u }
      : { name, one: midpoint(one, other), weight: 1, spread, u: length(u / Math.SQRT2) },
  );
}

/** A line in a direction that two points give, half-way between them, as sure as they are. */
function lineByTwo<U extends Unit>(
  one: Point<U>,
  other: Point<U>,
  direction: Direction,
  u: Length<U>,
  names: readonly PointLandmark[],
): FittedLine<U> {
  const [x, y] = midpoint(one, other);
  return {
    line: { through: flatPoint(x, y), direction },
    angleU: toDegrees((Math.SQRT2 * u) / distance(one, other)),
    throughU: length(u / Math.SQRT2),
    names,
    weights: names.map(() => 1),
    mismatches: names.map(() => 0),
    robust: false,
  };
}

/** The line through two points that an artist marked. */
export function throughGiven<U extends Unit>(
  face: Face<U>,
  { given, givenU }: MarkedMidline<U>,
): FittedLine<U> {
  if (given === undefined) {
    refuse("wrong-count", "given", given, "two points");
  }
  const [upper, lower] = given;
  requireFinitePoint("given[0]", upper);
  requireFinitePoint("given[1]", lower);
  const apart = distance(lower, upper);
  if (apart === 0) {
    refuse("coincident-points", "given[1]", lower, "another point");
  }
  if (givenU !== undefined) requireUncertainty("givenU", givenU);
  const u = givenU ?? placedByHand(face, apart);
  return lineByTwo(lower, upper, lineBetween(lower, upper).direction, u, []);
}

/** One placement by hand. On a practice head without eyes the points' own distance is its width. */
function placedByHand<U extends Unit>(face: Face<U>, apart: Length<U>): Length<U> {
  return length((BY_HAND / TYPICAL_WIDTH) * (biocularWidth(face) ?? apart));
}
