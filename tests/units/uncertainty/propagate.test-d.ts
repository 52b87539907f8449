import { type DeepPoint, measuredPoint, type MeasuredPoint, propagate } from "brow-geometry/units";
import { distance } from "brow-geometry/geometry";
import { type FlatPoint, type Length, measured, type Measured, mm, px } from "brow-geometry";
import { describe, expectTypeOf, it } from "vitest";

const start = measuredPoint(mm([14, 20]), mm(0.26));
const arch = measuredPoint(mm([38, 27, 1]), mm(0.26));
const seen = measuredPoint(px([14, 20]), px(1));

describe("measured values", () => {
  it("keep their unit and arity", () => {
    expectTypeOf(measured(mm(3), mm(0.1))).toEqualTypeOf<Measured<Length<"mm">>>();
    expectTypeOf(measured(1, 0)).toEqualTypeOf<Measured>();
    expectTypeOf(start).toEqualTypeOf<MeasuredPoint<"mm", FlatPoint<"mm">>>();
    expectTypeOf(arch).toEqualTypeOf<MeasuredPoint<"mm", DeepPoint<"mm">>>();
  });

  it("have an uncertainty in the unit of the value", () => {
    // @ts-expect-error: pixels of uncertainty on millimetres
    measuredPoint(mm([14, 20]), px(1));
    // @ts-expect-error: an uncertainty for each axis, in the point's unit
    measuredPoint(mm([14, 20]), [mm(1), px(1)]);
    // @ts-expect-error: the same for lengths
    measured(mm(3), px(0.1));
  });
});

describe("propagate", () => {
  it("hands plain values to the measure", () => {
    propagate(
      (values): number => {
        expectTypeOf(values.start).toEqualTypeOf<FlatPoint<"mm">>();
        expectTypeOf(values.arch).toEqualTypeOf<DeepPoint<"mm">>();
        expectTypeOf(values.share).toEqualTypeOf<number>();
        expectTypeOf(values.width).toEqualTypeOf<Length<"mm">>();
        // @ts-expect-error: there is no such input
        expectTypeOf(values.tail).not.toBeNumber();
        return values.share;
      },
      { start, arch, share: measured(0.6, 0.1), width: measured(mm(3), mm(0.1)) },
    );
  });

  it("gives results that are measured values of the same unit", () => {
    const front = propagate((values) => distance(values.start, values.arch), { start, arch });
    expectTypeOf(front).toExtend<Measured<Length<"mm">>>();
    const place = propagate((values) => values.start, { start });
    expectTypeOf(place).toExtend<MeasuredPoint<"mm">>();
    const record = propagate((values) => ({ at: values.start, far: values.start[0] }), { start });
    expectTypeOf(record.u.at).toEqualTypeOf<readonly [x: Length<"mm">, y: Length<"mm">]>();
    expectTypeOf(record.u.far).toEqualTypeOf<number>();
  });

  it("refuses mixtures of units and results that are no measures", () => {
    // @ts-expect-error: pixels and millimetres have no distance
    propagate((values) => distance(values.start, values.seen), { start, seen });
    // @ts-expect-error: text is no result
    propagate(() => "far", { start });
    // @ts-expect-error: nor is a record with text
    propagate(() => ({ far: "far" }), { start });
    // @ts-expect-error: a plain number has no uncertainty
    propagate((values) => values.x, { x: 3 });
  });

  it("correlates inputs that exist, point by coordinate", () => {
    const far = measured(3, 0.1);
    propagate(
      (values) => values.far,
      { far, start },
      {
        correlations: [{ between: ["far", "start.x"], coefficient: 0.5 }],
      },
    );
    propagate(
      (values) => values.far,
      { far, start },
      {
        // @ts-expect-error: a point has coordinates
        correlations: [{ between: ["far", "start"], coefficient: 0.5 }],
      },
    );
  });
});
