import type { Direction } from "../../geometry/index.js";
import {
  deepPoint,
  eachSide,
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
import { stationsBefore } from "./stations.js";

/** The parts of a face that hold landmarks. */
export const FACE_PARTS = ["right", "left", "midline"] as const;

type FacePart = (typeof FACE_PARTS)[number];

/** How far a point moves, in the axes and the unit of its face; its depth stays where none is given. */
export type Move = readonly [x: number, y: number, depth?: number];

/** How far points move: those of a line in its order, and one for a landmark; nothing where a point stays. */
export type PointMoves = {
  readonly [Part in FacePart]?: PlaceMoves;
};

type PlaceMoves = { readonly [Place in ErrorPlace]?: Moves };

type Moves = readonly (Move | undefined)[];

/** A face with its points moved, so many times; what nothing moves is the same object. */
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
  move: Move | undefined,
  times: number,
): Point<U> {
  if (move === undefined) return point;
  const x = point[0] + times * move[0];
  const y = point[1] + times * move[1];
  if (!hasDepth(point)) return flatPoint<U>(x, y);
  return deepPoint<U>(x, y, point[2] + times * (move[2] ?? 0));
}

/** Makes moves of a row for each place. */
type Mover = (
  rowOf: (place: ErrorPlace) => ErrorRow | undefined,
  /** −1 where the right side moves the opposite way. */
  onRight?: 1 | -1,
) => PointMoves;

/**
 * What makes moves of rows on a face, its sides being mirror images, with lines as deep as the skin that
 * they lie on; nothing for a face that lacks an eye corner.
 *
 * @param sense as {@link eyeAxes} takes it
 */
export function moverOf<U extends Unit>(face: Face<U>, sense: 1 | -1): Mover | undefined {
  const axes = eyeAxes(face, sense);
  if (axes === undefined) return undefined;
  const { leftwards, upwards } = axes;
  const lines = eachSide((side) =>
    linesOf(face, side).map(({ place, line }) => ({
      place,
      spots: stationsBefore(line).map((before, at, all) => ({
        share: before / (all.at(-1) || 1),
        fall: fallAt(line, at),
      })),
    })),
  );
  return (rowOf, onRight = 1) => {
    const moves = (side: Side, toLeft: number, upBy: number): PlaceMoves => {
      const known: { [Place in ErrorPlace]?: Moves } = {};
      for (const { place, spots } of lines[side]) {
        const row = rowOf(place);
        if (row === undefined || spots.length === 0) continue;
        known[place] = spots.map(({ share, fall }) => {
          const [outwards, up] = errorAt(row, share);
          const [aside, rise] = [toLeft * outwards, upBy * up];
          const x = aside * leftwards[0] + rise * upwards[0];
          const y = aside * leftwards[1] + rise * upwards[1];
          return [x, y, x * fall[0] + y * fall[1]];
        });
      }
      return known;
    };
    return { right: moves("right", -onRight, onRight), left: moves("left", 1, 1) };
  };
}

/** Depth that a line gains at one of its points, for each step along it. */
function fallAt<U extends Unit>(line: Polyline<U>, at: number): Direction {
  const next = Math.min(at + 1, line.length - 1);
  const [from, to] = [line[next - 1], line[next]];
  if (from === undefined || to === undefined || !hasDepth(from) || !hasDepth(to)) return [0, 0];
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const gained = (to[2] - from[2]) / (x * x + y * y);
  return [x * gained, y * gained];
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
