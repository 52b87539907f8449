import { type DecisionRule, type Limits, NOTICED_BY_CLIENTS } from "../units/index.js";

/**
 * What a capture is for: `"map"`, a plan that is checked by hand on the client; `"record"`, a picture
 * that later ones are compared with; `"research"`, measuring.
 */
export type CapturePurpose = "map" | "record" | "research";

/** What is checked against a limit. */
export type LimitedCheck =
  /** Degrees: the midline's tilt in the picture. */
  | "roll"
  /** Degrees: how far the face is turned to the client's left. */
  | "yaw"
  /** Degrees: how far the chin is raised. */
  | "pitch"
  /** Greatest gap between the lids, over the eye's width. */
  | "eyeOpening"
  /** How far both pupils stand towards the client's left, over the eye's width. */
  | "gazeAcross"
  /** How far both pupils stand above the line through the corners of the eye, over its width. */
  | "gazeUp"
  /** Gap between the lips, over the width of the mouth. */
  | "mouthOpening"
  /** Millimetres: how much higher than in the baseline a brow stands. */
  | "browHeight"
  /** Pixels that the tolerance wanted is wide. */
  | "resolution"
  /** Millimetres from the camera to the eyes. */
  | "cameraDistance"
  /** Distance of the outer eye corners, over the width of an iris. */
  | "irisesAcross"
  /** Width of the left iris less that of the right one, over their mean. */
  | "irisDifference"
  /** Millimetres between the pupils. */
  | "pupilDistance"
  /** Millimetres of iris that are seen, from edge to edge. */
  | "irisWidth"
  /** Distance of the inner eye corners over that of the outer ones, as a share. */
  | "canthalIndex"
  /** From the root of the nose to its base, over the distance of the outer eye corners. */
  | "noseHeight";

/** A limit of {@link checkCapture}: a parameter, with what follows where it is not kept. */
export interface CaptureLimit {
  readonly limits: Limits;
  /** `"simple"` takes the value as read, `"guarded"` asks for proof (`decide`). */
  readonly rule: DecisionRule;
  /** What it means to lie outside. */
  readonly severity: "retake" | "caution";
  /** `"derived"`: arithmetic from what is published in the source named. */
  readonly status: "published" | "derived" | "from memory" | "trade practice" | "ours";
  readonly source: string;
}

/** A limit for everything that is checked. */
export type CaptureLimits = { readonly [Check in LimitedCheck]: CaptureLimit };

const OURS = { status: "ours", source: "default of brow-geometry" } as const;

const PORTRAIT_POSE = {
  status: "from memory",
  source: "ISO/IEC 19794-5, full frontal portrait: yaw and pitch within 5°",
} as const;

const LENIENT = { rule: "simple", severity: "caution" } as const;
const STRICT = { rule: "simple", severity: "retake" } as const;
const PROVEN = { rule: "guarded", severity: "retake" } as const;
/** Said of what reads implausible, with a word of doubt where that is not proven. */
const DOUBTED = { rule: "guarded", severity: "caution" } as const;

/** Beyond these the scale, the landmarks or the camera's distance is to be doubted, not the client. */
const plausible = {
  // (31.4 − 3·2.5)/88.39 to (38.5 + 3·3.2)/88.39.
  canthalIndex: {
    limits: { lower: 0.27, upper: 0.55 },
    ...DOUBTED,
    status: "derived",
    source:
      "three standard deviations about the narrowest and the widest group mean of Plast Reconstr Surg Glob Open, PMC9029890, over the outer distance of BioMed Res Int 2013:821428",
  },
  irisDifference: { limits: around(0.15), ...DOUBTED, ...OURS },
  // A pinhole 300 mm away draws corners of the eyes that lie 10 mm behind the irises 3 % too narrow, less
  // than people differ: only a camera far nearer than that shows here.
  // (88.39 ± 3.74)/11.71 in women and (93.00 ± 5.56)/11.71 in men, each with the iris's 3.6 %: 7.5 ±
  // 0.4 and 7.9 ± 0.6. Three standard deviations.
  irisesAcross: {
    limits: { lower: 6.3, upper: 9.6 },
    ...DOUBTED,
    status: "derived",
    source:
      "three standard deviations about Hong Kong periocular norms, BioMed Res Int 2013:821428, over Rüfer et al., Cornea 2005;24:259–261",
  },
  irisWidth: {
    limits: { lower: 10.3, upper: 13.3 },
    ...DOUBTED,
    status: "derived",
    source: "three standard deviations, Hashemi et al., J Curr Ophthalmol 2015;27:21–24",
  },
  // 0.39 to 0.68 on 123 faces by hand and by two detectors, turned ones among them; of 102, read from a picture
  // of three by four with its width and height exchanged, at most 0.36, or at least 0.82.
  noseHeight: {
    limits: { lower: 0.37, upper: 0.72 },
    rule: "guarded",
    severity: "retake",
    ...OURS,
  },
  pupilDistance: {
    limits: { lower: 45, upper: 80 },
    ...DOUBTED,
    status: "published",
    source: "nearly all adults, Dodgson, Proc SPIE 5291:36–46, 2004",
  },
} as const satisfies Partial<CaptureLimits>;

