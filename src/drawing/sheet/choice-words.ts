import {
  type ArchConvention,
  DOTS,
  type GuideConvention,
  MEASURES,
} from "../../landmarks/index.js";
import { conventionWords, isConvention } from "../../landmarks/internal.js";
import { type Choices, type PlannedChoice } from "../../mapping/index.js";
import {
  CARRY_WORDS,
  LEAD_WORDS,
  LEVELS_WORDS,
  SHAPE_WORDS,
  SHARE_WORDS,
  TAIL_HEIGHT_WORDS,
} from "../../mapping/internal.js";
import { STATIONS } from "../../proportions/internal.js";
import { type Decision, eachSide, type Side } from "../../units/index.js";
import { keysOf } from "../../units/internal.js";
import { decimal, inMillimetres, signedMillimetres } from "../canvas/words.js";

/** What was chosen, in the order in which it is decided; what was left open is not said. */
export function choiceTitle(choices: Choices): string {
  const { lead = "middle", carry, levels, start, arch, tail, tailHeight, thickness } = choices;
  const { levelLimit, noseBent, shape = {}, pins = [] } = choices;
  const parts = [
    inWords(LEAD_WORDS, lead),
    carry && inWords(CARRY_WORDS, carry),
    levels && inWords(LEVELS_WORDS, levels),
    levelLimit && `heights at most ${inMillimetres(levelLimit)} off the hair`,
    noseBent !== undefined && `nose taken as ${noseBent ? "bent" : "straight"}`,
    start && `start ${rule(start)}`,
    arch && `arch ${rule(arch)}`,
    ...keysOf(SHARE_WORDS).map(
      (name) => choices[name] && `${SHARE_WORDS[name]} ${figure(choices[name], 2)}`,
    ),
    tail && `tail ${rule(tail)}`,
    tailHeight && `tail ${inWords(TAIL_HEIGHT_WORDS, tailHeight)}`,
    thickness &&
      `${keysOf(STATIONS)
        .map((at) => figure(thickness[at], 1))
        .join(", ")} mm thick`,
    ...keysOf(SHAPE_WORDS).map(
      (name) => shape[name] !== undefined && `${SHAPE_WORDS[name]} ${figure(shape[name], 2)}`,
    ),
    pins.length > 0 && `${pins.length} dot${pins.length === 1 ? "" : "s"} pinned`,
  ];
  return parts.filter(Boolean).join("; ");
}

/** What cannot be planned may be no word of the table. */
function inWords<Word extends string>(
  table: { readonly [Name in Word]: string },
  word: Word,
): string {
  return Object.hasOwn(table, word) ? table[word] : word;
}

function rule(convention: GuideConvention | ArchConvention): string {
  return isConvention(convention) ? conventionWords(convention) : convention;
}

/** What cannot be planned may be no number at all. */
function figure(value: unknown, decimals: number): string {
  return typeof value === "number" ? value.toFixed(decimals) : String(value);
}

/** What a choice would do, a line for each thing weighed. */
export function choiceFigures(row: PlannedChoice): readonly (readonly [string, string])[] {
  const { greatestMove: most, meanMove, areas, frontShare, lidRoom } = row;
  const areaOf = (area: number | undefined): string =>
    area === undefined ? "not known" : `${decimal(area, 0)} mm²`;
  return [
    ["mean move", inMillimetres(meanMove)],
    ["greatest move", `${inMillimetres(most.by)}, ${most.side} ${DOTS[most.dot].words}`],
    ["hair to remove", areaOf(areas?.hairToRemove)],
    ["skin to fill", areaOf(areas?.skinToFill)],
    ["sides apart above tolerance", apart(row)],
    ["room over the lid", bothSides((side) => signedMillimetres(lidRoom[side]))],
    ["front share", bothSides((side) => shareWords(frontShare[side]))],
  ];
}

function apart({ comparison }: PlannedChoice): string {
  const measures = comparison.differences
    .filter(({ decision }) => decision?.outcome === "outside")
    .map(({ measure }) => MEASURES[measure].words);
  return measures.length === 0 ? "in nothing" : measures.join(", ");
}

function shareWords({ value, decision }: { value: number; decision?: Decision }): string {
  return decision === undefined ? value.toFixed(2) : `${value.toFixed(2)} ${decision.outcome}`;
}

function bothSides(words: (side: Side) => string): string {
  const { right, left } = eachSide(words);
  if (right === left) return `${right}, both sides`;
  return `${unbroken(`right ${right}`)}, ${unbroken(`left ${left}`)}`;
}

function unbroken(text: string): string {
  return text.replaceAll(" ", "\u00A0");
}
