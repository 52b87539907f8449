/** Codes of what {@link checkCapture} may find. */
export type FindingCode = keyof typeof FOUND;

/** What was found. */
export const FOUND = {
  "head-tilted": "The head is tilted by {size:1}° in the picture; up to {limit:0}° will do.",
  "head-turned":
    "The head is turned by {size:1}° to the client's {towards}; up to {limit:0}° will do.",
  "turned-or-asymmetric":
    "The {narrow} half of the face reads {difference:1} mm narrower: the head is turned by about {size:0}° to the client's {narrow}, or the face is asymmetric by that much. Without depth nothing can tell; up to {limit:0}° will do.",
  "chin-raised": "The chin is raised by about {size:0}°; up to {limit:0}° will do.",
  "chin-lowered": "The chin is lowered by about {size:0}°; up to {limit:0}° will do.",
  "eye-closed":
    "The {side} eye is open by {value:2} of its width; open eyes show {limit:2} or more.",
  "looking-aside":
    "The eyes look to the client's {towards}: the pupils stand {size:2} of an eye's width off the middle; up to {limit:2} will do.",
  "looking-up":
    "The eyes look up: the pupils stand {value:2} of an eye's width above the corners; up to {limit:2} will do.",
  "looking-down":
    "The eyes look down: the pupils stand {size:2} of an eye's width below the corners; up to {limit:2} will do.",
  "lips-apart": "The lips are apart by {value:2} of the mouth's width; up to {limit:2} will do.",
  "brow-raised":
    "The {side} brow stands {size:1} mm higher than in the baseline; up to {limit:1} mm will do. It is raised, or the client lies down.",
  "brow-lowered":
    "The {side} brow stands {size:1} mm lower than in the baseline; up to {limit:1} mm will do. It is drawn down, or was raised in the baseline.",
  "too-few-pixels":
    "A pixel is {pixel:2} mm wide: the tolerance of {tolerance} mm spans {value:1} of them; it takes {limit:0}.",
  "camera-too-near":
    "The camera was about {value:0} mm away, which draws a brow's start {percent:1} % larger than its tail end; from {limit:0} mm on it will do.",
  "camera-distance-unknown":
    "How near the camera was: not checked, since near and far faces look much alike. A brow {depth:0} mm deep, {from}, is drawn {percent:1} % larger at its start than at its tail end from {limit:0} mm, the least that will do.",
  "eyes-narrow-for-irises":
    "The outer eye corners lie {value:1} irises apart; {limit:1} or more are usual. Landmarks are misplaced, the head is turned, or the camera was too near: eyes of middling width look so from {away:0} mm.",
  "eyes-wide-for-irises":
    "The outer eye corners lie {value:1} irises apart; {limit:1} or fewer are usual. The eyes are half closed, or landmarks are misplaced.",
  "irises-differ":
    "The {wide} iris reads {percent:0} % wider than the other. Landmarks are misplaced, an eye is half closed, or the head is turned close to the camera.",
  "pupil-distance-implausible":
    "The pupils read {value:0} mm apart; nearly all adults have {lower:0} to {upper:0} mm. The scale is wrong, landmarks are misplaced, or this is no adult.",
  "iris-width-implausible":
    "The irises read {value:1} mm wide; {lower:1} to {upper:1} mm are usual. The scale is wrong, or landmarks are misplaced.",
  "canthal-index-implausible":
    "The inner eye corners lie {value:2} of the outer ones' distance apart; {lower:2} to {upper:2} are usual. Landmarks are misplaced, or the head is turned far.",
  "sides-swapped": "Right and left are exchanged, or the picture is mirrored.",
  "sides-unlike": "The landmarks of the two sides do not mirror each other across any line.",
  "few-landmarks":
    "There are too few landmarks to say whether this capture will do: of {all} things that landmarks tell, {open} are not checked ({what}).",
  "not-checked": "{what}: not checked.",
  declared: "Declared, not seen: {fact}.",
  "not-declared": "Nobody declared that {fact}, and a picture cannot show it.",
  "declared-contrary": "It was declared that {fact}: brows stand elsewhere then.",
  "declaration-questioned":
    "It was declared that {fact}, but the {side} brow stands {size:1} mm {where} than in the baseline.",
} as const;

/** Said between finding and advice where the finding is not proven. */
export const UNDECIDED =
  "With a standard uncertainty of {u:2} neither keeping that nor exceeding it is proven.";

