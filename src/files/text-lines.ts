import type { GeometryError } from "../units/index.js";
import { notParsed, type TextPlace } from "./fault.js";
import type { FilePoint } from "./point-set.js";

/** A line that is not blank. */
export interface TextLine {
  /** Counted from 1. */
  readonly line: number;
  readonly text: string;
}

/** The lines of a text that are not blank, whatever ends them. */
export function textLines(text: string): readonly TextLine[] {
  return text
    .split(/\r\n|\n|\r/)
    .map((content, index) => ({ line: index + 1, text: content }))
    .filter(({ text: content }) => content.trim() !== "");
}

/** A stretch of a line without blanks. */
export interface Word extends TextPlace {
  readonly text: string;
}

export function wordsOf({ line, text }: TextLine): readonly Word[] {
  return Array.from(text.matchAll(/\S+/g), (match) => ({
    line,
    column: match.index + 1,
    text: match[0],
  }));
}

/** A line that is not what it has to be, by the place of its first word. */
export function lineFault(line: TextLine, need: string): GeometryError {
  const [first = { line: line.line, column: 1 }] = wordsOf(line);
  return notParsed(first, line.text.trim() || undefined, need);
}

/** A point written as so many numbers with blanks between them. */
export function readPoint(line: TextLine, size: 2 | 3): FilePoint {
  const words = wordsOf(line);
  const extra =
    words[size] ??
    (words.length < size ? { line: line.line, column: line.text.length + 1 } : undefined);
  if (extra !== undefined) {
    throw notParsed(extra, line.text.trim(), `${size} numbers with blanks between them`);
  }
  const numbers = words.map((word) => {
    const value = strictNumber(word.text);
    if (value === undefined) throw notParsed(word, word.text, "a decimal number");
    return value;
  });
  return numbers as unknown as FilePoint;
}

const DECIMAL = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/;

/** A finite decimal number, or nothing: no hexadecimal, no comma, no Infinity, no empty text. */
export function strictNumber(text: string): number | undefined {
  if (!DECIMAL.test(text)) return undefined;
  const value = Number(text);
  return Number.isFinite(value) ? value : undefined;
}
