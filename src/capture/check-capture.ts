import { scaleFromIris } from "../calibration/index.js";
import { type Face, mapFace } from "../landmarks/index.js";
import { faceFrame } from "../symmetry/index.js";
import { attempt, length, type Scale, WORKING_TOLERANCES } from "../units/index.js";
import {
  keysOf,
  refuse,
  refusingAs,
  requireFinite,
  requireFinitePoint,
  requireNames,
  requireObject,
  requirePositive,
  requireWord,
  SIDES,
} from "../units/internal.js";
import { NO_MIDLINE } from "./no-midline.js";
import { browReadings } from "./brow-checks.js";
import type { Capture, CaptureOptions } from "./capture.js";
import { declaredFindings } from "./declared-checks.js";
import { eyeFindings, mouthReading } from "./expression-checks.js";
import { type Finding, finding, gravestFirst, judged, type Reading, unchecked } from "./finding.js";
import {
  CAPTURE_LIMITS,
  type CaptureLimit,
  type CaptureLimits,
  type CapturePurpose,
} from "./limits.js";
import { landmarkFindings } from "./landmark-checks.js";
import { pictureFindings } from "./picture-checks.js";
import { plausibilityFindings } from "./plausibility-checks.js";
import { poseReadings } from "./head-pose.js";

/**
 * What speaks against using a capture for a purpose, and what it could not check, the most serious
 * first: how the head is held, eyes and mouth, brows against a baseline, pixels and the camera's
 * distance, swapped sides, implausible proportions, what was declared, and whether there are enough
 * landmarks.
 *
 * What is not mentioned keeps its limit. Every limit is a parameter (`CAPTURE_LIMITS`). Where right
 * and left are swapped, nothing else is checked.
 *
 * @throws GeometryError `not-finite`, `out-of-range` for an unknown purpose, an impossible size or
 * limits that are crossed, `sides-swapped` for a mirrored baseline
 *
 * @example
 * ```ts
 * import { checkCapture, mm, px, say, scaleFromReference } from "brow-geometry";
 * const face = {
 *   right: { endocanthion: px([460, 500]), exocanthion: px([370, 505]), cheilion: px([450, 690]) },
 *   left: { endocanthion: px([560, 500]), exocanthion: px([656, 500]), cheilion: px([570, 690]) },
 *   midline: { stomionSuperius: px([510, 690]), stomionInferius: px([510, 716]) },
 * };
 * const scale = scaleFromReference(px([0, 0]), px([160, 0]), mm(50));
 * const findings = checkCapture(face, { purpose: "record", scale });
 * findings.filter(({ severity }) => severity === "retake").map((finding) => say(finding));
 * // → [
 * //   "The lips are apart by 0.22 of the mouth's width; up to 0.08 will do. Ask the client to close the lips without pressing them.",
 * //   "A pixel is 0.31 mm wide: the tolerance of 1 mm spans 3.2 of them; it takes 5. Fill the picture with the face: zoom in rather than come nearer, or use a better camera.",
 * // ]
 * ```
 */
export function checkCapture(face: Face<"px">, options: CaptureOptions): readonly Finding[] {
  return refusingAs("checkCapture", () => {
    const capture = settle(face, options);
    const sides = sidesFindings(face);
    if (sides.some(({ code }) => code === "sides-exchanged")) {
      return gravestFirst([...sides, ...declaredFindings(capture, [])]);
    }
    const judge = (reading: Reading): readonly Finding[] => judged(reading, capture.limits);
    const brows = browReadings(capture).flatMap(judge);
    const findings = [
      ...sides,
      ...poseReadings(face).flatMap(judge),
      ...eyeFindings(capture),
      ...judge(mouthReading(face)),
      ...brows,
      ...pictureFindings(capture),
      ...plausibilityFindings(capture),
      ...declaredFindings(capture, brows),
    ];
    return gravestFirst([...findings, ...landmarkFindings(findings)]);
  });
}

