import type { Capture } from "./capture.js";
import { type Finding, finding } from "./finding.js";

const FACTS = {
  upright: "the client sat upright",
  relaxed: "the client's face was relaxed",
} as const;

const CONTRARY = {
  upright: "the client did not sit upright",
  relaxed: "the client's face was not relaxed",
} as const;

/**
 * What was declared of the client's posture, and what was not. A brow that stands elsewhere than in
 * the baseline speaks against either: lying down moves brows, and so does a tense forehead.
 */
export function declaredFindings(
  { declared }: Capture,
  brows: readonly Finding[],
): readonly Finding[] {
  const moved = brows
    .filter(({ outcome }) => outcome === "outside")
    .sort((one, other) => offOf(other) - offOf(one))[0];
  return (["upright", "relaxed"] as const).map((check) => {
    const fact = FACTS[check];
    if (declared?.[check] === false) {
      return finding(check, "declared-contrary", "retake", { fact: CONTRARY[check] });
    }
    if (declared?.[check] !== true) return finding(check, "not-declared", "unchecked", { fact });
    if (moved === undefined) return finding(check, "declared", "declared", { fact });
    return finding(check, "declaration-questioned", "caution", {
      fact,
      side: moved.side ?? "",
      size: offOf(moved),
      where: moved.code === "brow-raised" ? "higher" : "lower",
    });
  });
}

function offOf({ measured }: Finding): number {
  return Math.abs(measured?.value ?? 0);
}
