import { fc, test } from "@fast-check/vitest";
import { FACE_MIDLINE, mirror, mm, noseDeviation } from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { anyFace, anyPose } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { photograph } from "../../support/photograph.js";
import { refusal } from "../../support/refusal.js";
import { type SyntheticFace, syntheticFace } from "../../support/synthetic-face.js";

/** The synthetic face with subnasale beside the midline. */
function bentBy(across: number): SyntheticFace {
  const face = syntheticFace();
  return { ...face, midline: { ...face.midline, subnasale: mm([across, -44]) } };
}

const sure = { line: FACE_MIDLINE, tiltU: 0 };

describe("noseDeviation", () => {
  it("is the angle of sellion–subnasale, positive where subnasale lies towards the client's left", () => {
    const angle = (Math.atan(5 / 46) * 180) / Math.PI;
    expectClose(noseDeviation(bentBy(5), { midline: sure }).angle.value, angle, 1e-12);
    expectClose(noseDeviation(bentBy(-5), { midline: sure }).angle.value, -angle, 1e-12);
    expect(noseDeviation(syntheticFace(), { midline: sure }).angle.value).toBe(0);
  });

  it("carries both ends and the midline into its uncertainty", () => {
    const { angle } = noseDeviation(syntheticFace(), { midline: { ...sure, tiltU: 0.3 } });
    // Placed by hand, 0.26 mm each on a face 87.8 mm wide, 46 mm apart.
    const ends = (((0.26 * 87.8) / 90) * Math.SQRT2 * 180) / (46 * Math.PI);
    expectClose(angle.u, Math.hypot(ends, 0.3), 1e-12);
  });

  // 2.92°: 160 raters, J Oral Maxillofac Surg 2015;73:1606–1614.
  it.each([
    [2, false, "undecided"],
    [2.8, false, "undecided"],
    [3, true, "outside"],
    [4, true, "outside"],
    [0.3, false, "within"],
  ] as const)("at %s mm is called bent: %s", (across, bent, outcome) => {
    expect(noseDeviation(bentBy(across))).toMatchObject({ bent, decision: { outcome } });
  });

  it("is never called bent on detector landmarks that are not sure of it", () => {
    const source = {
      markup: "mesh-478",
      uncertainty: { default: mm(1.3) },
      ringFactor: { value: 1, u: 0 },
      depth: "none",
    } as const;
    expect(noseDeviation({ ...bentBy(4), source }).bent).toBe(false);
    expect(noseDeviation({ ...bentBy(4), source }, { rule: "simple" }).bent).toBe(true);
  });

  test.prop([anyFace(), anyPose()])("does not care how the photo was taken", (face, pose) => {
    const photo = photograph(face, pose) as unknown as typeof face;
    expectClose(noseDeviation(photo).angle, noseDeviation(face).angle, 1e-6);
  });

  test.prop([anyFace()])("of the mirrored face has the other sign", (face) => {
    const { angle } = noseDeviation(face);
    const mirrored = noseDeviation(mirror(face, FACE_MIDLINE) as SyntheticFace).angle;
    expectClose(mirrored, { value: -angle.value, u: angle.u }, 1e-6);
  });

  test.prop([fc.double({ min: -20, max: 20, noNaN: true })])(
    "on a symmetric face with a bent nose hardly moves the midline itself",
    (across) => {
      const expected = (Math.atan(across / 46) * 180) / Math.PI;
      expectClose(noseDeviation(bentBy(across)).angle.value, expected, 0.2);
    },
  );

  it("refuses a nose of no length", () => {
    const face = syntheticFace();
    const flat = { ...face, midline: { ...face.midline, subnasale: flatPoint<"mm">(0, 2) } };
    expect(refusal(() => noseDeviation(flat)).code).toBe("coincident-points");
  });
});
