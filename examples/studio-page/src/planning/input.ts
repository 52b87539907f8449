import {
  type Face,
  faceFrame,
  type Finding,
  checkCapture,
  type MapRecord,
  mm,
  requirePlannable,
  type Scale,
  scaleFromIris,
  scaleFromReference,
  toFace,
  turnToFront,
} from "brow-geometry";
import type { Declared } from "brow-geometry/landmarks";
import { type PlannableFace, type PlanFinding, withHair } from "brow-geometry/mapping";
import type { Basis, Gauge, Shot } from "../appointment/basis.js";
import { faceOf } from "../appointment/readings.js";

export type MapInput = MapRecord["input"];

/** What the library plans from; it refuses faces that are turned too far, and says so. */
export function inputOf(basis: Basis): MapInput {
  switch (basis.kind) {
    case "kept":
      return basis.record.input;
    case "ruler":
      return { kind: "face", face: faceOf(basis.readings) };
    case "photo": {
      const photo = requirePlannable(withHair(basis.found, basis.hair));
      return { kind: "photo", photo, frame: frameOf(photo, basis.gauge) };
    }
  }
}

/** Points with depth show how the head was turned; without it the picture is taken as it is. */
function frameOf(face: Face<"px">, gauge: Gauge) {
  const scale = scaleOf(face, gauge);
  const hasDepth = (face.source?.depth ?? "none") !== "none";
  return hasDepth ? turnToFront(face, scale) : faceFrame(face, scale);
}

function scaleOf(face: Face<"px">, gauge: Gauge): Scale {
  return gauge.kind === "irises"
    ? scaleFromIris(face)
    : scaleFromReference(gauge.from, gauge.to, mm(gauge.length));
}

/** The face in millimetres. */
export function faceIn(input: MapInput): PlannableFace {
  return input.kind === "face" ? input.face : requirePlannable(toFace(input.photo, input.frame));
}

/** What speaks against a photo. */
export function findingsOn({ found, gauge }: Shot, declared: Declared): readonly Finding[] {
  return checkCapture(found, { purpose: "map", scale: scaleOf(found, gauge), declared });
}

/** What spoke against the capture of a record: kept among the cautions of its plan, those that warn only. */
export function findingsIn({ plan }: MapRecord): readonly PlanFinding[] {
  return plan.cautions.flatMap(({ finding, values }) =>
    finding === undefined ? [] : { ...finding, ...(values as Pick<PlanFinding, "severity">) },
  );
}
