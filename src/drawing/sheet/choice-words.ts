import {
  type ArchConvention,
  DOTS,
  type GuideConvention,
  MEASURES,
} from "../../landmarks/index.js";
import { conventionWords, isConvention } from "../../landmarks/internal.js";
import { type Choices, type PlannedChoice } from "../../mapping/index.js";
import { CHOSEN_SHARES } from "../../mapping/internal.js";
import { STATIONS } from "../../proportions/internal.js";
import { type Decision, eachSide, type Side } from "../../units/index.js";
import { keysOf } from "../../units/internal.js";
import { ENGLISH } from "../../words/index.js";
import { fill } from "../../words/internal.js";
import { decimal, inMillimetres, signedMillimetres } from "../canvas/figures.js";
import { CARRY_WORDS, CHOSEN, FIGURES, LEAD_WORDS, LEVELS_WORDS, VALUES } from "./words.js";

/** What was chosen, in the order in which it is decided; what was left open is not said. */
export function choiceTitle(choices: Choices): string {
  const { lead = "middle", carry, levels, start, arch, tail, tailHeight, thickness } = choices;
  const { levelLimit, noseBent, shape = {}, pins } = choices;
  const { terms } = ENGLISH;
  const shapes = keysOf(terms.shapes).map((name) => named(terms.shapes[name], shape[name]));
  const parts = [
    inWords(LEAD_WORDS, lead),
    carry && inWords(CARRY_WORDS, carry),
    levels && inWords(LEVELS_WORDS, levels),
    levelLimit && fill(CHOSEN.limit, { limit: inMillimetres(levelLimit) }),
    noseBent !== undefined && (noseBent ? CHOSEN.bent : CHOSEN.straight),
    start && fill(CHOSEN.start, { rule: ruleWords(start) }),
    arch && fill(CHOSEN.arch, { rule: ruleWords(arch) }),
    ...keysOf(CHOSEN_SHARES).map((name) => named(terms.choices[name], choices[name] || undefined)),
    tail && fill(CHOSEN.tail, { rule: ruleWords(tail) }),
    tailHeight && fill(CHOSEN.tail, { rule: inWords(terms.tailHeights, tailHeight) }),
    thickness &&
      fill(CHOSEN.thickness, {
        thickness: keysOf(STATIONS)
          .map((at) => figure(thickness[at], 1))
          .join(", "),
      }),
    ...shapes,
    pins?.length === 1 && CHOSEN.pin,
    pins !== undefined && pins.length > 1 && fill(CHOSEN.pins, { count: pins.length }),
  ];
  return parts.filter(Boolean).join("; ");
}

function named(name: string, value: unknown): string {
  return value === undefined ? "" : `${name} ${figure(value, 2)}`;
}

/** What cannot be planned may be no word of the table. */
function inWords<Word extends string>(
  table: { readonly [Name in Word]: string },
  word: Word,
): string {
  return Object.hasOwn(table, word) ? table[word] : word;
}

function ruleWords(convention: GuideConvention | ArchConvention): string {
  return isConvention(convention) ? conventionWords(convention) : convention;
}

/** What cannot be planned may be no number at all. */
function figure(value: unknown, decimals: number): string {
  return typeof value === "number" ? value.toFixed(decimals) : String(value);
}

export function choiceFigures(row: PlannedChoice): readonly (readonly [string, string])[] {
  const { greatestMove: most, meanMove, areas, frontShare, lidRoom } = row;
  const { unknown } = VALUES;
  const areaOf = (area: number | undefined): string =>
    area === undefined ? unknown : `${decimal(area, 0)} mm²`;
  const roomOf = (room: number | undefined): string =>
    room === undefined ? unknown : signedMillimetres(room);
  return [
    [FIGURES.mean, inMillimetres(meanMove)],
    [FIGURES.greatest, `${inMillimetres(most.by)}, ${most.side} ${DOTS[most.dot].words}`],
    [FIGURES.hair, areaOf(areas?.hairToRemove)],
    [FIGURES.skin, areaOf(areas?.skinToFill)],
    [FIGURES.apart, apart(row)],
    [FIGURES.lid, bothSides((side) => roomOf(lidRoom[side]))],
    [FIGURES.share, bothSides((side) => shareWords(frontShare[side]))],
  ];
}

function apart({ comparison }: PlannedChoice): string {
  const measures = comparison.differences
    .filter(({ decision }) => decision?.outcome === "outside")
    .map(({ measure }) => MEASURES[measure].words);
  return measures.length === 0 ? VALUES.nothing : measures.join(", ");
}

function shareWords({ value, decision }: { value: number; decision?: Decision }): string {
  return decision === undefined ? value.toFixed(2) : `${value.toFixed(2)} ${decision.outcome}`;
}

function bothSides(words: (side: Side) => string): string {
  const { right, left } = eachSide(words);
  if (right === left) return fill(VALUES.both, { value: right });
  return `${unbroken(`right ${right}`)}, ${unbroken(`left ${left}`)}`;
}

function unbroken(text: string): string {
  return text.replaceAll(" ", "\u00A0");
}
