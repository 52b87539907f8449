import {
  averageOf,
  length,
  measured,
  type Measured,
  type Note,
  type Scale,
  type ScaleNoteCode,
} from "../units/index.js";
import {
  chiSquareQuantile,
  scaleNote,
  refuse,
  requirePositive,
  refusingAs,
} from "../units/internal.js";

/**
 * One scale from several of the same photo: their mean, each weighted by 1/u².
 *
 * Agreeing sources narrow the result. Where they differ by more than their uncertainties allow (95 %,
 * chi-square), the uncertainty grows by how far they lie from their mean, and a note says so.
 *
 * @throws GeometryError `wrong-count` where there is nothing to combine, `not-finite`,
 * `out-of-range`; `inconsistent` where two take the iris from the population, whose spread both
 * share, or two without uncertainty differ
 *
 * @example
 * ```ts
 * import { mm, px, scaleFromReference } from "brow-geometry";
 * import { combineScales } from "brow-geometry/calibration";
 * const ruler = scaleFromReference(px([100, 40]), px([500, 40]), mm(50), { placement: px(4) });
 * const strip = scaleFromReference(px([100, 900]), px([261, 900]), mm(20), { placement: px(2) });
 * const scale = combineScales([ruler, strip]);
 * scale.factor; // → 0.1247
 * scale.u; // → 0.0014
 * ```
 */
export function combineScales(scales: readonly Scale[]): Scale {
  return refusingAs("combineScales", () => {
    const [only] = scales;
    if (only === undefined) refuse("wrong-count", "scales", scales, "at least one scale");
    const factors = scales.map(({ factor, u }, index) => {
      requirePositive(`scales[${index}].factor`, factor);
      return measured(factor, u);
    });
    requireIndependent(scales);
    if (scales.length === 1) return only;
    const mean = averageOf(factors);
    const spread = factors.reduce((sum, { value, u }) => sum + square(value - mean.value, u), 0);
    if (!Number.isFinite(spread)) {
      const given = scales.map(({ factor }) => factor);
      refuse("inconsistent", "scales", given, "scales without uncertainty that are equal");
    }
    const others = scales.length - 1;
    const disagree = spread > chiSquareQuantile(AGREEMENT, others);
    // That of the mean had the sources agreed, which their own scatter is added to.
    const agreed = mean.u / Math.sqrt(spread / others);
    return {
      from: "px",
      to: "mm",
      factor: mean.value,
      u: disagree ? Math.hypot(agreed, scatterOf(factors, mean.value)) : mean.u,
      source: "combined",
      notes: [...scales.flatMap(({ notes }) => notes), ...(disagree ? [disagreement(scales)] : [])],
      ...commonDistance(scales),
    };
  });
}

/** Sources that agree differ by more than this test allows once in twenty times. */
const AGREEMENT = 0.95;

function square(difference: number, u: number): number {
  return difference === 0 ? 0 : (difference / u) ** 2;
}

/** How far the sources lie from their mean, whatever each says of itself. */
function scatterOf(factors: readonly Measured[], mean: number): number {
  return Math.hypot(...factors.map(({ value }) => value - mean)) / Math.sqrt(factors.length);
}

/**
 * The camera's distance, where any scale knows it: one photo has one camera. Their mean is no more certain
 * than the best of them, since several often come from one tape, and less certain where they differ.
 */
function commonDistance(scales: readonly Scale[]): Pick<Scale, "cameraDistance"> {
  const known = scales.flatMap(({ cameraDistance }) => cameraDistance ?? []);
  if (known.length === 0) return {};
  const { value } = averageOf(known);
  const least = Math.min(...known.map(({ u }) => u));
  return { cameraDistance: measured(value, length(Math.hypot(least, scatterOf(known, value)))) };
}

function disagreement(scales: readonly Scale[]): Note<ScaleNoteCode> {
  return scaleNote("sources-disagree", {
    scales: scales.map(({ source, factor, u }) =>
      scaleNote("scale-of-source", { source, factor, u }),
    ),
  });
}

function requireIndependent(scales: readonly Scale[]): void {
  const average = scales.filter(({ notes }) =>
    notes.some(({ code }) => code === "population-average"),
  );
  if (average.length < 2) return;
  const field = "scales";
  const need = "at most one: its spread is the same in all of them";
  refuse("inconsistent", field, `${average.length} scales from the population's iris`, need);
}
