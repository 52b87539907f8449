import type { BrowPlan } from "../mapping/index.js";
import type { Side } from "../units/index.js";
import { inMillimetres } from "./words.js";

/** A plan in sentences, for readers who do not see its picture. */
export function describePlan(plan: BrowPlan, unplaced: readonly string[]): string {
  const cautions = plan.cautions.map(({ text }) => text);
  return [
    "A face from the front; right and left are the client’s own. Lengths are by ruler on the skin.",
    describeSide(plan, "right"),
    describeSide(plan, "left"),
    ...(unplaced.length === 0 ? [] : [`Not written in the picture: ${unplaced.join("; ")}.`]),
    ...cautions,
  ].join(" ");
}

function describeSide({ marks, measures }: BrowPlan, side: Side): string {
  const { upperStart, upperArch, tailEnd } = marks[side];
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
