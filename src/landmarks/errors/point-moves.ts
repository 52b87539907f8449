import type { Direction } from "../../geometry/index.js";
import {
  deepPoint,
  flatPoint,
  hasDepth,
  type Point,
  type Polyline,
  type Side,
  type Unit,
} from "../../units/index.js";
import type { Face, FaceSide } from "../face/face.js";
import type { LandmarkName } from "../face/landmarks.js";
import { keysOf } from "../../units/internal.js";
import { mapFace } from "../face/map-face.js";
import { eyeAxes } from "./eye-axes.js";
import { errorAt, type ErrorPlace, type ErrorRow } from "./markup-errors.js";
import { sharesAlong } from "./stations.js";

/** The parts of a face that hold landmarks. */
export const FACE_PARTS = ["right", "left", "midline"] as const;

type FacePart = (typeof FACE_PARTS)[number];

/**
 * How far each point of a part moves, in the order of `mapFace` and in the axes and the unit of the face;
 * nothing where a point stays.
 */
export type PointMoves = {
  readonly [Part in FacePart]?: Moves;
};

type Moves = readonly (Direction | undefined)[];

const NOTHING = { right: {}, left: {}, midline: {} };

/** A face with its points moved, so many times; depth stays, and a part that nothing moves is the same object. */
export function withMoves<U extends Unit>(
  face: Face<U>,
  moves: PointMoves,
  times: number,
): Face<U> {
  const moved = { ...face };
  for (const part of FACE_PARTS) {
    const along = moves[part];
    if (along === undefined) continue;
    let next = 0;
    const map = (point: Point<U>): Point<U> => {
      const move = along[next++];
      if (move === undefined) return point;
      const x = point[0] + times * move[0];
      const y = point[1] + times * move[1];
      return hasDepth(point) ? deepPoint<U>(x, y, point[2]) : flatPoint<U>(x, y);
    };
    (moved as Record<FacePart, unknown>)[part] = mapFace<U, U>(
      { ...NOTHING, [part]: face[part] },
      map,
    )[part];
  }
  return moved;
}

/**
 * The moves that a row for each place is on a photo, sides being mirror images; nothing for a face that
 * lacks an eye corner.
 */
export function movesOf(
  face: Face<"px">,
  rowOf: (place: ErrorPlace) => ErrorRow | undefined,
): PointMoves | undefined {
  const axes = eyeAxes(face);
  if (axes === undefined) return undefined;
  const { leftwards, upwards } = axes;
  const moves = (side: Side, toLeft: 1 | -1): Moves =>
    spotsOf(face, side).map(({ place, share }) => {
      const row = rowOf(place);
      if (row === undefined) return undefined;
      const [outwards, up] = errorAt(row, share);
      const aside = toLeft * outwards;
      return [aside * leftwards[0] + up * upwards[0], aside * leftwards[1] + up * upwards[1]];
    });
  return { right: moves("right", -1), left: moves("left", 1) };
}

/** What a point of a face is: its landmark, and its place on a line. */
interface Spot {
  readonly landmark: LandmarkName;
  readonly place: ErrorPlace;
  /** Share of the line's length before it. */
  readonly share: number;
}

/** What every point of a part is, in the order of `mapFace`. */
export function spotsOf<U extends Unit>(face: Face<U>, part: FacePart): readonly Spot[] {
  return linesOf(face, part).flatMap(({ landmark, place, line }) =>
    sharesAlong(line).map((share) => ({ landmark, place, share })),
  );
}

/** The lines of a part, in the order of `mapFace`; a point is a line of one. */
export function linesOf<U extends Unit>(face: Face<U>, part: FacePart): readonly FaceLine<U>[] {
  const { brow, upperLid, lowerLid, ...points } = face[part] as FaceSide<U>;
  const along = (
    place: ErrorPlace,
    line: Polyline<U> = [],
    landmark: LandmarkName = "brow",
  ): FaceLine<U> => ({ landmark, place, line });
  return [
    ...keysOf(points).map((name) => along(name, points[name] && [points[name]], name)),
    along("upperLid", upperLid, "upperLid"),
    along("lowerLid", lowerLid, "lowerLid"),
    along("upper", brow?.upper),
    along("lower", brow?.lower),
  ];
}

interface FaceLine<U extends Unit> {
  readonly landmark: LandmarkName;
  readonly place: ErrorPlace;
  readonly line: Polyline<U>;
}
