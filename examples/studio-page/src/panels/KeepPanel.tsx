import { FileButton } from "../controls/FileButton.js";
import { printSheet, saveRecord } from "../actions/keep.js";
import { openRecord, startAgain } from "../actions/open.js";
import type { Mapped } from "../planning/map.js";
import { Cautions } from "./Cautions.js";
import { VisitsPanel } from "./VisitsPanel.js";
import { text } from "../words/language.js";
import { LanguageOptions } from "./LanguageOptions.js";

/** What stays after the appointment: a sheet, a file, and the visits to come. */
export function KeepPanel({ map }: { readonly map: Mapped }) {
  return (
    <>
      <div class="row">
        <button type="button" class="main" onClick={() => printSheet(map)}>
          {text.value.print}
        </button>
        <button type="button" class="main" onClick={() => saveRecord(map)}>
          {text.value.save}
        </button>
      </div>
      <p>{text.value.keepSaid}</p>
      <VisitsPanel map={map} />
      <div class="row">
        <FileButton
          name={text.value.openRecord}
          accept=".json,application/json"
          onFile={openRecord}
        />
        <button type="button" onClick={startAgain}>
          {text.value.nextClient}
        </button>
      </div>
      <LanguageOptions />
      <Cautions />
    </>
  );
}
