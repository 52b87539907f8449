import { type BrowPlan, type DrawnCheck, planOverlap } from "../../mapping/index.js";
import { type Point, type Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { say } from "../../words/index.js";
import { fill } from "../../words/internal.js";
import { correctionEntries } from "../layers/check-layer.js";
import { pinEntries } from "../layers/pins-layer.js";
import type { AlsoShown } from "../layers/plan-layers.js";
import { decimal, inMillimetres } from "../canvas/figures.js";
import { DESCRIPTION } from "./words.js";

export function describePlan(
  plan: BrowPlan,
  unplaced: readonly string[],
  shown: AlsoShown = {},
): string {
  const cautions = plan.cautions.map((caution) => say(caution));
  return [
    DESCRIPTION.face,
    describeSide(plan, "right"),
    describeSide(plan, "left"),
    ...pinEntries(plan).map(({ key, text }) => `${key}: ${text}`),
    ...(shown.overlap === true ? describeOverlap(plan) : []),
    ...(shown.check === undefined ? [] : describeCheck(shown.check)),
    ...(unplaced.length === 0 ? [] : [fill(DESCRIPTION.unplaced, { labels: unplaced.join("; ") })]),
    ...cautions,
  ].join(" ");
}

function describeOverlap(plan: BrowPlan): readonly string[] {
  const areas = planOverlap(plan);
  return SIDES.flatMap((side) => {
    const overlap = areas[side];
    if (overlap === undefined) return [];
    const { hairOutside, skinInside } = overlap;
    return [
      fill(DESCRIPTION.overlap, {
        side,
        hair: decimal(hairOutside, 0),
        skin: decimal(skinInside, 0),
      }),
    ];
  });
}

function describeCheck(check: DrawnCheck): readonly string[] {
  const corrections = correctionEntries(check).map(({ key, text }) => `; ${key}, ${text}`);
  const said = { outcome: check.outcome, corrections: corrections.join("") };
  return [fill(DESCRIPTION.check, said)];
}

function describeSide({ dots, measures }: BrowPlan, side: Side): string {
  const { upperStart, upperArch, tailEnd } = dots[side];
  const fromMidline = ([x]: Point<"mm">): string => inMillimetres(Math.abs(x));
  const places = {
    start: fromMidline(upperStart),
    arch: fromMidline(upperArch),
    tail: fromMidline(tailEnd),
  };
  const { front, tail: tailLength } = measures[side];
  const lengths = [
    ...(front === undefined
      ? []
      : [fill(DESCRIPTION.front, { length: inMillimetres(front.value) })]),
    ...(tailLength === undefined
      ? []
      : [fill(DESCRIPTION.tail, { length: inMillimetres(tailLength.value) })]),
  ];
  return fill(DESCRIPTION[side], { ...places, lengths: lengths.join("") });
}
