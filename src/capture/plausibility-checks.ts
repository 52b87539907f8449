import { IRIS_WIDTH } from "../calibration/index.js";
import { distance } from "../geometry/index.js";
import {
  type Face,
  type FaceSide,
  landmarkUncertainty,
  type SideLandmark,
} from "../landmarks/index.js";
import { type Limits, measured, type Measured, type NoteValues } from "../units/index.js";
import type { Capture } from "./capture.js";
import { biocularWidth, USUAL_WIDTH } from "./face-size.js";
import { type Finding, judged, type Reading, unchecked } from "./finding.js";
import type { CaptureLimits, LimitedCheck } from "./limits.js";
import { type FindingCode, UNLIMITED } from "./words.js";

/** Whether eyes and irises have the proportions that people have: if not, something went wrong. */
export function plausibilityFindings(capture: Capture): readonly Finding[] {
  return [
    ...irisDifferenceFindings(capture),
    ...irisesAcrossFindings(capture),
    ...irisWidthFindings(capture),
    ...pupilDistanceFindings(capture),
    ...canthalIndexFindings(capture),
  ];
}

function irisDifferenceFindings({ face, limits }: Capture): readonly Finding[] {
  const irises = irisWidths(face);
  if (irises === undefined) {
    return [unchecked("irisDifference", "irisDifference")];
  }
  const { right, left, mean } = irises;
  const difference = (left - right) / mean;
  const u = (Math.SQRT2 * pairU(face, "limbusLateral")) / IRIS_WIDTH.value;
  const values = {
    percent: Math.abs(100 * difference),
    wide: difference > 0 ? "left" : "right",
  };
  return doubted(
    "irisDifference",
    {
      measured: measured(difference, u),
      tooLow: "irises-differ",
      tooHigh: "irises-differ",
      values,
    },
    limits,
  );
}

function irisesAcrossFindings({ face, limits }: Capture): readonly Finding[] {
  const irises = irisWidths(face);
  const width = biocularWidth(face);
  if (irises === undefined || width === undefined) {
    return [unchecked("irisesAcross", "irisesAcross")];
  }
  const across = width / irises.mean;
  const u = across * Math.hypot(irises.relativeU, pairU(face, "exocanthion") / USUAL_WIDTH);
  return doubted(
    "irisesAcross",
    {
      measured: measured(across, u),
      tooLow: "eyes-narrow-for-irises",
      tooHigh: "eyes-wide-for-irises",
      values: nearEnough(across, limits.irisesAcross.limits),
    },
    limits,
  );
}

/** How far the outer eye corners lie behind the irises, in millimetres; ours. */
const EYE_DEPTH = 10;

/** From how near a pinhole draws eyes so narrow that are neither narrow nor wide themselves. */
function nearEnough(across: number, { lower, upper = lower }: Limits): NoteValues {
  if (lower === undefined || upper === undefined || across >= lower) return {};
  return { away: EYE_DEPTH / (1 - (2 * across) / (lower + upper)) };
}

function irisWidthFindings(capture: Capture): readonly Finding[] {
  const { face, scale } = capture;
  const irises = irisWidths(face);
  if (irises === undefined || scale === undefined || scale.source === "iris") {
    return [unchecked("irisWidth", "irisWidth")];
  }
  const width = irises.mean * scale.factor;
  const u = width * Math.hypot(irises.relativeU, scale.u / scale.factor);
  return implausible(capture, "irisWidth", "iris-width-implausible", measured(width, u));
}

function pupilDistanceFindings(capture: Capture): readonly Finding[] {
  const { face, scale } = capture;
  const apart = pairDistance(face, "pupil");
  if (apart === undefined || scale === undefined) {
    return [unchecked("pupilDistance", "pupilDistance")];
  }
  const width = apart * scale.factor;
  const u = Math.hypot((width * scale.u) / scale.factor, pairU(face, "pupil"));
  return implausible(capture, "pupilDistance", "pupil-distance-implausible", measured(width, u));
}

function canthalIndexFindings(capture: Capture): readonly Finding[] {
  const { face } = capture;
  const [inner, outer] = [pairDistance(face, "endocanthion"), biocularWidth(face)];
  if (inner === undefined || outer === undefined) {
    return [unchecked("canthalIndex", "canthalIndex")];
  }
  const index = inner / outer;
  const u =
    Math.hypot(pairU(face, "endocanthion"), index * pairU(face, "exocanthion")) / USUAL_WIDTH;
  return implausible(capture, "canthalIndex", "canthal-index-implausible", measured(index, u));
}

/** A value that lies where people's do not. */
function implausible(
  { limits }: Capture,
  check: LimitedCheck,
  code: FindingCode,
  value: Measured,
): readonly Finding[] {
  const { lower = 0, upper = UNLIMITED } = limits[check].limits;
  const values: NoteValues = { lower, upper };
  return doubted(check, { measured: value, tooLow: code, tooHigh: code, values }, limits);
}

/**
 * Only what lies beyond what people have is worth a word, and where its own uncertainty could account
 * for that the word says so. What lies within needs no proof.
 */
function doubted(check: LimitedCheck, reading: Reading, limits: CaptureLimits): readonly Finding[] {
  const { value } = reading.measured;
  const { lower = -Infinity, upper = Infinity } = limits[check].limits;
  return value >= lower && value <= upper ? [] : judged(check, reading, limits);
}

/** Widths of the irises in pixels, corrected where their source draws them too wide. */
interface IrisWidths {
  readonly right: number;
  readonly left: number;
  readonly mean: number;
  /** Relative uncertainty of the mean. */
  readonly relativeU: number;
}

function irisWidths(face: Face<"px">): IrisWidths | undefined {
  const ring = face.source?.ringFactor ?? { value: 1, u: 0 };
  const right = irisWidth(face.right);
  const left = irisWidth(face.left);
  if (!right || !left) return undefined;
  const edgesU = pairU(face, "limbusLateral") / Math.SQRT2 / IRIS_WIDTH.value;
  return {
    right: right / ring.value,
    left: left / ring.value,
    mean: (right + left) / 2 / ring.value,
    relativeU: Math.hypot(edgesU, ring.u / ring.value),
  };
}

function irisWidth({ limbusMedial, limbusLateral }: FaceSide<"px">): number | undefined {
  return limbusMedial && limbusLateral && distance(limbusMedial, limbusLateral);
}

function pairDistance({ right, left }: Face<"px">, name: SideLandmark): number | undefined {
  const [one, other] = [right[name], left[name]];
  return one && other && distance(one, other);
}

/** Standard uncertainty of the distance of a pair, in millimetres. */
function pairU(face: Face<"px">, name: SideLandmark): number {
  return Math.SQRT2 * landmarkUncertainty(face, name);
}
