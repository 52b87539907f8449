import type { FaceMeasureName } from "../../landmarks/index.js";
import { kindOf } from "../../landmarks/internal.js";
import type { Measured } from "../../units/index.js";
import type { Words } from "../../words/index.js";
import {
  areaFigure,
  areaSign,
  decimal,
  label,
  lengthFigure,
  lengthIn,
  lengthSign,
} from "../../words/internal.js";

/** Writes a number: in the reader's unit, where it is a length or an area. */
export type Figure = (value: number) => string;

/** A length to a tenth of a millimetre, with its unit. */
export function shownLength(value: number, words: Words): string {
  return lengthIn(value, 1, words);
}

/** A change to a tenth of a millimetre, with its sign: "+1.5 mm". */
export function signedLength(value: number, words: Words): string {
  return `${signed(value, lengths(words))} ${lengthSign(words)}`;
}

/** Lengths to a tenth of a millimetre, their unit said elsewhere. */
export function lengths(words: Words): Figure {
  return (value) => lengthFigure(value, 1, words);
}

function signed(value: number, figure: Figure): string {
  const printed = figure(value);
  return value > 0 && /[1-9]/.test(printed) ? `+${printed}` : printed;
}

/** A reading with its standard uncertainty: "32.4 ± 0.5"; "32.4 ± ?" where that is not known. */
export function withUncertainty({ value, u }: Measured, figure: Figure): string {
  return `${figure(value)} ± ${spread(u, figure)}`;
}

/** A planned reading with its uncertainty, or that the plan holds it, where none shows: "0.67 held". */
export function asPlanned(reading: Measured, figure: Figure, words: Words): string {
  return /[1-9?]/.test(spread(reading.u, figure))
    ? withUncertainty(reading, figure)
    : label(words, "value-held", { value: figure(reading.value) });
}

function spread(u: number, figure: Figure): string {
  return Number.isFinite(u) ? figure(u) : "?";
}

/** A length as pictures show it: its value, and that its uncertainty is not known where it is not. */
export function lengthOnPicture(reading: Measured, words: Words): string {
  return Number.isFinite(reading.u)
    ? shownLength(reading.value, words)
    : `${withUncertainty(reading, lengths(words))} ${lengthSign(words)}`;
}

/** A change with its sign and its standard uncertainty: "+1.5 ± 0.4". */
export function changeWithUncertainty({ value, u }: Measured, figure: Figure): string {
  return `${signed(value, figure)} ± ${spread(u, figure)}`;
}

/** An area to a square millimetre, with its unit. */
export function shownArea(value: number, words: Words): string {
  return `${areaFigure(value, words)} ${areaSign(words)}`;
}

/** A measure as the head of a row of figures: its unit where that is no length, and how its figures are written. */
export function figureWords(
  measure: FaceMeasureName,
  words: Words,
): { readonly text: string; readonly figure: Figure } {
  const { unit, decimals } = kindOf(measure);
  const named = words.terms.measures[measure];
  switch (unit) {
    case "mm":
      return { text: named, figure: (value) => lengthFigure(value, decimals, words) };
    case "mm²":
      return {
        text: label(words, "measure-in", { measure, unit: areaSign(words) }),
        figure: (value) => areaFigure(value, words),
      };
    case "degrees":
    case "": {
      const text =
        unit === ""
          ? named
          : label(words, "measure-in", { measure, unit: words.terms.units[unit] });
      return { text, figure: (value) => decimal(value, decimals, words) };
    }
  }
}
