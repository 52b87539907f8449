import type { Brow, CompleteDots, Dot, Skin } from "../../landmarks/index.js";
import { DOT_NAMES, mapBrow } from "../../landmarks/internal.js";
import { length, type Length, otherSide, type Point, type Side } from "../../units/index.js";
import { refusingAs, refuse, requireWord } from "../../units/internal.js";
import { carryByRuler } from "./carry-by-ruler.js";
import { FACE_MIDLINE, mirror } from "./mirror.js";
import { mapDots } from "./shape.js";
import { placeOnSide } from "./side-place.js";

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
 * import { mm } from "brow-geometry";
 * import { carryBrow } from "brow-geometry/symmetry";
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
  return refusingAs("carryBrow", () => {
    requireWord("method", options.method, ["mirror", "measure"]);
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
    requireOutwards(leading);
    const carry = carryByRuler(leading, options.start, options.skin);
    const dots = mapDots(leading.dots, carry);
    const brow = leading.brow === undefined ? {} : { brow: mapBrow(leading.brow, carry) };
    return { side, dots, ...brow, method: "measure", fromMirror: shiftsBetween(image, dots, side) };
  });
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

function requireOutwards({ side, dots }: LeadingBrow): void {
  const [start, arch, end] = [dots.upperStart, dots.upperArch, dots.tailEnd].map(
    (dot) => placeOnSide(dot, side).distance,
  ) as [number, number, number];
  if (start < arch && arch < end) return;
  const need = "start, arch, tail end outwards";
  refuse("out-of-range", "dots", [start, arch, end], need);
}