/** What eyes that look ahead do; chosen on 21 faces of six photos. */
const gaze = {
  gazeAcross: { limits: around(0.08), ...LENIENT, ...OURS },
  gazeUp: { limits: { lower: -0.02, upper: 0.16 }, ...LENIENT, ...OURS },
} as const satisfies Partial<CaptureLimits>;

/** Closed eyes read about 0.1, lowered ones under 0.2, open ones from 0.25; likewise. */
const openEyes = { lower: 0.2 };

/** Closed lips read up to 0.02, parted ones from 0.14; likewise. */
const closedLips = { upper: 0.08 };

const turned = { limits: around(5), ...PROVEN, ...PORTRAIT_POSE } as const;

/** No single picture proves a pitch: profiles differ by as much as the limit. */
const raisedChin = { limits: around(5), ...LENIENT, ...PORTRAIT_POSE } as const;

/**
 * Rounding to the grid of pixels spoils a difference between the sides by 0.67 / n of a tolerance of
 * n pixels, at 95 % (1.645·√2/√12: GUM 4.3.7): 22 % at 3 pixels, 13 % at 5, 7 % at 10.
 */
function pixels(lower: number): CaptureLimit {
  return { limits: { lower }, ...STRICT, ...OURS };
}

/** From here a brow, 25 mm deep, is drawn 5 % more largely at its start than at its tail. */
const ARMS_LENGTH: CaptureLimit = { limits: { lower: 500 }, ...LENIENT, ...OURS };

const PORTRAIT_DISTANCE: CaptureLimit = {
  limits: { lower: 1500 },
  ...LENIENT,
  status: "published",
  source: "portrait distance taken as free of distortion, JAMA Facial Plast Surg 2018",
};

const record: CaptureLimits = {
  ...plausible,
  ...gaze,
  roll: { limits: around(5), ...PROVEN, ...OURS },
  yaw: turned,
  pitch: raisedChin,
  eyeOpening: { limits: openEyes, ...STRICT, ...OURS },
  mouthOpening: { limits: closedLips, ...STRICT, ...OURS },
  browHeight: { limits: around(1), ...LENIENT, ...OURS },
  resolution: pixels(5),
  cameraDistance: PORTRAIT_DISTANCE,
};

/** The limits of each purpose: defaults, each with its source. */
export const CAPTURE_LIMITS: { readonly [Purpose in CapturePurpose]: CaptureLimits } = {
  map: {
    ...plausible,
    ...gaze,
    // The midline corrects a tilt; what remains is whether the client sat upright.
    roll: { limits: around(10), ...LENIENT, ...OURS },
    yaw: { ...turned, ...STRICT },
    pitch: { limits: around(10), ...LENIENT, ...OURS },
    eyeOpening: { limits: openEyes, ...LENIENT, ...OURS },
    mouthOpening: { limits: closedLips, ...LENIENT, ...OURS },
    browHeight: {
      limits: NOTICED_BY_CLIENTS.tolerances.position.limits,
      ...LENIENT,
      status: "published",
      source: NOTICED_BY_CLIENTS.tolerances.position.source,
    },
    resolution: pixels(3),
    cameraDistance: ARMS_LENGTH,
  },
  record,
  research: {
    ...record,
    browHeight: { ...record.browHeight, ...STRICT },
    resolution: pixels(10),
    cameraDistance: { ...PORTRAIT_DISTANCE, ...STRICT },
  },
};

function around(halfWidth: number): Limits {
  return { lower: -halfWidth, upper: halfWidth };
}
