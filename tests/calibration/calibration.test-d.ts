import {
  type Face,
  type FaceMeasures,
  measuresFromReadings,
  type Measured,
  measured,
  mm,
  px,
  type Scale,
  scaleFromIris,
  scaleFromReference,
  scaleFromRuler,
} from "brow-geometry";
import { combineScales, scaleFromMarker } from "brow-geometry/calibration";
import { describe, expectTypeOf, it } from "vitest";

const photo: Face<"px"> = { right: {}, left: {}, midline: {} };
const face: Face<"mm"> = { right: {}, left: {}, midline: {} };

describe("scales", () => {
  it("are found in photos", () => {
    expectTypeOf(scaleFromIris(photo)).toEqualTypeOf<Scale>();
    expectTypeOf(
      scaleFromMarker(
        px([
          [0, 0],
          [9, 9],
        ]),
        mm(10),
      ),
    ).toEqualTypeOf<Scale>();
    // @ts-expect-error: a face in millimetres needs no scale
    scaleFromIris(face);
    const rim = mm([
      [0, 0],
      [9, 9],
    ]);
    // @ts-expect-error: a rim is seen in pixels
    scaleFromMarker(rim, mm(10));
    // @ts-expect-error: a ruler's readings are millimetres
    scaleFromRuler([{ at: px([0, 0]), reading: px(3) }]);
    // @ts-expect-error: a ruler's marks are seen in pixels
    scaleFromRuler([{ at: mm([0, 0]), reading: mm(3) }]);
    // @ts-expect-error: an iris is so many millimetres wide
    scaleFromIris(photo, { width: measured(px(60), px(1)) });
    // @ts-expect-error: a factor alone does not say how sure it is
    combineScales([0.125]);
  });

  it("take the camera's distance in millimetres", () => {
    const nearer = measured(mm(10), mm(1));
    const options = { depth: { nearer, cameraDistance: measured(px(400), px(1)) } };
    // @ts-expect-error: pixels for millimetres
    scaleFromReference(px([0, 0]), px([9, 9]), mm(10), options);
  });
});

describe("measuresFromReadings", () => {
  it("gives the measures that photos give", () => {
    expectTypeOf(measuresFromReadings({})).toEqualTypeOf<FaceMeasures<Measured>>();
    // @ts-expect-error: nobody reads a share
    measuresFromReadings({ right: { frontShare: mm(0.6) } });
    // @ts-expect-error: a plain number has no unit
    measuresFromReadings({ right: { front: 33 } });
  });
});
