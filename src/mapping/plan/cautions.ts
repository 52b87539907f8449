import { distance } from "../../geometry/index.js";
import type { Declared } from "../../landmarks/index.js";
import {
  eyeCant,
  FACE_MIDLINE,
  type FaceFrame,
  halfFaces,
  type Turning,
} from "../../symmetry/index.js";
import { type Note, note, type NoteValues, type Scale } from "../../units/index.js";
import type { PlannableFace } from "../dots/plannable-face.js";

/** Codes of the cautions that travel with a plan. */
export type CautionCode = keyof typeof SENTENCES;

const SENTENCES = {
  "local-law":
    "The work that follows a map breaks the skin and lasts. Minimum age and licence are set by local law: follow local codes and licensed practice.",
  hygiene:
    "Work hygienically: EN 17169:2020 describes safe tattooing practice (voluntary); local rules come first.",
  "planning-aid":
    "This map is a planning aid, not medical advice; whether a client may be treated at all is for licensed practice to judge.",
  "scale-uncertain":
    "The photo's scale is known to ±{percent:1} % (standard uncertainty): 50 mm may be {off:1} mm more or less. Check by ruler on the skin.",
  "scale-from-population-average":
    "Millimetres are taken from the average width of the iris, not measured on this client: shares and angles do not care, lengths do.",
  "stand-in": "{landmark} is only approximated: {instead}. Check by eye whatever rests on it.",
  "head-may-be-turned":
    "The halves of the face differ by {difference:1} mm in width: either the head is turned by about {angle:1}° or the face is uneven by as much. The photo cannot tell; no mark was moved for it.",
  "head-was-turned":
    "The head was turned by {yaw:1}° (±{u:1}°) to the client's {side}, which was taken out by depth: the brow that was farther away is seen less well. Check its lengths by ruler.",
  "eyes-slant":
    "The line of the eyes slants by {angle:1}° (±{u:1}°) against the face's horizontal, the {side} eye higher: others recognise more than {limit:2}°. Brows level with each other may look slanted beside such eyes; choose together with the client.",
  "size-implausible":
    "The outer eye corners lie {distance:0} mm apart; those of adults lie {least} to {most} mm apart. Check the scale and its unit before anything else.",
  "capture-finding": "{text}",
  "expression-differs": "Expression differs between captures. {text}",
  "pose-differs": "The head was held differently in another capture. {text}",
  "posture-not-kept":
    "It was declared that the client did not sit upright with a relaxed face: heights and distances of this plan do not hold. Take the landmarks again.",
  "posture-not-declared":
    "Nobody declared that the client sat upright with a relaxed face: brows move when lying down or raised. Check every distance again upright.",
} as const;

function caution(code: CautionCode, values: NoteValues = {}): Note<CautionCode> {
  return note(code, SENTENCES[code], values);
}

/** The caution that carries a finding: one of its own where captures contradict each other. */
function cautionOf(finding: string): (typeof CARRIED)[number] {
  if (EXPRESSION.includes(finding)) return "expression-differs";
  return finding === "stable-points-disagree" ? "pose-differs" : "capture-finding";
}

/** Cautions that carry a finding, with its code and its words among their values. */
export const CARRIED = ["capture-finding", "expression-differs", "pose-differs"] as const;

/** Findings, of a comparison or of a check against a baseline, that brows stand elsewhere. */
const EXPRESSION: readonly string[] = [
  "expression-differs",
  "brow-raised",
  "brow-lowered",
  "declaration-questioned",
];

/** Severities of `checkCapture` that warn of nothing: its own answer keeps them. */
const NO_WARNING: readonly string[] = ["unchecked", "declared"];

/** What whoever uses a plan must know before pigment goes into skin. */
export function cautionsFor(
  face: PlannableFace,
  frame: FaceFrame | undefined,
  declared: Declared | undefined,
  findings: readonly (Note & { readonly severity?: string })[],
): readonly Note<CautionCode>[] {
  return [
    caution("planning-aid"),
    caution("local-law"),
    caution("hygiene"),
    ...sizeCautions(face),
    ...postureCautions(declared),
    ...(frame === undefined ? [] : scaleCautions(frame.scale)),
    ...(frame?.turning === undefined ? turningCautions(face) : turnedCautions(frame.turning)),
    ...eyeCautions(face, frame?.midline.tiltU ?? 0),
    ...findings
      .filter(({ severity = "" }) => !NO_WARNING.includes(severity))
      .map(({ code, text }) => caution(cautionOf(code), { finding: code, text })),
    ...(face.standIns ?? []).map(({ landmark, instead }) =>
      caution("stand-in", { landmark, instead }),
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

function sizeCautions({ right, left }: PlannableFace): readonly Note<CautionCode>[] {
  const apart = distance(right.exocanthion, left.exocanthion);
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
  return upright === true && relaxed === true ? [] : [caution("posture-not-declared")];
}

/** Only where the root of the nose is known: it lies ahead of the eyes and shows a turn. */
function turningCautions(face: PlannableFace): readonly Note<CautionCode>[] {
  if (face.midline.glabella === undefined && face.midline.sellion === undefined) return [];
  const { difference, yaw, note: differ } = halfFaces(face);
  if (differ === undefined) return [];
  return [
    caution("head-may-be-turned", {
      difference: Math.abs(difference.value),
      angle: Math.abs(yaw.value),
    }),
  ];
}

/** Yaw beyond which a portrait is not frontal: ISO/IEC 19794-5, from memory. */
const FRONTAL = 5;

function turnedCautions({ yaw, yawU }: Turning): readonly Note<CautionCode>[] {
  if (Math.abs(yaw) <= FRONTAL) return [];
  const side = yaw > 0 ? "left" : "right";
  return [caution("head-was-turned", { yaw: Math.abs(yaw), u: yawU, side })];
}

/** Only where the slant is proven to be more than others recognise. */
function eyeCautions(face: PlannableFace, midlineU: number): readonly Note<CautionCode>[] {
  const { angle, decision } = eyeCant(face, { midline: { line: FACE_MIDLINE, tiltU: midlineU } });
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
