import { ARCH_CONVENTIONS, type Choices, type Lead, TAIL_HEIGHTS } from "brow-geometry";
import { withChoices } from "../appointment/appointment.js";
import { change, kept } from "../appointment/history.js";
import { Options } from "../controls/Options.js";
import type { Mapped } from "../planning/map.js";
import { AreaControls } from "./AreaControls.js";
import { OtherChoices } from "./OtherChoices.js";
import { ThicknessControls } from "./ThicknessControls.js";
import { WishControls } from "./WishControls.js";
import { text, words } from "../words/language.js";

/** What the artist may choose, and what the client may wish for. */
export function ShapePanel({ map }: { readonly map: Mapped }) {
  const { choices } = kept.value;
  const { terms } = words.value;
  const { lead, arch, tailHeight } = map.plan.choices;
  const choose = (chosen: Choices) => change((now) => withChoices(now, { choices: chosen }));
  const pins = choices.pins ?? [];
  return (
    <>
      <Options
        title={text.value.leads}
        options={text.value.leadNames satisfies Record<Lead, string>}
        chosen={lead}
        onChoose={(to) => choose({ ...choices, lead: to })}
      />
      <OtherChoices map={map} />
      <WishControls map={map} />
      <ThicknessControls map={map} onChoose={choose} />
      <Options
        title={text.value.arch}
        isList
        options={named(ARCH_CONVENTIONS, terms.rules)}
        chosen={arch}
        onChoose={(to) => choose({ ...choices, arch: to })}
      />
      <Options
        title={text.value.tailEnd}
        isList
        options={named(
          Object.keys(TAIL_HEIGHTS) as (keyof typeof TAIL_HEIGHTS)[],
          terms.tailHeights,
        )}
        chosen={tailHeight}
        onChoose={(to) => choose({ ...choices, tailHeight: to })}
      />
      <AreaControls map={map} />
      {pins.length > 0 && (
        <button type="button" onClick={() => choose({ ...choices, pins: [] })}>
          {text.value.letGo(pins.length)}
        </button>
      )}
    </>
  );
}

function named<Name extends string>(
  names: readonly Name[],
  words: Readonly<Record<Name, string>>,
): Readonly<Record<Name, string>> {
  return Object.fromEntries(names.map((name) => [name, words[name]])) as Record<Name, string>;
}
