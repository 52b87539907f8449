import { LENGTH_UNITS } from "../catalogue/figures.js";
import type { Words } from "../catalogue/words.js";
import { isolatedNumber, isolatedText } from "./isolated.js";

/** A number to a count of decimals; never a minus sign before a zero. */
export function decimal(value: number, decimals: number, words: Words): string {
  const printed = Math.abs(value).toFixed(decimals).replace(".", words.decimalSign);
  return written(printed, value < 0, words);
}

/** A length in the reader's unit, without its sign: as exact as so many decimals of a millimetre. */
export function lengthFigure(value: number, decimals: number, words: Words): string {
  const { lengths, inchMarks = FINEST } = words;
  const inUnit = value / LENGTH_UNITS[lengths];
  return lengths === "inch"
    ? fraction(inUnit, decimals > 0 ? inchMarks : Math.min(inchMarks, 16), words)
    : decimal(inUnit, lengths === "cm" ? decimals + 1 : decimals, words);
}

/** A length in the reader's unit. */
export function lengthIn(value: number, decimals: number, words: Words): string {
  return quantity(lengthFigure(value, decimals, words), lengthSign(words), words);
}

/** An area in the square of the reader's unit, without its sign: as exact as whole square millimetres. */
export function areaFigure(value: number, words: Words): string {
  const { lengths } = words;
  return decimal(value / LENGTH_UNITS[lengths] ** 2, lengths === "mm" ? 0 : 2, words);
}

/** An area in the square of the reader's unit. */
export function areaIn(value: number, words: Words): string {
  return quantity(areaFigure(value, words), areaSign(words), words);
}

export function lengthSign({ lengths, terms }: Words): string {
  return terms.lengthSigns[lengths];
}

export function areaSign(words: Words): string {
  return `${lengthSign(words)}²`;
}

/** Figures with the sign of their unit, in the order in which they are read. */
export function quantity(figures: string, sign: string, words: Words): string {
  return words.direction === "rtl"
    ? isolatedText(`${isolatedNumber(figures, words)}\u00A0${sign}`, words)
    : `${figures} ${sign}`;
}

/** Into how many parts an inch is divided where a catalogue does not say. */
const FINEST = 64;

/** How far off a length may be by the marks of the ruler alone, in its unit; nothing where it has decimals. */
export function roundingOf(
  words: Words,
): { readonly off: string; readonly unit: string } | undefined {
  const { lengths, inchMarks = FINEST } = words;
  if (lengths !== "inch") return undefined;
  return { off: fraction(0.5 / inchMarks, 2 * inchMarks, words), unit: lengthSign(words) };
}

/**
 * A whole number and the nearest fraction that a ruler has a mark for, in its lowest terms: "1 3/16". What is less than
 * half of a mark is told in finer ones, for as nothing it would mislead.
 */
function fraction(value: number, marks: number, words: Words): string {
  const count = Math.round(Math.abs(value) * marks);
  if (count === 0 && marks < FINEST) return fraction(value, 2 * marks, words);
  const [whole, rest] = [Math.floor(count / marks), count % marks];
  let [over, under] = [rest, marks];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const parts = [
    ...(whole > 0 || rest === 0 ? [whole] : []),
    ...(rest > 0 ? [`${over}/${under}`] : []),
  ];
  return written(parts.join(" "), value < 0, words);
}

/** A printed number in the digits of a catalogue, with its sign. */
function written(printed: string, isNegative: boolean, words: Words): string {
  const { digits } = words;
  const figures =
    digits === undefined
      ? printed
      : printed.replace(/\d/g, (one) => Array.from(digits)[Number(one)] ?? one);
  return isolatedNumber(isNegative && /[1-9]/.test(printed) ? `−${figures}` : figures, words);
}
