import {
  type FlatPoint,
  length,
  type Length,
  type Measured,
  type Polyline,
} from "../units/index.js";
import { measuredAs } from "../units/internal.js";
import {
  amplitudeOfTurn,
  type Crest,
  crestOf,
  placeOfCrest,
  placeOff,
  sagFactor,
  turnsOf,
} from "./arch-place.js";
import { type Row, sinesAt, slopesOf } from "./arch-templates.js";
import { type BorderOverChord, overChord } from "./border-over-chord.js";

/** Where the upper border of a brow peaks, and how sure that is. */
export type NaturalArch =
  | {
      /** `"undetermined"` where `u` exceeds 5 mm: a place is given, but no peak shows. */
      readonly kind: "peak" | "undetermined";
      readonly at: FlatPoint<"mm">;
      /** Standard uncertainty of the place, along the border. */
      readonly u: Length<"mm">;
      /** Distance of the arch from the chord between upper start dot and tail end. */
      readonly rise: Measured<Length<"mm">>;
    }
  | {
      /** The border rises less than 1 mm over its chord, or less than twice that rise's `u`. */
      readonly kind: "flat";
      /** Where it is farthest from its chord all the same: no arch. Absent where it has no crest. */
      readonly farthest?: FlatPoint<"mm">;
      /** Negative where the border sags. */
      readonly rise: Measured<Length<"mm">>;
    };

/** A border that rises less than this over its chord has no arch; ours. */
const LEAST_RISE = 1;
/** …and so has one whose rise is within this many of its uncertainties; ours. */
const CLEAR_RISE = 2;
/** Where an arch is less certain than this, it may lie over half of the brow: no peak shows; ours. */
const WORST_PLACE = 5;

/**
 * The point of an upper border, from start to tail, that lies farthest from the chord between its
 * ends. `u` is the standard uncertainty of each of its points across the border.
 *
 * The highest point would wander with every tilt of the head; the farthest point turns with the
 * brow. It is read from the border as a curve, because the points' own errors decide which of them is
 * farthest: its heights over the chord as sine waves of the way along it, and these by rounded corners at
 * places along the way. Over the way along the border, not over the chord: tails may end steeply. Points
 * added on its legs change nothing. A border with a single corner is taken as drawn.
 *
 * The uncertainties follow from the points' to first order, the chord's own ends included, and grow where
 * their errors are a large part of the rise. Beside them stands what the method itself is off on real
 * borders: more where few points draw them.
 */
export function naturalArch(border: Polyline<"mm">, u: Length<"mm">): NaturalArch {
  const shape = overChord(border);
  const crest = crestOf(shape);
  if (crest === undefined) return { kind: "flat", rise: measuredAs(length(0), u) };
  const rise = riseOf(shape, crest, u);
  if (crest.corner === undefined && crest.blend === undefined) return { kind: "flat", rise };
  return judged(placeOfCrest(shape, crest), length(placeU(shape, crest, rise, u)), rise);
}

// What the method is off by itself, root mean square, on the borders that it was fitted to.
/** In parts of the height: of any border, and of one with a single corner beside that. */
const HEIGHT_OFF = [0.015, 0.09] as const;
/** How errors of second order grow with those of the rise, in parts of it. */
const SECOND_ORDER = 6.3;

function riseOf(
  shape: BorderOverChord,
  { height, coarseness, corner, sines }: Crest,
  u: number,
): Measured<Length<"mm">> {
  if (corner !== undefined) {
    const share = shape.shares[corner] as number;
    return measuredAs(length(height), length(u * Math.hypot(1, share, 1 - share)));
  }
  const byPoints = u * sagFactor(coarseness) * spreadOf(shape, sines);
  const byMethod = height * (HEIGHT_OFF[0] + HEIGHT_OFF[1] * coarseness);
  return measuredAs(length(height), length(Math.hypot(byPoints, byMethod)));
}

function placeU(
  shape: BorderOverChord,
  crest: Crest,
  rise: Measured<Length<"mm">>,
  u: number,
): number {
  const { blend } = crest;
  if (blend === undefined) return u;
  const way = shape.along[shape.along.length - 1] as number;
  const byPoints = way * u * spreadOf(shape, slopesOf(blend));
  const off = Math.hypot(
    byPoints,
    SECOND_ORDER * byPoints * (rise.u / rise.value),
    placeOff(crest) * way,
  );
  return Math.min(off, way / Math.sqrt(12));
}

function judged(at: FlatPoint<"mm">, u: Length<"mm">, rise: Measured<Length<"mm">>): NaturalArch {
  if (rise.value < LEAST_RISE || rise.value < CLEAR_RISE * rise.u)
    return { kind: "flat", farthest: at, rise };
  return { kind: u > WORST_PLACE ? "undetermined" : "peak", at, u, rise };
}

/**
 * Standard deviation of a sum of waves, each counted so often, where each point has an error of 1 and
 * the chord has those of its ends.
 */
function spreadOf({ along, shares }: BorderOverChord, factors: Row): number {
  const way = along[along.length - 1] as number;
  // A wave is a sum over turns, and turning is its own transpose.
  const weights = turnsOf(
    along,
    along.map((at) => {
      const sines = sinesAt(at / way);
      return factors.reduce((sum, factor, wave) => sum + factor * (sines[wave] as number), 0);
    }),
  );
  let squares = 0;
  let atStart = 0;
  let atEnd = 0;
  weights.forEach((weight, index) => {
    const share = shares[index] as number;
    squares += weight * weight;
    atStart += weight * (1 - share);
    atEnd += weight * share;
  });
  return amplitudeOfTurn(way) * Math.sqrt(squares + atStart * atStart + atEnd * atEnd);
}
