import * as root from "brow-geometry";
import * as calibration from "brow-geometry/calibration";
import * as drawing from "brow-geometry/drawing";
import * as files from "brow-geometry/files";
import * as geometry from "brow-geometry/geometry";
import * as grading from "brow-geometry/grading";
import * as landmarks from "brow-geometry/landmarks";
import * as mapping from "brow-geometry/mapping";
import * as proportions from "brow-geometry/proportions";
import * as schema from "brow-geometry/schema";
import * as symmetry from "brow-geometry/symmetry";
import * as units from "brow-geometry/units";
import * as words from "brow-geometry/words";
import { type Brow, measured, mm, px } from "brow-geometry";
import { expect, it } from "vitest";
import { refusal } from "../support/refusal.js";
import { syntheticDots } from "../support/synthetic-dots.js";
import { syntheticFace } from "../support/synthetic-face.js";
import { syntheticPlan as plan } from "../support/synthetic-plan.js";
import { exportedSymbols, isValue } from "./exported-symbols.js";

const NAN = mm(Number.NaN);
const FLAT = { kind: "flat" } as const;
const POINT = mm([[15, 20]]);
const BORDER = mm([
  [15, 20],
  [58, 18],
]);
const ON_ONE_PLACE = mm([
  [15, 20],
  [15, 20],
]);

const face = syntheticFace();
const photo = root.requirePlannable(
  landmarks.mapFace(face, ([x, y]) => px([500 + 10 * x, 500 - 10 * y])),
);
const scale = root.scaleFromReference(px([0, 0]), px([100, 0]), mm(10));
const frame = root.faceFrame(photo, scale);
const dots = { right: syntheticDots("right"), left: syntheticDots("left") };
const drawn = root.outline(dots.left);
const record = root.recordOf({ kind: "face", face });
const nobody = { right: {}, left: {}, midline: {} };
const oneBorder = (upper: Brow<"mm">["upper"]): typeof face => ({
  ...face,
  left: { ...face.left, brow: { ...face.left.brow, upper } },
});
const swapped = { ...photo, right: photo.left, left: photo.right };
const readings = (u: number) => ({
  right: { front: { value: 29, u } },
  left: { front: { value: 30, u } },
});
const unsure = readings(Number.NaN);
const unproven = { confidence: 2 };
const twice = { image: "a\nb", points: [[Number.NaN, 1]] } as never;
/** Points in line have no circle, no ellipse and no width. */
const inLine = px([
  [0, 0],
  [10, 0],
  [20, 0],
  [30, 0],
  [40, 0],
]);
const { endocanthion: _, ...withoutInner } = face.left;
const collapsed = root.requirePlannable(landmarks.mapFace(face, () => mm([1, 2])));
const noWidth = { upperStart: mm([15, 20]), upperArch: mm([15, 20]), tailEnd: mm([15, 20]) };
/** So near that the brows would lie behind it. */
const near = { distance: mm(10), axis: mm([0, 0]), skin: FLAT, prominence: mm(15) };
/** Dots that no outline runs through. */
const crooked = { ...dots, left: { ...dots.left, tailEnd: dots.left.upperStart } };
const crookedPlan = { ...plan, dots: crooked };

