import { fc, test } from "@fast-check/vitest";
import {
  CAPTURE_LIMITS,
  checkCapture,
  checkDrawn,
  drawPlan,
  faceFrame,
  faceFromMillimetres,
  fitMidline,
  fitRuler,
  fromLandmarks,
  fromMarkup,
  FACE_MIDLINE,
  guideLine,
  measured,
  measuresFromReadings,
  mm,
  outline,
  planBrows,
  planDots,
  planOnPhoto,
  px,
  requirePlannable,
  scaleFromIris,
  scaleFromReference,
  scaleFromRuler,
  shapeFindings,
  turnToFront,
  workSteps,
  WORKING_TOLERANCES,
} from "brow-geometry";
import { scaleFromMarker } from "brow-geometry/calibration";
import {
  drawAreas,
  drawCaptures,
  drawCarried,
  drawChoices,
  drawDimensions,
  drawPractice,
  drawResult,
  drawSheet,
  drawStrip,
  drawVariants,
} from "brow-geometry/drawing";
import { gradeMap, RULER_SHEET_RUBRIC } from "brow-geometry/grading";
import { carryInto, grantWishes, SHAPE_LIMITS, weighChoices } from "brow-geometry/mapping";
import { ENGLISH } from "brow-geometry/words";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";
import { faceOfMesh, frontalMesh } from "../support/sample-faces.js";
import { syntheticPlan } from "../support/synthetic-plan.js";

const photo = requirePlannable(faceOfMesh(frontalMesh));
const scale = scaleFromIris(photo);
const frame = faceFrame(photo, scale);
const { face, dots } = syntheticPlan;
const points = frontalMesh.landmarks;
const image = frontalMesh.image;
const readings = measuresFromReadings({ left: { front: mm(33) } });
const marks = [10, 20, 30].map((at) => ({ at: px([at, 0]), reading: mm(at) }));
const rim = px([
  [560, 200],
  [520, 240],
  [480, 200],
  [520, 160],
  [548, 228],
]);
const record = { shapeLimits: SHAPE_LIMITS, findings: [], preview: true };
const depth = { nearer: measured(mm(1), mm(1)), cameraDistance: measured(mm(900), mm(50)) };

const weighed = weighChoices(face, [{}]);

type Door = readonly [
  name: string,
  field: string,
  call: (options: never) => unknown,
  /** Every option that there is, with a value that suits it. */
  options: object,
];

const CHOICES = {
  lead: "left",
  carry: "mirror",
  levels: "middle",
  levelLimit: mm(9),
  start: "endocanthion-vertical",
  arch: "natural",
  tail: "alare-through-exocanthion",
  keepHair: mm(1),
  eyeWidthShare: 0.9,
  frontShare: 0.6,
  tailHeight: "natural",
  thickness: { start: mm(8), body: mm(7), arch: mm(6) },
  shape: { angularity: 0.2 },
  noseBent: false,
  pins: [],
  rule: "simple",
  tolerances: WORKING_TOLERANCES,
  declared: { upright: true, relaxed: true },
};
const SHAPE = { angularity: 0.3, startSlope: 1, tailSlope: 1, frontRoundness: 0, softFront: mm(0) };
const FROM_POINTS = {
  coordinates: "normalised",
  image,
  mirrored: "no",
  alare: "none",
  missing: [],
  uncertainty: { default: mm(1), landmarks: { pupil: mm(1) } },
  correct: false,
  ringFactor: measured(1, 0),
};
const TURN = { mostYaw: 45, cameraAxis: px([500, 500]), prominence: mm(15) };
const REFERENCE = { u: mm(0.1), placement: px(1), depth };

const SCREEN = { width: 375, leastType: 11 };
const LOOK = { theme: "dark", title: "Invented", words: ENGLISH };
const ON_SCREEN = { ...LOOK, screen: SCREEN };
const ON_PAPER = { ...LOOK, paper: "A4", leastType: 8, nonce: "invented" };
const PLAN_DRAWING = {
  ...ON_SCREEN,
  view: "face",
  around: syntheticPlan,
  legend: false,
  overlap: true,
  check: checkDrawn(syntheticPlan, { dots }),
  photo: undefined,
};
const RESULT_DRAWING = {
  ...ON_SCREEN,
  stable: ["endocanthion", "exocanthion"],
  scale: "free",
  scaleU: 0,
  tolerances: WORKING_TOLERANCES,
  rule: "simple",
  confidence: 0.9,
};
const SHEET = {
  ...ON_PAPER,
  rulerZero: mm(2),
  fields: [],
  overlap: true,
  check: PLAN_DRAWING.check,
};

