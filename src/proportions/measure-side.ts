import { distance, spaceDistance } from "../geometry/index.js";
import { heightOver } from "../geometry/internal.js";
import {
  type BrowDots,
  type Face,
  type FaceMeasures,
  type FaceSide,
  lengthBetween,
  type MeasureName,
  type SideMeasures,
  type Skin,
} from "../landmarks/index.js";
import { atEyeCorner, onSkin } from "../landmarks/internal.js";
import {
  eachSide,
  length,
  type Length,
  type Point,
  type Side,
  type Sides,
} from "../units/index.js";
import { keysOf, refusingAs, toDegrees } from "../units/internal.js";
import { type BrowBorders, browEdge, type BrowEdge } from "./brow-edge.js";
import { frontShare } from "./front-share.js";

/** What a brow's dots are read against. */
export interface SideContext {
  readonly side: Side;
  /** Eye corner, pupil and upper lid are read, each where it is known. */
  readonly landmarks: FaceSide<"mm">;
  readonly skin: Skin;
  /**
   * The hair, or the outline, on which tape, thickness, lid distance and area are read; without them,
   * on the joined dots.
   */
  readonly borders?: BrowBorders;
}

/**
 * Everything that is read on one brow, as far as its dots and the face's landmarks go: an entry is
 * left out where something it needs is missing.
 *
 * Lengths are millimetres on the skin, by ruler where nothing else is said; by tape along the upper
 * border, or from dot to dot where no borders are given.
 * Distances from the midline, heights, thickness (vertical), lid to brow and area are those of the
 * frontal view. A lower border that ends too early is extended along its end's tangent.
 *
 * @throws GeometryError `out-of-range` where start, arch and tail end are one place
 *
 * @example
 * ```ts
 * import { measureSide } from "brow-geometry/proportions";
 * import { mm } from "brow-geometry";
 * const dots = { upperStart: mm([13, 19]), upperArch: mm([42, 24]), tailEnd: mm([56, 16]) };
 * const context = { side: "left", landmarks: {}, skin: { kind: "flat" } } as const;
 * const { front, tail, frontInclination, browInclination } = measureSide(dots, context);
 * front; // → 29.428
 * tail; // → 16.125
 * frontInclination; // → 9.8
 * browInclination; // → -4.0
 * ```
 */
export function measureSide(dots: BrowDots<"mm">, context: SideContext): SideMeasures<number> {
  return refusingAs("measureSide", () => whatIsKnown(readSide(dots, context)));
}

/** Every measure of one brow; undefined where something it needs is missing. */
export type SideReading = { readonly [Name in MeasureName]: number | undefined };

/** What {@link measureSide} reads, with a place for every measure. */
export function readSide(
  dots: BrowDots<"mm">,
  { side, landmarks, skin, borders }: SideContext,
): SideReading {
  const { upperStart: start, upperBody: body, upperArch: arch, tailEnd: tail } = dots;
  const outwards = side === "left" ? 1 : -1;
  const edge = browEdge(dots, borders, skin);
  const ruler = (from?: Point<"mm">, to?: Point<"mm">): Length<"mm"> | undefined =>
    from && to && lengthBetween(from, to, skin);
  const sight = (from?: Point<"mm">, to?: Point<"mm">): Length<"mm"> | undefined =>
    from && to && distance(from, to);
  const inclination = (from?: Point<"mm">, to?: Point<"mm">): number | undefined =>
    from && to && toDegrees(Math.atan2(to[1] - from[1], outwards * (to[0] - from[0])));
  const thickness = (dot?: Point<"mm">): number | undefined => {
    const y = dot && edge.lowerAt(dot[0]);
    return dot && y !== undefined ? dot[1] - y : undefined;
  };
  const front = ruler(start, arch);
  const tailLength = ruler(arch, tail);
  return {
    front,
    tail: tailLength,
    frontAlong: start && arch && edge.along(start, arch),
    tailAlong: arch && tail && edge.along(arch, tail),
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
    exocanthionToTailEnd:
      landmarks.exocanthion &&
      tail &&
      spaceDistance(atEyeCorner(landmarks.exocanthion, skin), onSkin(tail, skin)),
    lidToBrow: lidToBrow(landmarks, edge),
    frontInclination: inclination(start, arch),
    browInclination: inclination(start, tail),
    area: edge.area,
  };
}

function lidToBrow({ pupil, upperLid }: FaceSide<"mm">, edge: BrowEdge): number | undefined {
  if (pupil === undefined || upperLid === undefined) return undefined;
  const brow = edge.lowerAt(pupil[0]);
  const lid = heightOver(length(pupil[0]), upperLid);
  return brow === undefined || lid === undefined ? undefined : brow - lid;
}

function whatIsKnown(values: SideReading): SideMeasures<number> {
  const known: { -readonly [Name in MeasureName]?: number } = {};
  for (const name of keysOf(values)) {
    const value = values[name];
    if (value !== undefined) known[name] = value;
  }
  return known;
}

/**
 * Everything that is read on both brows and between them, as {@link measureSide}.
 *
 * `borders` are the hair or the outlines on which tape, thickness, lid distance and area are read;
 * without them they are read on the joined dots, and the area is left out.
 *
 * @throws GeometryError `out-of-range` where start, arch and tail end are one place
 *
 * @example
 * ```ts
 * import { measureFace, mm } from "brow-geometry";
 * const dots = {
 *   right: { upperStart: mm([-15, 20]), lowerStart: mm([-15, 12.5]), tailEnd: mm([-58, 17]) },
 *   left: { upperStart: mm([16, 21]), lowerStart: mm([16, 13]), tailEnd: mm([58, 17]) },
 * };
 * const face = { right: {}, left: {}, midline: {} };
 * const measures = measureFace(dots, face, { kind: "flat" });
 * measures.startToStart; // → 31.016
 * measures.left.startThickness; // → 8
 * ```
 */
export function measureFace(
  dots: Sides<BrowDots<"mm">>,
  face: Face<"mm">,
  skin: Skin,
  borders?: Sides<BrowBorders | undefined>,
): FaceMeasures<number> {
  return refusingAs("measureFace", () => {
    const sides = eachSide((side) => {
      const hair = borders?.[side];
      const context = { side, landmarks: face[side], skin };
      return measureSide(dots[side], hair === undefined ? context : { ...context, borders: hair });
    });
    const { right, left } = dots;
    return right.upperStart === undefined || left.upperStart === undefined
      ? sides
      : { ...sides, startToStart: lengthBetween(right.upperStart, left.upperStart, skin) };
  });
}
