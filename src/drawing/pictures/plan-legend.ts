import { type BrowPlan, type DrawnCheck, planOverlap } from "../../mapping/index.js";
import type { OutlineOverlap } from "../../proportions/index.js";
import { correctionEntries, isUndecided } from "../layers/check-layer.js";
import type { LegendEntry } from "./legend.js";
import { MARKERS } from "../canvas/palette.js";
import { pinEntries } from "../layers/pins-layer.js";
import type { AlsoShown } from "../layers/plan-layers.js";
import { CONVENTION_WORDS, decimal } from "../canvas/words.js";

/** What the strokes and dots of a plan's picture mean, the plan's own conventions included. */
export function planLegend(
  plan: BrowPlan,
  { overlap = false, check }: AlsoShown = {},
): readonly LegendEntry[] {
  const { choices, face } = plan;
  return [
    { text: "planned brow", role: "planned" },
    { text: "brow as it grows", role: "natural" },
    ...(overlap ? overlapEntries(plan) : []),
    { text: "midline", role: "midline" },
    { text: `start: ${CONVENTION_WORDS[choices.start]}`, role: "start" },
    { text: `arch: ${archWords(choices)}`, role: "arch" },
    { text: `tail: ${CONVENTION_WORDS["alare-through-exocanthion"]}`, role: "tail" },
    { text: "front and tail, straight by ruler", role: "ruler" },
    { text: "landmark", role: "landmark", marker: MARKERS.landmark },
    ...((face.standIns?.length ?? 0) > 0
      ? [{ text: "landmark, approximated", role: "landmark", marker: "circle" } as const]
      : []),
    ...pinEntries(plan),
    ...(check === undefined ? [] : checkEntries(check)),
  ];
}

/** A guide is drawn where it runs, wherever the dot was pinned; other arches are where their dot is. */
function archWords({ arch, pins }: BrowPlan["choices"]): string {
  const isAtDot = arch === "natural" || arch === "brow-length-share";
  return isAtDot && pins.some(({ dot }) => dot === "upperArch")
    ? "where it is pinned"
    : CONVENTION_WORDS[arch];
}

function overlapEntries(plan: BrowPlan): readonly LegendEntry[] {
  const areas = planOverlap(plan);
  const said = (of: (overlap: OutlineOverlap) => number): string =>
    (["right", "left"] as const)
      .map((side) => {
        const overlap = areas[side];
        return overlap === undefined
          ? `${side} not known, without a lower border`
          : `${side} ${decimal(of(overlap), 0)}`;
      })
      .join(", ");
  return [
    {
      text: `hair outside the plan, to be removed, mm²: ${said((one) => one.hairOutside)}`,
      role: "remove",
    },
    {
      text: `skin inside the plan, to be filled, mm²: ${said((one) => one.skinInside)}`,
      role: "fill",
    },
  ];
}

/** What the dots of a check mean, and every correction. */
export function checkEntries(check: DrawnCheck): readonly LegendEntry[] {
  const { dots, outcome } = check;
  return [
    { text: `dot as drawn; the check says: ${outcome}`, role: "correction", marker: MARKERS.drawn },
    ...(dots.some(({ correction }) => correction !== undefined)
      ? [{ text: "from where it was drawn to its plan", role: "correction" } as const]
      : []),
    ...(dots.some((dot) => dot.correction === undefined && isUndecided(dot))
      ? [{ text: "within or outside of the tolerance: not yet known", key: "?" }]
      : []),
    ...correctionEntries(check),
  ];
}
