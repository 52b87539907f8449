/**
 * What makes a spreadsheet take a text for a formula: it begins with one of these signs, in ordinary
 * or full width, or with blanks before one.
 */
const FORMULA = /^'*\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^'*[\t\r\n]/;
const GUARDED = /^'+(?:\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|[\t\r\n])/;

/** The text with an apostrophe before it where a spreadsheet would take it for a formula. */
export function guarded(text: string): string {
  return FORMULA.test(text) ? `'${text}` : text;
}

export function unguarded(text: string): string {
  return GUARDED.test(text) ? text.slice(1) : text;
}
