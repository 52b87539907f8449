import { type Cubic, distance, polylineLength } from "../../geometry/index.js";
import {
  type HermiteCurve,
  hermiteLength,
  lengthAlongSurface,
  pathLength,
  type Surface,
} from "../../geometry/internal.js";
import { flatPoint, type Length, length, type Point, type Polyline } from "../../units/index.js";
import { refusingAs, requirePolyline } from "../../units/internal.js";
import { type Skin, skinDepth, skinSlope } from "./skin.js";

/** How a length is taken; straight on the skin, by ruler, where nothing else is said. */
export interface LengthOptions {
  /** `"straight"`: by ruler, from end to end. `"along"`: by tape, over the straight sight line. */
  readonly path?: "straight" | "along";
  /** `"skin"`: on the face. `"photo"`: as a frontal photo shows it, without depth. */
  readonly on?: "skin" | "photo";
}

/**
 * Distance between two places on the skin, by ruler where nothing else is said.
 *
 * Both ends are lifted onto the skin, whatever depth they carry, so that a planned dot and a
 * detected point are measured alike. By tape it is good to 1e-10.
 *
 * @example
 * ```ts
 * import { lengthBetween, mm } from "brow-geometry";
 * const skin = { kind: "modelled", width: mm(87.8), relativeU: 0.12 } as const;
 * const [arch, tailEnd] = [mm([44, 26]), mm([58, 18])];
 * lengthBetween(arch, tailEnd, skin); // → 21.526
 * lengthBetween(arch, tailEnd, skin, { path: "along" }); // → 21.591
 * lengthBetween(arch, tailEnd, skin, { on: "photo" }); // → 16.125
 * ```
 */
export function lengthBetween(
  from: Point<"mm">,
  to: Point<"mm">,
  skin: Skin,
  options: LengthOptions = {},
): Length<"mm"> {
  const { path = "straight", on = "skin" } = options;
  if (on === "photo") return distance(from, to);
  return path === "straight" || skin.kind === "flat"
    ? byRuler(from, to, skin)
    : lengthAlongSkin(from, to, surfaceOf(skin));
}

/** {@link lengthBetween} by ruler, without points of its own: rulers are laid thousands of times for a plan. */
export function byRuler(from: Point<"mm">, to: Point<"mm">, skin: Skin): Length<"mm"> {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const depth = skinDepth(to[0], skin) - skinDepth(from[0], skin);
  return length(Math.sqrt(x * x + y * y + depth * depth));
}

/**
 * Length of a curve that is drawn on the skin, by tape; or of the curve on a frontal photo.
 *
 * @throws GeometryError `wrong-count`, `not-finite`
 *
 * @example
 * ```ts
 * import { lengthOf } from "brow-geometry/landmarks";
 * import { mm } from "brow-geometry";
 * const border = mm([[14, 22], [44, 26], [58, 18]]);
 * lengthOf(border, { kind: "modelled", width: mm(87.8), relativeU: 0.12 }); // → 54.162
 * lengthOf(border, { kind: "flat" }); // → 46.390
 * ```
 */
export function lengthOf(
  curve: Polyline<"mm">,
  skin: Skin,
  options: Pick<LengthOptions, "on"> = {},
): Length<"mm"> {
  return refusingAs("lengthOf", () => {
    requirePolyline("curve", curve, 2);
    return options.on === "photo" ? polylineLength(curve) : tapeOn(skin)(curve);
  });
}

/** Measures a line that is drawn on the skin. */
export type Tape = (line: Polyline<"mm">) => Length<"mm">;

/**
 * Measures lines on a skin, leg by leg, but those legs that another line has too: the same two points, measured
 * once for all.
 */
export function tapeOn(skin: Skin, known: Polyline<"mm"> = []): Tape {
  const surface = surfaceOf(skin);
  const sizes: number[] = [];
  let leg = 0;
  return (line) => {
    let sum = 0;
    for (let index = 1; index < line.length; index += 1) {
      const [from, to] = [line[index - 1] as Point<"mm">, line[index] as Point<"mm">];
      if (known[leg] !== from) leg = Math.max(known.indexOf(from), 0);
      const isKnown = known[leg] === from && known[leg + 1] === to;
      const size =
        (isKnown ? sizes[leg] : undefined) ??
        (skin.kind === "flat" ? distance(from, to) : lengthAlongSkin(from, to, surface));
      sum += size;
      if (!isKnown) continue;
      sizes[leg] = size;
      leg += 1;
    }
    return length(sum);
  };
}

/**
 * Length of exact curves that are drawn on the skin, by tape.
 *
 * @example
 * ```ts
 * import { mm, outline } from "brow-geometry";
 * import { lengthOfPath } from "brow-geometry/landmarks";
 * import { completeDots } from "brow-geometry/proportions";
 * const skin = { kind: "modelled", width: mm(87.8), relativeU: 0.12 } as const;
 * const dots = { upperStart: mm([16, 17]), upperArch: mm([44, 26]), tailEnd: mm([58, 18]) };
 * lengthOfPath(outline(completeDots(dots)).upper, skin); // → 53.595
 * ```
 */
export function lengthOfPath(path: readonly Cubic<"mm">[], skin: Skin): Length<"mm"> {
  return skin.kind === "flat" ? pathLength(path) : pathLength(path, surfaceOf(skin));
}

/** Length by tape of the pieces of a curve over the distance from the midline, on one side of a face. */
export function lengthOfCurve(
  curve: HermiteCurve,
  low: number,
  high: number,
  outwards: 1 | -1,
  skin: Skin,
): Length<"mm"> {
  return length(hermiteLength(curve, low, high, (x) => skinSlope(outwards * x, skin)));
}

function lengthAlongSkin(from: Point<"mm">, to: Point<"mm">, surface: Surface): Length<"mm"> {
  if (Math.sign(from[0]) * Math.sign(to[0]) < 0) {
    // The sides of a face curve differently: each stretch stays on one of them.
    const share = from[0] / (from[0] - to[0]);
    const onMidline = flatPoint<"mm">(0, from[1] + share * (to[1] - from[1]));
    return length(
      lengthAlongSkin(from, onMidline, surface) + lengthAlongSkin(onMidline, to, surface),
    );
  }
  return lengthAlongSurface(from, to, surface);
}

function surfaceOf(skin: Skin): Surface {
  return {
    depth: (x) => skinDepth(x, skin),
    rise: (x, _y, stepX) => stepX * skinSlope(x, skin),
  };
}
