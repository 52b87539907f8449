/** What has to be known before pigment goes into skin. */
export function Cautions() {
  return (
    <details class="cautions">
      <summary>Before you work on skin</summary>
      <ul>
        <li>
          Local law comes first: licence, minimum age, hygiene. What follows a map breaks the skin
          and lasts.
        </li>
        <li>
          A map is a planning aid. Whether somebody may be treated is for licensed practice to
          judge.
        </li>
        <li>
          Millimetres on a photo can be off by a tenth. Check every distance again upright, by
          ruler.
        </li>
        <li>
          Photos and maps of a face are personal data: keep the files that you save safe, like every
          client’s file.
        </li>
      </ul>
    </details>
  );
}
