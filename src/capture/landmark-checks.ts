import { type CaptureCheck, type Finding, finding } from "./finding.js";
import type { ToldByLandmarks } from "./notes.js";

/** What landmarks tell by themselves, each with its checks: no scale, no baseline, nobody's word. */
const CHECKS: readonly (readonly [what: ToldByLandmarks, checks: readonly CaptureCheck[]])[] = [
  ["sides", ["sides"]],
  ["roll", ["roll"]],
  ["yaw", ["yaw"]],
  ["pitch", ["pitch"]],
  ["eyeOpening", ["eyeOpening"]],
  ["gaze", ["gazeAcross", "gazeUp"]],
  ["mouthOpening", ["mouthOpening"]],
  ["irises", ["irisDifference", "irisesAcross"]],
  ["canthalIndex", ["canthalIndex"]],
];

/** A warning where most of that could not be checked: otherwise a capture without findings would look good. */
export function landmarkFindings(findings: readonly Finding[]): readonly Finding[] {
  const open = CHECKS.filter(([, checks]) =>
    findings.some(({ check, severity }) => severity === "unchecked" && checks.includes(check)),
  ).map(([what]) => what);
  if (open.length <= CHECKS.length / 2) return [];
  const values = { open: open.length, all: CHECKS.length, what: open };
  return [finding("landmarks", "few-landmarks", "caution", values)];
}
