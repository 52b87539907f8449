import type { GeometryError, Note } from "../../units/index.js";
import { shownValue } from "../../units/internal.js";
import { fieldNote } from "./field-note.js";
import { type WeighingNotes, weighingNote } from "./notes.js";

/** What stands in the way of a plan, as its error says. */
export function whyNot({
  code,
  detail,
}: GeometryError): Note<keyof Pick<WeighingNotes, "no-solution">> {
  return weighingNote("no-solution", {
    error: code,
    path: detail.field,
    field: detail.field.split(", ").map(fieldNote),
    value: shownValue(detail.value),
    // Which rule asks for a landmark, its error says to programs; the choice itself says it to artists.
    need: detail.need.replace(/, for [\w-]+$/, ""),
  });
}
