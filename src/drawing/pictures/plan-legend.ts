import { conventionWords, isGuide } from "../../landmarks/internal.js";
import { fill, SIDES } from "../../units/internal.js";
import { type BrowPlan, type DrawnCheck, planOverlap } from "../../mapping/index.js";
import type { OutlineOverlap } from "../../proportions/index.js";
import { correctionEntries, isUndecided } from "../layers/check-layer.js";
import type { LegendEntry } from "./legend.js";
import { MARKERS } from "../canvas/palette.js";
import { pinEntries } from "../layers/pins-layer.js";
import type { AlsoShown } from "../layers/plan-layers.js";
import { decimal } from "../canvas/figures.js";
import { LEGEND } from "./words.js";

/** What the strokes and dots of a plan's picture mean, the plan's own conventions included. */
export function planLegend(
  plan: BrowPlan,
  { overlap = false, check }: AlsoShown = {},
): readonly LegendEntry[] {
  const { choices, face } = plan;
  return [
    { text: LEGEND.planned, role: "planned" },
    { text: LEGEND.natural, role: "natural" },
    ...(overlap ? overlapEntries(plan) : []),
    { text: LEGEND.midline, role: "midline" },
    { text: fill(LEGEND.start, { convention: conventionWords(choices.start) }), role: "start" },
    { text: fill(LEGEND.arch, { convention: archWords(choices) }), role: "arch" },
    { text: fill(LEGEND.tail, { convention: conventionWords(choices.tail) }), role: "tail" },
    { text: LEGEND.lengths, role: "ruler" },
    { text: LEGEND.landmark, role: "landmark", marker: MARKERS.landmark },
    ...((face.standIns?.length ?? 0) > 0
      ? [{ text: LEGEND["stand-in"], role: "landmark", marker: "circle" } as const]
      : []),
    ...pinEntries(plan),
    ...(check === undefined ? [] : checkEntries(check)),
  ];
}

/** A guide is drawn where it runs, wherever the dot was pinned; other arches are where their dot is. */
function archWords({ arch, pins }: BrowPlan["choices"]): string {
  return !isGuide(arch) && pins.some(({ dot }) => dot === "upperArch")
    ? LEGEND.pinned
    : conventionWords(arch);
}

function overlapEntries(plan: BrowPlan): readonly LegendEntry[] {
  const areas = planOverlap(plan);
  const said = (of: (overlap: OutlineOverlap) => number): string =>
    SIDES.map((side) => {
      const overlap = areas[side];
      return overlap === undefined
        ? fill(LEGEND["no-overlap"], { side })
        : `${side} ${decimal(of(overlap), 0)}`;
    }).join(", ");
  return [
    { text: fill(LEGEND.hair, { areas: said((one) => one.hairOutside) }), role: "remove" },
    { text: fill(LEGEND.skin, { areas: said((one) => one.skinInside) }), role: "fill" },
  ];
}

/** What the dots of a check mean, and every correction. */
export function checkEntries(check: DrawnCheck): readonly LegendEntry[] {
  const { dots, outcome } = check;
  return [
    { text: fill(LEGEND.drawn, { outcome }), role: "correction", marker: MARKERS.drawn },
    ...(dots.some(({ correction }) => correction !== undefined)
      ? [{ text: LEGEND.correction, role: "correction" } as const]
      : []),
    ...(dots.some((dot) => dot.correction === undefined && isUndecided(dot))
      ? [{ text: LEGEND.undecided, key: "?" }]
      : []),
    ...correctionEntries(check),
  ];
}
