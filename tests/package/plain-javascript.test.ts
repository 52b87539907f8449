import {
  checkCapture,
  drawPlan,
  faceFrame,
  fromLandmarks,
  fromMarkup,
  planBrows,
  planOnPhoto,
  recordOf,
  requirePlannable,
  scaleFromIris,
  scaleFromReference,
  turnToFront,
  workSteps,
} from "brow-geometry";
import { drawSheet } from "brow-geometry/drawing";
import { weighChoices } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";
import { faceOfMesh, frontalMesh } from "../support/sample-faces.js";
import { syntheticPlan } from "../support/synthetic-plan.js";

const face = requirePlannable(faceOfMesh(frontalMesh));
const scale = scaleFromIris(face);

type Call = readonly [name: string, call: (given: never) => unknown, field: string];

/** What a newcomer may leave out on the way to a plan, its picture and its record. */
const CALLS: readonly Call[] = [
  ["fromMarkup", (given) => fromMarkup("mesh-478", given, { coordinates: "pixels" }), "landmarks"],
  ["fromLandmarks", (given) => fromLandmarks(given, {} as never, {} as never), "points"],
  ["requirePlannable", (given) => requirePlannable(given), "face"],
  ["scaleFromIris", (given) => scaleFromIris(given), "face"],
  ["scaleFromReference", (given) => scaleFromReference(given, given, given), "from"],
  ["faceFrame", (given) => faceFrame(given, scale), "face"],
  ["faceFrame", (given) => faceFrame(face, given), "scale"],
  ["turnToFront", (given) => turnToFront(given, scale), "face"],
  ["planBrows", (given) => planBrows(given), "face"],
  ["planOnPhoto", (given) => planOnPhoto(given, faceFrame(face, scale)), "face"],
  ["planOnPhoto", (given) => planOnPhoto(face, given), "frame"],
  ["weighChoices", (given) => weighChoices(given, [{}]), "face"],
  ["weighChoices", (given) => weighChoices(syntheticPlan.face, given), "choices"],
  ["recordOf", (given) => recordOf(given), "input"],
  ["checkCapture", (given) => checkCapture(given, { purpose: "map" }), "face"],
  ["drawPlan", (given) => drawPlan(given), "plan"],
  ["drawSheet", (given) => drawSheet(given), "plan"],
  ["workSteps", (given) => workSteps(given), "plan"],
];

describe.each(CALLS)("%s in plain JavaScript", (name, call, field) => {
  it.each([undefined, null, 5, "text"])(`names what it needs where %j is its ${field}`, (given) => {
    const { where, field: found, need } = refusal(() => call(given as never)).detail;
    expect(where).toBe(name);
    expect(found.startsWith(field)).toBe(true);
    expect(need).not.toBe("");
  });
});

it("names a plan where something else is drawn", () => {
  expect(refusal(() => drawPlan(face as never)).message).toMatch(
    /^drawPlan: plan is .*; needs a plan of planBrows or planOnPhoto$/,
  );
});

it("names the options of a picture that are none", () => {
  expect(refusal(() => drawPlan(syntheticPlan, null as never)).detail.field).toBe("options");
  expect(refusal(() => drawSheet(syntheticPlan, null as never)).detail.field).toBe("options");
});

it("names what a record is made from where that is no face and no photo", () => {
  expect(refusal(() => recordOf({ kind: "scan" } as never)).detail).toMatchObject({
    where: "recordOf",
    field: "input.kind",
    value: "scan",
  });
});

it("names the brows of a face that has no sides", () => {
  expect(refusal(() => requirePlannable({} as never)).detail.field).toContain("right.brow");
});
