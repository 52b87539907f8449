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
    field: fieldNote(detail.field),
    value: shownValue(detail.value, SHOWN_DECIMALS),
    need: detail.need,
  });
}

/** Enough to see on which side of a limit a value lies. */
const SHOWN_DECIMALS = 4;
