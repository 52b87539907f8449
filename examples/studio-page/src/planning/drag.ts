import type { Choices } from "brow-geometry";
import { allowedPin, type Pin } from "brow-geometry/mapping";
import type { Dot } from "brow-geometry/landmarks";
import type { Side } from "brow-geometry/units";
import type { Mapped } from "./map.js";

/** The place nearest to a finger at which a brow can have a dot. */
export function nearestPin({ plan, choices }: Mapped, asked: Pin): Pin {
  return allowedPin(plan, choices, asked).pin;
}

/** The artist's own choices with one more pin, in place of any on the same dot. */
export function withPin(choices: Choices, pin: Pin): Choices {
  return { ...choices, pins: [...pinsBut(choices, pin.side, pin.dot), pin] };
}

/** The artist's own choices without the pin on a dot: it goes back to where the plan has it. */
export function withoutPin(choices: Choices, side: Side, dot: Dot): Choices {
  return { ...choices, pins: pinsBut(choices, side, dot) };
}

function pinsBut({ pins = [] }: Choices, side: Side, dot: Dot): readonly Pin[] {
  return pins.filter((one) => one.side !== side || one.dot !== dot);
}
