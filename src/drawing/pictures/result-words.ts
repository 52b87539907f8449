import type { ResultAreas, StageResult } from "../../mapping/index.js";
import type { Displacement } from "../../symmetry/index.js";
import type { Note, Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { say, type Words } from "../../words/index.js";
import {
  areaFigure,
  areaSign,
  decimal,
  isolatedNumber,
  label,
  lengthSign,
  quantity,
} from "../../words/internal.js";
import { changeWithUncertainty, lengths } from "../canvas/figures.js";

/** What a touch-up would fill and what else there is to say, by the capture of which it holds. */
export function saidOf(result: StageResult, words: Words): readonly string[] {
  return notesOf(result).map((note) => {
    const what = say(note, words);
    return note.code === "touch-up-practice"
      ? what
      : label(words, "said-of-capture", { name: result.name, what });
  });
}

/** What is said of one brow, beneath it: how much is covered, lost and spread, and how far its ends lie off. */
export function captionOf({ brows }: StageResult, side: Side, words: Words): readonly string[] {
  const { areas, start, tailEnd } = brows[side];
  const figures = areas && figuresOf(areas, words);
  const off = ({ outward, up }: Displacement) => ({
    outward: changeWithUncertainty(outward, lengths(words), words),
    up: changeWithUncertainty(up, lengths(words), words),
    unit: lengthSign(words),
  });
  return [
    ...(figures === undefined
      ? []
      : [label(words, "result-shared", figures), label(words, "result-lost-spread", figures)]),
    label(words, "result-start", off(start)),
    label(words, "result-tail", off(tailEnd)),
  ];
}

/** A strip of results for readers who do not see it. */
export function describeResults(
  results: readonly StageResult[],
  unplaced: readonly string[],
  words: Words,
): string {
  return [
    label(words, "described-result"),
    ...results.map((result) => describeOne(result, words)),
    ...(unplaced.length === 0
      ? []
      : [label(words, "described-unplaced", { labels: unplaced.join("; ") })]),
  ].join(" ");
}

function describeOne(result: StageResult, words: Words): string {
  const { brows, name } = result;
  const [right = "", left = ""] = SIDES.map((side) => {
    const { areas } = brows[side];
    if (areas === undefined) return label(words, "value-unknown");
    const figures = figuresOf(areas, words);
    return [
      label(words, "result-shared", figures),
      label(words, "result-lost-spread", figures),
    ].join(words.separator);
  });
  const described = label(words, "described-capture", { name, right, left });
  return [described, ...notesOf(result).map((note) => say(note, words))].join(" ");
}

function notesOf({ touchUps, notes }: StageResult): readonly Note[] {
  return [...touchUps.map(({ note }) => note), ...notes];
}

function figuresOf(
  { planned, shared, lost, spread }: ResultAreas,
  words: Words,
): { readonly [Name in "share" | "lost" | "spread"]: string } {
  const area = ({ value, u }: ResultAreas["lost"]): string =>
    quantity(
      isolatedNumber(`${areaFigure(value, words)} ± ${areaFigure(u, words)}`, words),
      areaSign(words),
      words,
    );
  return {
    share: decimal((100 * shared.value) / planned, 0, words),
    lost: area(lost),
    spread: area(spread),
  };
}
