/** Something that the person at the keyboard can mend: shown as one line, without a stack. */
export class Problem extends Error {}

/**
 * The first line of what went wrong.
 * @param {unknown} error
 * @returns {string}
 */
export function firstLine(error) {
  const text = error instanceof Error ? error.message : String(error);
  return text.split("\n", 1)[0] ?? "";
}
