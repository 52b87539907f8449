import type { PlanFinding } from "brow-geometry/mapping";

/** What a photo is worth, in one word. */
export type Verdict = "Good" | "Careful" | "Retake";

/** The gravest finding decides; what was only not checked, or somebody's word, speaks against nothing. */
export function verdictOf(findings: readonly PlanFinding[]): Verdict {
  const has = (severity: PlanFinding["severity"]) =>
    findings.some((one) => one.severity === severity);
  if (has("retake")) return "Retake";
  return has("caution") ? "Careful" : "Good";
}