function settle(face: Face<"px">, options: CaptureOptions): Capture {
  requireObject("options", options, "an object with a purpose");
  requireNames("options", options, [
    "purpose",
    "scale",
    "cameraDistance",
    "focalLength",
    "baseline",
    "declared",
    "tolerance",
    "limits",
  ]);
  const { purpose, scale, tolerance = USUAL_TOLERANCE, limits = {}, ...told } = options;
  requireFiniteFace("face", face);
  requirePositive("tolerance", tolerance);
  if (scale !== undefined) requirePositive("scale.factor", scale.factor);
  if (told.focalLength !== undefined) requirePositive("focalLength", told.focalLength);
  if (told.cameraDistance !== undefined) {
    requirePositive("cameraDistance", told.cameraDistance.value);
  }
  if (told.baseline !== undefined) requireBaseline(told.baseline);
  requireLimits(limits);
  return {
    ...told,
    face,
    tolerance,
    scale: scale ?? scaleOfIrises(face),
    limits: { ...limitsOf(purpose), ...limits },
  };
}

const USUAL_TOLERANCE = length(WORKING_TOLERANCES.tolerances.position.limits.upper ?? 1);

function limitsOf(purpose: CapturePurpose): CaptureLimits {
  const names = Object.keys(CAPTURE_LIMITS);
  if (!names.includes(purpose)) {
    refuse("out-of-range", "purpose", purpose, `one of ${names.join(", ")}`);
  }
  return CAPTURE_LIMITS[purpose];
}

function requireLimits(limits: Partial<CaptureLimits>): void {
  requireNames("limits", limits, keysOf(CAPTURE_LIMITS.map));
  for (const [name, limit] of Object.entries(limits)) {
    requireObject(`limits.${name}`, limit, "an object such as CAPTURE_LIMITS has");
    requireLimit(`limits.${name}`, limit);
  }
}

function requireLimit(field: string, { limits, rule, severity }: CaptureLimit): void {
  const need = "lower, upper, or both, the lower one first";
  requireObject(`${field}.limits`, limits, need);
  const { lower, upper } = limits;
  if (lower !== undefined) requireFinite(`${field}.limits.lower`, lower);
  if (upper !== undefined) requireFinite(`${field}.limits.upper`, upper);
  if ((lower ?? upper) === undefined || (lower ?? -Infinity) > (upper ?? Infinity)) {
    refuse("out-of-range", `${field}.limits`, limits, need);
  }
  requireWord(`${field}.rule`, rule, ["guarded", "simple"]);
  requireWord(`${field}.severity`, severity, ["retake", "caution"]);
}

function requireFiniteFace(name: string, face: Face<"px">): void {
  requireObject(name, face, "a face with right, left and midline");
  for (const part of [...SIDES, "midline"] as const) {
    requireObject(`${name}.${part}`, face[part], "an object with landmarks, or {}");
  }
  mapFace(face, (point, landmark) => {
    requireFinitePoint(`${name}, ${landmark ?? "symmetricPoints"}`, point);
    return point;
  });
}

function requireBaseline(baseline: Face<"px">): void {
  requireFiniteFace("baseline", baseline);
  const [problem] = sidesFindings(baseline);
  if (problem?.code !== "sides-exchanged") return;
  const corners = [baseline.right.endocanthion, baseline.left.endocanthion];
  const need = "an unmirrored photo with the client's own right and left";
  refuse("sides-swapped", "baseline", corners, need);
}

/** The irises' scale, where there are irises wide enough to carry one. */
function scaleOfIrises(face: Face<"px">): Scale | undefined {
  const scale = attempt(() => scaleFromIris(face), ["missing-landmark", "ill-conditioned"]);
  return scale.ok ? scale.answer : undefined;
}

/** Which side is which does not depend on the scale. */
const ANY_SCALE: Scale = { from: "px", to: "mm", factor: 1, u: 0, source: "given", notes: [] };

function sidesFindings(face: Face<"px">): readonly Finding[] {
  const frame = attempt(() => faceFrame(face, ANY_SCALE), ["sides-swapped", ...NO_MIDLINE]);
  if (frame.ok) return [];
  const { code } = frame.refusal;
  if (code === "sides-swapped") return [finding("sides", "sides-exchanged", "retake", {})];
  if (code !== "missing-landmark") return [finding("sides", "sides-unlike", "retake", {})];
  return [unchecked("sides", "roll")];
}
