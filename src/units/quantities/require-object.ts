import { refuse } from "./geometry-error.js";

/**
 * Refuses what is no object, naming the function, the field and what is needed.
 *
 * @throws GeometryError `not-parsed`
 */
export function requireObject(where: string, field: string, value: unknown, need: string): void {
  if (typeof value === "object" && value !== null) return;
  refuse("not-parsed", where, field, value, need);
}
