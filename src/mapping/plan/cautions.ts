import type { FindingCode, FindingSeverity } from "../../capture/index.js";
import type { Declared } from "../../landmarks/index.js";
import {
  FACE_MIDLINE,
  type FaceFrame,
  type RegistrationNoteCode,
  type Turning,
} from "../../symmetry/index.js";
import { biocularWidth, cantAgainst, halvesOf, pitchUncertainty } from "../../symmetry/internal.js";
import { type FlatPoint, type Note, type Scale } from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { ShapeCode } from "../shape/notes.js";
import { caution, type CautionCode, type ComparisonFindingCode } from "./notes.js";

/** A caution; the finding that it carries, where it carries one, is said within it. */
export interface Caution extends Note<CautionCode | ShapeCode> {
  readonly finding?: Note;
  /** Where on the face a finding about the shape lies. */
  readonly at?: FlatPoint<"mm">;
}

/** What speaks against a capture: a finding of this library, or one of somebody's own. */
export interface PlanFinding extends Note {
  /** Left out: it warns. */
  readonly severity?: FindingSeverity;
}

/** Findings that captures contradict each other have a caution of their own to carry them. */
const CONTRADICTIONS = {
  "brow-raised": "expression-differs",
  "brow-lowered": "expression-differs",
  "declaration-questioned": "expression-differs",
  "brow-displaced": "expression-differs",
  "stable-points-disagree": "pose-differs",
} as const satisfies {
  readonly [Code in FindingCode | ComparisonFindingCode | RegistrationNoteCode]?: CautionCode;
};

/** A finding that warns: what was only unchecked or declared stays in the capture's own answer. */
const WARNS: readonly FindingSeverity[] = ["retake", "caution"];

function carrying({ code, values, text, severity = "caution" }: PlanFinding): Caution {
  return {
    code: isContradiction(code) ? CONTRADICTIONS[code] : "capture-finding",
    values: { severity },
    finding: { code, values, ...(text === undefined ? {} : { text }) },
  };
}

function isContradiction(code: string): code is keyof typeof CONTRADICTIONS {
  return Object.hasOwn(CONTRADICTIONS, code);
}

/** What whoever uses a plan must know before pigment goes into skin. */
export function cautionsFor(
  face: PlannableFace,
  frame: FaceFrame | undefined,
  declared: Declared | undefined,
  findings: readonly PlanFinding[],
): readonly Caution[] {
  return [
    caution("planning-aid"),
    caution("local-law"),
    caution("hygiene"),
    ...sizeCautions(face),
    ...postureCautions(declared),
    ...(frame === undefined ? [] : scaleCautions(frame.scale)),
    ...(frame?.turning === undefined ? turningCautions(face) : turnedCautions(frame.turning)),
    ...(frame === undefined ? [] : raisedCautions(face, frame)),
    ...eyeCautions(face, frame?.midline.tiltU ?? 0),
    ...findings
      .map(carrying)
      .filter(({ values }) => WARNS.includes(values.severity as FindingSeverity)),
    ...(face.standIns ?? []).map(({ landmark, instead }) =>
      landmark === "brow"
        ? caution("brow-not-seen", { instead })
        : caution("stand-in", { landmark, instead }),
    ),
  ];
}

/**
 * Outer eye corners of adults lie so far apart, in mm: from about five standard deviations below the
 * mean of women, 88.39 ± 3.74, to four above that of men, 93.00 ± 5.56 (Hong Kong periocular norms,
 * BioMed Res Int 2013:821428, table 2); the span is ours.
 */
const BIOCULAR = { least: 70, most: 115 };

/** The length in the caution about scale, and how far it has to be off to be worth a word, in mm; ours. */
const OF_A_BROW = 50;
const LEAST_OFF = 0.25;

/** Refuses a face that no doubt of its scale explains, before anything is said of its shape. */
export function requireSize(face: PlannableFace): void {
  const apart = biocularWidth(face) as number;
  if (apart > BIOCULAR.least / 2 && apart < 2 * BIOCULAR.most) return;
  const need = "35 to 230 mm: was the ruler in another unit?";
  refuse("out-of-range", "eye corners apart", apart, need);
}

function sizeCautions(face: PlannableFace): readonly Note<CautionCode>[] {
  const apart = biocularWidth(face) as number;
  if (apart >= BIOCULAR.least && apart <= BIOCULAR.most) return [];
  return [caution("size-implausible", { distance: apart, ...BIOCULAR })];
}

function scaleCautions(scale: Scale): readonly Note<CautionCode>[] {
  const relative = scale.u / scale.factor;
  return [
    ...(scale.notes.some(({ code }) => code === "population-average")
      ? [caution("scale-from-population-average")]
      : []),
    ...(OF_A_BROW * relative < LEAST_OFF
      ? []
      : [caution("scale-uncertain", { percent: 100 * relative, off: OF_A_BROW * relative })]),
  ];
}

function postureCautions({ upright, relaxed }: Declared = {}): readonly Note<CautionCode>[] {
  if (upright === false || relaxed === false) return [caution("posture-not-kept")];
  return upright && relaxed ? [] : [caution("posture-not-declared")];
}

/** Only where the root of the nose is known: it lies ahead of the eyes and shows a turn. */
function turningCautions(face: PlannableFace): readonly Note<CautionCode>[] {
  const differ = halvesOf(face)?.note;
  if (differ === undefined) return [];
  // Not carried as a finding: a replayed record would hand it in beside the one that is made again.
  return [caution("head-may-be-turned", { ...differ.values, finding: differ })];
}

/** Yaw, and pitch, beyond which a portrait is not frontal: ISO/IEC 19794-5, from memory. */
const FRONTAL = 5;

function turnedCautions({ yaw, yawU, pitch = 0 }: Turning): readonly Note<CautionCode>[] {
  const by = { yaw: Math.abs(yaw), u: yawU, pitch: Math.abs(pitch) };
  if (Math.max(by.yaw, by.pitch) <= FRONTAL) return [];
  const side = yaw > 0 ? "left" : "right";
  const where = pitch > 0 ? "higher" : "lower";
  return [caution("head-was-turned", { ...by, side, where })];
}

/** Where no depth says how far the chin was raised, or nobody corrected it. */
function raisedCautions(face: PlannableFace, frame: FaceFrame): readonly Note<CautionCode>[] {
  const u = pitchUncertainty(face, frame);
  if (frame.turning?.pitch !== undefined || u === 0) return [];
  return [caution("head-may-be-raised", { u })];
}

/** Only where the slant is proven to be more than others recognise. */
function eyeCautions(face: PlannableFace, midlineU: number): readonly Note<CautionCode>[] {
  const { angle, decision } = cantAgainst({ line: FACE_MIDLINE, tiltU: midlineU }, face);
  if (decision.outcome !== "outside") return [];
  return [
    caution("eyes-slant", {
      angle: Math.abs(angle.value),
      u: angle.u,
      side: angle.value > 0 ? "left" : "right",
      limit: decision.limits.upper ?? 0,
    }),
  ];
}
