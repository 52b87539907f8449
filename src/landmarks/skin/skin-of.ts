import { distance } from "../../geometry/index.js";
import { type FitInRows, robustFit } from "../../geometry/internal.js";
import { type DeepPoint, hasDepth, type Length, length, type Side } from "../../units/index.js";
import { refuse, requireFinitePoint, refusingAs, SIDES } from "../../units/internal.js";
import type { Face } from "../face/face.js";
import { requirePair } from "../face/require-pair.js";
import { type FittedSkin, fittedWith, POWERS, type Skin } from "./skin.js";

/**
 * Width of the modelled skin over the biocular width, and its relative standard uncertainty. Measured
 * by us: it follows the canonical face mesh to 0.4 mm in the front's length, 0.7 mm in the tail's.
 */
const MODEL = { widthShare: 0.987, relativeU: 0.06 };

/** A detector's depth is a model's too: at least so much of a drop is uncertain. Measured by us. */
const ESTIMATED_DEPTH_U = 0.1;

/**
 * Depth of single points about the smooth skin, mm. Measured by us on 21 heads with a detector's
 * depth: less rejects tail ends of heads turned by 6°, more lets in points that lie 8 mm off.
 */
const POINT_SPREAD = 1.5;

/** Places are counted in this length while fitting, so that powers of x stay near 1. */
const REACH = 50;

/** With fewer points than this a slope cannot be told from two sides that differ. */
const ENOUGH_FOR_SLOPE = 8;

/** A brow tells how the skin turns away where its deep points reach over so much of x, mm. */
const LEAST_REACH = 20;

/**
 * The skin of a face: fitted where the brows carry depth, else modelled on the biocular width.
 *
 * The fit runs through the upper borders of both brows and the glabella: the lower borders lie up to
 * 2 mm behind them at the same x. Even powers leave no crease on the midline, one slope for both
 * sides takes up a head that is turned a little, and one bad point does no harm (`fitRobustly`).
 * At least three deep points on each brow's upper border, over 20 mm or more of x, are needed.
 *
 * @throws GeometryError `missing-landmark` where there is neither depth nor a pair of outer eye
 * corners, or not what the `kind` asked for needs; `not-finite`
 *
 * @example
 * ```ts
 * import { type Face, mm, skinOf } from "brow-geometry";
 * const face: Face<"mm"> = {
 *   right: { exocanthion: mm([-44, 0]) },
 *   left: { exocanthion: mm([45, 0]) },
 *   midline: {},
 * };
 * skinOf(face); // → { kind: "modelled", width: 87.843, relativeU: 0.12 }
 * skinOf(face, "fitted"); // throws GeometryError: right.brow.upper
 * ```
 */
export function skinOf(face: Face<"mm">, kind?: Skin["kind"]): Skin {
  return refusingAs("skinOf", () => {
    switch (kind) {
      case "flat":
        return { kind: "flat" };
      case "modelled":
        return modelledSkin(face);
      case undefined:
        return usualSkin(face);
      case "fitted": {
        const shallow = shallowSide(face);
        if (shallow === undefined) return skinBy(fitOf(face), face);
        const need = `3 points with depth, over ${LEAST_REACH} mm`;
        const { brow } = face[shallow];
        refuse("missing-landmark", `${shallow}.brow.upper`, brow?.upper, need);
      }
    }
  });
}

/** The skin of a face as far as it tells, asked for by another function. */
export function usualSkin(face: Face<"mm">): Skin {
  return shallowSide(face) === undefined ? skinBy(fitOf(face), face) : modelledSkin(face);
}

function modelledSkin(face: Face<"mm">): Skin {
  const { right, left } = requirePair(face, "exocanthion");
  const width: Length<"mm"> = length(MODEL.widthShare * distance(right, left));
  // Depth falls with the square of the width.
  return { kind: "modelled", width, relativeU: 2 * MODEL.relativeU };
}

/** Fits skins to faces that differ a little from one whose skin is fitted. */
export function skinsNear(face: Face<"mm">): (moved: Face<"mm">) => FittedSkin {
  const fit = fitOf(face);
  return (moved) => skinBy(fitOf(moved, fit), face);
}

function fitOf(face: Face<"mm">, near?: FitInRows): FitInRows {
  const { glabella } = face.midline;
  const points = SIDES.flatMap((side) => deepBorder(face, side));
  if (glabella !== undefined && hasDepth(glabella)) points.push(glabella);
  const powers = points.length < ENOUGH_FOR_SLOPE ? POWERS.slice(0, -1) : POWERS;
  const columns = powers.map(() => new Float64Array(points.length));
  const column = (term: number): Float64Array => columns[term] as Float64Array;
  for (let row = 0; row < points.length; row += 1) {
    const x = (points[row] as DeepPoint<"mm">)[0] / REACH;
    // Even powers have a column for each side.
    const own = x < 0 ? 1 : 3;
    column(0)[row] = 1;
    column(own)[row] = -(x * x);
    column(own + 1)[row] = -(x * x * (x * x));
    if (powers.length > 5) column(5)[row] = x;
  }
  const depths = points.map(([, , depth]) => depth);
  return robustFit(columns, depths, POINT_SPREAD, near);
}

function skinBy({ coefficients }: FitInRows, { source }: Face<"mm">): FittedSkin {
  return fittedWith(
    coefficients.map((coefficient, index) => coefficient / REACH ** (POWERS[index] as number)),
    source?.depth === "estimated" ? ESTIMATED_DEPTH_U : 0,
  );
}

function deepBorder(face: Face<"mm">, side: Side): readonly DeepPoint<"mm">[] {
  const points = (face[side].brow?.upper ?? []).filter(hasDepth);
  for (const point of points) requireFinitePoint(`${side}.brow.upper`, point);
  return points;
}

/** The first side whose brow does not tell how the skin falls back. */
function shallowSide(face: Face<"mm">): Side | undefined {
  return SIDES.find((side) => {
    const places = deepBorder(face, side).map(([x]) => (side === "right" ? -x : x));
    const outwards = places.filter((x) => x > 0);
    return outwards.length < 3 || Math.max(...outwards) - Math.min(...outwards) < LEAST_REACH;
  });
}
