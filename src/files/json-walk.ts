import { writtenPath } from "../units/internal.js";

/** A number, a word or a mark, as RFC 8259 has them. */
const SCALAR_OR_MARK =
  /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)|(?<mark>[{}[\],:])/y;
const BLANKS = /[ \t\r\n]*/y;
/** What stands in a string as it is: anything from the blank on, but quotes and backslashes. */
const PLAIN_SIGNS = /[ !#-[\]-\uFFFF]*/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/** One token and where it begins. */
interface Token {
  readonly start: number;
  readonly word: string;
  readonly string?: string;
  readonly mark?: string;
}

/** What may stand next: a value, the name of an entry, or one of some marks. */
interface Expected {
  readonly word?: "value" | "name";
  readonly marks: string;
}

const VALUE: Expected = { word: "value", marks: "" };
const VALUE_OR_END: Expected = { word: "value", marks: "]" };
const NAME: Expected = { word: "name", marks: "" };
const NAME_OR_END: Expected = { word: "name", marks: "}" };
const COLON: Expected = { marks: ":" };
const AFTER_VALUE: Expected = { marks: ",]" };
const AFTER_ENTRY: Expected = { marks: ",}" };
const END: Expected = { marks: "" };

/** A list or an object that is still open, and where in it the walk is. */
interface Level {
  readonly list: boolean;
  step: string | number;
}

/** Deeper values than this are of no file of landmarks; their ways are not spelled out. */
const DEEPEST_PATH = 8;

/**
 * Walks through a JSON text value by value, in one pass. Answers where it stops being JSON, or
 * nothing where it is JSON throughout: engines do not tell, or each in its own words.
 */
export function walkJson(
  text: string,
  visit: (path: string, offset: number) => void = () => undefined,
): number | undefined {
  const levels: Level[] = [];
  let expected = VALUE;
  let at = 0;
  for (;;) {
    const token = tokenFrom(text, at);
    if (token === undefined) {
      const rest = endOf(BLANKS, text, at);
      return expected === END && rest === text.length ? undefined : rest;
    }
    const { start, word, mark } = token;
    const next = follow(expected, levels, token);
    if (next === undefined) return start;
    if (mark === "{" || mark === "[" || (mark === undefined && expected.word !== "name")) {
      const depth = mark === undefined ? levels.length : levels.length - 1;
      if (depth <= DEEPEST_PATH)
        visit(writtenPath(levels.slice(0, depth).map(({ step }) => step)), start);
    }
    expected = next;
    at = start + word.length;
  }
}

function tokenFrom(text: string, at: number): Token | undefined {
  const start = endOf(BLANKS, text, at);
  if (text[start] === '"') {
    const string = stringFrom(text, start);
    return string === undefined ? undefined : { start, word: string, string };
  }
  SCALAR_OR_MARK.lastIndex = start;
  const found = SCALAR_OR_MARK.exec(text);
  if (found === null) return undefined;
  const { mark } = found.groups ?? {};
  return {
    start,
    word: found[0],
    ...(mark === undefined ? {} : { mark }),
  };
}

/** Run by run: one pattern for all of it would run out of stack on a text of some megabytes. */
function stringFrom(text: string, start: number): string | undefined {
  let end = start + 1;
  for (;;) {
    end = endOf(PLAIN_SIGNS, text, end);
    if (text[end] === '"') return text.slice(start, end + 1);
    const after = endOf(ESCAPE, text, end);
    if (after === end) return undefined;
    end = after;
  }
}

/** Where a match that begins at a place ends; there where there is none. */
function endOf(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}

/** What may come after a token; nothing where the token itself may not come. */
function follow(
  expected: Expected,
  levels: Level[],
  { string, mark }: Token,
): Expected | undefined {
  const level = levels[levels.length - 1];
  if (expected.word === "value") {
    if (mark === undefined) return afterValue(level);
    if (mark === "[" || mark === "{") {
      levels.push({ list: mark === "[", step: 0 });
      return mark === "[" ? VALUE_OR_END : NAME_OR_END;
    }
  }
  if (expected.word === "name" && string !== undefined && level !== undefined) {
    level.step = JSON.parse(string) as string;
    return COLON;
  }
  if (mark === undefined || !expected.marks.includes(mark)) return undefined;
  if (mark === ":") return VALUE;
  if (mark === ",") return afterComma(level);
  levels.pop();
  return afterValue(levels[levels.length - 1]);
}

function afterValue(level: Level | undefined): Expected {
  if (level === undefined) return END;
  return level.list ? AFTER_VALUE : AFTER_ENTRY;
}

function afterComma(level: Level | undefined): Expected | undefined {
  if (typeof level?.step === "number") level.step += 1;
  return level?.list === true ? VALUE : NAME;
}
