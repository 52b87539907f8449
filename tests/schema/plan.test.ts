import { readFileSync } from "node:fs";
import {
  type BrowPlan,
  faceFrame,
  fromMarkup,
  mm,
  planBrows,
  planOnPhoto,
  px,
  requirePlannable,
  scaleFromIris,
  scaleFromReference,
} from "brow-geometry";
import { parseLandmarkFile, parsePlan } from "brow-geometry/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyChoices, anyFace, anyPose } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { photograph } from "../support/photograph.js";
import { refusal } from "../support/refusal.js";
import { syntheticFace } from "../support/synthetic-face.js";
import { syntheticPlan } from "../support/synthetic-plan.js";

function readBack(plan: BrowPlan): BrowPlan {
  return parsePlan(JSON.parse(JSON.stringify(plan)));
}

describe("a plan written to JSON reads back equal", () => {
  it("for a real face on a photo, with what a detector says of itself", () => {
    const file = parseLandmarkFile(
      JSON.parse(readFileSync("examples/data/sample-face.json", "utf8")),
    );
    if (file.markup !== "mesh-478") return expect.fail(file.markup);
    const face = requirePlannable(fromMarkup("mesh-478", file.landmarks, file));
    const plan = planOnPhoto(face, faceFrame(face, scaleFromIris(face)));
    expectClose(readBack(plan), plan, 0);
  });

  it("for a flat brow with pins and without a lower border", () => {
    const face = syntheticFace();
    const flat = (sign: number) => ({
      upper: mm([
        [sign * 15, 20],
        [sign * 57, 21],
      ]),
    });
    const plan = planBrows(
      {
        ...face,
        right: { ...face.right, brow: flat(-1) },
        left: { ...face.left, brow: flat(1) },
      },
      { pins: [{ side: "left", dot: "tailEnd", at: mm([56, 22]), by: "M.", reason: "scar" }] },
    );
    expectClose(readBack(plan), plan, 0);
    expect(plan.origins.left.tailEnd.pin).toBeDefined();
    expect(plan.moves.map(({ kind }) => kind)).toContain("place");
  });

  it("for any synthetic face, in either space", () => {
    fc.assert(
      fc.property(anyFace(), anyPose(), anyChoices(), (face, pose, choices) => {
        const inSpace = planBrows(face, choices);
        expectClose(readBack(inSpace), inSpace, 0);
        const photo = requirePlannable(photograph(face, pose));
        const scale = scaleFromReference(px([0, 0]), px([50 / pose.factor, 0]), mm(50));
        const onPhoto = planOnPhoto(photo, faceFrame(photo, scale), choices);
        expectClose(readBack(onPhoto), onPhoto, 0);
      }),
      { numRuns: 10 },
    );
  });
});

describe("parsePlan", () => {
  const plan = syntheticPlan;
  const json = (): Record<string, never> => JSON.parse(JSON.stringify(plan)) as never;

  it.each([
    [{ moves: undefined }, "moves is missing; needs a list of at most 14 items"],
    [{ title: "map" }, 'title is "map"; needs another name: one of face, skin, choices'],
    [{ skin: { kind: "round" } }, 'skin.kind is "round"; needs one of flat, modelled, fitted'],
    [{ moves: [{ kind: "jump" }] }, 'moves[0].kind is "jump"; needs one of move, stay, place'],
    [
      { cautions: [{ code: "none", text: "", values: {} }] },
      'cautions[0].code is "none"; needs one',
    ],
    [
      { cautions: [{ code: "hygiene", text: "", values: { a: null } }] },
      "cautions[0].values.a is null; needs text or a finite number",
    ],
  ])("refuses %j", (change, message) => {
    const { code, message: said } = refusal(() => parsePlan({ ...json(), ...change }));
    expect(code).toBe("not-parsed");
    expect(said).toContain(`parsePlan: ${message}`);
  });

  it("refuses a face that could not have been planned", () => {
    const { face, ...rest } = plan;
    const { brow, ...right } = face.right;
    expect(brow.upper.length).toBeGreaterThan(1);
    expect(refusal(() => parsePlan({ ...rest, face: { ...face, right } })).message).toContain(
      "face.right.brow is missing; needs an object with upper, lower",
    );
  });

  it("refuses a dot that is missing, and a number that JSON cannot hold", () => {
    const { upperArch, ...left } = plan.dots.left;
    expect(refusal(() => parsePlan({ ...plan, dots: { ...plan.dots, left } })).message).toContain(
      "dots.left.upperArch is missing",
    );
    const broken = { ...plan.dots.left, upperArch: [upperArch[0], Number.NaN] };
    const written: unknown = JSON.parse(
      JSON.stringify({ ...plan, dots: { ...plan.dots, left: broken } }),
    );
    expect(refusal(() => parsePlan(written)).message).toContain(
      "dots.left.upperArch[1] is null; needs a finite number",
    );
  });

  it("stops at endless lists", () => {
    const endless = Array.from({ length: 200_000 }, () => ({ kind: "move" }));
    for (const key of ["moves", "reasons", "cautions"]) {
      expect(refusal(() => parsePlan({ ...plan, [key]: endless })).detail.also).toEqual([]);
    }
  });
});
