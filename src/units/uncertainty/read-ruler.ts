import { requireFinite, requirePositive } from "../quantities/require.js";
import { refusingAs, refuse } from "../quantities/geometry-error.js";
import { type Measured, measured } from "./measured.js";
import { type Length, length } from "../quantities/quantity.js";

/** How a reading by hand was taken. */
export interface ReadingOptions {
  /** What the instrument reads at the point where measuring begins; taken off. */
  readonly zero?: Length<"mm">;
  /** Distance of the marks that it is read to; default 0.5 mm for a ruler, 0.1 mm for a caliper. */
  readonly graduation?: Length<"mm">;
  /** Width of the pencil line that marks each end on the skin; default 0: the ends are points. */
  readonly pencil?: Length<"mm">;
}

/**
 * A length read by ruler, with its standard uncertainty.
 *
 * The reading lies anywhere within one graduation about its mark, the end anywhere within its pencil
 * line; so does the beginning, where it was read (`zero`) rather than laid on.
 *
 * Source: rectangular distributions, u = width/(2√3): JCGM 100:2008 (GUM), 4.3.7.
 *
 * @throws GeometryError `not-finite`, `out-of-range`, such as for a reading below its zero
 *
 * @example
 * ```ts
 * import { mm, readRuler } from "brow-geometry";
 * readRuler(mm(29.5)); // → { value: 29.5, u: 0.144 }
 * readRuler(mm(39.5), { zero: mm(10), pencil: mm(0.5) }); // → { value: 29.5, u: 0.289 }
 * ```
 */
export function readRuler(
  reading: Length<"mm">,
  options: ReadingOptions = {},
): Measured<Length<"mm">> {
  return refusingAs("readRuler", () => {
    return read(reading, options, RULER_GRADUATION);
  });
}

/**
 * A length read by caliper, with its standard uncertainty; `zero` is what it reads when closed.
 *
 * Source: rectangular distributions, u = width/(2√3): JCGM 100:2008 (GUM), 4.3.7.
 *
 * @throws GeometryError `not-finite`, `out-of-range`, such as for a reading below its zero
 *
 * @example
 * ```ts
 * import { mm, readCaliper } from "brow-geometry";
 * readCaliper(mm(7.6), { zero: mm(-0.1) }); // → { value: 7.7, u: 0.041 }
 * ```
 */
export function readCaliper(
  reading: Length<"mm">,
  options: ReadingOptions = {},
): Measured<Length<"mm">> {
  return refusingAs("readCaliper", () => {
    return read(reading, options, CALIPER_GRADUATION);
  });
}

/** A ruler with half millimetres: ours. */
const RULER_GRADUATION = length(0.5);
/** A caliper read to a tenth: ours. */
const CALIPER_GRADUATION = length(0.1);

function read(
  reading: Length<"mm">,
  options: ReadingOptions,
  usual: Length<"mm">,
): Measured<Length<"mm">> {
  const { zero, graduation = usual, pencil = length(0) } = options;
  requireFinite("reading", reading);
  if (zero !== undefined) requireFinite("zero", zero);
  requirePositive("graduation", graduation);
  const value = reading - (zero ?? 0);
  if (value < 0) {
    refuse("out-of-range", "reading", reading, `at least the zero, ${zero ?? 0}`);
  }
  if (!(pencil >= 0 && Number.isFinite(pencil))) {
    refuse("out-of-range", "pencil", pencil, "0 or more");
  }
  const readings = zero === undefined ? 1 : 2;
  const ends = 2;
  const u = Math.sqrt(readings * graduation ** 2 + ends * pencil ** 2) / Math.sqrt(12);
  return measured<Length<"mm">>(length(value), length(u));
}
