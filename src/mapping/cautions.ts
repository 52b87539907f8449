import { type Declared, depthAt, skinOf } from "../landmarks/index.js";
import {
  eachSide,
  type Note,
  note,
  type NoteValues,
  type Scale,
  toDegrees,
} from "../units/index.js";
import { placeOf } from "./place.js";
import type { PlannableFace } from "./plannable-face.js";

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
    "The outer eye corners lie {difference:1} mm unequally far from the midline: either the head is turned by about {angle:1}° or the face is uneven by as much. The photo cannot tell; no mark was moved for it.",
  "posture-not-declared":
    "Nobody declared that the client sat upright with a relaxed face: brows move when lying down or raised. Check every distance again upright.",
} as const;

/** Half-faces that differ by no more say nothing, in mm: few faces are more even. Ours. */
const HALF_FACE_LIMIT = 2;

function caution(code: CautionCode, values: NoteValues = {}): Note<CautionCode> {
  return note(code, SENTENCES[code], values);
}

/** What whoever uses a plan must know before pigment goes into skin. */
export function cautionsFor(
  face: PlannableFace,
  scale: Scale | undefined,
  declared: Declared | undefined,
): readonly Note<CautionCode>[] {
  return [
    caution("planning-aid"),
    caution("local-law"),
    caution("hygiene"),
    ...(declared?.upright === true && declared.relaxed === true
      ? []
      : [caution("posture-not-declared")]),
    ...(scale === undefined ? [] : scaleCautions(scale)),
    ...turningCautions(face),
    ...(face.standIns ?? []).map(({ landmark, instead }) =>
      caution("stand-in", { landmark, instead }),
    ),
  ];
}

function scaleCautions(scale: Scale): readonly Note<CautionCode>[] {
  const relative = scale.u / scale.factor;
  return [
    ...(scale.source === "iris" ? [caution("scale-from-population-average")] : []),
    caution("scale-uncertain", { percent: 100 * relative, off: 50 * relative }),
  ];
}

function turningCautions(face: PlannableFace): readonly Note<CautionCode>[] {
  const half = eachSide((side) => placeOf(face[side].exocanthion, side).distance);
  const difference = Math.abs(half.right - half.left);
  if (difference <= HALF_FACE_LIMIT) return [];
  const skin = skinOf(face, "modelled");
  const behind =
    -(depthAt(face.right.exocanthion, skin) + depthAt(face.left.exocanthion, skin)) / 2;
  // Turning by φ brings one outer corner nearer the midline by behind·sin φ and takes the other away.
  const sine = difference / (2 * behind);
  return [
    caution("head-may-be-turned", { difference, angle: toDegrees(Math.asin(Math.min(1, sine))) }),
  ];
}
