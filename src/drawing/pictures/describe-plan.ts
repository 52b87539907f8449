import { type BrowPlan, cautionsToSay, type DrawnCheck, planOverlap } from "../../mapping/index.js";
import { type Point, type Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { say, type Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { correctionEntries } from "../layers/check-layer.js";
import { pinEntries } from "../layers/pins-layer.js";
import type { AlsoShown } from "../layers/plan-layers.js";
import { shownArea, shownLength } from "../canvas/figures.js";

export function describePlan(
  plan: BrowPlan,
  unplaced: readonly string[],
  words: Words,
  shown: AlsoShown = {},
): string {
  const cautions = cautionsToSay(plan).map((caution) => say(caution, words));
  return [
    label(words, "described-face"),
    describeSide(plan, "right", words),
    describeSide(plan, "left", words),
    ...pinEntries(plan, words).map(({ key, text }) => `${key}: ${text}`),
    ...(shown.overlap === true ? describeOverlap(plan, words) : []),
    ...(shown.check === undefined ? [] : describeCheck(shown.check, words)),
    ...(unplaced.length === 0
      ? []
      : [label(words, "described-unplaced", { labels: unplaced.join("; ") })]),
    ...cautions,
  ].join(" ");
}

function describeOverlap(plan: BrowPlan, words: Words): readonly string[] {
  const areas = planOverlap(plan);
  return SIDES.flatMap((side) => {
    const overlap = areas[side];
    if (overlap === undefined) return [];
    const { hairOutside, skinInside } = overlap;
    return [
      label(words, "described-overlap", {
        side,
        hair: shownArea(hairOutside, words),
        skin: shownArea(skinInside, words),
      }),
    ];
  });
}

function describeCheck(check: DrawnCheck, words: Words): readonly string[] {
  const corrections = correctionEntries(check, words).map(({ key, text }) => `; ${key}, ${text}`);
  const said = { outcome: check.outcome, corrections: corrections.join("") };
  return [label(words, "described-check", said)];
}

function describeSide({ dots, measures }: BrowPlan, side: Side, words: Words): string {
  const { upperStart, upperArch, tailEnd } = dots[side];
  const fromMidline = ([x]: Point<"mm">): string => shownLength(Math.abs(x), words);
  const places = {
    start: fromMidline(upperStart),
    arch: fromMidline(upperArch),
    tail: fromMidline(tailEnd),
  };
  const { front, tail: tailLength } = measures[side];
  const lengths = [
    ...(front === undefined
      ? []
      : [label(words, "described-front", { length: shownLength(front.value, words) })]),
    ...(tailLength === undefined
      ? []
      : [label(words, "described-tail", { length: shownLength(tailLength.value, words) })]),
  ];
  return label(words, `described-${side}`, { ...places, lengths: lengths.join("") });
}
