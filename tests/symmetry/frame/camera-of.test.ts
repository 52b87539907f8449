import { fc, test } from "@fast-check/vitest";
import { BROW_PROMINENCE } from "../../../src/symmetry/internal.js";
import { depthAt, mapFace } from "brow-geometry/landmarks";
import {
  type Face,
  faceFrame,
  fitMidline,
  type Measured,
  type Length,
  measured,
  mm,
  type Point,
  px,
  type Scale,
  scaleFromReference,
  skinOf,
  toFace,
  toPhoto,
  turnToFront,
} from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { syntheticHead } from "../../support/synthetic-head.js";

const MILLIMETRES_A_PIXEL = 0.2;

/** The scale of the plane of the inner eye corners, from which the camera is so far away. */
function scaleAt(away: number | undefined): Scale {
  const scale = scaleFromReference(px([0, 0]), px([500, 0]), mm(100));
  return away === undefined ? scale : { ...scale, cameraDistance: distance(away) };
}

function distance(away: number): Measured<Length<"mm">> {
  return measured(mm(away), mm(0));
}

/** What a pinhole camera shows of a place in mm, `away` from the inner eye corners, aimed at an axis. */
function pinhole(
  [x, y, depth = 0]: readonly number[],
  away: number,
  [axisX, axisY]: readonly [number, number] = [0, 0],
): readonly [x: number, y: number] {
  const times = away / (away - depth) / MILLIMETRES_A_PIXEL;
  const unit = 1 / MILLIMETRES_A_PIXEL;
  return [
    1000 + unit * axisX + times * ((x ?? 0) - axisX),
    800 - unit * axisY - times * ((y ?? 0) - axisY),
  ];
}

function deepPhoto(places: readonly (readonly number[])[], away: number): Face<"px"> {
  const seen = places.map((place) =>
    px([...pinhole(place, away), (place[2] ?? 0) / MILLIMETRES_A_PIXEL] as [
      number,
      number,
      number,
    ]),
  );
  return {
    right: { endocanthion: px([920, 800, 0]), exocanthion: px([780, 800]) },
    left: {
      endocanthion: px([1080, 800, 0]),
      exocanthion: px([1220, 800]),
      brow: { upper: seen },
    },
    midline: { subnasale: px([1000, 1010]), menton: px([1000, 1360]) },
  };
}

describe("a frame that knows how far the camera was", () => {
  it("puts start and tail end of a brow back (vectors: +3.9 % and −2.4 % at 400 mm)", () => {
    const photo = deepPhoto(
      [
        [14, 22, 15],
        [58, 18, -10],
      ],
      400,
    );
    const [start, tail] = photo.left.brow?.upper ?? [];
    expectClose(((start?.[0] ?? 0) - 1000) / 70, 1.039, 5e-4);
    expectClose(((tail?.[0] ?? 0) - 1000) / 290, 0.976, 5e-4);
    const read = toFace(photo, faceFrame(photo, scaleAt(400)));
    expectClose(
      read.left.brow?.upper,
      [
        [14, 22, 15],
        [58, 18, -10],
      ],
      1e-9,
    );
  });

  it("leaves perspective in where nobody knows the distance", () => {
    const photo = deepPhoto(
      [
        [14, 22, 15],
        [58, 18, -10],
      ],
      400,
    );
    const frame = faceFrame(photo, scaleAt(undefined));
    expect(frame.camera).toBeUndefined();
    expectClose(toFace(photo, frame).left.brow?.upper[0]?.[0], 14 / (1 - 15 / 400), 1e-9);
  });

  it("measures from where the camera pointed", () => {
    const axis = [10, -40] as const;
    const photo: Face<"px"> = {
      ...deepPhoto([], 500),
      left: {
        endocanthion: px([1080, 800, 0]),
        exocanthion: px([1220, 800]),
        alare: px([...pinhole([20, -35, 20], 500, axis), 100] as [number, number, number]),
      },
    };
    const frame = faceFrame(photo, scaleAt(500), { cameraAxis: px([1050, 1000]) });
    expectClose(frame.camera?.axis, [10, -40], 1e-9);
    expectClose(toFace(photo, frame).left.alare, [20, -35, 20], 1e-9);
  });

  it("finds the middle of a face at which the camera did not point", () => {
    const head = syntheticHead();
    const axis = [60, -30] as const;
    const shown = mapFace<"mm", "px">(head, ([x, y, depth = 0]) =>
      px([...pinhole([x, y, depth], 500, axis), depth / MILLIMETRES_A_PIXEL] as [
        number,
        number,
        number,
      ]),
    );
    const frame = faceFrame(shown, scaleAt(500), { cameraAxis: px([1300, 950]) });
    expectClose(frame.midline.tilt, 0, 1e-9);
    expectClose(toFace(shown, frame).left, head.left, 1e-9);
    expectClose(toPhoto(toFace(shown, frame), frame).left, shown.left, 1e-9);
  });

  it("takes the dots of a head without features to lie where the scale holds", () => {
    const bare: Face<"px"> = { right: {}, left: {}, midline: {} };
    const midline = fitMidline(bare, { given: [px([1000, 400]), px([1000, 1200])] });
    const frame = faceFrame(bare, scaleAt(400), { midline });
    expectClose(toFace(px([1250, 800]), frame), [50, 0], 1e-9);
    const nearer = faceFrame(bare, scaleAt(400), { midline, prominence: mm(20) });
    expectClose(toFace(px([1250, 800]), nearer), [47.5, 0], 1e-9);
  });

  test.prop([
    fc.double({ min: 200, max: 3000, noNaN: true }),
    fc.array(
      fc.tuple(
        fc.double({ min: -80, max: 80, noNaN: true }),
        fc.double({ min: -80, max: 80, noNaN: true }),
        fc.double({ min: -60, max: 40, noNaN: true }),
      ),
      { minLength: 1, maxLength: 6 },
    ),
  ])("undoes a pinhole camera at any distance", (away, places) => {
    const photo = deepPhoto(places, away);
    const frame = faceFrame(photo, scaleAt(away));
    expectClose(toFace(photo, frame).left.brow?.upper, places, 1e-9);
  });

  it.each([
    [
      "no distance",
      deepPhoto(
        [
          [14, 22, 15],
          [58, 18, -10],
        ],
        400,
      ),
      0,
      "cameraDistance is 0",
    ],
    ["a point behind the camera", deepPhoto([[0, 0, 90]], 400), 80, "more than the depth"],
  ])("refuses %s", (_, photo, away, message) => {
    const work = (): unknown => toFace(photo, faceFrame(photo, scaleAt(away)));
    expect(refusal(work).message).toContain(message);
  });
});

