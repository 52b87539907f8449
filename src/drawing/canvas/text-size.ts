/** The letters of every picture; the widths below hold for whichever of them a reader has. */
export const FONT_FAMILY = "Helvetica, Arial, 'DejaVu Sans', sans-serif";

/** Type sizes, in steps: a picture of a face's width keeps them legible at 600 px. */
export const TYPE_SIZES = { heading: 3.8, label: 3.2, legend: 2.9 };

/** Height of a line of text, as a multiple of the type size. */
export const LINE_HEIGHT = 1.2;

export function lineOf(size: number): number {
  return 1.1 * LINE_HEIGHT * size;
}

/** From the top of a line to its baseline, as a multiple of the type size. */
export const BASELINE = 0.93;

/** Widths as shares of the type size, at least those of the widest common sans-serif: no box is too small. */
const CLASSES: readonly (readonly [pattern: RegExp, width: number])[] = [
  [/^[ijlI|.,:;'!]$/, 0.4],
  [/^[ftr()[\]/ \u00A0-]$/, 0.46],
  [/^[mwMW@%±+−=<>→—…]$/, 1.02],
  [/^[A-Z]$/, 0.79],
  [/^[!-~°–·]$/, 0.65],
  // Digits of Arabic and Persian.
  [/^[\u0660-\u0669\u06F0-\u06F9]$/, 0.65],
  // Arabic letters, most of which are joined, but for four wide ones.
  [/^[\u0620-\u0632\u0637-\u064A]$/, 0.8],
  [/^[\u0633-\u0636]$/, 1.15],
  [/^[\u00A0-\u10FF]$/, 0.9],
  // Full-width characters: their em, and a hundredth for rounding.
  [/^[\u2E80-\u9FFF\uAC00-\uD7A3\uF900-\uFAFF\uFF00-\uFF60]$/, 1.01],
  // Marks of direction take no room.
  [/^[\u200E\u200F\u2066-\u2069]$/, 0],
];

const WIDEST = 1.15;

function widthOf(character: string): number {
  return CLASSES.find(([pattern]) => pattern.test(character))?.[1] ?? WIDEST;
}

/** Of the letters that most texts are made of, by their codes. */
const ASCII = Array.from({ length: 128 }, (_, code) => widthOf(String.fromCharCode(code)));

/** Bold letters are wider by about a tenth. */
const BOLD = 1.13;

/** An upper bound for the width of one line of text. */
export function textWidth(
  text: string,
  size: number,
  weight: "normal" | "bold" = "normal",
): number {
  let sum = 0;
  for (const character of text) {
    sum += ASCII[character.charCodeAt(0)] ?? widthOf(character);
  }
  return sum * size * (weight === "bold" ? BOLD : 1);
}

/** Where a line may end: at any space but that between a number and its unit, and behind ±. */
const BREAKS = /(?<!±)(?:(?<!\d) | (?!(?:[cm]m²?|in²?|%)(?![\w²])|\d+\/\d))/;

/**
 * Between which characters lines end where no spaces are: an ideograph, with what may not end a line before it or begin
 * one after it.
 */
const UNITS =
  /[（「『【〈《]*(?:[^\u2E80-\u9FFF\uF900-\uFAFF\uFF00-\uFFEF]+|.)[、。，．：；！？）」』】〉》ー]*/gu;

/** Text in lines of a width; too wide a word is broken, what no-break spaces hold together is not. */
export function wrapped(
  text: string,
  size: number,
  width: number,
  weight: "normal" | "bold" = "normal",
): readonly string[] {
  const fits = (line: string): boolean => textWidth(line, size, weight) <= width;
  const lines: string[] = [];
  let line = "";
  const units = text
    .replace(/[^\S\u00A0]+/g, " ")
    .split(BREAKS)
    .flatMap((word) => (word.match(UNITS) ?? []).map((unit, index) => ({ unit, index })));
  for (const { unit: word, index } of units) {
    const longer = line === "" || index > 0 ? line + word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    const pieces = broken(word, fits);
    lines.push(...pieces.slice(0, -1));
    line = pieces[pieces.length - 1] ?? "";
  }
  if (line !== "") lines.push(line);
  return lines;
}

function broken(word: string, fits: (piece: string) => boolean): readonly string[] {
  const pieces: string[] = [];
  let piece = "";
  for (const character of word) {
    if (piece !== "" && !fits(piece + character)) {
      pieces.push(piece);
      piece = "";
    }
    piece += character;
  }
  return [...pieces, piece];
}

export function rowsOf<Item>(
  items: readonly Item[],
  columns: number,
): readonly (readonly Item[])[] {
  return Array.from({ length: Math.ceil(items.length / columns) }, (_, row) =>
    items.slice(row * columns, (row + 1) * columns),
  );
}
