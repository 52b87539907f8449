import { BROW_PROMINENCE } from "../../../src/symmetry/internal.js";
import {
  type BrowPlan,
  type Choices,
  eachSide,
  type Face,
  type FaceFrame,
  faceFrame,
  type Length,
  type Measured,
  measured,
  type MeasureName,
  mm,
  NOTICED_BY_CLIENTS,
  planBrows,
  type PlannableFace,
  planOnPhoto,
  px,
  recordOf,
  replay,
  requirePlannable,
  say,
  scaleFromIris,
  type Scale,
  type SideDifference,
  skinOf,
  toPhoto,
} from "brow-geometry";
import { depthAt, mapFace } from "brow-geometry/landmarks";
import { flatPoint } from "brow-geometry/units";
import { parsePlan } from "brow-geometry/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyFace, anyPose } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { photograph } from "../../support/photograph.js";
import { refusal } from "../../support/refusal.js";
import { faceOfMesh, frontalMesh } from "../../support/sample-faces.js";
import { syntheticFace } from "../../support/synthetic-face.js";

const exactScale = (factor: number): Scale => ({
  from: "px",
  to: "mm",
  factor,
  u: 0,
  source: "given",
  notes: [],
});

function differenceOf(
  plan: BrowPlan,
  measure: MeasureName,
  of: "comparison" | "naturalComparison",
): SideDifference {
  const found = plan[of].differences.find((one) => one.measure === measure);
  if (found === undefined) throw new Error(`nothing is said of ${measure}`);
  return found;
}

/** The synthetic face, its left brow `up` higher than the right one. */
function unevenFace(up: number): PlannableFace {
  const face = syntheticFace();
  const raise = (point: readonly [number, number, ...number[]]) =>
    flatPoint<"mm">(point[0], point[1] + up);
  const { upper, lower } = face.left.brow;
  return {
    ...face,
    left: { ...face.left, brow: { upper: upper.map(raise), lower: lower.map(raise) } },
  };
}

