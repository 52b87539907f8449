import { DOT_NAMES, TAIL_CONVENTIONS } from "../../landmarks/internal.js";
import { ARCH_CONVENTIONS, START_CONVENTIONS } from "../../landmarks/index.js";
import { requireShape, STATIONS } from "../../proportions/internal.js";
import {
  DECISION_RULES,
  keysOf,
  refuse,
  requireFinitePoint,
  requireFlag,
  requireObject,
  requirePositive,
  requireWithin,
  requireWord,
  SIDES,
} from "../../units/internal.js";
import { CARRIES, CHOSEN_SHARES, LEADS, LEVELS, MOST_KEPT, TAIL_HEIGHTS } from "./choice-tables.js";
import type { Choices, Pin } from "./choices.js";

export function requireChoices(where: string, choices: Choices): void {
  const { levelLimit, thickness, shape = {}, pins = [] } = choices;
  for (const field of keysOf(WORDS)) {
    requireWord(where, field, choices[field], WORDS[field]);
  }
  for (const field of keysOf(CHOSEN_SHARES)) {
    const [least, most] = CHOSEN_SHARES[field];
    requireWithin(where, field, choices[field] ?? least, least, most);
  }
  requireShape(where, "shape", shape);
  for (const station of keysOf(STATIONS)) {
    if (thickness) requirePositive(where, `thickness.${station}`, thickness[station]);
  }
  requireFlag(where, "noseBent", choices.noseBent);
  requireFlag(where, "declared.upright", choices.declared?.upright);
  requireFlag(where, "declared.relaxed", choices.declared?.relaxed);
  if (choices.tolerances !== undefined) {
    const named = choices.tolerances.tolerances;
    requireObject(where, "tolerances.tolerances", named, "limits by name");
  }
  if (levelLimit !== undefined) requirePositive(where, "levelLimit", levelLimit);
  requireWithin(where, "keepHair", choices.keepHair ?? 0, 0, MOST_KEPT);
  if (choices.carry === "measure") requireCarriable(where, choices);
  requireUsablePins(where, pins);
}

/** Choices that are one word of a closed list. */
type ChosenWord = {
  [Field in keyof Choices]-?: NonNullable<Choices[Field]> extends string ? Field : never;
}[keyof Choices];

const WORDS: { readonly [Field in ChosenWord]: readonly string[] } = {
  lead: keysOf(LEADS),
  carry: keysOf(CARRIES),
  levels: LEVELS,
  start: START_CONVENTIONS,
  arch: ARCH_CONVENTIONS,
  tail: TAIL_CONVENTIONS,
  tailHeight: keysOf(TAIL_HEIGHTS),
  rule: DECISION_RULES,
};

function requireCarriable(where: string, { lead, levelLimit }: Choices): void {
  if (lead === undefined || lead === "middle") {
    const need = 'right or left, or carry: "mirror"';
    refuse("inconsistent", where, "lead", lead, need);
  }
  if (levelLimit !== undefined) {
    const need = 'carry: "mirror"';
    refuse("inconsistent", where, "levelLimit", levelLimit, need);
  }
}

/** Refuses pins twice on a dot or across the midline; their order along the brow shows once it is solved. */
function requireUsablePins(where: string, pins: readonly Pin[]): void {
  if (!isList(pins)) refuse("out-of-range", where, "pins", pins, "a list");
  pins.forEach((pin, index) => {
    const field = `pins[${index}]`;
    requireWord(where, `${field}.side`, pin.side, SIDES);
    requireWord(where, `${field}.dot`, pin.dot, DOT_NAMES);
    requireFinitePoint(where, `${field}.at`, pin.at);
    const earlier = pins.findIndex(({ side, dot }) => side === pin.side && dot === pin.dot);
    if (earlier !== index) {
      const need = `another dot than pins[${earlier}]`;
      refuse("contradicting-pins", where, field, pin.at, need);
    }
    const outward = pin.side === "left" ? pin.at[0] : -pin.at[0];
    if (outward <= 0) {
      const need = `an x ${pin.side === "left" ? "above" : "below"} 0`;
      refuse("contradicting-pins", where, `${field}.at`, pin.at, need);
    }
  });
}

/** Without narrowing: the types know that it is one. */
function isList(value: unknown): boolean {
  return Array.isArray(value);
}
