import { hermiteAt } from "../geometry/internal.js";
import type { CompleteDots } from "../landmarks/index.js";
import { flatPoint, type FlatPoint, type Length, length, type Point } from "../units/index.js";
import { refusingAs, keysOf, requirePositive } from "../units/internal.js";
import type { UpperBorderShape } from "./outline-shape.js";
import { outwardsOf, upperBorder, type UpperDots } from "./upper-border.js";

/** Vertical thickness of a drawn brow at its three stations; it ends in a point. */
export type StationThickness = { readonly [At in Station]: Length<"mm"> };

/** Usual thickness, ours; brows fall from 6–8 mm to about 5 mm (trade practice, no source). */
export const STATION_THICKNESS: StationThickness = {
  start: length(8),
  body: length(7),
  arch: length(6),
};

/**
 * The dots that follow from three on the upper border: the body's half-way between start and arch,
 * sideways, on the border that {@link outline} draws, and the lower ones vertically below.
 *
 * @throws GeometryError `not-finite`, `out-of-range` where a thickness is not positive
 *
 * @example
 * ```ts
 * import { completeDots } from "brow-geometry/proportions";
 * import { mm } from "brow-geometry";
 * const upper = { upperStart: mm([15, 20]), upperArch: mm([45, 26]), tailEnd: mm([60, 18]) };
 * const dots = completeDots(upper);
 * dots.upperBody; // → [30, 24.05]
 * dots.lowerBody; // → [30, 17.05]
 * ```
 */
export function completeDots(
  upper: UpperDots,
  thickness: StationThickness = STATION_THICKNESS,
  shape: UpperBorderShape = {},
): CompleteDots<"mm"> {
  return refusingAs("completeDots", () => {
    for (const station of keysOf(STATIONS)) {
      requirePositive(`thickness.${station}`, thickness[station]);
    }
    const { upperStart, upperArch, tailEnd } = upper;
    const upperBody = bodyOf(upper, shape);
    return {
      upperStart,
      upperBody,
      upperArch,
      tailEnd,
      lowerStart: below(upperStart, thickness.start),
      lowerBody: below(upperBody, thickness.body),
      lowerArch: below(upperArch, thickness.arch),
    };
  });
}

/** The dot of the body: half-way between start and arch, sideways, on the border drawn through them. */
export function bodyOf(upper: UpperDots, shape: UpperBorderShape): FlatPoint<"mm"> {
  const border = upperBorder(upper, shape);
  const x = (upper.upperStart[0] + upper.upperArch[0]) / 2;
  return flatPoint(x, hermiteAt(border, outwardsOf(upper) * x));
}

function below([x, y]: Point<"mm">, thickness: Length<"mm">): FlatPoint<"mm"> {
  return flatPoint(x, y - thickness);
}

/** Where the thickness of a brow is told, from the nose outward: from which dot to which. */
export const STATIONS = {
  start: { upper: "upperStart", lower: "lowerStart" },
  body: { upper: "upperBody", lower: "lowerBody" },
  arch: { upper: "upperArch", lower: "lowerArch" },
} as const;

/** A place where the thickness of a brow is told: start, body or arch. */
export type Station = keyof typeof STATIONS;
