import { type CaptureCheck, type Finding, finding } from "./finding.js";

/** What landmarks alone tell, each with its checks: neither scale, baseline nor anybody's word. */
const TOLD_BY_LANDMARKS: readonly (readonly [what: string, checks: readonly CaptureCheck[]])[] = [
  ["sides", ["sides"]],
  ["tilt", ["roll"]],
  ["turn", ["yaw"]],
  ["chin", ["pitch"]],
  ["open eyes", ["eyeOpening"]],
  ["gaze", ["gazeAcross", "gazeUp"]],
  ["lips", ["mouthOpening"]],
  ["irises", ["irisDifference", "irisesAcross"]],
  ["eye corners", ["canthalIndex"]],
];

/** A warning where most of that could not be told: else silence would pass for a good capture. */
export function landmarkFindings(findings: readonly Finding[]): readonly Finding[] {
  const open = TOLD_BY_LANDMARKS.filter(([, checks]) =>
    findings.some(({ check, severity }) => severity === "unchecked" && checks.includes(check)),
  ).map(([what]) => what);
  if (open.length <= TOLD_BY_LANDMARKS.length / 2) return [];
  const values = { open: open.length, all: TOLD_BY_LANDMARKS.length, what: open.join(", ") };
  return [finding("landmarks", "few-landmarks", "caution", values)];
}
