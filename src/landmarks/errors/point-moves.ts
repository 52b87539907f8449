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
import type { Brow, Face, FaceSide } from "../face/face.js";
import type { LandmarkName } from "../face/landmarks.js";
import { keysOf } from "../../units/internal.js";
import { eyeAxes } from "./eye-axes.js";
import { errorAt, type ErrorPlace, type ErrorRow } from "./markup-errors.js";
import { sharesAlong } from "./stations.js";

/** The parts of a face that hold landmarks. */
export const FACE_PARTS = ["right", "left", "midline"] as const;

type FacePart = (typeof FACE_PARTS)[number];

/**
 * How far points move, in the axes and the unit of the face: those of a line in its order, and one for a
 * landmark that is a point; nothing where a point stays.
 */
export type PointMoves = {
  readonly [Part in FacePart]?: PlaceMoves;
};

type PlaceMoves = { readonly [Place in ErrorPlace]?: Moves };

type Moves = readonly (Direction | undefined)[];

/** A face with its points moved, so many times; depth stays, and what nothing moves is the same object. */
export function withMoves<U extends Unit>(
  face: Face<U>,
  moves: PointMoves,
  times: number,
): Face<U> {
  const moved = { ...face };
  for (const part of FACE_PARTS) {
    const along = moves[part];
    if (along === undefined) continue;
    (moved as Record<FacePart, unknown>)[part] = movedPart(face[part] as FaceSide<U>, along, times);
  }
  return moved;
}

function movedPart<U extends Unit>(
  part: FaceSide<U>,
  along: PlaceMoves,
  times: number,
): FaceSide<U> {
  const moved: Record<string, unknown> = { ...part };
  for (const place of keysOf(along)) {
    const moves = along[place] ?? [];
    const at = (point: Point<U>, index: number): Point<U> => pointMoved(point, moves[index], times);
    if (place === "upper" || place === "lower") {
      const brow = moved.brow as Brow<U>;
      moved.brow = { ...brow, [place]: brow[place]?.map(at) };
    } else if (place === "upperLid" || place === "lowerLid") {
      moved[place] = part[place]?.map(at);
    } else {
      moved[place] = at(part[place as keyof typeof part] as Point<U>, 0);
    }
  }
  return moved;
}

function pointMoved<U extends Unit>(
  point: Point<U>,
  move: Direction | undefined,
  times: number,
): Point<U> {
  if (move === undefined) return point;
  const x = point[0] + times * move[0];
  const y = point[1] + times * move[1];
  return hasDepth(point) ? deepPoint<U>(x, y, point[2]) : flatPoint<U>(x, y);
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
  const moves = (side: Side, toLeft: 1 | -1): PlaceMoves => {
    const known: { [Place in ErrorPlace]?: Moves } = {};
    for (const { place, line } of linesOf(face, side)) {
      const row = rowOf(place);
      if (row === undefined || line.length === 0) continue;
      known[place] = sharesAlong(line).map((share) => {
        const [outwards, up] = errorAt(row, share);
        const aside = toLeft * outwards;
        return [aside * leftwards[0] + up * upwards[0], aside * leftwards[1] + up * upwards[1]];
      });
    }
    return known;
  };
  return { right: moves("right", -1), left: moves("left", 1) };
}

/** The lines of a part; a point is a line of one. */
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
