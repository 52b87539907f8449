import { type DeepPoint, hasDepth } from "brow-geometry/units";
import {
  distance,
  lineThrough,
  midpoint,
  pointOnLine,
  reflectAcross,
  spaceDistance,
} from "brow-geometry/geometry";
import {
  type FlatPoint,
  type Length,
  mm,
  type Point,
  type Polyline,
  px,
  scaleFromReference,
  toMillimetres,
  toPixels,
} from "brow-geometry";
import { describe, expectTypeOf, it } from "vitest";

describe("mm and px", () => {
  it("keep the arity", () => {
    expectTypeOf(mm(54)).toEqualTypeOf<Length<"mm">>();
    expectTypeOf(mm([1, 2])).toEqualTypeOf<FlatPoint<"mm">>();
    expectTypeOf(px([1, 2, 3])).toEqualTypeOf<DeepPoint<"px">>();
    expectTypeOf(
      px([
        [1, 2],
        [3, 4],
      ]),
    ).toEqualTypeOf<readonly FlatPoint<"px">[]>();
    expectTypeOf(mm([[1, 2, 3]])).toEqualTypeOf<readonly DeepPoint<"mm">[]>();
  });

  it("refuse other shapes", () => {
    // @ts-expect-error: one number is no point
    mm([1]);
    // @ts-expect-error: four numbers are no point
    px([1, 2, 3, 4]);
    // @ts-expect-error: text is no length
    mm("54");
    // @ts-expect-error: an object is no point
    px({ x: 1, y: 2 });
  });
});

describe("units", () => {
  it("stay apart", () => {
    expectTypeOf<Length<"px">>().not.toExtend<Length<"mm">>();
    expectTypeOf<Length<"mm">>().not.toExtend<Length<"px">>();
    expectTypeOf<FlatPoint<"px">>().not.toExtend<FlatPoint<"mm">>();
    expectTypeOf<number>().not.toExtend<Length<"mm">>();
    expectTypeOf<readonly [number, number]>().not.toExtend<FlatPoint<"mm">>();
  });

  it("travel through geometry", () => {
    expectTypeOf(distance(mm([0, 0]), mm([1, 1]))).toEqualTypeOf<Length<"mm">>();
    expectTypeOf(midpoint(px([0, 0]), px([1, 1]))).toEqualTypeOf<Point<"px">>();
    const across = lineThrough(px([0, 0]), px([0, 1]));
    expectTypeOf(reflectAcross(px([1, 2]), across)).toEqualTypeOf<FlatPoint<"px">>();
    expectTypeOf(reflectAcross(px([1, 2, 3]), across)).toEqualTypeOf<DeepPoint<"px">>();
  });

  it("do not mix", () => {
    // @ts-expect-error: pixels and millimetres have no distance
    distance(px([0, 0]), mm([1, 1]));
    // @ts-expect-error: nor a line
    lineThrough(mm([0, 0]), px([1, 1]));
    // @ts-expect-error: nor a midpoint
    midpoint(mm([0, 0]), px([1, 1]));
    // @ts-expect-error: a millimetre line does not mirror pixels
    reflectAcross(px([1, 2]), lineThrough(mm([0, 0]), mm([0, 1])));
    // @ts-expect-error: pixels along a line in millimetres
    pointOnLine(lineThrough(mm([0, 0]), mm([0, 1])), px(3));
    // @ts-expect-error: one border, two units
    const mixed: Polyline<"mm"> = [mm([0, 0]), px([1, 1])];
    expectTypeOf(mixed).not.toBeNever();
    // @ts-expect-error: a plain pair has no unit
    distance([0, 0], [1, 1]);
  });

  it("are changed by a scale only, the right way round", () => {
    const scale = scaleFromReference(px([0, 0]), px([1, 0]), mm(1));
    expectTypeOf(toMillimetres(px(3), scale)).toEqualTypeOf<Length<"mm">>();
    expectTypeOf(toPixels(mm(3), scale)).toEqualTypeOf<Length<"px">>();
    // @ts-expect-error: millimetres are millimetres already
    toMillimetres(mm(3), scale);
    // @ts-expect-error: the known length is in millimetres
    scaleFromReference(px([0, 0]), px([1, 0]), px(50));
    // @ts-expect-error: the points are in pixels
    scaleFromReference(mm([0, 0]), mm([1, 0]), mm(50));
    // @ts-expect-error: placement happens in the photo
    scaleFromReference(px([0, 0]), px([1, 0]), mm(50), { placement: mm(0.3) });
  });
});

describe("depth", () => {
  it("is not there unless it is said to be", () => {
    const flat = mm([1, 2]);
    // @ts-expect-error: a flat point has no third coordinate
    expectTypeOf(flat[2]).toBeUndefined();
    // @ts-expect-error: a flat point is not deep
    const deep: DeepPoint<"mm"> = flat;
    // @ts-expect-error: a deep point is not flat
    const shallow: FlatPoint<"mm"> = mm([1, 2, 3]);
    expectTypeOf(deep).not.toEqualTypeOf(shallow);
    expectTypeOf(spaceDistance).toBeFunction();
  });

  it("is found by asking", () => {
    const point = mm([1, 2, 3]) as Point<"mm">;
    if (hasDepth(point)) expectTypeOf(point).toEqualTypeOf<DeepPoint<"mm">>();
    else expectTypeOf(point).toEqualTypeOf<FlatPoint<"mm">>();
  });
});

describe("holes that the design knows", () => {
  it("arithmetic and comparison forget the unit", () => {
    expectTypeOf(mm(3) + px(4)).toEqualTypeOf<number>();
    expectTypeOf(mm(3) < px(4)).toEqualTypeOf<boolean>();
  });
});
