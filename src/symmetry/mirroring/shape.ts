import {
  type Brow,
  type BrowDots,
  type CompleteDots,
  type Dot,
  type Face,
  mapFace,
  type PointMap,
} from "../../landmarks/index.js";
import { DOT_NAMES, mapBrow } from "../../landmarks/internal.js";
import type { Point, Polyline, Unit } from "../../units/index.js";

/** What is carried from one space to the other, or mirrored, as a whole. */
export type Shape<U extends Unit> = Point<U> | Polyline<U> | Brow<U> | BrowDots<U> | Face<U>;

/** Maps whatever has points, point by point. */
export function mapShape<From extends Unit, To extends Unit>(
  shape: Shape<From>,
  map: PointMap<From, To>,
): Shape<To> {
  if (isPoint(shape)) return map(shape);
  if (isPolyline(shape)) return shape.map((point) => map(point));
  if (isFace(shape)) return mapFace(shape, map);
  return isBrow(shape) ? mapBrow(shape, map) : mapDots(shape, map);
}

export function isFace<U extends Unit>(shape: Shape<U>): shape is Face<U> {
  return "right" in shape;
}

function isPoint<U extends Unit>(shape: Shape<U>): shape is Point<U> {
  return Array.isArray(shape) && typeof shape[0] === "number";
}

function isPolyline<U extends Unit>(shape: Shape<U>): shape is Polyline<U> {
  return Array.isArray(shape);
}

function isBrow<U extends Unit>(shape: Brow<U> | BrowDots<U>): shape is Brow<U> {
  return "upper" in shape;
}

export function mapDots<From extends Unit, To extends Unit>(
  dots: CompleteDots<From>,
  map: PointMap<From, To>,
): CompleteDots<To>;
export function mapDots<From extends Unit, To extends Unit>(
  dots: BrowDots<From>,
  map: PointMap<From, To>,
): BrowDots<To>;
export function mapDots<From extends Unit, To extends Unit>(
  dots: BrowDots<From>,
  map: PointMap<From, To>,
): BrowDots<To> {
  const mapped: { [Name in Dot]?: Point<To> } = {};
  for (const dot of DOT_NAMES) {
    const point = dots[dot];
    if (point !== undefined) mapped[dot] = map(point);
  }
  return mapped;
}
