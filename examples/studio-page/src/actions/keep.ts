import { drawSheet } from "brow-geometry/drawing";
import { attempt } from "brow-geometry/units";
import { kept } from "../appointment/history.js";
import { dayOf, recordText, visitsToKeep } from "../appointment/record-file.js";
import { said } from "../page-state.js";
import type { Mapped } from "../planning/map.js";
import { needIn } from "./telling.js";
import { dayInWords, text, words } from "../words/language.js";

/** The sheet at true size, through the browser's own printing: on paper, or as PDF. */
export function printSheet({ plan }: Mapped): void {
  const date = dayOf(kept.value);
  const { fields } = text.value;
  const sheet = attempt(() =>
    drawSheet(plan, {
      fields: [
        { name: fields.client },
        { name: fields.date, ...(date !== undefined && { value: dayInWords(date) }) },
        { name: fields.artist },
      ],
      words: words.value,
    }),
  );
  if (!sheet.ok) {
    said.value = text.value.because(text.value.noSheet, needIn(sheet.refusal));
    return;
  }
  const frame = document.createElement("iframe");
  frame.className = "sheet";
  frame.title = text.value.sheet;
  frame.srcdoc = sheet.answer;
  frame.addEventListener("load", () => {
    const view = frame.contentWindow;
    view?.addEventListener("afterprint", () => {
      frame.remove();
    });
    view?.print();
  });
  document.body.append(frame);
}

/** The record as a file, through the browser's own saving. */
export function saveRecord(map: Mapped): void {
  const blob = new Blob([recordText(map, kept.value)], { type: "application/json" });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = `brow-map-${dayOf(kept.value) ?? "undated"}.json`;
  link.click();
  URL.revokeObjectURL(link.href);
  if (visitsToKeep(kept.value).length < kept.value.visits.length) {
    said.value = text.value.visitLeftOut;
  }
}
