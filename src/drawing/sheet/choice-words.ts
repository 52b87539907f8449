import type { Choices, PlannableFace, PlannedChoice, WeighedChoice } from "../../mapping/index.js";
import { CHOSEN_SHARES, defaultLead, isHair } from "../../mapping/internal.js";
import { eachSide, type Note, type Side } from "../../units/index.js";
import { keysOf, SIDES } from "../../units/internal.js";
import { say, type Words } from "../../words/index.js";
import { decimal, label, lengthSign, shareFigure } from "../../words/internal.js";
import { type Figure, lengths, shownArea, shownLength, signedLength } from "../canvas/figures.js";

/** The number of a choice with what was chosen, which brow leads among it. */
export function numberedTitle(
  face: PlannableFace,
  choices: Choices,
  number: number,
  words: Words,
): string {
  const chosen = isSeen(face) ? choices : followingNoHair(choices);
  const title = choiceTitle({ lead: defaultLead(face), ...chosen }, words);
  return `${decimal(number, 0, words)}. ${title}`;
}

/** Why a choice is ruled out, or has no solution; empty for one that is usable. */
export function verdictOf({ reasons }: WeighedChoice): readonly Note[] {
  return reasons.filter(({ code }) => code === "lid-room-closes" || code === "no-solution");
}

/** Whether anything is known of the hair of a face. */
export function isSeen(face: PlannableFace): boolean {
  return SIDES.some((side) => isHair(face, side));
}

/** Choices without rules that follow hair: a plan leaves them where none is known. */
function followingNoHair({ start, arch, tail, ...choices }: Choices): Choices {
  return {
    ...choices,
    ...(start === undefined || start === "natural" ? {} : { start }),
    ...(arch === undefined || arch === "natural" ? {} : { arch }),
    ...(tail === undefined || tail === "natural" ? {} : { tail }),
  };
}

/** What was chosen, in the order in which it is decided; what was left open is not said. */
export function choiceTitle(choices: Choices, words: Words): string {
  const { lead, carry, levels, start, arch, tail, tailHeight, thickness } = choices;
  const { levelLimit, noseBent, shape = {}, pins } = choices;
  const { terms } = words;
  const shapes = keysOf(terms.shapes).map((name) =>
    name === "softFront" && typeof shape[name] === "number"
      ? `${terms.shapes[name]} ${shownLength(shape[name], words)}`
      : named(terms.shapes[name], shape[name], words),
  );
  const parts = [
    lead && inWords(terms.leads, lead),
    carry && inWords(terms.carries, carry),
    levels && inWords(terms.heightsOf, levels),
    levelLimit && label(words, "chosen-limit", { limit: shownLength(levelLimit, words) }),
    noseBent !== undefined && label(words, noseBent ? "chosen-bent" : "chosen-straight"),
    start && label(words, "chosen-start", { rule: start }),
    arch && label(words, "chosen-arch", { rule: arch }),
    ...keysOf(CHOSEN_SHARES).map((name) =>
      named(terms.choices[name], choices[name] || undefined, words),
    ),
    tail && label(words, "chosen-tail", { rule: tail }),
    tailHeight && label(words, "chosen-tail-height", { height: tailHeight }),
    thickness &&
      label(words, "chosen-thickness", {
        start: figure(thickness.start, lengths(words)),
        body: figure(thickness.body, lengths(words)),
        arch: figure(thickness.arch, lengths(words)),
        unit: lengthSign(words),
      }),
    ...shapes,
    pins !== undefined && pins.length > 0 && label(words, "chosen-pins", { count: pins.length }),
  ];
  return parts.filter(Boolean).join("; ");
}

function named(name: string, value: unknown, words: Words): string {
  return value === undefined
    ? ""
    : `${name} ${figure(value, (share) => shareFigure(share, words))}`;
}

/** What cannot be planned may be no word of the table. */
function inWords<Word extends string>(
  table: { readonly [Name in Word]: string },
  word: Word,
): string {
  return Object.hasOwn(table, word) ? table[word] : word;
}

/** What cannot be planned may be no number at all. */
function figure(value: unknown, written: Figure): string {
  return typeof value === "number" ? written(value) : String(value);
}

/** @param isSeen whether anything is known of the hair from which dots move */
export function choiceFigures(
  row: PlannedChoice,
  isSeen: boolean,
  words: Words,
): readonly (readonly [string, string])[] {
  const { greatestMove, meanMove, areas, frontShare, lidRoom, reasons } = row;
  // A share that nobody asked for is measured, not decided.
  const isAsked = reasons.some(({ code }) => code === "front-share");
  const shareOf = (side: Side): string => {
    const { value, decision } = frontShare[side];
    const share = shareFigure(value, words);
    return isAsked && decision ? `${share} ${words.terms.outcomes[decision.outcome]}` : share;
  };
  const unknown = label(words, "value-unknown");
  const most = greatestMove;
  const where = { code: "dot-of-side", values: { side: most.side, dot: most.dot } };
  const areaOf = (area: number | undefined): string =>
    area === undefined ? unknown : shownArea(area, words);
  const roomOf = (room: number | undefined): string =>
    room === undefined ? unknown : signedLength(room, words);
  return [
    [label(words, "figure-mean"), isSeen ? shownLength(meanMove, words) : unknown],
    [
      label(words, "figure-greatest"),
      isSeen ? `${shownLength(most.by, words)}, ${say(where, words)}` : unknown,
    ],
    [label(words, "figure-hair"), areaOf(areas?.hairToRemove)],
    [label(words, "figure-skin"), areaOf(areas?.skinToFill)],
    [label(words, "figure-apart"), apart(row, words)],
    [label(words, "figure-lid"), bothSides(words, (side) => roomOf(lidRoom[side]))],
    [label(words, "figure-share"), bothSides(words, shareOf)],
  ];
}

function apart({ comparison }: PlannedChoice, words: Words): string {
  const measures = comparison.differences
    .filter(({ decision }) => decision?.outcome === "outside")
    .map(({ measure }) => words.terms.measures[measure]);
  return measures.length === 0 ? label(words, "value-nothing") : measures.join(words.separator);
}

function bothSides(words: Words, figure: (side: Side) => string): string {
  const { right, left } = eachSide(figure);
  if (right === left) return label(words, "value-both", { value: right });
  return SIDES.map((side) => unbroken(label(words, "of-side", { side, what: figure(side) }))).join(
    words.separator,
  );
}

function unbroken(text: string): string {
  return text.replaceAll(" ", "\u00A0");
}
