import { rootBetween } from "../../geometry/internal.js";
import {
  type Brow,
  type CompleteDots,
  type Dot,
  lengthBetween,
  type Skin,
} from "../../landmarks/index.js";
import { DOT_NAMES, mapBrow } from "../../landmarks/internal.js";
import { length, type Length, otherSide, type Point, type Side } from "../../units/index.js";
import { refuse, requireWord } from "../../units/internal.js";
import { FACE_MIDLINE, mirror } from "./mirror.js";
import { mapDots } from "./shape.js";
import { placeOnSide, pointOnSide, type SidePlace } from "./side-place.js";

/** The brow that the other one is to follow, in the face space. */
export interface LeadingBrow {
  readonly side: Side;
  readonly dots: CompleteDots<"mm">;
  /** Its whole borders, where they are to be carried along. */
  readonly brow?: Brow<"mm">;
}

/**
 * How a brow gets to the other side: `"mirror"`, reflected across the midline; `"measure"`, by the
 * same ruler lengths and heights from the other side's own start.
 */
export type CarryOptions =
  | { readonly method: "mirror" }
  | {
      readonly method: "measure";
      /** The other side's own upper start dot: it stays where it is. */
      readonly start: Point<"mm">;
      /** What the ruler lies on. */
      readonly skin: Skin;
    };

/** A brow on the other side. */
export interface CarriedBrow extends LeadingBrow {
  readonly method: CarryOptions["method"];
  /**
   * How far each dot lies from where the mirror image has it: the difference between the two ways,
   * 0 throughout for the mirror image itself.
   */
  readonly fromMirror: {
    readonly [Name in Dot]: { readonly outward: Length<"mm">; readonly up: Length<"mm"> };
  };
}

/**
 * Carries a brow to the other side of the face, in one of the two ways artists do; on a crooked face
 * they differ, and the result says by how much.
 *
 * By measure, arch and tail end take the leading heights and lie where a ruler on the skin reads the
 * leading front and tail; the rest of the brow goes along with the dots, and keeps its thickness.
 *
 * @throws GeometryError `no-solution` where no place at the leading height is that far away by ruler;
 * `out-of-range` where start, arch and tail end do not stand in order from the midline, or
 * for an unknown method
 *
 * @example
 * ```ts
 * import { carryBrow, mm } from "brow-geometry";
 * const dots = {
 *   upperStart: mm([15, 20]), upperBody: mm([27, 24]), upperArch: mm([39, 26]), tailEnd: mm([56, 18]),
 *   lowerStart: mm([15, 13]), lowerBody: mm([27, 18]), lowerArch: mm([39, 21]),
 * };
 * const leading = { side: "left", dots } as const;
 * carryBrow(leading, { method: "mirror" }).dots.tailEnd; // → [-56, 18]
 *
 * const skin = { kind: "modelled", width: mm(87.8), relativeU: 0.12 } as const;
 * const measured = carryBrow(leading, { method: "measure", start: mm([-17, 20]), skin });
 * measured.dots.tailEnd; // → [-57.26, 18.00]
 * measured.fromMirror.tailEnd.outward; // → 1.26
 * ```
 */
export function carryBrow(leading: LeadingBrow, options: CarryOptions): CarriedBrow {
  requireWord("carryBrow", "method", options.method, ["mirror", "measure"]);
  const side = otherSide(leading.side);
  const image = mirror(leading.dots, FACE_MIDLINE);
  if (options.method === "mirror") {
    const brow = leading.brow === undefined ? {} : { brow: mirror(leading.brow, FACE_MIDLINE) };
    return {
      side,
      dots: image,
      ...brow,
      method: "mirror",
      fromMirror: shiftsBetween(image, image, side),
    };
  }
  const carry = warp("carryBrow", knotsByRuler(leading, options, side), leading.side, side);
  const dots = mapDots(leading.dots, carry);
  const brow = leading.brow === undefined ? {} : { brow: mapBrow(leading.brow, carry) };
  return { side, dots, ...brow, method: "measure", fromMirror: shiftsBetween(image, dots, side) };
}

type ByMeasure = Extract<CarryOptions, { readonly method: "measure" }>;

