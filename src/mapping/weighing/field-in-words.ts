import { DOTS } from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import { STATIONS } from "../../proportions/internal.js";
import { fill, keysOf, SIDES } from "../../units/internal.js";
import type { Choices } from "../choices/choices.js";
import { FIELD_WORDS, PIN_WORDS, SHAPE_WORDS, THICKNESS_WORDS } from "../choices/words.js";

/** A field that stands in the way of a plan, as an artist calls it; as it is, where that is no choice. */
export function fieldInWords(field: string, { pins }: Choices): string {
  return new Map([...choiceFields(), ...pinFields(pins)]).get(field) ?? field;
}

type Field = readonly [path: string, words: string];

function choiceFields(): readonly Field[] {
  return [
    ...Object.entries(FIELD_WORDS),
    ...keysOf(SHAPE_WORDS).map((name): Field => [`shape.${name}`, SHAPE_WORDS[name]]),
    ...keysOf(STATIONS).map((station): Field => [
      `thickness.${station}`,
      fill(THICKNESS_WORDS, { station }),
    ]),
    ...DOT_NAMES.flatMap((dot) =>
      SIDES.map((side): Field => [`${side} ${dot}`, `${side} ${DOTS[dot].words}`]),
    ),
  ];
}

/** Pins by their number; what was given may be no list. */
function pinFields(pins: unknown): readonly Field[] {
  if (!Array.isArray(pins)) return [];
  return pins.flatMap((_, index) =>
    ["", ".at", ".side", ".dot"].map((part): Field => [
      `pins[${index}]${part}`,
      fill(PIN_WORDS, { number: index + 1 }),
    ]),
  );
}
