import { FileButton } from "../controls/FileButton.js";
import { printSheet, saveRecord } from "../actions/keep.js";
import { openRecord, startAgain } from "../actions/open.js";
import type { Mapped } from "../planning/map.js";
import { Cautions } from "./Cautions.js";
import { VisitsPanel } from "./VisitsPanel.js";

/** What stays after the appointment: a sheet, a file, and the visits to come. */
export function KeepPanel({ map }: { readonly map: Mapped }) {
  return (
    <>
      <div class="row">
        <button type="button" class="main" onClick={() => printSheet(map)}>
          Print sheet
        </button>
        <button type="button" class="main" onClick={() => saveRecord(map)}>
          Save record
        </button>
      </div>
      <p>
        Print at 100 %, or save as PDF. The record is a file on this device, with the photo in it:
        keep it safe, like every client’s file.
      </p>
      <VisitsPanel map={map} />
      <div class="row">
        <FileButton name="Open a record" accept=".json,application/json" onFile={openRecord} />
        <button type="button" onClick={startAgain}>
          Next client
        </button>
      </div>
      <Cautions />
    </>
  );
}
