import { formatLength, say, workSteps } from "brow-geometry";
import type { RulerCheck } from "brow-geometry/mapping";
import { change, kept } from "../appointment/history.js";
import { Tick } from "../controls/Tick.js";
import type { Mapped } from "../planning/map.js";
import { text, words } from "../words/language.js";

/** The work step by step, each with what a ruler reads where it was done rightly. */
export function CheckPanel({ map }: { readonly map: Mapped }) {
  const { ticked } = kept.value;
  const steps = workSteps(map.plan);
  const tick = (step: number, isOn: boolean) =>
    change((now) => ({
      ...now,
      ticked: isOn ? [...now.ticked, step] : now.ticked.filter((one) => one !== step),
    }));
  return (
    <>
      <p>{text.value.checked(ticked.length, steps.length)}</p>
      <ol class="steps">
        {steps.map((step, index) => (
          <li key={index}>
            <Tick isOn={ticked.includes(index)} onTick={(isOn) => tick(index, isOn)}>
              <strong>{say(step, words.value)}</strong>
              {step.checks.map((check, at) => (
                <span class="reading" key={at}>
                  {say(check.laid, words.value)}
                  {readingOf(check)}
                </span>
              ))}
            </Tick>
          </li>
        ))}
      </ol>
    </>
  );
}

function readingOf({ reading }: RulerCheck): string {
  return reading === undefined
    ? ""
    : `: ${formatLength(reading).replace(".", words.value.decimalSign)}`;
}
