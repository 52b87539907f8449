import { say } from "brow-geometry";
import { withChoices } from "../appointment/appointment.js";
import { change, kept } from "../appointment/history.js";
import { WISH_NAMES, WISH_PAIRS, type WishPair } from "../appointment/wishes.js";
import { Stepper } from "../controls/Stepper.js";
import type { Mapped } from "../planning/map.js";
import { figure, text, words } from "../words/language.js";

/** What the client would like to be otherwise, by half millimetres, and how much of it the face lets her have. */
export function WishControls({ map }: { readonly map: Mapped }) {
  const { wishes } = kept.value;
  return (
    <fieldset>
      <legend>{text.value.wishes}</legend>
      {WISH_NAMES.map((pair) => (
        <Stepper
          key={pair}
          name={text.value.wishNames[pair]}
          value={wishes[pair] ?? 0}
          shown={wordsOf(pair, wishes[pair] ?? 0)}
          least={-5}
          most={5}
          onStep={(by) => change((now) => withChoices(now, { wishes: { ...wishes, [pair]: by } }))}
        />
      ))}
      <ul class="notes" aria-live="polite">
        {map.grants.map(({ note }, index) => (
          <li key={index}>{say(note, words.value)}</li>
        ))}
      </ul>
    </fieldset>
  );
}

function wordsOf(pair: WishPair, by: number): string {
  if (by === 0) return "–";
  const { more, less } = WISH_PAIRS[pair];
  return `${words.value.terms.wishes[by > 0 ? more : less]} ${figure(Math.abs(by), 1)} mm`;
}
