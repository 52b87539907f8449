import { MARKUP_NAMES, MARKUPS } from "./markups.js";
import { refuse } from "../../units/internal.js";

/** Refuses the name of no markup: programs without types ask too. */
export function requireMarkup(where: string, name: string): void {
  if (Object.hasOwn(MARKUPS, name)) return;
  refuse("out-of-range", where, "name", name, `one of ${MARKUP_NAMES.join(", ")}`);
}