const DOORS: readonly Door[] = [
  ["planDots", "choices", (given) => planDots(face, given), CHOICES],
  ["planBrows", "choices", (given) => planBrows(face, given), CHOICES],
  ["planOnPhoto", "choices", (given) => planOnPhoto(photo, frame, given), CHOICES],
  ["planDots", "shape", (shape) => planDots(face, { shape }), SHAPE],
  ["planDots", "thickness", (thickness) => planDots(face, { thickness }), CHOICES.thickness],
  ["planDots", "declared", (declared) => planDots(face, { declared }), CHOICES.declared],
  ["planBrows", "options", (given) => planBrows(face, {}, given), record],
  ["planOnPhoto", "options", (given) => planOnPhoto(photo, frame, {}, given), record],
  ["shapeFindings", "limits", (given) => shapeFindings(syntheticPlan, given), SHAPE_LIMITS],
  [
    "fromMarkup",
    "options",
    (given) => fromMarkup("mesh-478", points, { ...FROM_POINTS, ...(given as object) } as never),
    FROM_POINTS,
  ],
  [
    "fromLandmarks",
    "options",
    (given) =>
      fromLandmarks({}, { right: {}, left: {} }, {
        coordinates: "pixels",
        ...(given as object),
      } as never),
    { coordinates: "pixels", image, mirrored: "no", correct: false, ringFactor: measured(1, 0) },
  ],
  [
    "fromMarkup",
    "uncertainty",
    (uncertainty) =>
      fromMarkup("mesh-478", points, { coordinates: "normalised", image, uncertainty }),
    FROM_POINTS.uncertainty,
  ],
  [
    "faceFromMillimetres",
    "options",
    (given) =>
      faceFromMillimetres(
        {
          right: { endocanthion: [-16, 0] },
          left: { endocanthion: [16, 0] },
          midline: {},
        },
        { axes: { left: "x", up: "y" }, ...(given as object) },
      ),
    { axes: { left: "x", up: "y" }, source: undefined },
  ],
  [
    "faceFrame",
    "options",
    (given) => faceFrame(photo, scale, given),
    { midline: frame.midline, cameraAxis: px([500, 500]), prominence: mm(15) },
  ],
  ["turnToFront", "options", (given) => turnToFront(photo, scale, given), TURN],
  [
    "fitMidline",
    "options",
    (given) => fitMidline(photo, given),
    { method: "given", given: [px([500, 100]), px([500, 900])], givenU: px(1) },
  ],
  [
    "scaleFromIris",
    "options",
    (given) => scaleFromIris(photo, given),
    {
      width: measured(mm(11.7), mm(0.4)),
      ringFactor: measured(1, 0),
      placement: px(1),
      cameraDistance: measured(mm(900), mm(50)),
    },
  ],
  [
    "scaleFromReference",
    "options",
    (given) => scaleFromReference(px([0, 0]), px([400, 0]), mm(50), given),
    REFERENCE,
  ],
  ["scaleFromMarker", "options", (given) => scaleFromMarker(rim, mm(10), given), REFERENCE],
  ["fitRuler", "options", (given) => fitRuler(marks, given), { placement: px(0.1), depth }],
  [
    "scaleFromRuler",
    "options",
    (given) => scaleFromRuler(marks, given),
    { placement: px(0.1), depth },
  ],
  [
    "measuresFromReadings",
    "options",
    (given) => measuresFromReadings({ left: { front: mm(33) } }, given),
    { instrument: "ruler", zero: mm(0), graduation: mm(0.5), pencil: mm(0) },
  ],
  [
    "guideLine",
    "options",
    (given) => guideLine(face, "left", "endocanthion-vertical", given),
    { share: 0.9 },
  ],
  ["outline", "options", (given) => outline(dots.left, given), SHAPE],
  [
    "checkCapture",
    "options",
    (given) => checkCapture(photo, { purpose: "map", ...(given as object) }),
    {
      purpose: "map",
      scale,
      cameraDistance: measured(mm(900), mm(50)),
      focalLength: px(3000),
      baseline: photo,
      declared: {},
      tolerance: mm(1),
      limits: {},
    },
  ],
  [
    "checkCapture",
    "limits",
    (limits) => checkCapture(photo, { purpose: "map", limits }),
    CAPTURE_LIMITS.map,
  ],
  ["weighChoices", "options", (given) => weighChoices(face, [{}], given), { lidRoom: undefined }],
  ["grantWishes", "options", (given) => grantWishes(face, [], {}, given), { shapeLimits: {} }],
  ["workSteps", "options", (given) => workSteps(syntheticPlan, given), { rulerZero: mm(2) }],
  [
    "checkDrawn",
    "options",
    (given) => checkDrawn(syntheticPlan, { dots }, given),
    { tolerances: WORKING_TOLERANCES, rule: "simple", confidence: 0.9 },
  ],
  [
    "gradeMap",
    "options",
    (given) => gradeMap({ readings }, { kind: "readings", readings }, given),
    {
      rubric: RULER_SHEET_RUBRIC,
      passMark: 0.6,
      tolerances: WORKING_TOLERANCES,
      rule: "simple",
      confidence: 0.9,
    },
  ],
  ["drawPlan", "options", (given) => drawPlan(syntheticPlan, given), PLAN_DRAWING],
  ["drawPlan", "screen", (given) => drawPlan(syntheticPlan, { screen: given }), SCREEN],
  ["drawStrip", "options", (given) => drawStrip(syntheticPlan, given), ON_SCREEN],
  ["drawDimensions", "options", (given) => drawDimensions(syntheticPlan, given), ON_SCREEN],
  ["drawAreas", "options", (given) => drawAreas(syntheticPlan, [], given), ON_SCREEN],
  [
    "drawCarried",
    "options",
    (given) => drawCarried(carryInto(syntheticPlan, face), face, given),
    ON_SCREEN,
  ],
  ["drawCaptures", "options", (given) => drawCaptures([{ name: "a", face }], given), ON_SCREEN],
  [
    "drawVariants",
    "options",
    (given) => drawVariants(face, weighed, given),
    { ...ON_SCREEN, columns: 1, current: 0 },
  ],
  [
    "drawResult",
    "options",
    (given) => drawResult(syntheticPlan, [{ name: "healed", weeks: 6, face }], given),
    RESULT_DRAWING,
  ],
  ["drawChoices", "options", (given) => drawChoices(face, weighed, given), ON_PAPER],
  [
    "drawPractice",
    "options",
    (given) => drawPractice(syntheticPlan, given),
    { ...ON_PAPER, fields: [] },
  ],
  ["drawSheet", "options", (given) => drawSheet(syntheticPlan, given), SHEET],
];

