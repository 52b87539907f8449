import { heightOver, polygonArea, spaceDistance } from "../geometry/index.js";
import {
  atEyeCorner,
  type Brow,
  type BrowMarks,
  type FaceSide,
  lengthBetween,
  lengthOf,
  type MeasureName,
  onSkin,
  type SideMeasures,
  type Skin,
} from "../landmarks/index.js";
import {
  type Length,
  length,
  type Point,
  type Polyline,
  type Side,
  toDegrees,
} from "../units/index.js";
import { frontShare } from "./front-share.js";

/** What a brow's dots are read against. */
export interface SideContext {
  readonly side: Side;
  /** Eye corner, pupil and upper lid are read, each where it is known. */
  readonly landmarks: FaceSide<"mm">;
  readonly skin: Skin;
  /** The hair to which thickness, lid distance and area are read; without it, to the joined dots. */
  readonly borders?: Brow<"mm">;
}

/**
 * Everything that is read on one brow, as far as its dots and the face's landmarks go: an entry is
 * left out where something it needs is missing.
 *
 * Lengths are millimetres on the skin, by ruler where nothing else is said; by tape from dot to dot.
 * Distances from the midline, heights, thickness (vertical), lid to brow and area are those of the
 * frontal view. A lower border that ends too early is extended along its end's tangent.
 *
 * @example
 * ```ts
 * import { measureSide, mm } from "brow-geometry";
 * const marks = { upperStart: mm([15, 20]), upperArch: mm([45, 24]), tailEnd: mm([58, 17]) };
 * const context = { side: "left", landmarks: {}, skin: { kind: "flat" } } as const;
 * const { front, tail, frontInclination, browInclination } = measureSide(marks, context);
 * front; // → 30.265
 * tail; // → 14.765
 * frontInclination; // → 7.6
 * browInclination; // → -4.0
 * ```
 */
export function measureSide(
  marks: BrowMarks<"mm">,
  { side, landmarks, skin, borders }: SideContext,
): SideMeasures<number> {
  const { upperStart: start, upperBody: body, upperArch: arch, tailEnd: tail } = marks;
  const outwards = side === "left" ? 1 : -1;
  const lower = borders === undefined ? lowerDots(marks) : borders.lower;
  const ruler = (from?: Point<"mm">, to?: Point<"mm">): Length<"mm"> | undefined =>
    from && to && lengthBetween(from, to, skin);
  const sight = (from?: Point<"mm">, to?: Point<"mm">): Length<"mm"> | undefined =>
    from && to && lengthBetween(from, to, skin, { on: "photo" });
  const inclination = (from?: Point<"mm">, to?: Point<"mm">): number | undefined =>
    from && to && toDegrees(Math.atan2(to[1] - from[1], outwards * (to[0] - from[0])));
  const thickness = (dot?: Point<"mm">): number | undefined => dot && above(dot, lower);
  const front = ruler(start, arch);
  const tailLength = ruler(arch, tail);
  return whatIsKnown({
    front,
    tail: tailLength,
    frontAlong: start && arch && lengthOf(body ? [start, body, arch] : [start, arch], skin),
    tailAlong: arch && tail && lengthOf([arch, tail], skin),
    frontOnPhoto: sight(start, arch),
    tailOnPhoto: sight(arch, tail),
    frontShare:
      front === undefined || tailLength === undefined ? undefined : frontShare(front, tailLength),
    startDistance: start && outwards * start[0],
    archDistance: arch && outwards * arch[0],
    tailDistance: tail && outwards * tail[0],
    startHeight: start?.[1],
    archHeight: arch?.[1],
    tailHeight: tail?.[1],
    startThickness: thickness(start),
    bodyThickness: thickness(body),
    archThickness: thickness(arch),
    eyeToTail:
      landmarks.exocanthion &&
      tail &&
      spaceDistance(atEyeCorner(landmarks.exocanthion, skin), onSkin(tail, skin)),
    lidToBrow: lidToBrow(landmarks, lower),
    frontInclination: inclination(start, arch),
    browInclination: inclination(start, tail),
    area: borders?.lower && areaWithin(borders.upper, borders.lower),
  });
}

/** The lower border as the dots show it, joined straight up to the tail end. */
function lowerDots(marks: BrowMarks<"mm">): Polyline<"mm"> {
  const { lowerStart, lowerBody, lowerArch, tailEnd } = marks;
  return [lowerStart, lowerBody, lowerArch, tailEnd].filter((dot) => dot !== undefined);
}

/** How far a point lies above a border, vertically. */
function above(point: Point<"mm">, border: Polyline<"mm"> | undefined): number | undefined {
  const y = border && heightOver(length(point[0]), border);
  return y === undefined ? undefined : point[1] - y;
}

function lidToBrow(
  { pupil, upperLid }: FaceSide<"mm">,
  lower: Polyline<"mm"> | undefined,
): number | undefined {
  if (pupil === undefined) return undefined;
  const brow = above(pupil, lower);
  const lid = above(pupil, upperLid);
  return brow === undefined || lid === undefined ? undefined : lid - brow;
}

function areaWithin(upper: Polyline<"mm">, lower: Polyline<"mm">): number {
  return Math.abs(polygonArea([...upper, ...lower.slice().reverse()]));
}

function whatIsKnown(values: {
  readonly [Name in MeasureName]: number | undefined;
}): SideMeasures<number> {
  const known: { -readonly [Name in MeasureName]?: number } = {};
  for (const name of Object.keys(values) as MeasureName[]) {
    const value = values[name];
    if (value !== undefined) known[name] = value;
  }
  return known;
}
