import { fc, test } from "@fast-check/vitest";
import { faceFrame, px, type Scale, toFace, toPhoto } from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { mapFace } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import {
  anyDeepPoint,
  anyFace,
  anyFlatPoint,
  anyPolyline,
  anyPose,
} from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { photograph, type Pose } from "../../support/photograph.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";

function scaleOf({ factor }: Pose): Scale {
  return { from: "px", to: "mm", factor, u: 0, source: "given", notes: [] };
}

const POSE: Pose = { factor: 0.2, tilt: 0, at: [500, 400] };

describe("faceFrame", () => {
  it("has its origin between the inner eye corners, x to the client's left and y up", () => {
    const frame = faceFrame(photograph(syntheticFace(), POSE), scaleOf(POSE));
    expectClose(toFace(px([500, 400]), frame), [0, 0], 1e-9);
    expectClose(toFace(px([600, 400]), frame), [20, 0], 1e-9);
    expectClose(toFace(px([500, 300]), frame), [0, 20], 1e-9);
  });

  it("takes depth from the mean of the inner eye corners", () => {
    const flat = photograph(syntheticFace(), POSE);
    const deep = {
      ...flat,
      right: { ...flat.right, endocanthion: px([420.5, 400, 30]) },
      left: { ...flat.left, endocanthion: px([579.5, 400, 50]) },
    };
    const frame = faceFrame(deep, scaleOf(POSE));
    expectClose(toFace(px([500, 400, 90]), frame), [0, 0, 10], 1e-9);
    expectClose(toPhoto(toFace(px([500, 400, 90]), frame), frame), [500, 400, 90], 1e-9);
  });

  it("keeps a midline that it is given", () => {
    const photo = photograph(syntheticFace(), POSE);
    const midline = {
      ...faceFrame(photo, scaleOf(POSE)).midline,
      line: { through: px([510, 400]), direction: [0, -1] },
    } as const;
    expectClose(toFace(px([510, 400]), faceFrame(photo, scaleOf(POSE), { midline })), [0, 0], 1e-9);
  });

  test.prop([anyFace(), anyPose()])("undoes the photo", (face, pose) => {
    const photo = photograph(face, pose);
    const frame = faceFrame(photo, scaleOf(pose));
    const upright = faceFrame(photograph(face, POSE), scaleOf(POSE));
    expectClose(toFace(photo, frame), toFace(photograph(face, POSE), upright), 1e-6);
  });

  it.each([
    ["a mirrored photo", (x: number, y: number) => flatPoint<"px">(1000 - x, y)],
    ["y that points up", (x: number, y: number) => flatPoint<"px">(x, 1000 - y)],
  ])("refuses %s", (_, change) => {
    const photo = mapFace(photograph(syntheticFace(), POSE), ([x, y]) => change(x, y));
    expect(refusal(() => faceFrame(photo, scaleOf(POSE))).code).toBe("sides-swapped");
  });

  it.each([0, -1, Number.NaN])("refuses a scale of %s", (factor) => {
    const photo = photograph(syntheticFace(), POSE);
    expect(refusal(() => faceFrame(photo, scaleOf({ ...POSE, factor }))).detail.field).toBe(
      "scale.factor",
    );
  });
});

describe("toFace and toPhoto", () => {
  const anyFrame = anyPose().map((pose) =>
    faceFrame(photograph(syntheticFace(), pose), scaleOf(pose)),
  );

  test.prop([fc.oneof(anyFlatPoint<"px">(), anyDeepPoint<"px">()), anyFrame])(
    "bring a point there and back",
    (point, frame) => {
      expectClose(toPhoto(toFace(point, frame), frame), point, 1e-9);
    },
  );

  test.prop([anyPolyline<"px">(), anyFrame])(
    "bring polylines, brows and dots there and back",
    (line, frame) => {
      expectClose(toPhoto(toFace(line, frame), frame), line, 1e-9);
      const brow = { upper: line, lower: line };
      expectClose(toPhoto(toFace(brow, frame), frame), brow, 1e-9);
      expectClose(toPhoto(toFace({ upper: line }, frame), frame), { upper: line }, 1e-9);
      const dots = { upperStart: line[0] ?? px([0, 0]), tailEnd: px([7, 8, 9]) };
      expectClose(toPhoto(toFace(dots, frame), frame), dots, 1e-9);
    },
  );

  test.prop([anyFace(), anyPose()])("bring a face there and back", (face, pose) => {
    const photo = photograph(face, pose);
    const frame = faceFrame(photo, scaleOf(pose));
    expectClose(toPhoto(toFace(photo, frame), frame), photo, 1e-9);
  });
});
