import { ARCH_CONVENTIONS, START_CONVENTIONS } from "../../landmarks/index.js";
import { keysOf } from "../../units/internal.js";
import { type Lead, TAIL_HEIGHTS } from "./choice-tables.js";
import type { Choices } from "./choices.js";

/**
 * Every combination of who leads, where start and arch stand and how high the tail ends, in that
 * order; whatever else `base` chooses is kept.
 *
 * @example
 * ```ts
 * import { everyChoice } from "brow-geometry/mapping";
 * everyChoice({ noseBent: true })[0];
 * // → { noseBent: true, lead: "middle", start: "alare-vertical", arch: "natural", tailHeight: "natural" }
 * ```
 */
export function everyChoice(base: Choices = {}): readonly Choices[] {
  return LEADS_TRIED.flatMap((lead) =>
    START_CONVENTIONS.flatMap((start) =>
      ARCH_CONVENTIONS.flatMap((arch) =>
        keysOf(TAIL_HEIGHTS).map((tailHeight) => ({ ...base, lead, start, arch, tailHeight })),
      ),
    ),
  );
}

/** The default first, so that neither side wins where nothing tells them apart. */
const LEADS_TRIED: readonly Lead[] = ["middle", "right", "left"];
