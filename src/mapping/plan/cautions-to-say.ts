import type { FindingCode } from "../../capture/index.js";
import type { Caution } from "./cautions.js";
import type { CautionCode } from "./notes.js";
import type { BrowPlan } from "./plan.js";

/** What need not be said beside another caution, or beside a finding that one carries. */
const SAID_BY: {
  readonly [Code in FindingCode | CautionCode]?: readonly (FindingCode | CautionCode)[];
} = {
  "head-turned": ["head-was-turned"],
  "turned-or-asymmetric": ["head-was-turned"],
  "chin-raised": ["head-was-turned"],
  "chin-lowered": ["head-was-turned"],
  "head-may-be-turned": ["head-turned", "turned-or-asymmetric"],
  "declared-contrary": ["posture-not-kept"],
};

/**
 * The cautions of a plan, each matter once. A plan carries findings of its capture beside what it sees for itself,
 * and both may say that the head was turned: where it was corrected, the correction is told, else the finding.
 *
 * @example
 * ```ts
 * import { mm, planBrows, type PlannableFace } from "brow-geometry";
 * import { cautionsToSay } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 17, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
 * const declared = { upright: false, relaxed: true };
 * const findings = [{ code: "declared-contrary", values: { fact: "upright" } }] as const;
 * const plan = planBrows(face, { declared }, { findings });
 * plan.cautions.slice(3).map(({ code }) => code); // → ["posture-not-kept", "capture-finding"]
 * cautionsToSay(plan).slice(3).map(({ code }) => code); // → ["posture-not-kept"]
 * ```
 */
export function cautionsToSay({ cautions }: Pick<BrowPlan, "cautions">): readonly Caution[] {
  const told = cautions.map(codeWithin);
  return cautions.filter((one, index) => {
    const code = codeWithin(one);
    const others: readonly string[] = isKnown(code) ? (SAID_BY[code] ?? []) : [];
    const isOwn = one.finding === undefined;
    return (
      !others.some((other) => told.includes(other)) &&
      (isOwn || !cautions.some((own, at) => at !== index && own.code === code))
    );
  });
}

/** What a caution is about: the finding that it carries, or itself. */
function codeWithin({ code, finding }: Caution): string {
  return finding?.code ?? code;
}

function isKnown(code: string): code is keyof typeof SAID_BY {
  return Object.hasOwn(SAID_BY, code);
}
