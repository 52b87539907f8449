import { GeometryError } from "../../units/index.js";
import { MARKUP_NAMES, MARKUPS } from "./markups.js";

/** Refuses the name of no markup: programs without types ask too. */
export function requireMarkup(where: string, name: string): void {
  if (Object.hasOwn(MARKUPS, name)) return;
  const need = `one of ${MARKUP_NAMES.join(", ")}`;
  throw new GeometryError("out-of-range", { where, field: "name", value: name, need });
}
