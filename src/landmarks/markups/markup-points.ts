import { distance } from "../../geometry/index.js";
import { deepPoint, flatPoint, hasDepth, type Point } from "../../units/index.js";
import { refuse, requireFinite, requireObject } from "../../units/internal.js";
import type { IndexTable, Place } from "./index-table.js";
import {
  imageSize,
  type MarkupOptions,
  requireImageSize,
  requireOptions,
} from "./markup-options.js";
import type { MarkupPoint, MarkupPoints } from "./markups.js";

/** Points of the picture as taken, in the order of the markup; a missing one is undefined. */
export type PicturePoints = readonly (Point<"px"> | undefined)[];

/** Coordinates within this range count shares of a picture: a face two pixels wide is none. */
const SHARES = { from: -0.5, to: 1.5 };

/** Shares may leave the picture, not run away from it. */
const FARTHEST_SHARE = 4;

/** A face mesh is about as deep as its eyes are wide: less than this share of it is another unit. */
const LEAST_DEPTH = 0.05;

/**
 * Points of a markup in pixels of the picture as taken. Depth is positive towards the viewer and
 * zero at the mean of the inner eye corners; it is left out where one of the corners has none.
 */
export function readPoints(
  table: IndexTable,
  landmarks: MarkupPoints,
  options: MarkupOptions,
): PicturePoints {
  requireOptions(options, landmarks.length);
  const missing = new Set(options.missing);
  const raw = landmarks.map((point, index) =>
    missing.has(index) || isMissing(point) ? undefined : rawPoint(fieldOf(table, index), point),
  );
  const [across, down] = pixelsPerUnit(raw, options);
  const flipped = options.mirrored !== undefined && options.mirrored !== "no";
  const width = flipped ? requireImageSize(imageSize(options)).width : 0;
  const points = raw.map((point) => {
    if (point === undefined) return undefined;
    const x = flipped ? width - point.x * across : point.x * across;
    const y = point.y * down;
    return point.z === undefined ? flatPoint<"px">(x, y) : deepPoint<"px">(x, y, point.z);
  });
  const zero = depthZero(points, table);
  if (zero !== undefined && across === 1 && table.depth === "estimated") {
    requireDepthUnit(points, table);
  }
  return points.map((point) => {
    if (point === undefined || !hasDepth(point)) return point;
    const [x, y, z] = point;
    return zero === undefined ? flatPoint(x, y) : deepPoint(x, y, (zero - z) * across);
  });
}

interface RawPoint {
  readonly x: number;
  readonly y: number;
  readonly z: number | undefined;
}

type RawPoints = readonly (RawPoint | undefined)[];

function isMissing(point: MarkupPoint | null | undefined): point is null | undefined {
  if (point === null || point === undefined) return true;
  if (typeof point !== "object") return false;
  // Points that a detector did not find come as zeros with visibility 0.
  return "visibility" in point && point.visibility === 0 && point.x === 0 && point.y === 0;
}

function rawPoint(field: string, point: MarkupPoint): RawPoint {
  requireObject(field, point, "[x, y], [x, y, z], {x, y} or null");
  const [x, y, z] = "x" in point ? [point.x, point.y, point.z] : point;
  requireFinite(`${field}.x`, x);
  requireFinite(`${field}.y`, y);
  if (z !== undefined) requireFinite(`${field}.z`, z);
  return { x: x, y: y, z };
}

function fieldOf({ labels }: IndexTable, index: number): string {
  return labels === undefined ? `landmarks[${index}]` : `points.${labels[index] ?? index}`;
}

/** How many pixels one unit of x and one of y are. */
function pixelsPerUnit(raw: RawPoints, options: MarkupOptions): readonly [number, number] {
  const image = imageSize(options);
  const values = raw.flatMap((point) => (point === undefined ? [] : [point.x, point.y]));
  const low = Math.min(...values);
  const high = Math.max(...values);
  const { coordinates } = options;
  switch (coordinates) {
    case "normalised": {
      if (high > FARTHEST_SHARE || low < -FARTHEST_SHARE) {
        refuseUnit("normalised", `"pixels" for values from ${low} to ${high}`);
      }
      const { width, height } = requireImageSize(image);
      return [width, height];
    }
    case "pixels":
      if (values.length > 0 && low >= SHARES.from && high <= SHARES.to) {
        requireImageSize(image);
        refuseUnit("pixels", `"normalised" for values from ${low} to ${high}`);
      }
      return [1, 1];
  }
  // What the type does not know: a program in JavaScript can pass anything, or leave it out.
  refuseUnit(coordinates, '"pixels" or "normalised"');
}

function refuseUnit(value: unknown, need: string): never {
  refuse("inconsistent", "coordinates", value, need);
}

/** Where depth is counted from: the mean of the inner eye corners. */
function depthZero(points: PicturePoints, { right, left }: IndexTable): number | undefined {
  const corners = [right, left].map((side) => pointAt(points, side.points.endocanthion));
  return meanPoint(corners)?.[2];
}

/** The point at a place, or the mean of several. */
export function pointAt(points: PicturePoints, place: Place | undefined): Point<"px"> | undefined {
  if (place === undefined) return undefined;
  if (typeof place === "number") return points[place];
  return meanPoint(place.map((index) => points[index]));
}

function meanPoint(points: PicturePoints): Point<"px"> | undefined {
  let [x, y, depth, deep] = [0, 0, 0, true];
  for (const point of points) {
    if (point === undefined) return undefined;
    x += point[0];
    y += point[1];
    if (hasDepth(point)) depth += point[2];
    else deep = false;
  }
  const count = points.length;
  return deep ? deepPoint(x / count, y / count, depth / count) : flatPoint(x / count, y / count);
}

/** Refuses depths that do not count pixels although x and y do. */
function requireDepthUnit(points: PicturePoints, { right, left }: IndexTable): void {
  const depths = points.flatMap((point) =>
    point !== undefined && hasDepth(point) ? [point[2]] : [],
  );
  const depth = Math.max(...depths) - Math.min(...depths);
  const one = pointAt(points, right.points.exocanthion);
  const other = pointAt(points, left.points.exocanthion);
  if (one === undefined || other === undefined) return;
  if (depth >= LEAST_DEPTH * distance(one, other)) return;
  const need = "depths in pixels, or none";
  refuse("inconsistent", "landmarks[…].z", depth, need);
}
