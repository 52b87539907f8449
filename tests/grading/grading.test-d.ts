import type { BrowPlan, DrawnMap } from "brow-geometry";
import type { MapGrade } from "brow-geometry/grading";
import type { GradingReference, RubricItem } from "brow-geometry/grading";
import { gradeMap } from "brow-geometry/grading";
import { describe, expectTypeOf, it } from "vitest";

describe("gradeMap", () => {
  it("takes a drawn map, and a trainee's plan for one", () => {
    expectTypeOf<BrowPlan>().toExtend<DrawnMap>();
    expectTypeOf(gradeMap).returns.toEqualTypeOf<MapGrade>();
  });

  it("tells an item against the reference from one of evenness", () => {
    const item = {} as MapGrade["items"][number];
    if (item.kind === "evenness") {
      expectTypeOf(item).toHaveProperty("right");
      // @ts-expect-error: evenness has no reference
      expectTypeOf(item).toHaveProperty("reference");
    }
  });

  it("refuses evenness of what is read between the sides", () => {
    // @ts-expect-error: start to start has no sides
    const item: RubricItem = { kind: "evenness", measure: "startToStart", points: 1 };
    expectTypeOf(item).not.toBeNever();
  });

  it("refuses a reference that does not say what it is", () => {
    // @ts-expect-error: readings are named as such
    const reference: GradingReference = { readings: { right: {}, left: {} } };
    expectTypeOf(reference).not.toBeNever();
  });
});
