import type { ArchConvention, StartConvention } from "../proportions/index.js";
import type { Choices, Lead, TailHeight } from "./choices.js";

const LEADS: readonly Lead[] = ["right", "left", "middle"];
const STARTS: readonly StartConvention[] = ["alare-vertical", "endocanthion-vertical"];
const ARCHES: readonly ArchConvention[] = [
  "natural",
  "lateral-limbus-vertical",
  "alare-through-pupil",
  "eye-width-share",
  "exocanthion-vertical",
  "brow-length-share",
  "alare-through-lateral-limbus",
];
const TAIL_HEIGHTS: readonly TailHeight[] = [
  "natural",
  "level-with-lower-start",
  "level-with-upper-start",
];

/**
 * Every combination of who leads, where start and arch stand and how high the tail ends, in that
 * order; whatever else `base` chooses is kept.
 *
 * @example
 * ```ts
 * import { everyChoice } from "brow-geometry";
 * everyChoice().length; // → 126
 * everyChoice({ noseBent: true })[0];
 * // → { noseBent: true, lead: "right", start: "alare-vertical", arch: "natural", tailHeight: "natural" }
 * ```
 */
export function everyChoice(base: Choices = {}): readonly Choices[] {
  return LEADS.flatMap((lead) =>
    STARTS.flatMap((start) =>
      ARCHES.flatMap((arch) =>
        TAIL_HEIGHTS.map((tailHeight) => ({ ...base, lead, start, arch, tailHeight })),
      ),
    ),
  );
}
