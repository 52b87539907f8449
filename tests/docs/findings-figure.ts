import { type Choices, drawPlan, mm, planBrows } from "brow-geometry";
import { clientOfTheGuides } from "./client-of-the-guides.js";
import { figure } from "./figure.js";

/** One plan to draw as it is, and three that no artist would. */
const CHOSEN: readonly Choices[] = [
  {},
  { arch: "alare-through-lateral-limbus", tailHeight: "level-with-lower-start", keepHair: mm(0) },
  { thickness: { start: mm(5), body: mm(7.5), arch: mm(8) } },
  { thickness: { start: mm(11), body: mm(11), arch: mm(10) } },
];

/** Good and bad plans of the client of the guides, each with what it found in its own shape. */
export function findingsFigure(): string {
  const panels = CHOSEN.map((choices) => {
    const plan = planBrows(clientOfTheGuides(), choices);
    const codes = plan.cautions.flatMap(({ code, at }) => (at === undefined ? [] : [code]));
    const caption = codes.length === 0 ? "nothing found" : [...new Set(codes)].join(", ");
    return { caption, drawing: drawPlan(plan, { title: caption }) };
  });
  return figure("What a plan finds in its own shape", 2, panels);
}
