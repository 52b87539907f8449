import { inspect } from "node:util";
import ts from "typescript";

/** What a comment behind a statement claims: a value, or an error of a kind with a text. */
export type Expectation =
  | { readonly kind: "value"; readonly value: Literal }
  | { readonly kind: "throws"; readonly name: string; readonly text: string };

/** A literal as it is printed in an example: numbers keep the decimals that the reader sees. */
type Literal =
  | { readonly kind: "number"; readonly value: number; readonly printed: string }
  | { readonly kind: "exact"; readonly value: unknown }
  | { readonly kind: "list"; readonly items: readonly Literal[] }
  | { readonly kind: "record"; readonly entries: readonly (readonly [string, Literal])[] };

/** Start of a comment that makes a claim. */
export const claim: RegExp = /\/\/ (→|throws\b)/;

/**
 * Reads the claim that the comments behind a statement make, if they make one: `// → 12.5` or
 * `// throws GeometryError: part of the message`, on the statement's last line or the next one.
 * A value may go on over further comment lines.
 */
export function expectationOf(comments: string): Expectation | undefined {
  const lines = /^[ \t]*(?:\n[ \t]*)?\/\/ ((?:→|throws\b).*(?:\n[ \t]*\/\/.*)*)/.exec(
    comments,
  )?.[1];
  if (lines === undefined) return undefined;
  const [first = "", ...more] = lines.split("\n").map((line) => line.trim().replace(/^\/\//, ""));
  if (first.startsWith("→")) return { kind: "value", value: literalOf(first.slice(1), more) };
  const [, name, text] = /^throws (\w+): (.+)$/.exec(first) ?? [];
  if (name === undefined || text === undefined) {
    throw new Error(`"${first}" has to read "throws NameOfError: part of its message"`);
  }
  return { kind: "throws", name, text };
}

/** What is wrong with a value, or nothing; an object has to show the listed keys only. */
export function mismatch(actual: unknown, expected: Literal, path = "value"): string | undefined {
  switch (expected.kind) {
    case "number":
      return typeof actual === "number" && agrees(actual, expected)
        ? undefined
        : `${path} is ${inspect(actual)}, expected ${expected.printed}`;
    case "exact":
      return actual === expected.value
        ? undefined
        : `${path} is ${inspect(actual)}, expected ${inspect(expected.value)}`;
    case "list": {
      if (!isList(actual)) return `${path} is ${inspect(actual)}, expected a list`;
      if (actual.length !== expected.items.length) {
        return `${path} has ${actual.length} elements, expected ${expected.items.length}`;
      }
      return firstOf(expected.items.entries(), ([index, item]) =>
        mismatch(actual[index], item, `${path}[${index}]`),
      );
    }
    case "record": {
      if (typeof actual !== "object" || actual === null) {
        return `${path} is ${inspect(actual)}, expected an object`;
      }
      return firstOf(expected.entries, ([key, item]) =>
        mismatch((actual as Record<string, unknown>)[key], item, `${path}.${key}`),
      );
    }
  }
}

/** To half a unit of the last printed decimal; a number printed without decimals is exact. */
function agrees(actual: number, expected: Literal & { kind: "number" }): boolean {
  if (Object.is(actual, expected.value)) return true;
  const decimals = /\.(\d+)$/.exec(expected.printed)?.[1]?.length;
  const rounding = 1e-9 * Math.max(1, Math.abs(expected.value));
  const tolerance = decimals === undefined ? rounding : 0.5 * 10 ** -decimals + rounding;
  return Math.abs(actual - expected.value) <= tolerance;
}

function literalOf(first: string, more: readonly string[]): Literal {
  for (let taken = 0; taken <= more.length; taken += 1) {
    const text = [first, ...more.slice(0, taken)].join("\n");
    const expression = parsed(text);
    if (expression !== undefined) return literal(expression);
  }
  throw new Error(`"${first.trim()}" is not a literal`);
}

function parsed(text: string): ts.Expression | undefined {
  const code = `(${text}\n)`;
  if (ts.transpileModule(code, { reportDiagnostics: true }).diagnostics?.length !== 0) {
    return undefined;
  }
  const [statement, ...others] = ts.createSourceFile(
    "",
    code,
    ts.ScriptTarget.ES2022,
    true,
  ).statements;
  if (statement === undefined || others.length > 0 || !ts.isExpressionStatement(statement)) {
    return undefined;
  }
  return ts.isParenthesizedExpression(statement.expression)
    ? statement.expression.expression
    : undefined;
}

function literal(node: ts.Expression): Literal {
  const text = node.getText();
  if (/^[-+]?(\d[\d_]*(\.\d+)?(e[-+]?\d+)?|Infinity|NaN)$/.test(text)) {
    return { kind: "number", value: Number(text.replaceAll("_", "")), printed: text };
  }
  if (ts.isStringLiteralLike(node)) return { kind: "exact", value: node.text };
  if (ts.isArrayLiteralExpression(node)) {
    return { kind: "list", items: node.elements.map(literal) };
  }
  if (ts.isObjectLiteralExpression(node)) {
    return { kind: "record", entries: node.properties.map(entry) };
  }
  const words = new Map<string, unknown>([
    ["undefined", undefined],
    ["null", null],
    ["true", true],
    ["false", false],
  ]);
  if (words.has(text)) return { kind: "exact", value: words.get(text) };
  throw new Error(`"${text}" is not a literal`);
}

function entry(property: ts.ObjectLiteralElementLike): readonly [string, Literal] {
  if (!ts.isPropertyAssignment(property) || ts.isComputedPropertyName(property.name)) {
    throw new Error(`"${property.getText()}" is not a key with its value`);
  }
  return [property.name.text, literal(property.initializer)];
}

function firstOf<Item>(
  items: Iterable<Item>,
  mismatchOf: (item: Item) => string | undefined,
): string | undefined {
  for (const item of items) {
    const found = mismatchOf(item);
    if (found !== undefined) return found;
  }
  return undefined;
}

function isList(value: unknown): value is ArrayLike<unknown> {
  return Array.isArray(value) || (ArrayBuffer.isView(value) && "length" in value);
}
