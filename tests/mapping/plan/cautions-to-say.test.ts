import {
  checkCapture,
  faceFrame,
  mm,
  planBrows,
  planOnPhoto,
  requirePlannable,
  scaleFromIris,
  shapeFindings,
  turnToFront,
} from "brow-geometry";
import { cautionsToSay } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { faceOfMesh, type SampleFace, meshSamples } from "../../support/sample-faces.js";
import { syntheticFace } from "../../support/synthetic-face.js";

/** A real face that the check finds turned and its chin lowered, no more than `turnToFront` takes out. */
const turnedSlightly = meshSamples[3] as SampleFace;

function foundOn(sample: SampleFace, declared?: { upright: boolean; relaxed: boolean }) {
  const photo = requirePlannable(faceOfMesh(sample));
  const scale = scaleFromIris(photo);
  const findings = checkCapture(photo, {
    purpose: "map",
    scale,
    ...(declared === undefined ? {} : { declared }),
  });
  return { photo, scale, findings };
}

/** What cautions are about: findings by their own codes. */
function codesOf(cautions: ReturnType<typeof cautionsToSay>): readonly string[] {
  return cautions.map(({ code, finding }) => finding?.code ?? code);
}

describe("cautions to say", () => {
  it("are all that a plan has where no finding was given", () => {
    const { photo, scale } = foundOn(turnedSlightly);
    const plan = planOnPhoto(photo, faceFrame(photo, scale));
    expect(cautionsToSay(plan)).toEqual(plan.cautions);
  });

  it("tell a turned head by the finding, which depth has told from an uneven face", () => {
    const { photo, scale, findings } = foundOn(turnedSlightly);
    const plan = planOnPhoto(photo, faceFrame(photo, scale), {}, { findings });
    expect(codesOf(plan.cautions)).toEqual(
      expect.arrayContaining(["head-turned", "head-may-be-turned"]),
    );
    const said = codesOf(cautionsToSay(plan));
    expect(said).toContain("head-turned");
    expect(said).not.toContain("head-may-be-turned");
  });

  it("tell a head that was turned to the front once, as corrected, the chin too", () => {
    const { photo, scale, findings } = foundOn(turnedSlightly);
    const plan = planOnPhoto(photo, turnToFront(photo, scale), {}, { findings });
    expect(codesOf(plan.cautions)).toEqual(
      expect.arrayContaining(["head-was-turned", "head-turned", "chin-lowered"]),
    );
    const said = codesOf(cautionsToSay(plan));
    expect(said).toContain("head-was-turned");
    expect(said.filter((code) => /^(?:head-turned|chin)/.test(code))).toEqual([]);
  });

  it("tell once that the posture was not kept", () => {
    const declared = { upright: false, relaxed: false };
    const { photo, scale, findings } = foundOn(turnedSlightly, declared);
    const plan = planOnPhoto(photo, faceFrame(photo, scale), { declared }, { findings });
    const said = codesOf(cautionsToSay(plan));
    expect(said.filter((code) => /posture|declared/.test(code))).toEqual(["posture-not-kept"]);
  });

  it("tell a finding of the shape once, where it was handed in as well", () => {
    const choices = { thickness: { start: mm(5), body: mm(7), arch: mm(7) } };
    const findings = shapeFindings(planBrows(syntheticFace(), choices));
    expect(findings.map(({ code }) => code)).toContain("thickens-outward");
    const plan = planBrows(syntheticFace(), choices, { findings });
    expect(cautionsToSay(plan)).toEqual(planBrows(syntheticFace(), choices).cautions);
  });
});
