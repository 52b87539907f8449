import type { FaceMeasureName } from "../../landmarks/index.js";
import { kindOf } from "../../landmarks/internal.js";
import type { Measured } from "../../units/index.js";
import type { Words } from "../../words/index.js";
import { label } from "../../words/internal.js";

/** A length to a tenth of a millimetre, with its unit. */
export function inMillimetres(value: number): string {
  return `${decimal(value, 1)} mm`;
}

/** A change to a tenth of a millimetre, with its sign: "+1.5 mm". */
export function signedMillimetres(value: number): string {
  return `${signed(value, 1)} mm`;
}

function signed(value: number, decimals: number): string {
  const printed = decimal(value, decimals);
  return value > 0 && Number(printed) !== 0 ? `+${printed}` : printed;
}

/** A reading with its standard uncertainty: "32.4 ± 0.5"; "32.4 ± ?" where that is not known. */
export function withUncertainty({ value, u }: Measured, decimals: number): string {
  return `${decimal(value, decimals)} ± ${spread(u, decimals)}`;
}

/** A planned reading with its uncertainty, or that the plan holds it, where none shows: "0.67 held". */
export function asPlanned(reading: Measured, decimals: number, words: Words): string {
  return Number(spread(reading.u, decimals)) === 0
    ? label(words, "value-held", { value: decimal(reading.value, decimals) })
    : withUncertainty(reading, decimals);
}

function spread(u: number, decimals: number): string {
  return Number.isFinite(u) ? decimal(u, decimals) : "?";
}

/** A length as pictures show it: its value, and that its uncertainty is not known where it is not. */
export function lengthOnPicture(reading: Measured): string {
  return Number.isFinite(reading.u)
    ? inMillimetres(reading.value)
    : `${withUncertainty(reading, 1)} mm`;
}

/** A change with its sign and its standard uncertainty: "+1.5 ± 0.4". */
export function changeWithUncertainty({ value, u }: Measured, decimals = 1): string {
  return `${signed(value, decimals)} ± ${spread(u, decimals)}`;
}

/** A number to a count of decimals, with a minus sign as long as a plus and never before a zero. */
export function decimal(value: number, decimals: number): string {
  const printed = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(printed) !== 0 ? `−${printed}` : printed;
}

/** A measure as the head of a row of figures: its unit where that is no millimetre, its decimals. */
export function figureWords(
  measure: FaceMeasureName,
  words: Words,
): { readonly text: string; readonly decimals: number } {
  const { unit, decimals } = kindOf(measure);
  const named = words.terms.measures[measure];
  const text = unit === "" || unit === "mm" ? named : label(words, "measure-in", { measure, unit });
  return { text, decimals };
}
