import type { CodeOf } from "../../units/internal.js";

export const CAUTION_CODES = [
  "local-law",
  "hygiene",
  "planning-aid",
  "scale-uncertain",
  "scale-from-population-average",
  "stand-in",
  "head-may-be-turned",
  "head-was-turned",
  "eyes-slant",
  "size-implausible",
  "capture-finding",
  "expression-differs",
  "pose-differs",
  "posture-not-kept",
  "posture-not-declared",
] as const;

/** Codes of the cautions that travel with a plan. */
export type CautionCode = CodeOf<typeof CAUTION_CODES, typeof CAUTIONS>;

/** What whoever uses a plan must know before pigment goes into skin. */
export const CAUTIONS = {
  "local-law":
    "The work that follows a map breaks the skin and lasts. Minimum age and licence are set by local law: follow local codes and licensed practice.",
  hygiene:
    "Work hygienically: EN 17169:2020 describes safe tattooing practice (voluntary); local rules come first.",
  "planning-aid":
    "This map is a planning aid, not medical advice; whether a client may be treated at all is for licensed practice to judge.",
  "scale-uncertain":
    "The photo's scale is known to ±{percent:1} % (standard uncertainty): 50 mm may be {off:1} mm more or less. Check by ruler on the skin.",
  "scale-from-population-average":
    "Millimetres come from the average iris, not from this client: lengths depend on it, shares and angles do not.",
  "stand-in": "{landmark} is only approximated: {instead}. Check by eye whatever rests on it.",
  "head-may-be-turned": "{finding}",
  "head-was-turned":
    "The head was turned by {yaw:1}° (±{u:1}°) to the client's {side} and corrected by depth: the farther brow is seen less well. Check its lengths by ruler.",
  "eyes-slant":
    "The eyes slant by {angle:1}° (±{u:1}°), the {side} one higher: others recognise more than {limit:2}°. Level brows may look slanted beside them; choose together with the client.",
  "size-implausible":
    "The outer eye corners lie {distance:0} mm apart; those of adults lie {least} to {most} mm apart. Check the scale and its unit before anything else.",
  "capture-finding": "{finding}",
  "expression-differs": "Expression differs between captures. {finding}",
  "pose-differs": "The head was held differently in another capture. {finding}",
  "posture-not-kept":
    "It was declared that the client did not sit upright with a relaxed face: heights and distances of this plan do not hold. Take the landmarks again.",
  "posture-not-declared":
    "Nobody declared that the client sat upright with a relaxed face: brows move when lying down or raised. Check every distance again upright.",
} as const;

/** Code of what another capture says against a plan, besides what the comparison notes itself. */
export type ComparisonFindingCode = keyof typeof COMPARISON_FINDINGS;

/** What another capture says against a plan. */
export const COMPARISON_FINDINGS = {
  "expression-differs":
    "The {side} brow stands {size:1} mm {where} in the later capture, more than {limit} mm: it was raised or drawn down in one of them, or the client lay down. Plan from the upright, relaxed one.",
} as const;

/** What to do with one dot. */
export const MOVES = {
  place:
    "{side} {dot}: place {distance} mm from the midline, {height} mm above the inner eye corners",
  stay: "{side} {dot}: stays",
  move: "{side} {dot}: {ways}",
} as const;