describe("planBrows", () => {
  it("finds no difference on a symmetric face", () => {
    for (const { difference } of planBrows(syntheticFace()).comparison.differences) {
      expect(Math.abs(difference.value)).toBeLessThan(1e-9);
    }
  });

  it("says how uneven the natural brows are, and evens them", () => {
    const plan = planBrows(unevenFace(3));
    expect(differenceOf(plan, "archHeight", "naturalComparison").difference.value).toBeCloseTo(
      3,
      9,
    );
    expect(differenceOf(plan, "archHeight", "naturalComparison").decision?.outcome).toBe("outside");
    expect(differenceOf(plan, "archHeight", "comparison").difference.value).toBeCloseTo(0, 9);
    expect(differenceOf(plan, "archHeight", "comparison").decision?.outcome).toBe("within");
  });

  it("gives start heights the uncertainty of the points that they hang on", () => {
    // The start dot of a natural brow is one placed point: one rater's 0.26 mm (Reliability of
    // Periocular Anthropometry, 2019), so a difference of two has √2 times as much.
    const plan = planBrows(syntheticFace());
    expect(plan.naturalMeasures.left.startHeight?.u).toBeCloseTo(0.26, 6);
    expect(differenceOf(plan, "startHeight", "naturalComparison").difference.u).toBeCloseTo(
      0.26 * Math.SQRT2,
      6,
    );
  });

  it("knows that mirrored dots do not differ, however uncertain they are", () => {
    const { difference } = differenceOf(planBrows(unevenFace(1)), "startHeight", "comparison");
    expect(difference.u).toBeLessThan(1e-6);
  });

  it("leaves tolerances undecided where a detector placed the points", () => {
    const source = {
      markup: "a detector",
      uncertainty: { default: mm(1.3) },
      ringFactor: measured(1, 0),
      depth: "none",
    } as const;
    const plan = planBrows({ ...unevenFace(0.8), source });
    expect(differenceOf(plan, "startHeight", "naturalComparison").decision?.outcome).toBe(
      "undecided",
    );
  });

  it("carries the skin's uncertainty into lengths by ruler, not into those on the photo", () => {
    const { front, tail, tailOnPhoto } = planBrows(syntheticFace()).measures.left;
    const relative = (one: Measured = { value: 0, u: 0 }): number => one.u / one.value;
    expect(relative(tail)).toBeGreaterThan(relative(tailOnPhoto));
    expect(tail?.value).toBeGreaterThan(tailOnPhoto?.value ?? Number.POSITIVE_INFINITY);
    expect(front?.u).toBeGreaterThan(0);
  });

  it("takes the order of landmarks as it comes", () => {
    const face = syntheticFace();
    const reversed = <Part extends object>(part: Part): Part =>
      Object.fromEntries(Object.entries(part).reverse()) as Part;
    const sides = eachSide((side) => reversed(face[side]));
    const other = { ...face, ...sides, midline: reversed(face.midline) };
    expectClose(planBrows(other).measures, planBrows(face).measures, 1e-12);
  });

  it("warns, always, of what lasts", () => {
    const codes = planBrows(syntheticFace()).cautions.map(({ code }) => code);
    expect(codes).toEqual(
      expect.arrayContaining(["planning-aid", "local-law", "hygiene", "posture-not-declared"]),
    );
    const declared = planBrows(syntheticFace(), { declared: { upright: true, relaxed: true } });
    expect(declared.cautions.map(({ code }) => code)).not.toContain("posture-not-declared");
  });

  it("warns that a head may be turned, by about as much as it is", () => {
    const face = syntheticFace();
    const shifted = { ...face.left, exocanthion: mm([46.4, 0]) };
    const { cautions } = planBrows({ ...face, left: shifted });
    const turned = cautions.find(({ code }) => code === "head-may-be-turned");
    expect(turned?.values.difference).toBeCloseTo(2.5, 9);
    // The root of the nose lies 0.241 of the biocular width ahead of the corners (canonical mesh):
    // 21.8 mm here, which a turn of 3.3° shows as 2.5 mm.
    expect(turned?.values.yaw).toBeCloseTo(3.3, 1);
  });

  it("carries what a check of the capture found, through a record too", () => {
    const findings = [{ code: "mouth-open", text: "The mouth is open. Close it.", values: {} }];
    const record = recordOf({ kind: "face", face: syntheticFace() }, {}, { findings });
    const found = record.plan.cautions.find(({ code }) => code === "capture-finding");
    expect(found && say(found)).toBe("The mouth is open. Close it.");
    expect(found?.finding?.code).toBe("mouth-open");
    expect(replay(record).cautions).toEqual(record.plan.cautions);
  });

  it("decides by the rule and the tolerances that were chosen", () => {
    const difference = (choices: Choices) =>
      differenceOf(planBrows(unevenFace(0.9), choices), "startHeight", "naturalComparison");
    expect(difference({}).decision?.outcome).toBe("undecided");
    expect(difference({ rule: "simple" }).decision?.outcome).toBe("within");
    expect(difference({ tolerances: NOTICED_BY_CLIENTS }).decision?.outcome).toBe("within");
  });

  it("says when a face is no adult's size: the scale or its unit is wrong", () => {
    const sized = (times: number) =>
      planBrows(
        requirePlannable(
          mapFace(syntheticFace(), ([x, y]) => flatPoint<"mm">(times * x, times * y)),
        ),
      ).cautions.map(({ code }) => code);
    expect(sized(1)).not.toContain("size-implausible");
    expect(sized(10)).toContain("size-implausible");
    expect(sized(0.5)).toContain("size-implausible");
  });

  it("says so where the eyes are proven to slant, and which is higher", () => {
    const slanting = (up: number) => {
      const { right, left, midline } = syntheticFace();
      const face = { right: { ...right, pupil: mm([-31.5, up]) }, left, midline };
      return planBrows(face).cautions.find(({ code }) => code === "eyes-slant")?.values;
    };
    expect(slanting(0)).toBeUndefined();
    // 3 mm over 63 mm are 2.73°, 0.42° over what others recognise, and u is 0.33°: not proven.
    expect(slanting(3)).toBeUndefined();
    expect(slanting(4)).toMatchObject({ side: "right", limit: 2.31 });
    expect(slanting(-4)).toMatchObject({ side: "left" });
  });

  it("decides the front share against two thirds, or against the share that was chosen", () => {
    const { shareDecisions } = planBrows(syntheticFace(), { arch: "brow-length-share" });
    expect(shareDecisions?.left.limits).toEqual({ lower: 2 / 3 - 0.03, upper: 2 / 3 + 0.03 });
    expect(shareDecisions?.left.outcome).toBe("within");
    const limbus = planBrows(syntheticFace(), { arch: "lateral-limbus-vertical" }).shareDecisions;
    expect(limbus?.left.outcome).toBe("outside");
    const chosen = { arch: "brow-length-share", frontShare: 0.6 } as const;
    expect(planBrows(syntheticFace(), chosen).shareDecisions?.right.limits.upper).toBeCloseTo(
      0.63,
      9,
    );
  });

  it("says so where the posture was declared wrong", () => {
    const { cautions } = planBrows(syntheticFace(), { declared: { upright: false } });
    const codes = cautions.map(({ code }) => code);
    expect(codes).toContain("posture-not-kept");
    expect(codes).not.toContain("posture-not-declared");
  });
});

