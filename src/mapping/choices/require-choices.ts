import { DOT_NAMES, TAIL_CONVENTIONS } from "../../landmarks/internal.js";
import { ARCH_CONVENTIONS, START_CONVENTIONS } from "../../landmarks/index.js";
import { requireShape, SHAPES, STATIONS } from "../../proportions/internal.js";
import {
  DECISION_RULES,
  keysOf,
  refuse,
  requireFinitePoint,
  requireFlag,
  requireNames,
  requireObject,
  requirePositive,
  requireWithin,
  requireWord,
  SIDES,
} from "../../units/internal.js";
import { CARRIES, CHOSEN_SHARES, LEADS, LEVELS, MOST_KEPT, TAIL_HEIGHTS } from "./choice-tables.js";
import type { Choices, Pin } from "./choices.js";

export function requireChoices(choices: Choices): void {
  requireNames("choices", choices, [
    ...keysOf(WORDS),
    ...keysOf(CHOSEN_SHARES),
    "levelLimit",
    "keepHair",
    "thickness",
    "shape",
    "noseBent",
    "pins",
    "tolerances",
    "declared",
  ]);
  const { levelLimit, thickness, shape = {}, declared = {}, pins = [] } = choices;
  for (const field of keysOf(WORDS)) {
    requireWord(field, choices[field], WORDS[field]);
  }
  for (const field of keysOf(CHOSEN_SHARES)) {
    const [least, most] = CHOSEN_SHARES[field];
    requireWithin(field, choices[field] ?? least, least, most);
  }
  requireNames("shape", shape, keysOf(SHAPES));
  requireShape("shape", shape);
  if (thickness) {
    requireNames("thickness", thickness, keysOf(STATIONS));
    for (const station of keysOf(STATIONS)) {
      requirePositive(`thickness.${station}`, thickness[station]);
    }
  }
  requireFlag("noseBent", choices.noseBent);
  requireNames("declared", declared, ["upright", "relaxed"]);
  requireFlag("declared.upright", declared.upright);
  requireFlag("declared.relaxed", declared.relaxed);
  if (choices.tolerances !== undefined) {
    const named = choices.tolerances.tolerances;
    requireObject("tolerances.tolerances", named, "limits by name");
  }
  if (levelLimit !== undefined) requirePositive("levelLimit", levelLimit);
  requireWithin("keepHair", choices.keepHair ?? 0, 0, MOST_KEPT);
  if (choices.carry === "measure") requireCarriable(choices);
  requireUsablePins(pins);
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

function requireCarriable({ lead, levelLimit }: Choices): void {
  if (lead === undefined || lead === "middle") {
    const need = 'right or left, or carry: "mirror"';
    refuse("inconsistent", "lead", lead, need);
  }
  if (levelLimit !== undefined) {
    const need = 'carry: "mirror"';
    refuse("inconsistent", "levelLimit", levelLimit, need);
  }
}

/** Refuses pins twice on a dot or across the midline; their order along the brow shows once it is solved. */
function requireUsablePins(pins: readonly Pin[]): void {
  if (!isList(pins)) refuse("out-of-range", "pins", pins, "a list");
  pins.forEach((pin, index) => {
    const field = `pins[${index}]`;
    requireWord(`${field}.side`, pin.side, SIDES);
    requireWord(`${field}.dot`, pin.dot, DOT_NAMES);
    requireFinitePoint(`${field}.at`, pin.at);
    const earlier = pins.findIndex(({ side, dot }) => side === pin.side && dot === pin.dot);
    if (earlier !== index) {
      const need = `another dot than pins[${earlier}]`;
      refuse("contradicting-pins", field, pin.at, need);
    }
    const outward = pin.side === "left" ? pin.at[0] : -pin.at[0];
    if (outward <= 0) {
      const need = `an x ${pin.side === "left" ? "above" : "below"} 0`;
      refuse("contradicting-pins", `${field}.at`, pin.at, need);
    }
  });
}

/** Without narrowing: the types know that it is one. */
function isList(value: unknown): boolean {
  return Array.isArray(value);
}
