import { DOTS, GUIDES, MEASURE_KINDS, MEASURES } from "../../landmarks/index.js";
import { BROW_ARCHES, MARKS } from "../../landmarks/internal.js";
import type { Terms } from "../catalogue/terms.js";

/** Words of results; dots, measures and guides bring theirs along in their tables. */
export const TERMS: Terms = /* @__PURE__ */ terms();

function terms(): Terms {
  return {
    sides: { right: "right", left: "left" },
    dots: wordsIn(DOTS),
    landmarks: {
      endocanthion: "inner eye corner (endocanthion)",
      exocanthion: "outer eye corner (exocanthion)",
      pupil: "pupil",
      limbusMedial: "inner edge of the iris",
      limbusLateral: "outer edge of the iris",
      alare: "nose wing (alare)",
      cheilion: "mouth corner (cheilion)",
      upperLid: "upper lid",
      lowerLid: "lower lid",
      brow: "brow",
      glabella: "between the brows (glabella)",
      sellion: "root of the nose (sellion)",
      pronasale: "tip of the nose (pronasale)",
      subnasale: "base of the nose (subnasale)",
      labialeSuperius: "upper lip (labiale superius)",
      stomion: "middle of the mouth (stomion)",
      stomionSuperius: "upper lip's margin (stomion superius)",
      stomionInferius: "lower lip's margin (stomion inferius)",
      menton: "chin (menton)",
    },
    marks: MARKS,
    stations: { start: "start", body: "body", arch: "arch" },
    measures: wordsIn(MEASURES),
    tooMuch: eachIn(MEASURE_KINDS, ({ more }) => more),
    tooLittle: eachIn(MEASURE_KINDS, ({ less }) => less),
    rules: { ...wordsIn(GUIDES), ...BROW_ARCHES },
    tailHeights: {
      natural: "at the height of the brow there",
      "level-with-lower-start": "level with the lower start dot",
      "level-with-upper-start": "level with the upper start dot",
    },
    archLimits: {
      "lateral-limbus-vertical": "outer edge of the iris",
      "eye-width-share": "outer edge of the iris (taken at 0.75 eye widths)",
      "exocanthion-vertical": "outer eye corner",
    },
    ways: { up: "up", down: "down", outward: "outward", inward: "inward" },
    levels: { higher: "higher", lower: "lower" },
    leads: { right: "right leads", left: "left leads", middle: "both meet half-way" },
    carries: { mirror: "mirrored", measure: "carried by measure" },
    heightsOf: {
      right: "heights of the right brow",
      left: "heights of the left brow",
      middle: "heights half-way",
      higher: "heights of the higher brow",
    },
    wishes: {
      lift: "Lift",
      lower: "Lower",
      lengthen: "Lengthen",
      shorten: "Shorten",
      fuller: "Fuller",
      thinner: "Thinner",
      "wider-apart": "Wider apart",
      closer: "Closer together",
      "higher-arch": "Higher arch",
      "flatter-arch": "Flatter arch",
    },
    choices: {
      lead: "leading brow",
      carry: "way of carrying",
      levels: "levels",
      levelLimit: "limit of levels",
      start: "start",
      arch: "arch",
      tail: "tail",
      eyeWidthShare: "share of the eye’s width",
      frontShare: "front share",
      tailHeight: "height of the tail end",
      thickness: "thickness",
      shape: "shape",
      noseBent: "bent nose",
      pins: "pins",
      rule: "rule",
      tolerances: "tolerances",
      declared: "what was declared",
    },
    shapes: {
      angularity: "angularity",
      startSlope: "slope at the start",
      tailSlope: "slope at the tail end",
      frontRoundness: "roundness of the front",
    },
    scaleSources: {
      reference: "reference",
      ruler: "ruler",
      marker: "marker",
      iris: "iris",
      combined: "combined",
      given: "given",
    },
    outcomes: { within: "within", outside: "outside", undecided: "undecided" },
    units: { degrees: "degrees", "": "" },
    lengthUnits: { mm: "Millimetres", cm: "Centimetres", inch: "Inches" },
    questions: {
      sides: "Whether right and left are the client's own",
      roll: "Whether the head is tilted",
      yaw: "Whether the head is turned",
      pitch: "Whether the chin is raised or lowered",
      "eyeOpening-right": "Whether the right eye is open",
      "eyeOpening-left": "Whether the left eye is open",
      gazeAcross: "Whether the eyes look aside",
      gazeUp: "Whether the eyes look up or down",
      mouthOpening: "Whether the lips are closed",
      browHeight: "Whether the brows are raised",
      "browHeight-right": "Whether the right brow is raised",
      "browHeight-left": "Whether the left brow is raised",
      resolution: "Whether the picture has enough pixels",
      cameraDistance: "How near the camera was",
      irisesAcross: "Whether eyes and irises fit together",
      irisDifference: "Whether the irises are equal",
      pupilDistance: "Whether the pupils are as far apart as people's",
      irisWidth: "Whether the irises are as wide as people's",
      canthalIndex: "Whether the eye corners are spaced as people's",
    },
    needs: {
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
    },
    toldByLandmarks: {
      sides: "sides",
      roll: "tilt",
      yaw: "turn",
      pitch: "chin",
      eyeOpening: "open eyes",
      gaze: "gaze",
      mouthOpening: "lips",
      irises: "irises",
      canthalIndex: "eye corners",
    },
    declared: { upright: "the client sat upright", relaxed: "the client's face was relaxed" },
    contrary: {
      upright: "the client did not sit upright",
      relaxed: "the client's face was not relaxed",
    },
    standIns: {},
    depthOrigins: { landmarks: "as its landmarks say", usual: "as is usual" },
  };
}

/** What an artist calls everything in a table. */
function wordsIn<Name extends string>(
  table: Readonly<Record<Name, { readonly words: string }>>,
): Readonly<Record<Name, string>> {
  return eachIn(table, ({ words }) => words);
}

function eachIn<Name extends string, Row>(
  table: Readonly<Record<Name, Row>>,
  wordsOf: (row: Row) => string,
): Readonly<Record<Name, string>> {
  const rows = Object.entries<Row>(table).map(([name, row]) => [name, wordsOf(row)]);
  return Object.fromEntries(rows) as Record<Name, string>;
}
