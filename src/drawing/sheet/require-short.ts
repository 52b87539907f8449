import { GeometryError } from "../../units/index.js";
import { type Block, heightOf } from "./block.js";

/** The most that a caller's own text may take of the first page, in millimetres. */
const LONGEST_TEXT = 60;

/** Refuses a caller's own text that would fill the first page. */
export function requireShort(
  where: string,
  field: string,
  blocks: readonly Block[],
  value: unknown,
): void {
  if (heightOf(blocks) <= LONGEST_TEXT) return;
  const need = `text short enough for ${LONGEST_TEXT} mm of the first page`;
  throw new GeometryError("out-of-range", { where, field, value, need });
}
