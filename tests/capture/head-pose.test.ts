import { fc, test } from "@fast-check/vitest";
import {
  type Face,
  FACE_MIDLINE,
  headPose,
  mirror,
  mm,
  type Point,
  px,
  turnToFront,
} from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";
import {
  faceOfMesh,
  faceOfPoints68,
  meshSamples,
  points68Samples,
} from "../support/sample-faces.js";
import { syntheticHead } from "../support/synthetic-head.js";
import { deepFace, flat, held, pictured } from "./posed-face.js";

const anyTurn = fc.double({ min: -30, max: 30, noNaN: true });

describe("headPose", () => {
  it("reads a level head that faces the camera as 0°", () => {
    const { roll, yaw, pitch } = headPose(pictured(deepFace()));
    expectClose([roll?.value, yaw?.value, pitch?.value], [0, 0, 0], 0.05);
  });

  test.prop([anyTurn, anyTurn])("finds the turn and the raised chin of a head", (yaw, pitch) => {
    const level = headPose(pictured(deepFace()));
    const pose = headPose(pictured(held(deepFace(), { yaw, pitch })));
    expectClose(pose.yaw?.value, yaw, 1e-9);
    expectClose((pose.pitch?.value ?? Number.NaN) - (level.pitch?.value ?? 0), pitch, 1e-9);
  });

  test.prop([anyTurn, anyTurn, anyTurn])(
    "does not take a tilted picture for a turn",
    (yaw, pitch, tilt) => {
      const face = held(deepFace(), { yaw, pitch });
      const [level, tilted] = [headPose(pictured(face)), headPose(pictured(face, tilt))];
      expectClose([tilted.yaw, tilted.pitch], [level.yaw, level.pitch], 1e-9);
      expectClose((tilted.roll?.value ?? Number.NaN) - (level.roll?.value ?? 0), tilt, 1e-6);
    },
  );

  it.each([
    [0, 0, 0],
    [8, 6, 4],
    [-5, -12, 20],
  ])(
    "says the same pitch as a turning to front: yaw %s°, pitch %s°, tilt %s°",
    (yaw, pitch, tilt) => {
      const photo = pictured(held(syntheticHead(), { yaw, pitch }), tilt);
      const scale = {
        from: "px",
        to: "mm",
        factor: 0.05,
        u: 0,
        source: "given",
        notes: [],
      } as const;
      const { turning } = turnToFront(photo, scale, { mostYaw: 20 });
      expectClose(turning?.pitch, headPose(photo).pitch?.value, 1e-6);
    },
  );

  it("changes the signs of roll and yaw, and not of pitch, in the mirror image", () => {
    const face = held(deepFace(), { yaw: 7, pitch: 4 });
    const acrossMiddle = mirror(face, FACE_MIDLINE);
    const [one, other] = [headPose(pictured(face, 3)), headPose(pictured(acrossMiddle, -3))];
    expectClose(other.roll?.value, -(one.roll?.value ?? 0), 1e-6);
    expectClose(other.yaw?.value, -7, 1e-9);
    expectClose(other.pitch, one.pitch, 1e-9);
  });

  it("reads the canonical face mesh, which looks ahead, as upright", () => {
    // Vertices 33, 263 and 61, 291 in millimetres; open model, Apache-2.0.
    const side = (sign: 1 | -1): Face<"px">["left"] => ({
      exocanthion: px([sign * 44.459, -26.64, 31.734]),
      cheilion: px([sign * 24.562, 43.426, 42.839]),
    });
    const { pitch } = headPose({ right: side(-1), left: side(1), midline: {} });
    expectClose(pitch, { value: 0, u: 5 }, 0.05);
  });

  // Rough angles of tests/fixtures/README.md, from the outer eye corners alone.
  it.each([
    [1, 1, 3, -26],
    [1, 2, -28, -22],
    [1, 3, 44, -7],
    [3, 3, -5, 12],
    [4, 1, -24, 27],
    [5, 2, 2, 30],
    [6, 1, -7, 11],
    [6, 3, 1, 5],
  ])("agrees on face %i.%i with its rough roll %i° and yaw %i°", (photo, face, roll, yaw) => {
    const sample = meshSamples.find((one) => one.photo === photo && one.face === face);
    if (sample === undefined) return expect.fail("no such face");
    const pose = headPose(faceOfMesh(sample));
    // There roll is positive where the client's left eye is lower: then the chin lies to the right.
    expectClose(pose.roll?.value, -roll, 3);
    expectClose(pose.yaw?.value, yaw, 2.5);
  });

  it("is not misled by some points of a symmetricPoints that lie elsewhere", () => {
    const rows = Array.from({ length: 40 }, (_, row) => row);
    const point = (sign: 1 | -1, row: number, more = 0): Point<"mm"> =>
      mm([sign * (18 + row), 40 - 2.5 * row, 10 - row / 2 + more]);
    const face: Face<"mm"> = {
      ...deepFace(),
      symmetricPoints: {
        pairs: rows.map((row) => ({
          right: point(-1, row),
          left: point(1, row, row % 8 === 0 ? 25 : 0),
        })),
        middle: [mm([0, 30, 14]), mm([0, -40, 24])],
      },
    };
    expectClose(headPose(pictured(held(face, { yaw: 6 }))).yaw?.value, 6, 0.1);
  });

  it("says nothing of yaw and pitch without depth", () => {
    expect(Object.keys(headPose(flat(pictured(deepFace()))))).toEqual(["roll"]);
    for (const sample of points68Samples) {
      expect(Object.keys(headPose(faceOfPoints68(sample)))).toEqual(["roll"]);
    }
  });

  it("says nothing of roll where nothing tells the forehead from the chin", () => {
    const { right, left } = pictured(deepFace());
    const eyes = (side: Face<"px">["right"]): Face<"px">["right"] =>
      side.endocanthion === undefined ? {} : { endocanthion: side.endocanthion };
    expect(headPose({ right: eyes(right), left: eyes(left), midline: {} })).toEqual({});
  });

  it("knows a measured depth better than a detector's", () => {
    const measuredDepth = headPose(pictured(held(deepFace(), { yaw: 10 })));
    const estimated = headPose({
      ...pictured(held(deepFace(), { yaw: 10 })),
      source: {
        markup: "invented",
        uncertainty: { default: mm(0.26) },
        ringFactor: { value: 1, u: 0 },
        depth: "estimated",
      },
    });
    expect(measuredDepth.yaw?.u).toBeLessThan(0.3);
    expect(estimated.yaw?.u).toBeGreaterThan(3);
  });

  it("refuses a mirrored picture", () => {
    const { right, left, midline } = pictured(deepFace());
    const { code } = refusal(() => headPose({ right: left, left: right, midline }));
    expect(code).toBe("sides-swapped");
  });
});