describe("planOnPhoto", () => {
  it.each([0.1, 10, 25.4])("asks after a ruler read in another unit, %d times off", (times) => {
    const photo = requirePlannable(faceOfMesh(frontalMesh));
    const known = scaleFromIris(photo);
    const scale = { ...known, factor: times * known.factor, u: times * known.u };
    // Before anything is said of the shape of brows so small.
    expect(refusal(() => planOnPhoto(photo, faceFrame(photo, scale)))).toMatchObject({
      code: "out-of-range",
      detail: { where: "planOnPhoto", field: "eye corners apart" },
    });
  });

  const planned = (photo: Face<"px">, factor: number): { plan: BrowPlan; frame: FaceFrame } => {
    const frame = faceFrame(photo, exactScale(factor));
    return { plan: planOnPhoto(requirePlannable(photo), frame), frame };
  };

  it("leaves every millimetre, share and angle alone when the photo is turned, shifted or scaled", () => {
    fc.assert(
      fc.property(anyFace(1), anyPose(), (face, pose) => {
        const upright = planned(photograph(face, { factor: 0.2, tilt: 0, at: [500, 500] }), 0.2);
        const posed = planned(photograph(face, pose), pose.factor);
        expectClose(posed.plan.dots, upright.plan.dots, 1e-6);
        for (const { measure, difference } of upright.plan.comparison.differences) {
          const other = differenceOf(posed.plan, measure, "comparison").difference;
          expect(other.value).toBeCloseTo(difference.value, 6);
          // Uncertainties come from slopes taken numerically.
          expect(other.u).toBeCloseTo(difference.u, 6);
        }
        const turned = posed.frame.midline.tilt - upright.frame.midline.tilt;
        expect(turned).toBeCloseTo(pose.tilt, 6);
      }),
      { numRuns: 5 },
    );
  });

  it("finds no difference on a symmetric face, whatever its tilt", () => {
    for (const tilt of [-30, -7, 0, 12, 25]) {
      const { plan } = planned(
        photograph(syntheticFace(), { factor: 0.2, tilt, at: [900, 700] }),
        0.2,
      );
      for (const { difference } of plan.comparison.differences) {
        expect(Math.abs(difference.value)).toBeLessThan(1e-9);
      }
    }
  });

  describe("from a near camera", () => {
    const truth = syntheticFace();
    const skin = skinOf(truth, "modelled");
    const seen = mapFace<"mm", "mm">(truth, (point, landmark) => {
      const nearer = landmark === "brow" ? BROW_PROMINENCE.value + depthAt(point, skin) : 0;
      return mm([point[0] / (1 - nearer / 400), point[1] / (1 - nearer / 400)]);
    });
    const photo = requirePlannable(photograph(seen, { factor: 0.2, tilt: 6, at: [900, 700] }));
    const planAt = (away?: Measured<Length<"mm">>): BrowPlan => {
      const scale = {
        ...exactScale(0.2),
        ...(away === undefined ? {} : { cameraDistance: away }),
      };
      return planOnPhoto(photo, { ...faceFrame(photo, scale), pitchU: 0 });
    };
    const startHeight = (plan: BrowPlan): Measured =>
      plan.naturalMeasures.left.startHeight as Measured;

    it("reads the brows as large as they are, where the distance is known", () => {
      const natural = (plan: BrowPlan) =>
        eachSide((side) =>
          Object.fromEntries(
            Object.entries(plan.naturalMeasures[side]).map(([name, one]) => [name, one.value]),
          ),
        );
      const expected = planBrows(requirePlannable(truth));
      expectClose(natural(planAt(measured(mm(400), mm(0)))), natural(expected), 1e-6);
      // Vectors, Camera: what lies 15 mm nearer reads 3.9 % large from 400 mm.
      expectClose(startHeight(planAt()).value / startHeight(expected).value, 1.039, 2e-3);
    });

    it("is less sure of lengths the less the distance is known", () => {
      const u = (spread: number): number => startHeight(planAt(measured(mm(400), mm(spread)))).u;
      expect(u(100)).toBeGreaterThan(1.1 * u(0));
    });

    it("draws its dots where the brows are in the picture", () => {
      const plan = planAt(measured(mm(400), mm(0)));
      const { frame, natural } = plan;
      if (frame === undefined) throw new Error("a plan on a photo has its frame");
      const [x, y] = photo.left.brow.upper[0] ?? px([0, 0]);
      expectClose(toPhoto(natural.left.dots.upperStart, frame), [x, y], 1e-6);
    });

    it("comes back through the schema the same", () => {
      const plan = planAt(measured(mm(400), mm(20)));
      expect(plan.frame?.camera).toBeDefined();
      expect(parsePlan(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
    });
  });

  it("carries the scale's uncertainty into lengths and not into shares", () => {
    const photo = requirePlannable(
      photograph(syntheticFace(), { factor: 0.2, tilt: 4, at: [900, 700] }),
    );
    const exact = planOnPhoto(photo, faceFrame(photo, exactScale(0.2)));
    const loose = planOnPhoto(photo, faceFrame(photo, { ...exactScale(0.2), u: 0.02 }));
    const front = loose.measures.left.front;
    expect(front?.u).toBeGreaterThan(0.09 * (front?.value ?? 0));
    expect(loose.measures.left.frontShare?.u).toBeCloseTo(
      exact.measures.left.frontShare?.u ?? Number.NaN,
      4,
    );
    expect(loose.cautions.map(({ code }) => code)).toContain("scale-uncertain");
  });

  it("carries the midline's uncertainty into distances from it", () => {
    const photo = requirePlannable(
      photograph(syntheticFace(), { factor: 0.2, tilt: 0, at: [900, 700] }),
    );
    const fitted = faceFrame(photo, exactScale(0.2));
    const withMidline = (given: Partial<FaceFrame["midline"]>): FaceFrame => ({
      ...fitted,
      midline: { ...fitted.midline, method: "given", ...given },
    });
    const exact = withMidline({ tiltU: 0, throughU: px(0) });
    const tilted = withMidline({ tiltU: 2, throughU: px(0) });
    const u = (frame: FaceFrame): number =>
      planOnPhoto(photo, frame).naturalMeasures.left.startDistance?.u ?? Number.NaN;
    expect(u(fitted)).toBeGreaterThan(u(exact));
    // A start dot 20 mm up moves sideways by 20 mm · 2°, in radians.
    const { startHeight } = planOnPhoto(photo, exact).naturalMeasures.left;
    const lean = ((startHeight?.value ?? Number.NaN) * 2 * Math.PI) / 180;
    expect(u(tilted)).toBeCloseTo(Math.hypot(u(exact), lean), 3);
  });

  it("plans dots that lie on the photo where the face says", () => {
    const pose = { factor: 0.2, tilt: 7, at: [900, 700] } as const;
    const face = syntheticFace();
    const photo = requirePlannable(photograph(face, pose));
    const { dots, frame } = planOnPhoto(photo, faceFrame(photo, exactScale(0.2)));
    const expected = photograph(
      { right: {}, left: { pupil: planBrows(face).dots.left.tailEnd }, midline: {} },
      pose,
    ).left.pupil;
    expectClose(frame && toPhoto(dots.left.tailEnd, frame), expected, 1e-6);
  });

  it("shrinks with the face", () => {
    const small = mapFace(syntheticFace(), ([x, y]) => flatPoint<"mm">(x / 2, y / 2));
    expect(() => planBrows(requirePlannable(small))).not.toThrow();
  });
});
