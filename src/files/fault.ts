import { GeometryError } from "../units/index.js";
import { refuse } from "../units/internal.js";
import type { ReadLimits } from "./point-set.js";

/** A place in a text, both counted from 1. */
export interface TextPlace {
  readonly line: number;
  readonly column: number;
}

/** The error of a reader that cannot go on: where in the text, what stands there, what is needed. */
export function notParsed(
  { line, column }: TextPlace,
  value: unknown,
  need: string,
  path = "",
): GeometryError {
  const field = `line ${line}, column ${column}${path === "" ? "" : ` (${path})`}`;
  return new GeometryError("not-parsed", { where: "", field, value, need });
}

const MOST_CHARACTERS = 100_000_000;

/** The text without a byte order mark; refused where it is none, or longer than the limit. */
export function textWithin(text: string, { mostCharacters = MOST_CHARACTERS }: ReadLimits): string {
  requireText(text);
  if (text.length > mostCharacters) {
    const need = `at most ${mostCharacters} characters; read it in parts, or set mostCharacters`;
    refuse("out-of-range", "text.length", text.length, need);
  }
  return text.startsWith("\uFEFF") ? text.slice(1) : text;
}

/** Files come as bytes where nobody named their encoding. */
function requireText(text: unknown): void {
  if (typeof text === "string") return;
  const value = text === null || text === undefined ? text : typeof text;
  const need = 'the text of a file; decode bytes first, as readFileSync(path, "utf8") does';
  refuse("not-parsed", "text", value, need);
}

/** The place of a character, counted from 0 over the whole text. */
export function placeOf(text: string, offset: number): TextPlace {
  let line = 1;
  let start = 0;
  for (const match of text.slice(0, offset).matchAll(/\r\n|\n|\r/g)) {
    line += 1;
    start = match.index + match[0].length;
  }
  return { line, column: offset - start + 1 };
}
