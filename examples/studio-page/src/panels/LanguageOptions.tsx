import { Options } from "../controls/Options.js";
import { language, LANGUAGES, speak, text } from "../words/language.js";

/** The language of the page and of all that maps say. */
export function LanguageOptions() {
  return (
    <Options
      title={text.value.language}
      options={LANGUAGES}
      chosen={language.value}
      onChoose={speak}
    />
  );
}
