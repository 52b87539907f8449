import {
  checkCapture,
  type Face,
  faceFrame,
  mm,
  planOnPhoto,
  px,
  recordOf,
  replay,
  requirePlannable,
  say,
  scaleFromReference,
  turnToFront,
} from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { mapFace } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { photograph } from "../../support/photograph.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { syntheticHead, turnedHead } from "../../support/synthetic-head.js";

/** 0.4 mm a pixel, so that a pixel is too wide for a tolerance of 1 mm; the lips are 5 mm apart. */
const photo: Face<"px"> = photograph(
  mapFace(syntheticFace(), (point, landmark) =>
    landmark === "stomionInferius" ? flatPoint(point[0], point[1] - 5) : point,
  ),
  { factor: 0.4, tilt: 0, at: [500, 400] },
);

describe("cautions", () => {
  it("carry what warns of a capture, and nothing that only could not be checked", () => {
    const face = requirePlannable(photo);
    const { endocanthion } = face.right;
    const scale = scaleFromReference(endocanthion, face.left.endocanthion, mm(31.8));
    const findings = checkCapture(face, { purpose: "map", scale, declared: { upright: true } });
    const severities = new Set(findings.map(({ severity }) => severity));
    expect(severities).toEqual(new Set(["retake", "caution", "unchecked", "declared"]));

    const frame = faceFrame(face, scale);
    const record = recordOf({ kind: "photo", photo: face, frame }, {}, { findings });
    const carried = record.plan.cautions.filter(({ code }) => code === "capture-finding");
    expect(carried.map(({ finding }) => finding?.code)).toEqual(["too-few-pixels", "lips-apart"]);
    expect(replay(record)).toEqual(record.plan);
    expect(planOnPhoto(face, frame, {}, { findings: carried }).cautions).toHaveLength(
      record.plan.cautions.length,
    );
  });

  it("carry a finding of one's own that names no severity", () => {
    const own = { code: "glare", text: "Glasses reflect the lamp.", values: {} };
    const record = recordOf(
      { kind: "face", face: requirePlannable(syntheticFace()) },
      {},
      { findings: [own] },
    );
    expect(record.plan.cautions.map((caution) => say(caution))).toContain(
      "Glasses reflect the lamp.",
    );
  });

  it.each([
    [3, undefined],
    [-7, { yaw: 7, side: "right" }],
    [8, { yaw: 8, side: "left" }],
  ])("say of a head turned by %d° and looked at from its front what that costs", (yaw, values) => {
    const head = photograph(turnedHead(syntheticHead(), yaw), {
      factor: 0.2,
      tilt: 0,
      at: [900, 700],
    });
    const frame = turnToFront(head, scaleFromReference(px([0, 0]), px([500, 0]), mm(100)));
    const { cautions } = planOnPhoto(requirePlannable(head), frame);
    const said = cautions.find(({ code }) => code === "head-was-turned")?.values;
    expect(said?.side).toBe(values?.side);
    if (values !== undefined) expect(said?.yaw).toBeCloseTo(values.yaw, 6);
  });
});
