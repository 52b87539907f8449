import type { Note } from "../../units/index.js";
import { weighingNote, type FieldNotes } from "./notes.js";

/** A field that stands in the way of a plan, by its path, as something that can be said. */
export function fieldNote(path: string): Note<keyof FieldNotes> {
  const pin = /^pins\[(\d+)\]/.exec(path)?.[1];
  if (pin !== undefined) return weighingNote("pin-number", { number: Number(pin) + 1 });
  const [, side, dot] = /^(right|left) (\w+)$/.exec(path) ?? [];
  if (side !== undefined && dot !== undefined) return weighingNote("dot-of-side", { side, dot });
  if (/^(?:right|left|midline)\./.test(path)) {
    return weighingNote("landmark-needed", { landmark: path });
  }
  const [, choice = path, part] =
    /^(shape|thickness)\.(\w+)$/.exec(path === "softFront" ? `shape.${path}` : path) ?? [];
  if (part === undefined) return weighingNote("choice", { choice });
  return choice === "shape"
    ? weighingNote("choice-of-shape", { shape: part })
    : weighingNote("choice-of-thickness", { station: part });
}
