import { FileButton } from "../controls/FileButton.js";
import { openExample, openPhoto, openPlainFace, openRecord } from "../actions/open.js";
import { Messages } from "../Messages.js";
import { text } from "../words/language.js";
import { Cautions } from "./Cautions.js";
import { LanguageOptions } from "./LanguageOptions.js";

/** What somebody sees who has not begun. */
export function StartScreen() {
  return (
    <main class="start">
      <h1>{text.value.title}</h1>
      <p class="lead">{text.value.lead}</p>
      <p class="private">{text.value.private}</p>
      <div class="ways">
        <FileButton
          name={text.value.takePhoto}
          accept="image/*"
          isCamera
          isMain
          onFile={openPhoto}
        />
        <FileButton name={text.value.openPhoto} accept="image/*" onFile={openPhoto} />
        <button type="button" onClick={openPlainFace}>
          {text.value.plainFace}
        </button>
        <FileButton
          name={text.value.openRecord}
          accept=".json,application/json"
          onFile={openRecord}
        />
        <button type="button" onClick={openExample}>
          {text.value.example}
        </button>
      </div>
      <Messages />
      <LanguageOptions />
      <Cautions />
    </main>
  );
}
