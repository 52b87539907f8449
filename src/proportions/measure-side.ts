import {
  type BrowDots,
  type Face,
  type FaceMeasures,
  type FaceSide,
  type MeasureName,
  type SideMeasures,
  type Skin,
} from "../landmarks/index.js";
import { byRuler } from "../landmarks/internal.js";
import { eachSide, type Side, type Sides } from "../units/index.js";
import { keysOf, refusingAs } from "../units/internal.js";
import { type BrowBorders, edgeWith } from "./brow-borders.js";
import { readSide, type SideReading } from "./read-side.js";

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
  return refusingAs("measureSide", () => {
    const { side, landmarks, skin, borders } = context;
    const edge = edgeWith(dots, borders, skin);
    return whatIsKnown(readSide(dots, { side, landmarks, skin, edge }));
  });
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
      : { ...sides, startToStart: byRuler(right.upperStart, left.upperStart, skin) };
  });
}