function knotsByRuler(
  { side, dots }: LeadingBrow,
  { start, skin }: ByMeasure,
  onto: Side,
): readonly Knot[] {
  const { upperStart, upperArch, tailEnd } = dots;
  const front = lengthBetween(upperStart, upperArch, skin);
  const tail = lengthBetween(upperArch, tailEnd, skin);
  const ownStart = placeOnSide(start, onto);
  const archHeight = placeOnSide(upperArch, side).height;
  const arch = placeByRuler("front", ownStart, front, archHeight, onto, skin);
  const tailHeight = placeOnSide(tailEnd, side).height;
  const end = placeByRuler("tail", arch, tail, tailHeight, onto, skin);
  return [
    { from: placeOnSide(upperStart, side), to: ownStart },
    { from: placeOnSide(upperArch, side), to: arch },
    { from: placeOnSide(tailEnd, side), to: end },
  ];
}

/** The place at a height, farther out than another, that is so far from it by ruler. */
function placeByRuler(
  stretch: "front" | "tail",
  from: SidePlace,
  size: Length<"mm">,
  height: number,
  side: Side,
  skin: Skin,
): SidePlace {
  const excess = (distance: number): number =>
    lengthBetween(pointOnSide(from, side), pointOnSide({ distance, height }, side), skin) - size;
  // Flat skin at one height has the place exactly a size farther out, where rounding decides the sign:
  // twice as far out is too far on any skin.
  const distance = rootBetween(from.distance, from.distance + 2 * size, excess);
  if (distance !== undefined) return { distance, height };
  const need = `at least the ${Math.abs(height - from.height).toFixed(1)} mm by which its ends differ in height`;
  refuse("no-solution", "carryBrow", `${stretch} by ruler`, size, need);
}

/** How far dots lie from where others have them, away from the midline and up. */
function shiftsBetween(
  from: CompleteDots<"mm">,
  to: CompleteDots<"mm">,
  side: Side,
): CarriedBrow["fromMirror"] {
  const shifts = DOT_NAMES.map((dot) => {
    const [before, after] = [placeOnSide(from[dot], side), placeOnSide(to[dot], side)];
    const outward = length<"mm">(after.distance - before.distance);
    return [dot, { outward, up: length<"mm">(after.height - before.height) }];
  });
  return Object.fromEntries(shifts) as CarriedBrow["fromMirror"];
}

/** Where one dot of a brow goes, on its own side or on the other. */
export interface Knot {
  readonly from: SidePlace;
  readonly to: SidePlace;
}

/**
 * Takes every point of a brow along with a few of its dots, by straight interpolation over the distance
 * from the midline. What lies at one distance moves as one, so vertical thickness stays.
 */
export function warp(
  where: string,
  knots: readonly Knot[],
  from: Side,
  onto: Side,
): (point: Point<"mm">) => Point<"mm"> {
  requireOrder(where, knots);
  return (point) => {
    const { distance, height } = placeOnSide(point, from);
    const { outward, up } = shiftAt(distance, knots);
    return pointOnSide({ distance: distance + outward, height: height + up }, onto);
  };
}

interface Shift {
  readonly outward: number;
  readonly up: number;
}

function shiftAt(distance: number, knots: readonly Knot[]): Shift {
  const next = knots.findIndex(({ from }) => from.distance >= distance);
  const outer = knots[next === -1 ? knots.length - 1 : next] as Knot;
  const inner = next === -1 ? outer : (knots[Math.max(next - 1, 0)] as Knot);
  const [before, after] = [shiftOf(inner), shiftOf(outer)];
  const width = outer.from.distance - inner.from.distance;
  const share = width === 0 ? 0 : (distance - inner.from.distance) / width;
  return {
    outward: before.outward + share * (after.outward - before.outward),
    up: before.up + share * (after.up - before.up),
  };
}

function shiftOf({ from, to }: Knot): Shift {
  return { outward: to.distance - from.distance, up: to.height - from.height };
}

function requireOrder(where: string, knots: readonly Knot[]): void {
  for (const end of ["from", "to"] as const) {
    const distances = knots.map((knot) => knot[end].distance);
    if (distances.every((one, index) => index === 0 || one > (distances[index - 1] as number))) {
      continue;
    }
    const need = "start, arch and tail end in order from the midline outwards";
    refuse("out-of-range", where, end === "from" ? "dots" : "result", distances, need);
  }
}
