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
import {
  type Bare,
  type PlannableFace,
  type PlanFinding,
  withHair,
  withoutHair,
} from "brow-geometry/mapping";
import type { Sides } from "brow-geometry/units";
import type { Basis, Gauge, Shot } from "../appointment/basis.js";
import { faceOf } from "../appointment/readings.js";

export type MapInput = MapRecord["input"];

/** What the library plans from; it refuses faces that are turned too far, and says so. */
export function inputOf(basis: Basis): MapInput {
  switch (basis.kind) {
    case "kept":
      return basis.record.input;
    case "ruler": {
      const face = faceOf(basis.readings);
      const bare = bareOf(basis.bare);
      return { kind: "face", face: bare === undefined ? face : withoutHair(face, bare) };
    }
    case "photo": {
      const { found, hair, bare, gauge } = basis;
      const grown = withHair(found, hair);
      const frame = frameOf(grown, gauge);
      const sides = bareOf(bare);
      const photo =
        sides === undefined ? requirePlannable(grown) : withoutHair(grown, sides, { frame });
      return { kind: "photo", photo, frame };
    }
  }
}

function bareOf({ right, left }: Sides<boolean>): Bare | undefined {
  if (right && left) return "both";
  return right ? "right" : left ? "left" : undefined;
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