/** Calls that are refused, by what an inner function refuses where there is one: by the name called. */
const REFUSED: Readonly<Record<string, readonly (() => unknown)[]>> = {
  // units
  averageOf: [() => root.averageOf([]), () => root.averageOf([{ value: 1, u: -1 }])],
  decide: [
    () => root.decide({ value: 1, u: -1 }, { upper: 1 }),
    () => root.decide({ value: 1, u: 1 }, { upper: 1 }, unproven),
  ],
  formatLength: [() => root.formatLength(NAN)],
  measured: [() => measured(1, -1)],
  measuredPoint: [() => units.measuredPoint(mm([1, 2]), mm(-1))],
  mm: [() => mm("5" as never), () => mm([[1, "2"]] as never)],
  parseLength: [() => root.parseLength("wide")],
  px: [() => root.px(undefined as never)],
  propagate: [() => units.propagate(() => 1, { a: { value: 1, u: -1 } })],
  propagateByMonteCarlo: [
    () => units.propagateByMonteCarlo(() => 1, { a: { value: 1, u: -1 } }, { seed: 1 }),
  ],
  readCaliper: [() => root.readCaliper(NAN)],
  readRuler: [() => root.readRuler(NAN)],
  // geometry
  areaBetween: [() => geometry.areaBetween(BORDER, POINT)],
  bestMirrorLine: [() => geometry.bestMirrorLine([])],
  bestMirrorPlane: [() => geometry.bestMirrorPlane([])],
  densify: [() => geometry.densify(BORDER, NAN), () => geometry.densify(POINT, mm(1))],
  distanceFromPolyline: [() => geometry.distanceFromPolyline(mm([1, 2]), POINT)],
  fitCircle: [() => geometry.fitCircle(inLine)],
  fitEllipse: [() => geometry.fitEllipse(inLine)],
  fitLine: [() => geometry.fitLine(ON_ONE_PLACE)],
  fitRobustly: [() => geometry.fitRobustly([], [], 1)],
  fitSimilarity: [() => geometry.fitSimilarity(ON_ONE_PLACE, BORDER)],
  intersectPolyline: [() => geometry.intersectPolyline(root.FACE_MIDLINE, POINT)],
  lineAlong: [() => geometry.lineAlong(mm([1, 2]), [0, 0])],
  lineThrough: [() => geometry.lineThrough(mm([1, 2]), mm([1, 2]))],
  pointAlong: [() => geometry.pointAlong(POINT, mm(1))],
  separation: [
    () => geometry.separation(BORDER, POINT),
    () => geometry.separation(BORDER, BORDER, { step: mm(0) }),
  ],
  // landmarks
  correctIrises: [
    () => landmarks.correctIrises(face, { value: 1, u: -1 }),
    () => landmarks.correctIrises(face, { value: 0, u: 1 }),
  ],
  describeMarkup: [() => landmarks.describeMarkup("none" as never)],
  faceFromMillimetres: [() => root.faceFromMillimetres({} as never, {} as never)],
  fromLandmarks: [() => root.fromLandmarks({}, { glabella: "none" } as never, {} as never)],
  fromMarkup: [() => root.fromMarkup("none" as never, [] as never, {} as never)],
  lengthOf: [() => landmarks.lengthOf(POINT, FLAT)],
  requireLandmarks: [() => root.requireLandmarks(nobody.left as typeof face.left, "pupil")],
  skinOf: [
    () => root.skinOf(nobody),
    () =>
      root.skinOf(
        landmarks.mapFace(face, ([x, y]) => mm([Math.sign(x) * (y > 20 ? 20 : 50), y, 1])),
      ),
  ],
  // calibration
  combineScales: [
    () => calibration.combineScales([]),
    () => calibration.combineScales([{ ...scale, u: -1 }, scale]),
    () =>
      calibration.combineScales(
        [scale, scale].map((one) => ({ ...one, cameraDistance: { value: mm(600), u: mm(-1) } })),
      ),
  ],
  fitRuler: [
    () => root.fitRuler([]),
    () =>
      root.fitRuler([
        { at: px([1, 1]), reading: mm(1) },
        { at: px([1, 1]), reading: mm(2) },
      ]),
  ],
  measuresFromReadings: [
    () => root.measuresFromReadings({ left: { front: "wide" } }),
    () => root.measuresFromReadings({ left: { front: { value: mm(30), u: mm(-1) } } }),
    () => root.measuresFromReadings({ left: { front: mm(-1) } }),
    () => root.measuresFromReadings({ left: { front: measured(mm(1), mm(9)), tail: mm(1) } }),
  ],
  scaleFromIris: [
    () => root.scaleFromIris(photo, { width: { value: mm(11), u: mm(-1) } }),
    () => root.scaleFromIris(photo, { placement: px(-1) }),
    () => root.scaleFromIris(photo, { cameraDistance: { value: mm(600), u: mm(-1) } }),
  ],
  scaleFromMarker: [
    () => calibration.scaleFromMarker(inLine, mm(10)),
    () => calibration.scaleFromMarker(inLine.slice(0, 2), mm(10), { u: mm(-1) }),
  ],
  scaleFromReference: [
    () => root.scaleFromReference(px([0, 0]), px([100, 0]), mm(10), { u: mm(-1) }),
    () => root.scaleFromReference(px([0, 0]), px([100, 0]), mm(10), { placement: px(-1) }),
  ],
  scaleFromRuler: [
    () => root.scaleFromRuler([]),
    () =>
      root.scaleFromRuler([
        { at: px([1, 1]), reading: mm(1) },
        { at: px([1, 1]), reading: mm(2) },
      ]),
  ],
  // symmetry
  carryBrow: [
    () => symmetry.carryBrow({ side: "left", dots: dots.left }, { method: "x" } as never),
    () =>
      symmetry.carryBrow(
        { side: "left", dots: crooked.left },
        { method: "measure", start: mm([-15, 20]), skin: FLAT },
      ),
  ],
  compareBorders: [
    () => symmetry.compareBorders({ right: { upper: POINT }, left: { upper: BORDER } }),
  ],
  compareCaptures: [
    () => symmetry.compareCaptures({ face, dots }, { face: nobody, dots }),
    () => symmetry.compareCaptures({ face, dots }, { face, dots }, unproven),
    () => symmetry.compareCaptures({ face, dots }, { face: collapsed, dots }),
  ],
  compareSides: [() => root.compareSides(unsure), () => root.compareSides(readings(1), unproven)],
  eyeCant: [
    () => root.eyeCant({ ...face, right: withoutInner, left: withoutInner }),
    () => root.eyeCant({ ...face, left: face.right }),
  ],
  faceFrame: [() => root.faceFrame(swapped, scale)],
  fitMidline: [
    () => root.fitMidline(nobody),
    () => root.fitMidline(face, { method: "given", points: ON_ONE_PLACE } as never),
  ],
  fitMidsagittalPlane: [() => symmetry.fitMidsagittalPlane(face)],
  halfFaces: [() => root.halfFaces({ ...face, midline: {} })],
  noseDeviation: [
    () => root.noseDeviation({ ...face, right: withoutInner, left: withoutInner } as typeof face),
    () =>
      root.noseDeviation({
        ...face,
        midline: { ...face.midline, subnasale: face.midline.sellion },
      }),
  ],
  objectSymmetry: [() => symmetry.objectSymmetry(nobody)],
  otherMidlines: [
    () =>
      symmetry.otherMidlines(
        { right: photo.left, left: photo.right, midline: photo.midline },
        root.fitMidline(photo),
      ),
  ],
  toFace: [() => root.toFace(px([500, 500]), { ...frame, camera: near })],
  toPhoto: [() => root.toPhoto(mm([10, 10]), { ...frame, camera: near })],
  turnToFront: [() => root.turnToFront(face), () => root.turnToFront(photo, scale)],
  // capture
  checkCapture: [
    () => root.checkCapture(photo, { purpose: "x" } as never),
    () => root.checkCapture(photo, { purpose: "map", scale: { ...scale, u: Number.NaN } }),
  ],
  headPose: [() => root.headPose(swapped)],
  // proportions
  archAtShare: [
    () => proportions.archAtShare(POINT, mm([15, 20]), mm([58, 18]), FLAT, 0.5),
    () => proportions.archAtShare(ON_ONE_PLACE, mm([15, 20]), mm([15, 20]), FLAT, 0.5),
  ],
  completeDots: [() => proportions.completeDots(dots.left, { start: mm(-1) } as never)],
  frontShare: [() => proportions.frontShare(mm(0), mm(0))],
  guideLine: [
    () => root.guideLine(face, "left", "eye-width-share", { share: -1 }),
    () =>
      root.guideLine(
        { ...face, left: { ...face.left, exocanthion: face.left.alare } },
        "left",
        "alare-through-exocanthion",
      ),
  ],
  measureFace: [() => root.measureFace({ right: noWidth, left: noWidth }, face, FLAT)],
  measureSide: [
    () => proportions.measureSide(noWidth, { side: "left", landmarks: face.left, skin: FLAT }),
  ],
  meetGuide: [
    () =>
      proportions.meetGuide(root.guideLine(face, "left", "lateral-limbus-vertical"), {
        upper: POINT,
      }),
  ],
  naturalDots: [
    () => root.naturalDots({ upper: POINT }),
    () => root.naturalDots({ upper: BORDER }, { u: mm(-1) }),
    () => root.naturalDots({ upper: BORDER, lower: POINT }),
  ],
  naturalOutline: [() => proportions.naturalOutline({ upper: POINT, lower: BORDER })],
  outline: [() => root.outline(crooked.left)],
  outlineBorders: [() => proportions.outlineBorders(drawn, mm(0))],
  overlapOutlines: [() => proportions.overlapOutlines(drawn, drawn, mm(0))],
  thickness: [
    () => proportions.thickness(mm([15, 20]), { upper: BORDER, lower: POINT }),
    () => proportions.thickness(mm([15, 20]), { upper: ON_ONE_PLACE, lower: BORDER }, "normal"),
  ],
  // mapping
  checkDrawn: [
    () => root.checkDrawn(plan, {}),
    () => root.checkDrawn(plan, { readings: readings(1) }, unproven),
  ],
  checkReadings: [
    () => root.checkReadings(readings(1), unsure),
    () => root.checkReadings(readings(1), readings(1), unproven),
  ],
  evenReadings: [
    () => mapping.evenReadings(readings(1), "x" as never),
    () => mapping.evenReadings(unsure, "left"),
    () => mapping.evenReadings(readings(1), "left", unproven),
  ],
  grantWishes: [
    () => mapping.grantWishes(face, [{ wish: "lift", amount: mm(NAN) }]),
    () => mapping.grantWishes(oneBorder(POINT), []),
  ],
  planBrows: [() => root.planBrows(face, { frontShare: 3 })],
  planDots: [() => root.planDots(face, { frontShare: 3 })],
  planOnPhoto: [() => root.planOnPhoto(photo, frame, { frontShare: 3 })],
  planOverlap: [
    () => root.planOverlap({ ...plan, face: oneBorder(POINT) }),
    () =>
      root.planOverlap({
        ...plan,
        dots: crooked,
      }),
  ],
  recordOf: [() => root.recordOf({ kind: "face", face }, { frontShare: 3 })],
  replay: [
    () => root.replay({ ...record, version: -1 as never }),
    () => root.replay({ ...record, choices: { frontShare: 3 } }),
  ],
  requirePlannable: [() => root.requirePlannable(nobody)],
  weighChoices: [
    () => mapping.weighChoices(face, [], { lidRoom: { most: NAN } }),
    () => mapping.weighChoices(oneBorder(POINT), [{}]),
  ],
  checkAreas: [() => mapping.checkAreas(plan, [{ name: "a", aim: "cover", edge: [] }])],
  widenOver: [
    () => mapping.widenOver(face, [], {}, { most: mm(NAN) }),
    () => mapping.widenOver(face, [{ name: "a", aim: "cover", edge: [] }], {}, { most: mm(1) }),
    () => mapping.widenOver(nobody as never, [], {}, { most: mm(1) }),
  ],
  drawAreas: [
    () => drawing.drawAreas(plan, [{ name: "a", aim: "cover", edge: [] }]),
    () => drawing.drawAreas(plan, [], { theme: "x" } as never),
  ],
  followBrow: [
    () => mapping.followBrow(nobody as never, "right"),
    () => mapping.followBrow(face, "x" as never),
  ],
  withHair: [() => mapping.withHair(nobody, {}, mm(0))],
  withoutHair: [
    () => mapping.withoutHair(nobody, "right"),
    () => mapping.withoutHair(nobody, "both"),
    () => mapping.withoutHair(face, "x" as never),
  ],
  carryInto: [() => mapping.carryInto(plan, nobody), () => mapping.carryInto(crookedPlan, face)],
  checkVisits: [() => mapping.checkVisits({ ...record, version: -1 as never })],
  compareMaps: [
    () => mapping.compareMaps({ face, dots }, { face: nobody, dots }),
    () => mapping.compareMaps({ face, dots }, { face, dots: { right: {}, left: {} } }),
  ],
  compareResult: [
    () => mapping.compareResult(plan, []),
    () => mapping.compareResult(plan, [{ name: "a", weeks: NAN, face }]),
    () => mapping.compareResult(plan, [{ name: "a", weeks: 6, face: oneBorder(POINT) }]),
  ],
  workSteps: [() => root.workSteps(plan, { rulerZero: NAN })],
  // drawing
  drawCaptures: [
    () => drawing.drawCaptures([]),
    () => drawing.drawCaptures([{ name: "a", face: oneBorder(POINT) }]),
    () =>
      drawing.drawCaptures([
        { name: "a", face },
        { name: "b", face: collapsed },
      ]),
  ],
  drawCarried: [
    () => drawing.drawCarried(mapping.carryInto(plan, face), face, { theme: "x" } as never),
  ],
  drawResult: [
    () => drawing.drawResult(plan, []),
    () => drawing.drawResult(plan, [{ name: "a", weeks: 6, face }], { theme: "x" } as never),
  ],
  drawChoices: [
    () => drawing.drawChoices(face, { rows: [], notes: [] }),
    () => drawing.drawChoices(oneBorder(mm([[NAN, NAN]])), mapping.weighChoices(face, [{}])),
  ],
  drawDimensions: [
    () => drawing.drawDimensions(plan, { theme: "x" } as never),
    () => drawing.drawDimensions(crookedPlan),
  ],
  drawVariants: [
    () => drawing.drawVariants(face, { rows: [], notes: [] }),
    () => drawing.drawVariants(face, mapping.weighChoices(face, [{}]), { columns: 0 }),
    () => drawing.drawVariants(face, mapping.weighChoices(face, [{}]), { current: 1 }),
  ],
  drawPlan: [
    () => root.drawPlan(plan, { view: "x" } as never),
    () => root.drawPlan(plan, { screen: { width: 100 } }),
    () => root.drawPlan(plan, { screen: { width: 375, leastType: NAN } }),
    () => root.drawPlan(crookedPlan),
  ],
  drawPractice: [
    () => drawing.drawPractice(plan, { paper: "x" } as never),
    () => drawing.drawPractice(plan, { leastType: NAN }),
  ],
  drawSheet: [
    () => drawing.drawSheet(plan, { paper: "x" } as never),
    () => drawing.drawSheet(plan, { rulerZero: NAN }),
    () => drawing.drawSheet(plan, { leastType: 5 }),
  ],
  drawStrip: [
    () => drawing.drawStrip(plan, { theme: "x" } as never),
    () => drawing.drawStrip(crookedPlan),
  ],
  // grading
  gradeMap: [
    () => grading.gradeMap({ readings: readings(1) }, { kind: "plan", plan }, unproven),
    () => grading.gradeMap({ readings: unsure }, { kind: "plan", plan }),
    () => grading.gradeMap({ readings: readings(1) }, { kind: "readings", readings: unsure }),
  ],
  // files
  readCocoKeypoints: [() => files.readCocoKeypoints("{")],
  readCsv: [() => files.readCsv('"')],
  readNdjson: [() => files.readNdjson("{")],
  readPts: [() => files.readPts("{")],
  readTps: [() => files.readTps("{")],
  writeCsv: [() => files.writeCsv([twice]), () => files.writeCsv([{ id: "a", points: [] }])],
  writeNdjson: [() => files.writeNdjson([twice])],
  writeTable: [() => files.writeTable(["a"], [[1, 2]])],
  writeTps: [() => files.writeTps([twice])],
  // words
  say: [() => root.say({ code: "of-my-own", values: {} })],
  sayAdvice: [
    () => words.sayAdvice({ code: "not-checked", values: {} }),
    () => words.sayAdvice({ code: "of-my-own" as "not-checked", values: {} }),
  ],
  allowedPin: [
    () =>
      mapping.allowedPin(
        plan,
        { lead: "top" as never },
        { side: "left", dot: "tailEnd", at: root.mm([55, 18]) },
      ),
    () => mapping.allowedPin(plan, {}, { side: "left", dot: "tailEnd", at: root.mm([NAN, 1]) }),
  ],
  nearestDot: [
    () => drawing.nearestDot(plan, [0, 0], 0),
    () => drawing.nearestDot(plan, [NAN, 0], 1),
  ],
  placeUnder: [() => drawing.placeUnder(plan, [NAN, 0])],
  shapeFindings: [
    () => mapping.shapeFindings(plan, { "tail-steep": NAN }),
    () => mapping.shapeFindings(plan, { steep: 3 } as never),
  ],
  // schema
  parseChoices: [() => schema.parseChoices(1)],
  parseFace: [() => schema.parseFace(1, "mm")],
  parseLandmarkFile: [() => schema.parseLandmarkFile(1)],
  parsePlan: [() => schema.parsePlan(1)],
  parseReadingSheet: [() => schema.parseReadingSheet({ left: { front: "wide" } })],
  parseRecord: [() => schema.parseRecord(1), () => schema.parseRecord({ version: -1 })],
  parseRubric: [() => schema.parseRubric(1)],
  parseToleranceSet: [() => schema.parseToleranceSet(1)],
};

