import type { FaceMeasureName } from "../../landmarks/index.js";
import { kindOf } from "../../landmarks/internal.js";
import type { Measured } from "../../units/index.js";
import type { Words } from "../../words/index.js";
import {
  areaFigure,
  areaIn,
  areaSign,
  decimal,
  isolatedNumber,
  label,
  lengthFigure,
  lengthIn,
  lengthSign,
  quantity,
  shareFigure,
} from "../../words/internal.js";

/** Writes a number: in the reader's unit, where it is a length or an area. */
export type Figure = (value: number) => string;

/** A length to a tenth of a millimetre, with its unit. */
export function shownLength(value: number, words: Words): string {
  return lengthIn(value, 1, words);
}

/** A change to a tenth of a millimetre, with its sign: "+1.5 mm". */
export function signedLength(value: number, words: Words): string {
  return quantity(signed(value, lengths(words)), lengthSign(words), words);
}

/** Lengths to a tenth of a millimetre, their unit said elsewhere. */
export function lengths(words: Words): Figure {
  return (value) => lengthFigure(value, 1, words);
}

function signed(value: number, figure: Figure): string {
  const printed = figure(value);
  return value > 0 && !showsNothing(value, figure) ? `+${printed}` : printed;
}

/** A reading with its standard uncertainty where that shows: "32.4 ± 0.5"; "32.4 ± ?" where it is not known. */
export function withUncertainty({ value, u }: Measured, figure: Figure, words: Words): string {
  return isolatedNumber(figure(value) + spread(u, figure), words);
}

/** Whether a number is printed as nothing but zeros. */
export function showsNothing(value: number, figure: Figure): boolean {
  return Number.isFinite(value) && figure(Math.abs(value)) === figure(0);
}

function spread(u: number, figure: Figure): string {
  if (showsNothing(u, figure)) return "";
  return ` ± ${Number.isFinite(u) ? figure(u) : "?"}`;
}

/** A length with its standard uncertainty and its unit: "32.4 ± 0.5 mm". */
export function uncertainLength(reading: Measured, words: Words): string {
  return quantity(withUncertainty(reading, lengths(words), words), lengthSign(words), words);
}

/** A change with its sign and its standard uncertainty: "+1.5 ± 0.4". */
export function changeWithUncertainty(
  { value, u }: Measured,
  figure: Figure,
  words: Words,
): string {
  return isolatedNumber(signed(value, figure) + spread(u, figure), words);
}

/** An area to a square millimetre, with its unit. */
export function shownArea(value: number, words: Words): string {
  return areaIn(value, words);
}

/** A measure as the head of a row of figures. */
interface FigureWords {
  /** With its unit, where that is no length. */
  readonly text: string;
  readonly figure: Figure;
  /** Writes a figure that a plan holds by construction: shares by their names. */
  readonly held: Figure;
}

export function figureWords(measure: FaceMeasureName, words: Words): FigureWords {
  const { unit, decimals } = kindOf(measure);
  const named = words.terms.measures[measure];
  switch (unit) {
    case "mm":
      return written(named, (value) => lengthFigure(value, decimals, words));
    case "mm²":
      return written(label(words, "measure-in", { measure, unit: areaSign(words) }), (value) =>
        areaFigure(value, words),
      );
    case "degrees":
      return written(
        label(words, "measure-in", { measure, unit: words.terms.units[unit] }),
        (value) => decimal(value, decimals, words),
      );
    case "":
      return {
        text: named,
        figure: (value) => decimal(value, decimals, words),
        held: (value) => shareFigure(value, words),
      };
  }
}

function written(text: string, figure: Figure): FigureWords {
  return { text, figure, held: figure };
}
