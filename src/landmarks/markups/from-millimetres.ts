import { midpoint } from "../../geometry/index.js";
import { deepPoint, flatPoint, hasDepth, type Point, type Sides } from "../../units/index.js";
import {
  refuse,
  refusingAs,
  requireFinitePoint,
  requireNames,
  requireObject,
} from "../../units/internal.js";
import type { Face, LandmarkSource, StandIn } from "../face/face.js";
import {
  MIDLINE_LANDMARKS,
  type MidlineLandmark,
  SIDE_PARTS,
  type SideLandmark,
} from "../face/landmarks.js";
import { mapFace, type PointMap } from "../face/map-face.js";
import { standInNotes } from "./markup-notes.js";
import { requireSideOrder } from "../face/side-order.js";

/** One direction along an axis of the program that the points come from. */
export type AxisDirection = "x" | "-x" | "y" | "-y" | "z" | "-z";

/**
 * Which way the axes of points in millimetres run: where the client's left, the top of the head and
 * the viewer lie. `viewer` matters only where points carry depth.
 */
export interface MillimetreAxes {
  readonly left: AxisDirection;
  readonly up: AxisDirection;
  readonly viewer?: AxisDirection;
}

/** A point as plain numbers, with or without depth. */
export type PlainPoint =
  readonly [x: number, y: number] | readonly [x: number, y: number, z: number];

/** One side of a face in plain points. */
export type PlainSide = { readonly [Name in SideLandmark]?: PlainPoint } & {
  /** From endocanthion to exocanthion. */
  readonly upperLid?: readonly PlainPoint[];
  /** From endocanthion to exocanthion. */
  readonly lowerLid?: readonly PlainPoint[];
  /** Each border from the start to the tail. */
  readonly brow?: { readonly upper: readonly PlainPoint[]; readonly lower?: readonly PlainPoint[] };
};

/** A face in plain points, by the names of the library. */
export interface PlainFace extends Sides<PlainSide> {
  readonly midline: { readonly [Name in MidlineLandmark]?: PlainPoint };
  readonly standIns?: readonly StandIn[];
}

/** How points in millimetres were taken. */
export interface MillimetreOptions {
  readonly axes: MillimetreAxes;
  /** Left out: placed by hand. */
  readonly source?: LandmarkSource;
}

/**
 * A face from points in millimetres, of a 3D scan, a digitiser or a calibrated photo: turned into
 * the axes of the face space and moved so that the middle of the inner eye corners is its origin.
 *
 * The axes are trusted: nothing is levelled. Both inner eye corners are needed; depth is zero at
 * their mean, and where one of them has none, points are left where they are in depth.
 *
 * @throws GeometryError `missing-landmark`, `not-finite`, `out-of-range` where two directions lie
 * along one axis, a depth has no `viewer` direction, or a name is no landmark's; `not-parsed` for
 * what is no face, `sides-swapped` where the axes do not fit the face
 *
 * @example
 * ```ts
 * import { faceFromMillimetres } from "brow-geometry";
 * const scan = {
 *   right: { endocanthion: [102, 60, 31], exocanthion: [74, 58, 26] },
 *   left: { endocanthion: [134, 60, 31], exocanthion: [162, 59, 25] },
 *   midline: {},
 * } as const;
 * const face = faceFromMillimetres(scan, { axes: { left: "x", up: "-y", viewer: "z" } });
 * face.left.exocanthion; // → [44, 1, -6]
 * ```
 */
export function faceFromMillimetres(face: PlainFace, options: MillimetreOptions): Face<"mm"> {
  return refusingAs("faceFromMillimetres", () => {
    requireObject("face", face, "an object with right, left and midline");
    requireObject("options", options, "an object with axes");
    requireNames("options", options, ["axes", "source"]);
    const { axes } = options;
    requireObject("options.axes", axes, "the directions left and up, and viewer");
    requirePart("right", face.right, SIDE_PARTS);
    requirePart("left", face.left, SIDE_PARTS);
    requirePart("midline", face.midline, MIDLINE_LANDMARKS);
    const turn = turner(axes);
    const turned = mapFace(face as unknown as Face<"mm">, turn);
    const { right, left } = turned;
    if (right.endocanthion === undefined || left.endocanthion === undefined) {
      const field = right.endocanthion === undefined ? "right.endocanthion" : "left.endocanthion";
      const need = "a point: the middle of both becomes the origin";
      refuse("missing-landmark", field, undefined, need);
    }
    const origin = midpoint(right.endocanthion, left.endocanthion);
    const moved = mapFace(turned, (point): Point<"mm"> => {
      const x = point[0] - origin[0];
      const y = point[1] - origin[1];
      if (!hasDepth(point)) return flatPoint(x, y);
      return deepPoint(x, y, hasDepth(origin) ? point[2] - origin[2] : point[2]);
    });
    requireSideOrder(moved, "up");
    const notes = standInNotes(moved);
    return {
      ...moved,
      ...(options.source === undefined ? {} : { source: options.source }),
      ...(notes.length === 0 ? {} : { notes }),
    };
  });
}

/** A landmark under an unknown name would be silently ignored. */
function requirePart(part: keyof Face<"mm">, landmarks: object, known: readonly string[]): void {
  requireObject(part, landmarks, "an object with landmarks, or {}");
  for (const [name, value] of Object.entries<unknown>({ ...landmarks })) {
    const field = `${part}.${name}`;
    if (!known.includes(name)) {
      refuse("out-of-range", field, value, `another name: one of ${known.join(", ")}`);
    }
    if (value === undefined) continue;
    if (name !== "brow") {
      requireObject(field, value, "[x, y], [x, y, z], or a list of them for a lid");
      continue;
    }
    requireObject(field, value, "an object with upper, or with upper and lower");
    const { upper } = value as { readonly upper?: unknown };
    requireObject(`${field}.upper`, upper, "a list of points");
  }
}

const AXIS: Readonly<Record<AxisDirection, 0 | 1 | 2>> = {
  x: 0,
  "-x": 0,
  y: 1,
  "-y": 1,
  z: 2,
  "-z": 2,
};

/** A map from the axes declared to left, up and towards the viewer. */
function turner({ left, up, viewer }: MillimetreAxes): PointMap<"mm", "mm"> {
  const declared = [left, up, ...(viewer === undefined ? [] : [viewer])];
  const known = declared.every((direction) => Object.hasOwn(AXIS, direction));
  if (!known || new Set(declared.map((direction) => AXIS[direction])).size < declared.length) {
    const need = 'different axes, each "x", "y" or "z", or one of these with a minus before it';
    refuse("out-of-range", "axes", declared, need);
  }
  return (point, landmark) => {
    requireFinitePoint(landmark ?? "face", point);
    const along = (direction: AxisDirection, field: string): number => {
      const value = (point as readonly number[])[AXIS[direction]];
      if (value === undefined) {
        const need = `an axis that every point has, not ${direction} where a point is flat`;
        refuse("out-of-range", `axes.${field}`, point, need);
      }
      return direction.startsWith("-") ? -value : value;
    };
    const x = along(left, "left");
    const y = along(up, "up");
    if (!hasDepth(point)) return flatPoint(x, y);
    if (viewer !== undefined) return deepPoint(x, y, along(viewer, "viewer"));
    const need = "the direction towards the viewer, since points carry depth";
    refuse("out-of-range", "axes.viewer", undefined, need);
  };
}
