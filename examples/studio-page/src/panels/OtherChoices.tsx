import type { BrowPlan } from "brow-geometry";
import { useSignal } from "@preact/signals";
import { withChoices } from "../appointment/appointment.js";
import { change, kept } from "../appointment/history.js";
import type { Mapped } from "../planning/map.js";
import { otherChoices } from "../planning/other-choices.js";
import { boxAround, viewBox } from "../stage/box.js";
import { hairPath, ON_PAPER, plannedPath } from "../stage/place.js";
import { SIDES } from "../stage/sides.js";
import { text, words } from "../words/language.js";

/** What other choices would come to, beside each other: a tap takes one. */
export function OtherChoices({ map }: { readonly map: Mapped }) {
  const isOpen = useSignal(false);
  return (
    <details onToggle={(event) => (isOpen.value = event.currentTarget.open)}>
      <summary>{text.value.otherChoices}</summary>
      {isOpen.value && <ChoiceCards map={map} />}
    </details>
  );
}

function ChoiceCards({ map }: { readonly map: Mapped }) {
  const { choices, wishes } = kept.value;
  const others = otherChoices(map, choices, wishes);
  if (others.length === 0) return <p>{text.value.noOtherChoices}</p>;
  return (
    <>
      <p>{text.value.otherChoicesSaid}</p>
      <div class="cards">
        {others.map((other, index) => {
          const differs = differenceOf(map.plan, other.plan);
          return (
            <button
              key={index}
              type="button"
              class="card"
              aria-label={text.value.takeChoice(differs)}
              onClick={() => change((now) => withChoices(now, { choices: other.choices }))}
            >
              <ChoicePicture plan={other.plan} current={map.plan} />
              {differs}
            </button>
          );
        })}
      </div>
    </>
  );
}

/** What was chosen otherwise, in the words of the trade. */
function differenceOf({ choices: now }: BrowPlan, { choices: then }: BrowPlan): string {
  const { leads, rules, tailHeights } = words.value.terms;
  const told = [
    ...(now.lead === then.lead ? [] : [leads[then.lead]]),
    ...(now.start === then.start ? [] : [`${text.value.handles.start} ${rules[then.start]}`]),
    ...(now.arch === then.arch ? [] : [`${text.value.handles.arch} ${rules[then.arch]}`]),
    ...(now.tailHeight === then.tailHeight
      ? []
      : [`${text.value.handles.tail} ${tailHeights[then.tailHeight]}`]),
  ];
  return told.join(", ");
}

/** Room about the brows, in millimetres. */
const ROOM = { top: 3, side: 3, bottom: 3 };

/** One brow over the other, both over the hair. */
function ChoicePicture({ plan, current }: Readonly<Record<"plan" | "current", BrowPlan>>) {
  const spots = SIDES.flatMap((side) =>
    [plan, current].flatMap(({ dots }) => Object.values(dots[side]).map(ON_PAPER)),
  );
  return (
    <svg class="live" viewBox={viewBox(boxAround(spots, ROOM))} aria-hidden="true">
      {SIDES.map((side) => (
        <g key={side}>
          <path class="hair" d={hairPath(plan, side, ON_PAPER)} />
          <path class="before" d={plannedPath(current, side, ON_PAPER)} />
          <path class="planned" d={plannedPath(plan, side, ON_PAPER)} />
        </g>
      ))}
    </svg>
  );
}
