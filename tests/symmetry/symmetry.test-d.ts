import { type CarryOptions, compareBorders } from "brow-geometry/symmetry";
import {
  FACE_MIDLINE,
  type FaceFrame,
  type FlatPoint,
  fitMidline,
  type Midline,
  mirror,
  mm,
  eyeCant,
  noseDeviation,
  type Polyline,
  px,
  type Scale,
  toFace,
  toPhoto,
  turnToFront,
} from "brow-geometry";
import { type Line } from "brow-geometry/geometry";
import { describe, expectTypeOf, test } from "vitest";

declare const frame: FaceFrame;
declare const scale: Scale;
declare const photoMidline: Line<"px">;

describe("mirror", () => {
  test("keeps the kind and the unit of what it is given", () => {
    expectTypeOf(mirror(mm([1, 2]), FACE_MIDLINE)).toEqualTypeOf<FlatPoint<"mm">>();
    expectTypeOf(mirror(px([[1, 2]]), photoMidline)).toEqualTypeOf<Polyline<"px">>();
  });

  test("does not mirror a point of one space across a line of the other", () => {
    // @ts-expect-error a point in px, a line in mm
    mirror(px([1, 2]), FACE_MIDLINE);
    // @ts-expect-error a brow in mm, a line in px
    mirror({ upper: mm([[1, 2]]) }, photoMidline);
  });
});

describe("toFace and toPhoto", () => {
  test("know which space is which", () => {
    expectTypeOf(toFace(px([1, 2]), frame)).toEqualTypeOf<FlatPoint<"mm">>();
    expectTypeOf(toPhoto(mm([1, 2]), frame)).toEqualTypeOf<FlatPoint<"px">>();
    // @ts-expect-error already in the face space
    toFace(mm([1, 2]), frame);
    // @ts-expect-error already on the photo
    toPhoto(px([1, 2]), frame);
  });
});

describe("fitMidline", () => {
  test("answers in the unit of the face", () => {
    expectTypeOf(fitMidline({ right: { pupil: px([1, 2]) }, left: {}, midline: {} })).toEqualTypeOf<
      Midline<"px">
    >();
  });

  test("takes no points of another space", () => {
    const face = { right: { pupil: px([1, 2]) }, left: {}, midline: {} };
    // @ts-expect-error dots in mm on a face in px
    fitMidline(face, { given: [mm([0, 0]), mm([0, 1])] });
    // @ts-expect-error no such method
    fitMidline(face, { method: "plane" });
  });
});

describe("what is missing does not compile", () => {
  test("noseDeviation needs sellion, subnasale and the inner eye corners", () => {
    // @ts-expect-error no subnasale
    noseDeviation({ right: {}, left: {}, midline: { sellion: mm([0, 2]) } });
  });

  test("eyeCant needs the pupils, or the outer eye corners", () => {
    const eyes = { endocanthion: mm([16, 0]) };
    // @ts-expect-error inner eye corners alone
    eyeCant({ right: eyes, left: eyes, midline: {} });
  });

  test("carrying by measure needs a start and a skin", () => {
    // @ts-expect-error no start, no skin
    const options: CarryOptions = { method: "measure" };
    expectTypeOf(options).toExtend<CarryOptions>();
  });

  test("a photo is turned to front with a scale, a scan without", () => {
    const photo = { right: { pupil: px([1, 2, 3]) }, left: {}, midline: {} };
    expectTypeOf(turnToFront(photo, scale)).toEqualTypeOf<FaceFrame>();
    // @ts-expect-error a photo without its scale
    turnToFront(photo);
  });

  test("borders are compared in the face space", () => {
    const brow = { upper: px([[1, 2]]) };
    // @ts-expect-error borders in px
    compareBorders({ right: brow, left: brow });
  });
});
