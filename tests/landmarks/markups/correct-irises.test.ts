import { fc, test } from "@fast-check/vitest";
import { correctIrises } from "brow-geometry/landmarks";
import { distance } from "brow-geometry/geometry";
import { type Face, measured, mm, px, scaleFromIris } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

const photo: Face<"px"> = {
  right: { limbusMedial: px([460, 500]), limbusLateral: px([395, 503]), pupil: px([428, 501]) },
  left: { limbusMedial: px([640, 500, 4]), limbusLateral: px([705, 501, 2]) },
  midline: {},
  source: {
    markup: "mesh",
    uncertainty: { default: mm(1.3) },
    ringFactor: measured(1.11, 0.02),
    depth: "estimated",
  },
};

describe("correctIrises", () => {
  it("narrows both irises about their middle, and leaves the rest alone", () => {
    const { right, left } = correctIrises(photo);
    expectClose(
      right.limbusMedial &&
        right.limbusLateral &&
        distance(right.limbusMedial, right.limbusLateral),
      Math.hypot(65, 3) / 1.11,
      1e-12,
    );
    expectClose(right.pupil, [428, 501], 0);
    expectClose(left.limbusLateral, [672.5 + 32.5 / 1.11, 500.5 + 0.5 / 1.11, 2], 1e-12);
  });

  it("takes the face mesh's ring 0.6 mm off the lateral limbus", () => {
    const face: Face<"mm"> = {
      right: {},
      left: {
        limbusMedial: mm([31.5 - (1.11 * 11.71) / 2, 0]),
        limbusLateral: mm([31.5 + (1.11 * 11.71) / 2, 0]),
      },
      midline: {},
    };
    const { left } = correctIrises(face, measured(1.11, 0.02));
    expectClose(left.limbusLateral, [31.5 + 11.71 / 2, 0], 1e-12);
    expectClose((face.left.limbusLateral?.[0] ?? 0) - (left.limbusLateral?.[0] ?? 0), 0.644, 1e-3);
  });

  it("leaves a scale by iris what it was", () => {
    const [drawn, corrected] = [scaleFromIris(photo), scaleFromIris(correctIrises(photo))];
    expectClose([corrected.factor, corrected.u], [drawn.factor, drawn.u], 1e-12);
  });

  test.prop([fc.double({ min: 0.5, max: 2, noNaN: true })])("undoes its inverse", (value) => {
    const { right, left } = correctIrises(
      correctIrises(photo, measured(value, 0)),
      measured(1 / value, 0),
    );
    expectClose(right, photo.right, 1e-9);
    expectClose(left, photo.left, 1e-9);
  });

  it("does nothing where the source is honest, or an edge is missing", () => {
    const bare: Face<"px"> = { right: { limbusMedial: px([1, 2]) }, left: {}, midline: {} };
    expect(correctIrises(bare)).toEqual(bare);
    expect(correctIrises(bare, measured(2, 0)).right).toEqual(bare.right);
  });

  it("believes a ring to be honest that it is told is", () => {
    const { source, notes, right } = correctIrises(photo, measured(1, 0.01));
    expect(source?.ringFactor).toEqual({ value: 1, u: 0.01 });
    expect(right).toEqual(photo.right);
    expect(notes).toBeUndefined();
  });

  it("says on the face what it did", () => {
    expect(correctIrises(photo).notes?.map(({ code }) => code)).toEqual(["irises-narrowed"]);
  });

  it("refuses a factor of 0", () => {
    expect(refusal(() => correctIrises(photo, measured(0, 0))).code).toBe("out-of-range");
  });
});
