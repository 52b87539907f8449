import { type BrowPlan, type DrawnCheck, planOverlap } from "../../mapping/index.js";
import type { Side } from "../../units/index.js";
import { correctionEntries } from "../layers/check-layer.js";
import { pinEntries } from "../layers/pins-layer.js";
import type { AlsoShown } from "../layers/plan-layers.js";
import { decimal, inMillimetres } from "../canvas/words.js";

/** A plan in sentences, for readers who do not see its picture. */
export function describePlan(
  plan: BrowPlan,
  unplaced: readonly string[],
  shown: AlsoShown = {},
): string {
  const cautions = plan.cautions.map(({ text }) => text);
  return [
    "A face from the front; right and left are the client’s own. Lengths are by ruler on the skin.",
    describeSide(plan, "right"),
    describeSide(plan, "left"),
    ...pinEntries(plan).map(({ key, text }) => `${key}: ${text}`),
    ...(shown.overlap === true ? describeOverlap(plan) : []),
    ...(shown.check === undefined ? [] : describeCheck(shown.check)),
    ...(unplaced.length === 0 ? [] : [`Not written in the picture: ${unplaced.join("; ")}.`]),
    ...cautions,
  ].join(" ");
}

function describeOverlap(plan: BrowPlan): readonly string[] {
  const areas = planOverlap(plan);
  return (["right", "left"] as const).flatMap((side) => {
    const overlap = areas[side];
    if (overlap === undefined) return [];
    const { hairOutside, skinInside } = overlap;
    return [
      `On the ${side}, ${decimal(hairOutside, 0)} mm² of hair lie outside the plan and ${decimal(skinInside, 0)} mm² of skin inside it.`,
    ];
  });
}

function describeCheck(check: DrawnCheck): readonly string[] {
  const corrections = correctionEntries(check).map(({ key, text }) => `${key}, ${text}`);
  return [
    `The check of what was drawn says: ${check.outcome}${corrections.map((text) => `; ${text}`).join("")}.`,
  ];
}

function describeSide({ dots, measures }: BrowPlan, side: Side): string {
  const { upperStart, upperArch, tailEnd } = dots[side];
  const [start, arch, tail] = [upperStart, upperArch, tailEnd].map(([x]) =>
    inMillimetres(Math.abs(x)),
  );
  const { front, tail: tailLength } = measures[side];
  const lengths = [
    ...(front === undefined ? [] : [`front ${inMillimetres(front.value)}`]),
    ...(tailLength === undefined ? [] : [`tail ${inMillimetres(tailLength.value)}`]),
  ];
  const name = side === "right" ? "Right" : "Left";
  return `${name} brow as planned: start ${start}, arch ${arch} and tail end ${tail} from the midline${lengths.map((text) => `, ${text}`).join("")}.`;
}
