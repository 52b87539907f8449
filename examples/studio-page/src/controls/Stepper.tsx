import { figure, text } from "../words/language.js";
interface StepperProps {
  readonly name: string;
  readonly value: number;
  /** What is shown; left out: the value in millimetres. */
  readonly shown?: string;
  readonly least: number;
  readonly most: number;
  readonly onStep: (value: number) => void;
}

/** Half a millimetre: what a pencil draws. */
const STEP = 0.5;

/** A length, half a millimetre less or more by a tap. */
export function Stepper({ name, value, shown, least, most, onStep }: StepperProps) {
  const to = (next: number) => () => onStep(Math.min(most, Math.max(least, next)));
  return (
    <div class="stepper" role="group" aria-label={name}>
      <span class="name">{name}</span>
      <button
        type="button"
        aria-label={text.value.less(name)}
        disabled={value <= least}
        onClick={to(value - STEP)}
      >
        −
      </button>
      <output>{shown ?? `${figure(value, 1)} mm`}</output>
      <button
        type="button"
        aria-label={text.value.more(name)}
        disabled={value >= most}
        onClick={to(value + STEP)}
      >
        +
      </button>
    </div>
  );
}
