import { fc, test } from "@fast-check/vitest";
import { DOT_NAMES } from "../../src/landmarks/internal.js";
import {
  type FaceMeasures,
  type Measured,
  measured,
  type MeasureName,
  planBrows,
  say,
  type Side,
} from "brow-geometry";
import { gradeMap, type Rubric } from "brow-geometry/grading";
import { flatPoint } from "brow-geometry/units";
import { type GradePoints, type RubricItem } from "brow-geometry/grading";
import { describe, expect } from "vitest";
import { anyBetween, anyNumber } from "../support/arbitraries.js";
import { syntheticFace } from "../support/synthetic-face.js";

const MEASURES = ["front", "tail", "archHeight", "archThickness"] as const;
type Sheet = FaceMeasures<Measured>;

/** A sheet of readings near the same invented brow, some of them missing. */
const anySide = fc.record(
  {
    front: anyBetween(31, 35),
    tail: anyBetween(15, 18),
    archHeight: anyBetween(23, 27),
    archThickness: anyBetween(5, 7),
  },
  { requiredKeys: ["front"] },
);
const anySheet: fc.Arbitrary<Sheet> = fc
  .tuple(anySide, anySide, anyBetween(0.01, 0.7))
  .map(([right, left, u]) => {
    const read = (side: Partial<Record<MeasureName, number>>): Sheet["left"] =>
      Object.fromEntries(Object.entries(side).map(([name, value]) => [name, measured(value, u)]));
    return { right: read(right), left: read(left) };
  });

const anyItems: fc.Arbitrary<readonly RubricItem[]> = fc.uniqueArray(
  fc.record({
    kind: fc.constantFrom("reference", "evenness"),
    measure: fc.constantFrom(...MEASURES),
    points: fc.integer({ min: 1, max: 9 }),
  }),
  { minLength: 1, selector: ({ kind, measure }) => `${kind} ${measure}` },
);

const rubricOf = (items: readonly RubricItem[]): Rubric => ({
  name: "any",
  source: "an invented course",
  items: [{ kind: "evenness", measure: "exocanthionToTailEnd", points: 1 }, ...items],
});

const graded = (readings: Sheet, reference: Sheet, items: readonly RubricItem[], passMark = 0.6) =>
  gradeMap(
    { readings },
    { kind: "readings", readings: reference },
    { rubric: rubricOf(items), passMark },
  );

/** The same readings, each as much less certain. */
function lessCertain({ right, left }: Sheet, times: number): Sheet {
  const widened = (side: Sheet["left"]): Sheet["left"] =>
    Object.fromEntries(
      Object.entries(side).map(([name, { value, u }]) => [name, measured(value, times * u)]),
    );
  return { right: widened(right), left: widened(left) };
}

