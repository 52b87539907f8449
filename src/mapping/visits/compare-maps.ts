import type { Dot } from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import {
  compareCaptures,
  type CaptureComparisonOptions,
  type Displacement,
  type DottedFace,
  type Registration,
} from "../../symmetry/index.js";
import { length, type Length, type Measured, measured, type Side } from "../../units/index.js";
import { refuse, refusingAs, SIDES } from "../../units/internal.js";

/** One dot on two maps of one client. */
export interface DotDifference {
  readonly side: Side;
  readonly dot: Dot;
  /** From the first map's dot to the second's, in the axes of the first face. */
  readonly up: Displacement["up"];
  readonly outward: Displacement["outward"];
  /** How far apart both are, and the uncertainty of that along the way between them. */
  readonly apart: Measured<Length<"mm">>;
  /** Whether that is more than the readings of both explain in 95 of 100 cases. */
  readonly told: boolean;
}

/** Two maps of one client, dot by dot. */
export interface MapComparison {
  readonly registration: Registration;
  /** The dots that both maps have, in the order of the dots, right before left. */
  readonly dots: readonly DotDifference[];
}

/**
 * Two artists' maps of one client, each with the face that it was made on: how far apart their dots are, and
 * whether that is more than their readings can tell. Plans are such maps, and so are dots as they were drawn.
 *
 * The second face is laid over the first by landmarks that do not move. `dotU` is the uncertainty of the way
 * from one artist's dot to the other's, by default that of both brows together; two raters on photographs
 * differ by 0.36 mm (technical error; Reliability of Periocular Anthropometry, 2019, 46 adults).
 *
 * @throws GeometryError `missing-landmark` where the maps share no dot; as `compareCaptures`
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { compareMaps } from "brow-geometry/mapping";
 * const map = (up: number) => ({
 *   face: {
 *     right: { endocanthion: mm([-16, 0]), exocanthion: mm([-44, 1]) },
 *     left: { endocanthion: mm([16, 0]), exocanthion: mm([44, 0]) },
 *     midline: { subnasale: mm([0, -44]) },
 *   },
 *   dots: { right: {}, left: { upperArch: mm([42, 26 + up]), tailEnd: mm([57, 18 + up / 5]) } },
 * });
 * const { dots } = compareMaps(map(0), map(2));
 * dots.map(({ dot, apart, told }) => [dot, apart.value, told]);
 * // → [["upperArch", 2.0, true], ["tailEnd", 0.4, false]]
 * ```
 */
export function compareMaps(
  first: DottedFace,
  second: DottedFace,
  options: Omit<CaptureComparisonOptions, "tolerances" | "rule" | "confidence"> = {},
): MapComparison {
  return refusingAs("compareMaps", () => {
    const { registration, displacements } = compareCaptures(first, second, options);
    const dots = SIDES.flatMap((side) =>
      DOT_NAMES.flatMap((dot) => differenceOf(side, dot, displacements[side][dot])),
    );
    if (dots.length === 0) {
      refuse("missing-landmark", "dots", second.dots, "a dot that both maps have");
    }
    return { registration, dots };
  });
}

/** Share of cases in which dots that do not differ are told apart. */
const CHANCE = 0.05;

function differenceOf(
  side: Side,
  dot: Dot,
  displacement: Displacement | undefined,
): readonly DotDifference[] {
  if (displacement === undefined) return [];
  const { up, outward } = displacement;
  const apart = Math.hypot(up.value, outward.value);
  const u =
    apart === 0
      ? Math.max(up.u, outward.u)
      : Math.hypot(up.value * up.u, outward.value * outward.u) / apart;
  // Two squares of chance are that large or larger in so many cases: chi-square of two, in closed form.
  const told = Math.exp(-(squareOver(up) + squareOver(outward)) / 2) < CHANCE;
  return [{ side, dot, up, outward, apart: measured(length(apart), length(u)), told }];
}

function squareOver({ value, u }: Measured): number {
  return value === 0 ? 0 : (value / u) ** 2;
}