describe("brows without depth before a camera", () => {
  const truth = syntheticFace();
  const skin = skinOf(truth, "modelled");
  const depthOf = (point: Point<"mm">, landmark?: string): number =>
    landmark === "brow" ? BROW_PROMINENCE.value + depthAt(point, skin) : 0;
  const photo = mapFace<"mm", "px">(truth, (point, landmark) =>
    px(pinhole([point[0], point[1], depthOf(point, landmark)], 400) as [number, number]),
  );

  it("are read where they are, as their skin is modelled; eyes and nose stay", () => {
    const read = toFace(photo, faceFrame(photo, scaleAt(400)));
    expectClose(read.left.brow, truth.left.brow, 1e-6);
    expectClose(read.right.brow, truth.right.brow, 1e-6);
    expectClose(read.left.exocanthion, truth.left.exocanthion, 1e-9);
    expectClose(read.left.alare, truth.left.alare, 1e-9);
  });

  it("would read 3.9 % large and 2.9 % small without the distance", () => {
    const read = toFace(photo, faceFrame(photo, scaleAt(undefined)));
    const [start, tail] = [0, 6].map((at) => read.left.brow?.upper[at]?.[0] ?? 0);
    const [trueStart = 0, trueTail = 0] = [0, 6].map((at) => truth.left.brow.upper[at]?.[0]);
    expectClose((start ?? 0) / trueStart, 1 / (1 - depthOf(mm([14.5, 20]), "brow") / 400), 1e-9);
    expect((tail ?? 0) / trueTail).toBeLessThan(0.975);
  });

  it("go back onto the photo where they came from", () => {
    const frame = faceFrame(photo, scaleAt(400));
    const read = toFace(photo, frame);
    expectClose(toPhoto(read.left.brow ?? { upper: [] }, frame), photo.left.brow, 1e-6);
    expectClose(toPhoto(read, frame).left, photo.left, 1e-6);
  });

  test.prop([
    fc.double({ min: -60, max: 60, noNaN: true }),
    fc.double({ min: -20, max: 60, noNaN: true }),
    fc.double({ min: 300, max: 2000, noNaN: true }),
  ])("there and back is the identity for any mark", (x, y, away) => {
    const frame = faceFrame(photo, scaleAt(away));
    const mark = flatPoint<"mm">(x, y);
    expectClose(toFace(toPhoto(mark, frame), frame), mark, 1e-9);
  });
});

describe("a turned head before a camera", () => {
  it("is read from its front and from afar, and goes back", () => {
    const head = syntheticHead();
    const yaw = (5 * Math.PI) / 180;
    const shown = mapFace<"mm", "px">(head, (point) => {
      const [x, y, depth = 0] = point;
      const aside = [
        x * Math.cos(yaw) + depth * Math.sin(yaw),
        y,
        depth * Math.cos(yaw) - x * Math.sin(yaw),
      ];
      return px([...pinhole(aside, 450), (aside[2] ?? 0) / MILLIMETRES_A_PIXEL] as [
        number,
        number,
        number,
      ]);
    });
    const frame = turnToFront(shown, scaleAt(450), { cameraAxis: px([1000, 800]) });
    expectClose(frame.turning?.yaw, 5, 1e-6);
    const read = toFace(shown, frame);
    expectClose(read.left, head.left, 1e-6);
    expectClose(read.right, head.right, 1e-6);
    expectClose(toPhoto(read, frame).left, shown.left, 1e-6);
    const mark = mm([40, 25]);
    expectClose(toFace(toPhoto(mark, frame), frame), mark, 1e-9);
  });
});
