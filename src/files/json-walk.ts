/** One token and the blanks before it; strings and numbers as RFC 8259 has them. */
const TOKEN =
  // eslint-disable-next-line no-control-regex -- JSON forbids exactly these in a text
  /[ \t\r\n]*(?:(?<string>"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(?<scalar>-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)|(?<mark>[{}[\],:]))/y;

/** What may stand next: a value, the name of an entry, or one of the marks. */
type Expected = "value" | "value ]" | "name" | "name }" | ":" | ", ]" | ", }" | "end";

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
  const token = new RegExp(TOKEN);
  const levels: Level[] = [];
  let expected: Expected = "value";
  let at = 0;
  for (;;) {
    token.lastIndex = at;
    const groups = token.exec(text)?.groups;
    if (groups === undefined) {
      const rest = at + blanksFrom(text, at);
      return expected === "end" && rest === text.length ? undefined : rest;
    }
    const { string, scalar, mark } = groups;
    const word = string ?? scalar ?? mark ?? "";
    const start = token.lastIndex - word.length;
    const next = follow(expected, levels, string, scalar, mark);
    if (next === undefined) return start;
    if (mark === "{" || mark === "[" || (mark === undefined && !expected.startsWith("name"))) {
      const depth = mark === undefined ? levels.length : levels.length - 1;
      if (depth <= DEEPEST_PATH) visit(pathOf(levels.slice(0, depth)), start);
    }
    expected = next;
    at = token.lastIndex;
  }
}

/** What may come after a token; nothing where the token itself may not come. */
function follow(
  expected: Expected,
  levels: Level[],
  string: string | undefined,
  scalar: string | undefined,
  mark: string | undefined,
): Expected | undefined {
  const level = levels[levels.length - 1];
  if (expected.startsWith("value")) {
    if (mark === undefined) return afterValue(level);
    if (mark === "[" || mark === "{") {
      levels.push({ list: mark === "[", step: 0 });
      return mark === "[" ? "value ]" : "name }";
    }
  }
  if (expected.startsWith("name") && string !== undefined && level !== undefined) {
    level.step = JSON.parse(string) as string;
    return ":";
  }
  if (scalar !== undefined || mark === undefined) return undefined;
  if (mark === ":") return expected === ":" ? "value" : undefined;
  if (mark === ",") return afterComma(expected, level);
  if (!expected.endsWith(mark)) return undefined;
  levels.pop();
  return afterValue(levels[levels.length - 1]);
}

function afterValue(level: Level | undefined): Expected {
  if (level === undefined) return "end";
  return level.list ? ", ]" : ", }";
}

function afterComma(expected: Expected, level: Level | undefined): Expected | undefined {
  if (level === undefined || !expected.startsWith(",")) return undefined;
  if (typeof level.step === "number") level.step += 1;
  return level.list ? "value" : "name";
}

function pathOf(levels: readonly Level[]): string {
  return levels
    .map(({ list, step }) => (list ? `[${step}]` : `.${step}`))
    .join("")
    .replace(/^\./, "");
}

function blanksFrom(text: string, at: number): number {
  const blanks = /[ \t\r\n]*/y;
  blanks.lastIndex = at;
  return blanks.exec(text)?.[0].length ?? 0;
}
