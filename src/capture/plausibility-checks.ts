import { IRIS_WIDTH } from "../calibration/index.js";
import { distance } from "../geometry/index.js";
import {
  type Face,
  type FaceSide,
  landmarkUncertainty,
  type SideLandmark,
} from "../landmarks/index.js";
import {
  type Limits,
  measured,
  type Measured,
  type NoteValues,
  type Scale,
} from "../units/index.js";
import type { Capture } from "./capture.js";
import { pairDistance, USUAL_WIDTH } from "./face-size.js";
import { type Finding, judged, type Reading } from "./finding.js";
import { findingPart } from "./notes.js";

/** Whether eyes and irises have the proportions that people have; what lies within them needs no proof. */
export function plausibilityFindings({ face, scale, limits }: Capture): readonly Finding[] {
  const irises = irisWidths(face);
  const eyes = pairDistance(face, "exocanthion");
  const ownScale = scale?.source === "iris" ? undefined : scale;
  const readings: readonly Reading[] = [
    irisDifference(face, irises),
    irisesAcross(face, eyes, irises, limits.irisesAcross.limits),
    { check: "irisWidth", measured: widthOn(ownScale, irises?.mean, irises?.relativeU) },
    { check: "pupilDistance", measured: pupilDistance(face, scale) },
    { check: "canthalIndex", measured: canthalIndex(face, eyes) },
    { check: "noseHeight", measured: noseHeight(face, eyes) },
  ];
  return readings.flatMap((reading) => {
    const { lower, upper } = limits[reading.check].limits;
    const value = reading.measured?.value ?? NaN;
    if (value >= (lower ?? -Infinity) && value <= (upper ?? Infinity)) return [];
    const values = {
      lower: lower ?? 0,
      upper: upper ?? findingPart("unlimited"),
      ...reading.values,
    };
    return judged({ ...reading, values }, limits);
  });
}

function irisDifference(face: Face<"px">, irises: IrisWidths | undefined): Reading {
  if (irises === undefined) return { check: "irisDifference", measured: undefined };
  const difference = (irises.left - irises.right) / irises.mean;
  const u = (Math.SQRT2 * pairU(face, "limbusLateral")) / IRIS_WIDTH.value;
  const wide = difference > 0 ? "left" : "right";
  return {
    check: "irisDifference",
    measured: measured(difference, u),
    values: { percent: Math.abs(100 * difference), wide },
  };
}

function irisesAcross(
  face: Face<"px">,
  eyes: number | undefined,
  irises: IrisWidths | undefined,
  limits: Limits,
): Reading {
  if (irises === undefined || eyes === undefined) {
    return { check: "irisesAcross", measured: undefined };
  }
  const across = eyes / irises.mean;
  const u = across * Math.hypot(irises.relativeU, pairU(face, "exocanthion") / USUAL_WIDTH);
  return {
    check: "irisesAcross",
    measured: measured(across, u),
    values: nearEnough(across, limits),
  };
}

/** How far the outer eye corners lie behind the irises, in millimetres; ours. */
const EYE_DEPTH = 10;

/** From how near a pinhole draws eyes so narrow that are neither narrow nor wide themselves. */
function nearEnough(across: number, { lower, upper = lower }: Limits): NoteValues {
  if (lower === undefined || upper === undefined || across >= lower) return {};
  return { away: EYE_DEPTH / (1 - (2 * across) / (lower + upper)) };
}

function pupilDistance(face: Face<"px">, scale: Scale | undefined): Measured | undefined {
  const apart = pairDistance(face, "pupil");
  const relativeU = scale && apart && pairU(face, "pupil") / (apart * scale.factor);
  return widthOn(scale, apart, relativeU);
}

function canthalIndex(face: Face<"px">, eyes: number | undefined): Measured | undefined {
  const inner = pairDistance(face, "endocanthion");
  if (inner === undefined || eyes === undefined) return undefined;
  const index = inner / eyes;
  const u = Math.hypot(pairU(face, "endocanthion"), index * pairU(face, "exocanthion"));
  return measured(index, u / USUAL_WIDTH);
}

/** What a stretched picture changes in every face. */
function noseHeight(face: Face<"px">, eyes: number | undefined): Measured | undefined {
  const { sellion, subnasale } = face.midline;
  if (sellion === undefined || subnasale === undefined || eyes === undefined) return undefined;
  const height = distance(sellion, subnasale) / eyes;
  const ends = Math.hypot(
    landmarkUncertainty(face, "sellion"),
    landmarkUncertainty(face, "subnasale"),
  );
  const u = Math.hypot(ends, height * pairU(face, "exocanthion")) / USUAL_WIDTH;
  return measured(height, u);
}

/** Pixels with their relative uncertainty as millimetres, where there is a scale. */
function widthOn(
  scale: Scale | undefined,
  pixels: number | undefined,
  relativeU: number | undefined,
): Measured | undefined {
  if (scale === undefined || pixels === undefined || relativeU === undefined) return undefined;
  const width = pixels * scale.factor;
  return measured(width, width * Math.hypot(relativeU, scale.u / scale.factor));
}

/** Widths of the irises in pixels, corrected where their source draws them too wide. */
interface IrisWidths {
  readonly right: number;
  readonly left: number;
  readonly mean: number;
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

function pairU(face: Face<"px">, name: SideLandmark): number {
  return Math.SQRT2 * landmarkUncertainty(face, name);
}