describe("a grade", () => {
  test.prop([anySheet, anySheet, anyItems, fc.infiniteStream(fc.nat())])(
    "does not care in which order the rubric stands",
    (read, from, items, stream) => {
      const keys = new Map(items.map((item) => [item, stream.next().value as number]));
      const shuffled = [...items].sort(
        (one, other) => (keys.get(one) ?? 0) - (keys.get(other) ?? 0),
      );
      const [one, other] = [graded(read, from, items), graded(read, from, shuffled)];
      expect(other.points).toEqual(one.points);
      expect(other.result).toEqual(one.result);
      const texts = ({ items: all }: typeof one) => all.map(({ feedback }) => say(feedback)).sort();
      expect(texts(other)).toEqual(texts(one));
    },
  );

  test.prop([anySheet, anySheet, anyItems])(
    "is the sum of the grades of its items",
    (read, from, items) => {
      const sum = { total: 0, earned: 0, lost: 0, open: 0 };
      for (const item of items) {
        const { all } = graded(read, from, [item]).points;
        for (const key of Object.keys(sum) as (keyof GradePoints)[]) sum[key] += all[key];
      }
      // Each has the item of rubricOf besides, which nobody read: open.
      const twice = items.length - 1;
      const { all } = graded(read, from, items).points;
      expect(all).toEqual({ ...sum, total: sum.total - twice, open: sum.open - twice });
    },
  );

  test.prop([anySheet, anySheet, anyItems, fc.integer({ min: 2, max: 5 })])(
    "passes or fails alike whatever unit points are counted in",
    (read, from, items, times) => {
      const weigh = (by: number): Rubric => ({
        ...rubricOf(items),
        items: rubricOf(items).items.map((item) => ({ ...item, points: by * item.points })),
      });
      const reference = { kind: "readings", readings: from } as const;
      const [one, other] = [1, times].map((by) =>
        gradeMap({ readings: read }, reference, { rubric: weigh(by), passMark: 0.6 }),
      );
      expect(other?.points.all.earned).toBe(times * (one?.points.all.earned ?? NaN));
      expect(other?.result?.outcome).toBe(one?.result?.outcome);
    },
  );

  test.prop([anySheet, anySheet, anyItems, anyBetween(1, 4)])(
    "decides no more where readings are less certain, and turns nothing round",
    (read, from, items, times) => {
      const sharp = graded(read, from, items);
      const blunt = graded(lessCertain(read, times), lessCertain(from, times), items);
      expect(blunt.items).toHaveLength(sharp.items.length);
      sharp.items.forEach(({ decision: { outcome } }, index) => {
        expect([outcome, "undecided"]).toContain(blunt.items[index]?.decision.outcome);
      });
      expect(blunt.points.all.total).toBe(sharp.points.all.total);
      expect(blunt.points.all.earned).toBeLessThanOrEqual(sharp.points.all.earned);
      expect(blunt.points.all.lost).toBeLessThanOrEqual(sharp.points.all.lost);
    },
  );

  test.prop([anySheet, anyItems, fc.constantFrom<Side>("right", "left"), anyNumber(4)])(
    "against a reference is never better than that of a perfect copy",
    (sheet, items, side, off) => {
      const { value, u } = sheet[side].front as Measured;
      const moved = { ...sheet, [side]: { ...sheet[side], front: measured(value + off, u) } };
      const copy = graded(sheet, sheet, items).points.reference;
      const other = graded(moved, sheet, items).points.reference;
      expect(copy.lost).toBe(0);
      expect(other.total).toBe(copy.total);
      expect(other.earned).toBeLessThanOrEqual(copy.earned);
      expect(other.lost).toBeGreaterThanOrEqual(copy.lost);
    },
  );

  test.prop([anySheet, anySheet, anyItems, fc.constantFrom(...MEASURES)])(
    "leaves open what was not read: nothing is earned or lost by leaving it out",
    (read, from, items, measure) => {
      const { [measure]: _, ...left } = read.left;
      const whole = graded(read, from, items).points.all;
      const less = graded({ ...read, left }, from, items).points.all;
      expect(less.total).toBe(whole.total);
      expect(less.earned).toBeLessThanOrEqual(whole.earned);
      expect(less.lost).toBeLessThanOrEqual(whole.lost);
    },
  );

  test.prop([anySheet, anySheet, anyItems, anyBetween(0, 1), anyBetween(0, 1)])(
    "that passes passes under a lower mark, and that fails fails under a higher one",
    (read, from, items, one, other) => {
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      const outcome = (mark: number) => graded(read, from, items, mark).result?.outcome;
      if (outcome(high) === "passed") expect(outcome(low)).toBe("passed");
      if (outcome(low) === "failed") expect(outcome(high)).toBe("failed");
    },
  );
});

describe("a map drawn by dots", () => {
  const plan = planBrows(syntheticFace());
  const copy = gradeMap({ dots: plan.dots }, { kind: "plan", plan }).points;

  const anyMove = fc.record({
    side: fc.constantFrom<Side>("right", "left"),
    dot: fc.constantFrom(...DOT_NAMES),
    across: anyNumber(3),
    up: anyNumber(3),
  });

  test.prop([anyMove], { numRuns: 25 })(
    "is never better than the plan's own dots",
    ({ side, dot, across, up }) => {
      const [x, y] = plan.dots[side][dot];
      const moved = { ...plan.dots[side], [dot]: flatPoint<"mm">(x + across, y + up) };
      const { points } = gradeMap(
        { dots: { ...plan.dots, [side]: moved } },
        { kind: "plan", plan },
      );
      expect(copy.all.lost).toBe(0);
      expect(points.all.total).toBe(copy.all.total);
      expect(points.all.earned).toBeLessThanOrEqual(copy.all.earned);
    },
  );
});