/** What has an answer for everything that its types allow. */
const NEVER_REFUSE: readonly string[] = [
  "cautionsToSay",
  "attempt",
  "comparisonFindings",
  "correctionOf",
  "correctionsOf",
  "deepPoint",
  "depthAt",
  "distance",
  "distanceAlongLine",
  "distanceFromLine",
  "distanceFromPlane",
  "eachSide",
  "everyChoice",
  "faceSchema",
  "flatPoint",
  "footOnPlane",
  "hasDepth",
  "intersect",
  "landmarkUncertainty",
  "length",
  "lengthBetween",
  "lengthOfPath",
  "mapFace",
  "midpoint",
  "mirror",
  "otherSide",
  "outlineArea",
  "outlinePath",
  "pathData",
  "placeOnSide",
  "pointOnLine",
  "pointOnSide",
  "polygonArea",
  "polylineLength",
  "recordJsonSchema",
  "reflectAcross",
  "sharedArea",
  "skinUncertainty",
  "spaceDistance",
  "stringLines",
  "toMillimetres",
  "toPixels",
  "toleranceFor",
  "transform",
  "turningUncertainty",
  "wordsOf",
  "visitsOf",
];

it.each(
  Object.entries(REFUSED).flatMap(([name, calls]) =>
    calls.map((call) => [name, String(call).replace(/\s+/g, " "), call] as const),
  ),
)("%s says that it refuses: %s", (name, _, call) => {
  expect(refusal(call).detail.where).toBe(name);
});

it("holds every public function, but those that never refuse", () => {
  const { checker, symbols } = exportedSymbols();
  const functions = [...symbols.values()]
    .flat()
    .filter((symbol) => isValue(symbol))
    .filter((symbol) => checker.getTypeOfSymbol(symbol).getCallSignatures().length > 0)
    .map(({ name }) => name);
  const held = [...Object.keys(REFUSED), ...NEVER_REFUSE];
  expect(held.sort()).toEqual([...new Set(functions)].sort());
});
