import type { BrowPlan } from "../mapping/index.js";
import type { LegendEntry } from "./legend.js";
import { MARKERS } from "./palette.js";
import { CONVENTION_WORDS } from "./words.js";

/** What the strokes and dots of a plan's picture mean, the plan's own conventions included. */
export function planLegend({ choices, face }: BrowPlan): readonly LegendEntry[] {
  return [
    { text: "planned brow", role: "planned" },
    { text: "brow as it grows", role: "natural" },
    { text: "midline", role: "midline" },
    { text: `start: ${CONVENTION_WORDS[choices.start]}`, role: "start" },
    { text: `arch: ${CONVENTION_WORDS[choices.arch]}`, role: "arch" },
    { text: `tail: ${CONVENTION_WORDS["alare-through-exocanthion"]}`, role: "tail" },
    { text: "front and tail, straight by ruler", role: "ruler" },
    { text: "landmark", role: "landmark", marker: MARKERS.landmark },
    ...((face.standIns?.length ?? 0) > 0
      ? [{ text: "landmark, approximated", role: "landmark", marker: "circle" } as const]
      : []),
  ];
}
