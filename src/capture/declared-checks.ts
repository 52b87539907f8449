import type { Capture } from "./capture.js";
import { type Finding, finding } from "./finding.js";

/** What was declared, and what was not; a brow that has moved since the baseline speaks against either. */
export function declaredFindings(
  { declared }: Capture,
  brows: readonly Finding[],
): readonly Finding[] {
  const moved = brows
    .filter(({ outcome }) => outcome === "outside")
    .sort((one, other) => offOf(other) - offOf(one))[0];
  return (["upright", "relaxed"] as const).map((check) => {
    const fact = check;
    if (declared?.[check] === false) return finding(check, "declared-contrary", "retake", { fact });
    if (declared?.[check] !== true) return finding(check, "not-declared", "unchecked", { fact });
    if (moved === undefined) return finding(check, "declared", "declared", { fact });
    return finding(check, "declaration-questioned", "caution", {
      fact,
      side: moved.side ?? "right",
      size: offOf(moved),
      where: moved.code === "brow-raised" ? "higher" : "lower",
    });
  });
}

function offOf({ measured }: Finding): number {
  return Math.abs(measured?.value ?? 0);
}
