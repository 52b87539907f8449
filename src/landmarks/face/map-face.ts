import type { Point, Polyline, Unit } from "../../units/index.js";
import { keysOf } from "../../units/internal.js";
import type { Brow, Face, FaceSide, SymmetricPoints } from "./face.js";
import type { LandmarkName, PointLandmark } from "./landmarks.js";

/**
 * A map of points that keeps depth where there is depth. It is told which landmark a point is, or
 * belongs to; `symmetricPoints` have no names.
 */
export type PointMap<From extends Unit, To extends Unit> = (
  point: Point<From>,
  landmark?: LandmarkName,
) => Point<To>;

/** Maps both borders of a brow, point by point. */
export function mapBrow<From extends Unit, To extends Unit>(
  brow: Brow<From>,
  map: PointMap<From, To>,
): Brow<To> {
  const upper = mapLine(brow.upper, map, "brow");
  const lower = brow.lower && mapLine(brow.lower, map, "brow");
  return lower === undefined ? { upper } : { upper, lower };
}

/**
 * Maps every point of a face, always in the same order; what is not a point stays as it is.
 *
 * @example
 * ```ts
 * import { flatPoint } from "brow-geometry/units";
 * import { mapFace } from "brow-geometry/landmarks";
 * import { mm } from "brow-geometry";
 * const face = { right: { pupil: mm([-31, 0]) }, left: {}, midline: { sellion: mm([0, 2]) } };
 * mapFace(face, ([x, y]) => flatPoint<"mm">(x + 1, y)).right; // → { pupil: [-30, 0] }
 * ```
 */
export function mapFace<From extends Unit, To extends Unit>(
  face: Face<From>,
  map: PointMap<From, To>,
): Face<To> {
  const { right, left, midline, symmetricPoints, ...rest } = face;
  return {
    ...rest,
    right: mapSide(right, map),
    left: mapSide(left, map),
    midline: mapNamed(midline, map),
    ...(symmetricPoints === undefined
      ? {}
      : { symmetricPoints: mapSymmetricPoints(symmetricPoints, map) }),
  };
}

function mapSide<From extends Unit, To extends Unit>(
  side: FaceSide<From>,
  map: PointMap<From, To>,
): FaceSide<To> {
  const { brow, upperLid, lowerLid, ...points } = side;
  return {
    ...mapNamed(points, map),
    ...(upperLid === undefined ? {} : { upperLid: mapLine(upperLid, map, "upperLid") }),
    ...(lowerLid === undefined ? {} : { lowerLid: mapLine(lowerLid, map, "lowerLid") }),
    ...(brow === undefined ? {} : { brow: mapBrow(brow, map) }),
  };
}

function mapNamed<From extends Unit, To extends Unit>(
  points: SinglePoints<From>,
  map: PointMap<From, To>,
): SinglePoints<To> {
  const mapped: { -readonly [Name in keyof SinglePoints<To>]: SinglePoints<To>[Name] } = {};
  for (const name of keysOf(points)) {
    const point = points[name];
    if (point !== undefined) mapped[name] = map(point, name);
  }
  return mapped;
}

/** Landmarks of a side or of the midline that are one point each. */
type SinglePoints<U extends Unit> = {
  readonly [Name in PointLandmark]?: Point<U>;
};

function mapLine<From extends Unit, To extends Unit>(
  line: Polyline<From>,
  map: PointMap<From, To>,
  name: LandmarkName,
): Polyline<To> {
  return line.map((point) => map(point, name));
}

function mapSymmetricPoints<From extends Unit, To extends Unit>(
  symmetricPoints: SymmetricPoints<From>,
  map: PointMap<From, To>,
): SymmetricPoints<To> {
  return {
    pairs: symmetricPoints.pairs.map(({ right, left }) => ({ right: map(right), left: map(left) })),
    middle: symmetricPoints.middle.map((point) => map(point)),
  };
}
