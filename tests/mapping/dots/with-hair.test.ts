import {
  faceFrame,
  mm,
  planBrows,
  planOnPhoto,
  requirePlannable,
  scaleFromIris,
  toFace,
} from "brow-geometry";
import { withHair, withoutHair } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { errorSources } from "../../../src/landmarks/internal.js";
import { isHair } from "../../../src/mapping/dots/is-hair.js";
import { SIDES } from "../../../src/units/internal.js";
import { refusal } from "../../support/refusal.js";
import { faceOfMesh, frontalMesh } from "../../support/sample-faces.js";

const detected = faceOfMesh(frontalMesh);
const { right, left } = requirePlannable(detected);
const drawn = withHair(detected, { right: right.brow, left: left.brow });

describe("a detector's face with borders drawn by hand", () => {
  it("has hair, known as hands know it", () => {
    expect(SIDES.map((side) => isHair(drawn, side))).toEqual([true, true]);
    expect(drawn.standIns).toEqual(
      detected.standIns?.filter(({ landmark }) => landmark !== "brow"),
    );
    expect(drawn.source?.uncertainty.landmarks?.brow).toBe(0.26);
    expect(withHair(detected, {}, mm(0.5)).source?.uncertainty.landmarks?.brow).toBe(0.5);
  });

  it("errs as hands do, point by point, not along a detector's patterns", () => {
    const frame = faceFrame(detected, scaleFromIris(detected));
    const upMoved = (face: typeof detected): readonly (readonly number[])[] =>
      errorSources(toFace(face, frame), ["brow"]).map(({ left, right }) =>
        [left, right].flatMap((part) =>
          (part?.upper ?? []).flatMap((move) => (move === undefined ? [] : [move[1]])),
        ),
      );
    const [byHand, guessed] = [upMoved(drawn), upMoved(detected)];
    // A pattern moves every point of both brows at once.
    const most = Math.max(...guessed.map((moves) => moves.length));
    expect(most).toBe(2 * left.brow.upper.length);
    expect(Math.max(...byHand.map((moves) => moves.length))).toBeLessThan(most / 2);
    expect(Math.max(...byHand.flat())).toBeCloseTo(0.26, 9);
  });

  it("is planned from that hair, more surely than from a guess", () => {
    const frame = faceFrame(detected, scaleFromIris(detected));
    const heightU = (face: typeof detected): number =>
      planOnPhoto(requirePlannable(face), frame).measures.left.startThickness?.u ?? NaN;
    expect(heightU(drawn)).toBeLessThan(heightU(detected));
    const plan = planOnPhoto(requirePlannable(drawn), frame);
    expect(plan.moves.every(({ kind }) => kind !== "place")).toBe(true);
    expect(plan.reasons.map(({ code }) => code)).not.toContain("hair-not-seen");
  });

  it("has no brow where none was drawn, and may take the other's", () => {
    const one = withHair(detected, { left: left.brow });
    expect(one.right.brow).toBeUndefined();
    expect(refusal(() => requirePlannable(one)).detail.field).toBe("right.brow");
    const frame = faceFrame(detected, scaleFromIris(detected));
    const plan = planOnPhoto(withoutHair(one, "right", { frame }), frame);
    expect(plan.choices.lead).toBe("left");
  });
});

it("does not let a detector's errors stand for average heights", () => {
  const frame = faceFrame(detected, scaleFromIris(detected));
  const plan = planOnPhoto(withoutHair(detected, "both", { frame }), frame);
  expect(plan.measures.left.startHeight?.u).toBeGreaterThan(4);
});

it("refuses borders that are known exactly", () => {
  expect(refusal(() => withHair(detected, {}, mm(0))).detail).toMatchObject({
    where: "withHair",
    field: "u",
  });
});

it("keeps a face that names no source", () => {
  const brow = {
    upper: mm([
      [15, 20],
      [38, 27],
      [57, 18],
    ]),
  };
  const side = { endocanthion: mm([16, 0]), exocanthion: mm([44, 0]), alare: mm([17, -38]) };
  const face = { right: side, left: side, midline: {} };
  expect(withHair(face, { left: brow }).left.brow).toBe(brow);
  expect(() => planBrows(requirePlannable(withHair(face, { left: brow })))).toThrow("right.brow");
});
