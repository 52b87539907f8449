import { refuse } from "./geometry-error.js";

/**
 * Refuses a word that is not in the list, and names those that are: programs in JavaScript can pass
 * anything. What was left out passes.
 *
 * @throws GeometryError `out-of-range`
 */
export function requireWord(
  where: string,
  field: string,
  value: string | undefined,
  words: readonly string[],
): void {
  if (value === undefined || words.includes(value)) return;
  refuse("out-of-range", where, field, value, `one of ${words.join(", ")}`);
}
