import { GeometryError } from "../units/index.js";

/**
 * Refuses a word that is none of those there are, and names these: programs without types ask too.
 * What was left out passes.
 */
export function requireWord(
  where: string,
  field: string,
  value: string | undefined,
  words: readonly string[],
): void {
  if (value === undefined || words.includes(value)) return;
  throw new GeometryError("out-of-range", {
    where,
    field,
    value,
    need: `one of ${words.join(", ")}`,
  });
}
