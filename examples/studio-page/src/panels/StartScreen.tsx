import { FileButton } from "../controls/FileButton.js";
import { openExample, openPhoto, openPlainFace, openRecord } from "../actions/open.js";
import { Messages } from "../Messages.js";
import { Cautions } from "./Cautions.js";

/** What somebody sees who has not begun. */
export function StartScreen() {
  return (
    <main class="start">
      <h1>Brow map</h1>
      <p class="lead">
        Two outlines over your client’s photo, and what to move by half millimetres. You decide; the
        ruler has the last word.
      </p>
      <p class="private">
        Nothing leaves this device: no account, no upload, no network once loaded.
      </p>
      <div class="ways">
        <FileButton name="Take a photo" accept="image/*" isCamera isMain onFile={openPhoto} />
        <FileButton name="Open a photo" accept="image/*" onFile={openPhoto} />
        <button type="button" onClick={openPlainFace}>
          Ruler only, on a plain face
        </button>
        <FileButton name="Open a record" accept=".json,application/json" onFile={openRecord} />
        <button type="button" onClick={openExample}>
          Look at an example
        </button>
      </div>
      <Messages />
      <Cautions />
    </main>
  );
}
