import type { Choices } from "brow-geometry";
import { allowedPin, type Pin } from "brow-geometry/mapping";
import type { Dot } from "brow-geometry/landmarks";
import type { FlatPoint, Side } from "brow-geometry/units";
import type { Mapped } from "./map.js";

export interface Dragged {
  readonly pin: Pin;
  /** Whether no brow can have the dot where the finger is: it then stops as near as one can. */
  readonly isHeld: boolean;
}

/** Where a dot goes that a finger drags. */
export function dragged(map: Mapped, side: Side, dot: Dot, at: FlatPoint<"mm">): Dragged {
  const asked = { side, dot, at, by: "the artist" };
  const { pin, off } = allowedPin(map.plan, map.choices, asked);
  return { pin, isHeld: off > 0 };
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
