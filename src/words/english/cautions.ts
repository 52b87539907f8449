/** Of what to beware of. */
export const CAUTIONS = {
  "local-law":
    "The work that follows a map breaks the skin and lasts. Minimum age and licence are set by local law: follow local codes and licensed practice.",
  hygiene:
    "Work hygienically: EN 17169:2020 describes safe tattooing practice (voluntary); local rules come first.",
  "planning-aid":
    "This map is a planning aid, not medical advice; whether a client may be treated at all is for licensed practice to judge.",
  "scale-uncertain":
    "The photo's scale is known to ±{percent:1} % (standard uncertainty): {50:mm} may be {off:1mm} more or less. Check by ruler on the skin.",
  "scale-from-population-average":
    "Lengths come from the average iris, not from this client: they depend on it, shares and angles do not.",
  "brow-not-seen":
    "In place of hair, this map has {instead:standIns}. Draw the borders of any hair by hand or take them from the picture: until then nothing is known there of what to remove, to fill or to move.",
  "head-may-be-turned": "{finding}",
  "head-was-turned":
    "The head was turned by {yaw:1}° (±{u:1}°) to the client's {side:sides} and its chin held {pitch:0}° {where:levels} than on an average upright face, corrected by depth: the farther brow is seen less well. Check its lengths by ruler.",
  "head-may-be-raised":
    "How far the chin was raised is known to ±{u:0}° only: 5° move the start of a brow by about {1.5:mm} in height. Check heights upright, the client looking straight ahead.",
  "eyes-slant":
    "The eyes slant by {angle:1}° (±{u:1}°), the {side:sides} one higher: others recognise more than {limit:2}°. Level brows may look slanted beside them; choose together with the client.",
  "size-implausible":
    "The outer eye corners lie {distance:0mm} apart; those of adults lie {least:mm} to {most:mm} apart. Check the scale and its unit before anything else.",
  "capture-finding": "{finding}",
  "expression-differs": "Expression differs between captures. {finding}",
  "pose-differs": "The head was held differently in another capture. {finding}",
  "posture-not-kept":
    "It was declared that the client did not sit upright with a relaxed face: heights and distances of this plan do not hold. Take the landmarks again.",
  "posture-not-declared":
    "Nobody declared that the client sat upright with a relaxed face: brows move when lying down or raised. Check every distance again upright.",
  "tail-steep":
    "The tail of the {side:sides} brow falls by {value:1}°, more than {limit:0}°: choose another tail, or a higher tail end.",
  "front-steep":
    "The front of the {side:sides} brow rises by {value:1}°, more than {limit:0}°: choose other levels, or a lower arch.",
  "tail-above-arch":
    "The tail of the {side:sides} brow ends {value:1mm} above the middle of its arch: choose the height of the tail end.",
  "tail-below-start":
    "The tail of the {side:sides} brow ends {value:1mm} below its lower start, more than {limit:mm}: choose the height of the tail end.",
  "thickens-outward":
    "The {side:sides} brow grows {value:1mm} thicker towards its {station:stations}, more than {limit:mm}: choose its thickness.",
  "lid-space-closes":
    "The space between lid and brow closes by {value:1mm} on the {side:sides}, more than {limit:mm}: choose a thinner brow, or higher levels.",
  "dot-far-off":
    "The {dot:dots} of the {side:sides} brow lies {value:1mm} from where its borders have it, more than {limit:mm}: check the landmarks, and whether hair is missing there, or choose another guide.",
  "brow-displaced":
    "The {side:sides} brow stands {size:1mm} {where:levels} in the later capture, more than {limit:mm}: it was raised or drawn down in one of them, or the client lay down. Plan from the upright, relaxed one.",
} as const;
