import type { Point, Unit } from "../units/index.js";
import type { Brow, Face, FaceSide, MidlineLandmarks, PairedPoints } from "./face.js";

/** A map of points that keeps depth where there is depth. */
export type PointMap<From extends Unit, To extends Unit> = (point: Point<From>) => Point<To>;

/** Maps both borders of a brow, point by point. */
export function mapBrow<From extends Unit, To extends Unit>(
  brow: Brow<From>,
  map: PointMap<From, To>,
): Brow<To> {
  return brow.lower === undefined
    ? { upper: brow.upper.map(map) }
    : { upper: brow.upper.map(map), lower: brow.lower.map(map) };
}

/** Maps every landmark of a face; what is not a point stays as it is. */
export function mapFace<From extends Unit, To extends Unit>(
  face: Face<From>,
  map: PointMap<From, To>,
): Face<To> {
  const { right, left, midline, relief, ...rest } = face;
  return {
    ...rest,
    right: mapSide(right, map),
    left: mapSide(left, map),
    midline: mapEntries(midline, map),
    ...(relief === undefined ? {} : { relief: mapRelief(relief, map) }),
  };
}

function mapSide<From extends Unit, To extends Unit>(
  side: FaceSide<From>,
  map: PointMap<From, To>,
): FaceSide<To> {
  const { brow, upperLid, lowerLid, ...points } = side;
  return {
    ...(mapEntries(points, map) as FaceSide<To>),
    ...(upperLid === undefined ? {} : { upperLid: upperLid.map(map) }),
    ...(lowerLid === undefined ? {} : { lowerLid: lowerLid.map(map) }),
    ...(brow === undefined ? {} : { brow: mapBrow(brow, map) }),
  };
}

function mapEntries<From extends Unit, To extends Unit>(
  points: Readonly<Record<string, Point<From>>> | MidlineLandmarks<From>,
  map: PointMap<From, To>,
): Readonly<Record<string, Point<To>>> {
  return Object.fromEntries(
    Object.entries(points)
      .filter(([, point]) => point !== undefined)
      .map(([name, point]) => [name, map(point as Point<From>)]),
  );
}

function mapRelief<From extends Unit, To extends Unit>(
  relief: PairedPoints<From>,
  map: PointMap<From, To>,
): PairedPoints<To> {
  return {
    pairs: relief.pairs.map(({ right, left }) => ({ right: map(right), left: map(left) })),
    middle: relief.middle.map(map),
  };
}
