import type { BrowPlan } from "brow-geometry";
import { drawSheet } from "brow-geometry/drawing";
import { kept } from "../appointment/history.js";
import { recordText, today } from "../appointment/record-file.js";
import type { Mapped } from "../planning/map.js";

/** The sheet at true size, through the browser's own printing: on paper, or as PDF. */
export function printSheet(plan: BrowPlan): void {
  const frame = document.createElement("iframe");
  frame.className = "sheet";
  frame.title = "Sheet";
  frame.srcdoc = drawSheet(plan, {
    fields: [{ name: "Client" }, { name: "Date", value: today() }, { name: "Artist" }],
  });
  frame.addEventListener("load", () => {
    const sheet = frame.contentWindow;
    sheet?.addEventListener("afterprint", () => {
      frame.remove();
    });
    sheet?.print();
  });
  document.body.append(frame);
}

/** The record as a file, through the browser's own saving. */
export function saveRecord(map: Mapped): void {
  const blob = new Blob([recordText(map, kept.value)], { type: "application/json" });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = `brow-map-${today()}.json`;
  link.click();
  URL.revokeObjectURL(link.href);
}