/** What to do about it. */
export const ADVICE = {
  "head-tilted": "Hold the camera level and ask the client to hold the head upright.",
  "head-turned": "Ask the client to face the camera.",
  "turned-or-asymmetric":
    "Ask the client to face the camera and take a second picture: what stays is the face.",
  "chin-raised": "Bring the camera to the height of the eyes, or ask for a lower chin.",
  "chin-lowered": "Bring the camera to the height of the eyes, or ask for a higher chin.",
  "eye-closed": "Ask the client to open the eyes without raising the brows.",
  "looking-aside": "Ask the client to look into the camera.",
  "looking-up": "Ask the client to look into the camera, held at the height of the eyes.",
  "looking-down": "Ask the client to look into the camera, held at the height of the eyes.",
  "lips-apart": "Ask the client to close the lips without pressing them.",
  "brow-raised": "Seat the client upright, let the forehead rest, and take the picture again.",
  "brow-lowered": "Seat the client upright, let the forehead rest, and take both pictures again.",
  "too-few-pixels":
    "Fill the picture with the face: zoom in rather than come nearer, or use a better camera.",
  "camera-too-near": "Step back and zoom in.",
  "camera-distance-unknown": "It takes {need}.",
  "eyes-narrow-for-irises": "Step back and zoom in; check eye corners and edges of the irises.",
  "eyes-wide-for-irises":
    "Check that the eyes are open; check eye corners and edges of the irises.",
  "irises-differ": "Check the edges of both irises.",
  "pupil-distance-implausible": "Check the scale by ruler, and the pupils.",
  "iris-width-implausible": "Check the scale by ruler, and the edges of the irises.",
  "canthal-index-implausible": "Check the four eye corners.",
  "sides-swapped": "Say how the picture is mirrored, or exchange right and left.",
  "sides-unlike": "Check the landmarks: some lie far off, or belong to another name.",
  "few-landmarks": "Give more landmarks, or look at the picture yourself.",
  "not-checked": "It takes {need}.",
  declared: "Check every distance again upright.",
  "not-declared": "Seat the client upright with a relaxed face, and declare it.",
  "declared-contrary":
    "Seat the client upright, let the forehead rest, and take the picture again.",
  "declaration-questioned": "Ask again, and measure both brows by ruler, upright.",
} as const;

/** What is looked at, where the answer is that it was not. */
export const QUESTIONS = {
  sides: "Whether right and left are the client's own",
  roll: "Whether the head is tilted",
  yaw: "Whether the head is turned",
  pitch: "Whether the chin is raised or lowered",
  eyeOpening: "Whether the {side} eye is open",
  gazeAcross: "Whether the eyes look aside",
  gazeUp: "Whether the eyes look up or down",
  mouthOpening: "Whether the lips are closed",
  browHeight: "Whether the {brow} raised",
  resolution: "Whether the picture has enough pixels",
  cameraDistance: "How near the camera was",
  irisesAcross: "Whether eyes and irises fit together",
  irisDifference: "Whether the irises are equal",
  pupilDistance: "Whether the pupils are as far apart as people's",
  irisWidth: "Whether the irises are as wide as people's",
  canthalIndex: "Whether the eye corners are spaced as people's",
} as const;

/** Brows, as whatever is asked of them. */
export const BROWS = {
  both: "brows are",
  right: "right brow is",
  left: "left brow is",
} as const;

/** What it takes to look at it. */
export const NEEDS = {
  roll: "both inner eye corners and a landmark of nose, mouth or chin",
  yaw: "landmarks with depth, or sellion or glabella and the four corners of the eyes",
  pitch: "depth at the outer eye corners and the corners of the mouth",
  eyeOpening: "both corners of the eye and the margins of both lids",
  openEyes: "open eyes",
  gazeAcross: "the pupils themselves, no stand-ins, and all corners of the eyes",
  gazeUp: "the pupils themselves, no stand-ins, and all corners of the eyes",
  mouthOpening:
    "the margins of both lips (stomion superius and inferius) and both corners of the mouth",
  baseline: "another capture of the same client, upright and relaxed, as baseline",
  browHeight: "its upper border and all corners of the eyes in both captures",
  resolution: "a scale, or the edges of an iris",
  cameraDistance: "its distance, or its focal length in pixels and a scale",
  irisesAcross: "both edges of both irises and both outer eye corners",
  irisDifference: "both edges of both irises",
  pupilDistance: "both pupils, and a scale or the edges of an iris",
  irisWidth: "both edges of both irises and a scale that does not come from them",
  canthalIndex: "the four corners of the eyes",
} as const;

/** What landmarks alone tell, in a word each. */
export const TOLD_BY_LANDMARKS = {
  sides: "sides",
  roll: "tilt",
  yaw: "turn",
  pitch: "chin",
  eyeOpening: "open eyes",
  gaze: "gaze",
  mouthOpening: "lips",
  irises: "irises",
  canthalIndex: "eye corners",
} as const;

/** What may be declared of a client. */
export const DECLARED = {
  upright: "the client sat upright",
  relaxed: "the client's face was relaxed",
} as const;

/** The contrary of what may be declared. */
export const CONTRARY = {
  upright: "the client did not sit upright",
  relaxed: "the client's face was not relaxed",
} as const;

/** Where the depth of a brow is known from. */
export const DEPTH_KNOWN = { landmarks: "as its landmarks say", usual: "as is usual" } as const;

/** An upper limit that is not there. */
export const UNLIMITED = "any number of";
