import { text } from "../words/language.js";

/** What has to be known before pigment goes into skin. */
export function Cautions() {
  return (
    <details class="cautions">
      <summary>{text.value.cautions}</summary>
      <ul>
        {text.value.cautionList.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </details>
  );
}
