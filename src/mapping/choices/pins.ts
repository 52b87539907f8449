import { DOT_NAMES } from "../../landmarks/internal.js";
import { refuse, requireFinitePoint, requireWord, SIDES } from "../../units/internal.js";
import type { Pin } from "./choices.js";

/**
 * Refuses pins that no plan can keep: two for one dot, or one on the wrong side of the midline.
 * Whether pinned dots stand in order along the brow shows only once the rest is solved.
 */
export function requireUsablePins(where: string, pins: readonly Pin[]): void {
  if (!isList(pins)) {
    refuse("out-of-range", where, "pins", pins, "a list");
  }
  pins.forEach((pin, index) => {
    const field = `pins[${index}]`;
    requireWord(where, `${field}.side`, pin.side, SIDES);
    requireWord(where, `${field}.dot`, pin.dot, DOT_NAMES);
    requireFinitePoint(where, `${field}.at`, pin.at);
    const earlier = pins.findIndex(({ side, dot }) => side === pin.side && dot === pin.dot);
    if (earlier !== index) {
      refuse(
        "contradicting-pins",
        where,
        field,
        pin.at,
        `one pin for the ${pin.side} ${pin.dot}, which pins[${earlier}] fixes at [${pins[earlier]?.at.join(", ") ?? ""}]`,
      );
    }
    const outward = pin.side === "left" ? pin.at[0] : -pin.at[0];
    if (outward <= 0) {
      refuse(
        "contradicting-pins",
        where,
        `${field}.at`,
        pin.at,
        `a point on the client's ${pin.side} (x ${pin.side === "left" ? "above" : "below"} 0)`,
      );
    }
  });
}

/** Without narrowing: the types know that it is one. */
function isList(value: unknown): boolean {
  return Array.isArray(value);
}
