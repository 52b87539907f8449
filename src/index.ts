// Lengths, points and sides.
export { mm, px, parseLength, formatLength, eachSide, otherSide } from "./units/index.js";
export { GeometryError } from "./units/index.js";
export type { FlatPoint, GeometryErrorCode, Length, Note, Point, Polyline } from "./units/index.js";
export type { Side, Sides, Unit } from "./units/index.js";

// Measured values and what is decided about them.
export { measured, averageOf, readRuler, readCaliper, decide } from "./units/index.js";
export { WORKING_TOLERANCES, NOTICED_BY_CLIENTS, NOTICED_BY_OTHERS } from "./units/index.js";
export type { Decision, DecisionRule, Limits, Measured, Outcome } from "./units/index.js";
export type { ToleranceSet } from "./units/index.js";

// From landmarks to a face.
export { fromMarkup, fromLandmarks, faceFromMillimetres } from "./landmarks/index.js";
export { requireLandmarks, MARKUPS } from "./landmarks/index.js";
export type { Brow, Face, FaceSide, LandmarkName } from "./landmarks/index.js";
export type { MarkupName, MarkupOptions, MillimetreOptions, PlainFace } from "./landmarks/index.js";

// Will the photo do.
export { checkCapture, headPose, CAPTURE_LIMITS } from "./capture/index.js";
export type { CaptureCheck, CaptureOptions, Finding, FindingCode } from "./capture/index.js";
export type { HeadPose } from "./capture/index.js";

// From pixels to millimetres.
export { scaleFromIris, scaleFromReference, scaleFromRuler } from "./calibration/index.js";
export { fitRuler, IRIS_WIDTH } from "./calibration/index.js";
export type { IrisOptions, ReferenceOptions } from "./calibration/index.js";
export { toMillimetres, toPixels } from "./units/index.js";
export type { Scale } from "./units/index.js";
export { fitMidline, faceFrame, turnToFront, toFace, toPhoto } from "./symmetry/index.js";
export { FACE_MIDLINE } from "./symmetry/index.js";
export type { FaceFrame, FaceFrameOptions, Midline, TurnedFace } from "./symmetry/index.js";
export type { TurningOptions } from "./symmetry/index.js";

// What is read on brows.
export { DOTS, MEASURES, GUIDES, ARCH_CONVENTIONS, START_CONVENTIONS } from "./landmarks/index.js";
export { lengthBetween, skinOf } from "./landmarks/index.js";
export type { ArchConvention, BrowDots, CompleteDots, Dot } from "./landmarks/index.js";
export type { FaceMeasures, GuideConvention, MeasureName } from "./landmarks/index.js";
export type { SideMeasures, Skin, StartConvention } from "./landmarks/index.js";
export { naturalDots, measureFace, guideLine, outline } from "./proportions/index.js";
export type { Guide, NaturalArch, NaturalDots, Outline } from "./proportions/index.js";
export type { OutlineOptions, StationThickness } from "./proportions/index.js";
export { placeOnSide, pointOnSide } from "./symmetry/index.js";

// The two sides of a face.
export { mirror, compareSides, halfFaces, eyeCant, noseDeviation } from "./symmetry/index.js";
export type { ComparisonOptions, SideComparison, SideDifference } from "./symmetry/index.js";

// The plan.
export { requirePlannable, planOnPhoto, planBrows, planDots } from "./mapping/index.js";
export { planOverlap, shapeFindings, SHAPE_LIMITS } from "./mapping/index.js";
export { LEADS, CARRIES, LEVELS, TAIL_HEIGHTS } from "./mapping/index.js";
export type { BrowPlan, Carry, Caution, Choices, Lead, Levels, Move } from "./mapping/index.js";
export type { Pin, PlannableFace, PlannedDots, PlanOptions, TailHeight } from "./mapping/index.js";
export type { ShapeFinding, ShapeLimits } from "./mapping/index.js";

// Steps of work, the record.
export { workSteps, recordOf, replay, MAP_VERSION } from "./mapping/index.js";
export type { MapRecord, WorkOptions, WorkStep } from "./mapping/index.js";

// What was drawn, and readings by hand.
export { checkDrawn, checkReadings, correctionOf } from "./mapping/index.js";
export type { DrawnCheck, DrawnMap, DrawnOptions } from "./mapping/index.js";
export { measuresFromReadings } from "./calibration/index.js";
export type { Reading, ReadingSheet, SheetOptions } from "./calibration/index.js";

// Results in words.
export { ENGLISH, say } from "./words/index.js";
export type { Words } from "./words/index.js";

// Pictures.
export { drawPlan } from "./drawing/index.js";
export type { Look, PlanDrawing, Theme } from "./drawing/index.js";