describe.each(DOORS)("%s, %s", (name, field, call, options) => {
  const known = Object.keys(options);

  test.prop([fc.string({ maxLength: 20 }), fc.anything()], { numRuns: 20 })(
    "refuse what has another name, and name it",
    (other, value) => {
      if (known.includes(other) || UNUSED.includes(other)) return;
      const { code, detail } = refusal(() => call({ [other]: value } as never));
      expect(code).toBe("out-of-range");
      expect(detail).toMatchObject({ where: name, field: `${field}.${other}` });
    },
  );

  it.each(known)("take %s", (one) => {
    const given = { [one]: (options as Record<string, unknown>)[one] };
    const alone = NEEDS_ALL.has(field) || name === "fitMidline" ? options : given;
    expect(() => call(alone as never)).not.toThrow();
  });
});

/** Options of other functions that the table of a door does not try. */
const UNUSED: readonly string[] = ["alare", "missing", "uncertainty"];
/** What is given whole, or not at all. */
const NEEDS_ALL: ReadonlySet<string> = new Set(["thickness", "screen"]);

it("puts the names first that share most with the one given", () => {
  const refusalOf = (given: object): string => refusal(() => planDots(face, given)).message;
  expect(refusalOf({ levellimit: 1 })).toContain("needs another name: one of levelLimit, levels,");
  expect(refusalOf({ tailheight: "natural" })).toContain("needs another name: one of tailHeight,");
  const mirrored = refusal(() =>
    fromMarkup("mesh-478", points, { ...FROM_POINTS, miroured: "frame" } as never),
  );
  expect(mirrored.message).toContain(
    'fromMarkup: options.miroured is "frame"; needs another name: one of mirrored,',
  );
});

it.each([
  ["a word", "left"],
  ["nothing", null],
  ["a number", 5],
])("refuses %s where choices are asked for", (_, given) => {
  const { detail } = refusal(() => planOnPhoto(photo, frame, given as never));
  expect(detail).toMatchObject({ where: "planOnPhoto", field: "choices", need: "an object" });
});

it("refuses a way to find a midline that there is not", () => {
  const { detail } = refusal(() => fitMidline(photo, { method: "miror" as never }));
  expect(detail).toMatchObject({ where: "fitMidline", field: "method", value: "miror" });
});

it("refuses a line as a midline, which is none of its options", () => {
  expect(refusal(() => faceFrame(photo, scale, FACE_MIDLINE as never)).detail.field).toBe(
    "options.through",
  );
});
