import {
  type BrowDots,
  checkDrawn,
  FACE_MIDLINE,
  measuresFromReadings,
  mirror,
  mm,
  NOTICED_BY_CLIENTS,
  planBrows,
  requirePlannable,
  say,
} from "brow-geometry";
import {
  gradeMap,
  type GradingOptions,
  type Rubric,
  RULER_SHEET_RUBRIC,
} from "brow-geometry/grading";
import { flatPoint } from "brow-geometry/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";
import { syntheticFace } from "../support/synthetic-face.js";
import { syntheticPlan } from "../support/synthetic-plan.js";

/** A teacher's sheet and a trainee's, by half millimetres; both invented. */
const teacher = measuresFromReadings({
  startToStart: "31 mm",
  right: { front: "33 mm", tail: "16.5 mm", archHeight: "25 mm", archThickness: "6 mm" },
  left: { front: "33 mm", tail: "16.5 mm", archHeight: "25 mm" },
});
const trainee = measuresFromReadings({
  startToStart: "31.5 mm",
  right: { front: "33 mm", tail: "15.5 mm", archHeight: "25 mm" },
  left: { front: "33.5 mm", tail: "16.5 mm", archHeight: "27 mm" },
});
const asked = { kind: "readings", readings: teacher } as const;
const none = { kind: "none" } as const;

const rubric: Rubric = {
  name: "second week",
  source: "an invented course",
  items: [
    { kind: "reference", measure: "startToStart", points: 2 },
    { kind: "reference", measure: "front", points: 1 },
    { kind: "reference", measure: "tail", points: 1 },
    { kind: "reference", measure: "archThickness", points: 5 },
    { kind: "evenness", measure: "front", points: 3 },
    { kind: "evenness", measure: "tail", points: 3 },
    { kind: "evenness", measure: "archHeight", points: 4 },
    { kind: "evenness", measure: "exocanthionToTailEnd", points: 2 },
  ],
};

const graded = (options: GradingOptions = {}) =>
  gradeMap({ readings: trainee }, asked, { rubric, ...options });

describe("gradeMap, a sheet against a teacher's", () => {
  // Half millimetres: 0.1443 each, 0.2041 together; 1 mm is kept up to 1 − 1.645 · 0.2041 = 0.66.
  it("earns what is proven within, loses what is proven outside, leaves open what is neither", () => {
    const { items } = graded();
    expect(
      items.map(({ measure, decision, earned, ...item }) => [
        item.kind,
        "side" in item ? item.side : undefined,
        measure,
        decision.outcome,
        earned,
      ]),
    ).toEqual([
      ["reference", undefined, "startToStart", "within", 2],
      ["reference", "right", "front", "within", 1],
      ["reference", "left", "front", "within", 1],
      ["reference", "right", "tail", "undecided", 0],
      ["reference", "left", "tail", "within", 1],
      ["evenness", undefined, "front", "within", 3],
      ["evenness", undefined, "tail", "undecided", 0],
      ["evenness", undefined, "archHeight", "outside", 0],
    ]);
  });

  it("adds up each part and the whole; a reading that is missing stays open, one not asked for counts for nothing", () => {
    const { points, ungraded } = graded();
    // Open: the right tail, and the right thickness that the trainee did not read.
    expect(points.reference).toEqual({ total: 11, earned: 5, lost: 0, open: 6 });
    // Open: the tails, and the eyes to the tails that nobody read.
    expect(points.evenness).toEqual({ total: 12, earned: 3, lost: 4, open: 5 });
    expect(points.all).toEqual({ total: 23, earned: 8, lost: 4, open: 11 });
    expect(ungraded.map(({ measure, side, reason }) => [measure, side, reason.code])).toEqual([
      ["archThickness", "right", "not-read"],
      ["archThickness", "left", "not-asked"],
      ["exocanthionToTailEnd", undefined, "not-read"],
    ]);
  });

  it("gives values with their uncertainties, and both sheets' together on the difference", () => {
    const u = 0.5 / (2 * Math.sqrt(3));
    const tail = graded().items.find(
      (item) => item.kind === "reference" && item.measure === "tail" && item.side === "right",
    );
    expect(tail).toMatchObject({ drawn: { value: 15.5 }, reference: { value: 16.5 }, points: 1 });
    expect(tail?.difference.value).toBe(-1);
    expect(tail?.difference.u).toBeCloseTo(u * Math.SQRT2, 12);
    const arch = graded().items.find(({ measure }) => measure === "archHeight");
    expect(arch).toMatchObject({ right: { value: 25 }, left: { value: 27 } });
    expect(arch?.difference.value).toBe(2);
  });

  it("says what was found, and lists what is open with what would settle it", () => {
    const { items, toSettle, summary } = graded();
    expect(items.map(({ feedback }) => say(feedback))).toEqual([
      "start to start: 0.5 mm off, within tolerance",
      "right front: 0 mm off, within tolerance",
      "left front: 0.5 mm off, within tolerance",
      expect.stringContaining("right tail: 1 mm off, not proven either way. It lies on the limit"),
      "left tail: 0 mm off, within tolerance",
      "front: the left reads 0.5 mm more than the right, within tolerance",
      expect.stringContaining("tail: the left reads 1 mm more than the right, not proven"),
      "height of the arch: the left reads 2 mm more than the right, outside",
    ]);
    expect(toSettle.map((note) => say(note))).toEqual([
      expect.stringContaining("right tail"),
      expect.stringContaining("tail: the left"),
      "right thickness at the arch: not read. Read it, and it can be graded.",
      "outer eye corner to tail end of both sides: not read. Read it, and it can be graded.",
    ]);
    expect(summary.map((note) => say(note))).toEqual([
      'Graded by the rubric "second week" (an invented course) under the tolerances "working"; what counts is proven at 95 %.',
      "Against the reference: 5 of 11 points earned, 0 lost, 6 open.",
      "Evenness of both sides: 3 of 12 points earned, 4 lost, 5 open.",
    ]);
  });

  it("advises how to settle what repeated readings can", () => {
    const doubtful = measuresFromReadings({ left: { front: { value: mm(33.3), u: mm(0.5) } } });
    const { toSettle } = gradeMap({ readings: doubtful }, asked, {
      rubric: { ...rubric, items: [{ kind: "reference", measure: "front", points: 1 }] },
    });
    expect(toSettle.map((note) => say(note)).join()).toMatch(
      /left front: 0.3 mm off.*independent placements/,
    );
  });

  it("decides by the value alone under the simple rule: nothing is undecided", () => {
    const { points, summary } = graded({ rule: "simple" });
    expect(points.reference).toEqual({ total: 11, earned: 6, lost: 0, open: 5 });
    expect(points.evenness).toEqual({ total: 12, earned: 6, lost: 4, open: 2 });
    expect(summary[0]?.code).toBe("graded-simple");
  });

  it("lets what no tolerance speaks of count for nothing", () => {
    const { ungraded, points } = graded({ tolerances: NOTICED_BY_CLIENTS });
    expect(ungraded.map(({ reason }) => reason.code)).toEqual([
      "no-tolerance",
      "no-tolerance",
      "not-read",
    ]);
    expect(points.reference.total).toBe(6);
    // A difference of 2 mm lies on that set's limit.
    expect(points.evenness).toEqual({ total: 12, earned: 6, lost: 0, open: 6 });
  });
});

describe("gradeMap, the pass mark", () => {
  // Of 23 points 8 are earned and 11 open.
  it.each([
    [0, "passed"],
    [8 / 23, "passed"],
    [0.35, "open"],
    [19 / 23, "open"],
    [0.83, "failed"],
    [1, "failed"],
  ] as const)("of %f leaves the map %s", (passMark, outcome) => {
    const { result, summary } = graded({ passMark });
    expect(result).toMatchObject({ passMark, outcome });
    expect(result?.needed).toBeCloseTo(23 * passMark, 12);
    expect(summary.at(-1)?.code).toBe(outcome === "open" ? "result-open" : outcome);
  });

  it("left out passes nobody and fails nobody", () => {
    expect(graded()).not.toHaveProperty("result");
  });

  it("is reached by every point, however shares add up", () => {
    const thirds = { ...rubric, items: rubric.items.map((item) => ({ ...item, points: 0.1 })) };
    const full = measuresFromReadings({
      startToStart: "31 mm",
      right: { front: "33 mm", tail: "16.5 mm", archThickness: "6 mm", archHeight: "25 mm" },
      left: { front: "33 mm", tail: "16.5 mm", archHeight: "25 mm" },
    });
    const even = {
      ...thirds,
      items: thirds.items.filter(({ measure }) => measure !== "exocanthionToTailEnd"),
    };
    const { result, summary } = gradeMap({ readings: full }, asked, { rubric: even, passMark: 1 });
    expect(result?.outcome).toBe("passed");
    expect(summary.slice(-1).map((note) => say(note))).toEqual([
      "Passed: 0.9 of 0.9 points; it takes 0.9.",
    ]);
  });
});

describe("gradeMap, without a reference", () => {
  it("grades evenness alone", () => {
    const { points, items } = gradeMap({ readings: trainee }, none);
    expect(points.reference.total).toBe(0);
    expect(items.map(({ measure }) => measure)).toEqual(["front", "tail", "archHeight"]);
    expect(points.evenness).toEqual({ total: 18, earned: 2, lost: 2, open: 14 });
  });

  it("leaves an empty sheet open, not failed", () => {
    const { points, result } = gradeMap({}, none, { passMark: 0.6 });
    expect(points.all).toEqual({ total: 18, earned: 0, lost: 0, open: 18 });
    expect(result?.outcome).toBe("open");
  });
});

describe("gradeMap, a drawn map against a plan", () => {
  const plan = syntheticPlan;
  const reference = { kind: "plan", plan } as const;
  const fine = mm(0.05);

  it("earns everything where the plan was drawn", () => {
    const { points, ungraded } = gradeMap({ dots: plan.dots, u: fine }, reference, {
      passMark: 1,
    });
    expect(points.all).toEqual({ total: 37, earned: 37, lost: 0, open: 0 });
    expect(ungraded).toEqual([]);
  });

  it("takes the plan's figures as asked for exactly", () => {
    const { items } = gradeMap({ dots: plan.dots, u: fine }, reference);
    for (const item of items) {
      if (item.kind === "reference") expect(item.reference.u).toBe(0);
    }
  });

  it("loses the height of an arch that was drawn 2 mm too high, and its evenness", () => {
    const [x, y] = plan.dots.left.upperArch;
    const left = { ...plan.dots.left, upperArch: flatPoint<"mm">(x, y + 2) };
    const { items, points } = gradeMap({ dots: { ...plan.dots, left }, u: fine }, reference);
    const lost = items.filter(({ decision }) => decision.outcome === "outside");
    expect(lost.map(({ feedback }) => say(feedback))).toContain(
      "left height of the arch: 2 mm too high",
    );
    expect(lost.map(({ kind, measure }) => `${kind} ${measure}`)).toEqual(
      expect.arrayContaining(["reference archHeight", "evenness archHeight"]),
    );
    expect(points.all.earned + points.all.lost + points.all.open).toBe(37);
  });

  it("takes a plan that the trainee made as a drawn map", () => {
    const own = planBrows(syntheticFace(), { arch: "exocanthion-vertical" });
    const { items } = gradeMap(own, reference);
    const check = checkDrawn(plan, { dots: own.dots });
    const front = items.find(({ kind, measure }) => kind === "reference" && measure === "front");
    expect(front?.difference).toEqual(
      check.measures.find(({ measure, side }) => measure === "front" && side === "right")
        ?.difference,
    );
  });

  it("takes readings over what dots would say", () => {
    const front = { value: (plan.measures.left.front?.value ?? 0) + 3, u: 0.1 };
    const readings = { right: {}, left: { front } };
    const { items } = gradeMap({ dots: plan.dots, u: fine, readings }, reference);
    expect(
      items.find(({ feedback }) => say(feedback) === "left front: 3 mm too long")?.decision.outcome,
    ).toBe("outside");
  });

  it("calls brows that start too far apart too wide", () => {
    const teacher = measuresFromReadings({ startToStart: "31 mm" });
    const textOf = (startToStart: string): string | undefined =>
      gradeMap(
        { readings: measuresFromReadings({ startToStart }) },
        { kind: "readings", readings: teacher },
      ).items.flatMap(({ measure, feedback }) =>
        measure === "startToStart" ? [say(feedback)] : [],
      )[0];
    expect(textOf("33 mm")).toBe("start to start: 2 mm too wide");
    expect(textOf("29 mm")).toBe("start to start: 2 mm too narrow");
  });

  it("leaves nothing read, nothing lost", () => {
    expect(gradeMap({}, reference).points.all).toEqual({ total: 37, earned: 0, lost: 0, open: 37 });
  });
});

describe("gradeMap, whatever was read", () => {
  const length = fc.double({ min: 1, max: 60, noNaN: true });
  // No brow is thicker than 25 mm.
  const thickness = fc.double({ min: 1, max: 25, noNaN: true });
  const side = fc.record(
    { front: length, tail: length, archHeight: length, archThickness: thickness },
    { requiredKeys: [] },
  );
  const sheet = fc.record({ right: side, left: side }).map((readings) =>
    measuresFromReadings({
      right: readings.right as never,
      left: readings.left as never,
    }),
  );

  it("accounts for every point, the same way each time, also after JSON", () => {
    fc.assert(
      fc.property(sheet, sheet, (read, from) => {
        const grade = gradeMap({ readings: read }, { kind: "readings", readings: from });
        const { all, reference, evenness } = grade.points;
        expect(all.earned + all.lost + all.open).toBeCloseTo(all.total, 9);
        expect(reference.total + evenness.total).toBeCloseTo(all.total, 9);
        const lost = grade.items.filter(({ decision }) => decision.outcome === "outside");
        expect(lost.reduce((sum, { points }) => sum + points, 0)).toBeCloseTo(all.lost, 9);
        const again = JSON.parse(JSON.stringify(read)) as typeof read;
        expect(gradeMap({ readings: again }, { kind: "readings", readings: from })).toEqual(grade);
      }),
    );
  });

  it("does not care which side is which", () => {
    fc.assert(
      fc.property(sheet, sheet, (read, from) => {
        const swapped = ({ right, left }: typeof read) => ({ right: left, left: right });
        const one = gradeMap({ readings: read }, { kind: "readings", readings: from });
        const other = gradeMap(
          { readings: swapped(read) },
          { kind: "readings", readings: swapped(from) },
        );
        expect(other.points).toEqual(one.points);
      }),
    );
  });

  it("does not care whether the face is mirrored", () => {
    const face = syntheticFace();
    const plan = planBrows(face, { lead: "right" });
    const twin = planBrows(requirePlannable(mirror(face, FACE_MIDLINE)), { lead: "left" });
    const [x, y] = plan.dots.right.tailEnd;
    const lowered = { ...plan.dots.right, tailEnd: flatPoint<"mm">(x, y - 1.8) };
    const dots = { ...plan.dots, right: lowered };
    const flipped = (dots: BrowDots<"mm">): BrowDots<"mm"> =>
      Object.fromEntries(
        Object.entries(dots).map(([dot, [out, up]]) => [dot, flatPoint(-out, up)]),
      );
    const mirrored = { right: flipped(dots.left), left: flipped(dots.right) };
    const one = gradeMap({ dots }, { kind: "plan", plan });
    const other = gradeMap({ dots: mirrored }, { kind: "plan", plan: twin });
    expect(one.points.all.lost).toBeGreaterThan(0);
    expect(other.points).toEqual(one.points);
  });
});

describe("gradeMap refuses", () => {
  const only = (items: Rubric["items"]): GradingOptions => ({ rubric: { ...rubric, items } });
  const front = { kind: "evenness", measure: "front" } as const;

  it.each([
    ["no rubric", { rubric: null as never }, "rubric is null; needs an object with a name"],
    ["items that are no list", only({} as never), "rubric.items is {}; needs a list of items"],
    ["an item that is none", only([null as never]), "rubric.items[0] is null; needs an object"],
    ["a rubric without items", only([]), "rubric.items is []; needs at least one item"],
    ["an item without points", only([{ ...front, points: 0 }]), "rubric.items[0].points is 0"],
    ["points that are no number", only([{ ...front, points: Number.NaN }]), "points is NaN"],
    [
      "an item twice",
      only([
        { ...front, points: 1 },
        { ...front, points: 2 },
      ]),
      "rubric.items[1].measure",
    ],
    ["a pass mark over 1", { passMark: 60 }, "passMark is 60; needs a share of all points"],
    ["a pass mark that is no number", { passMark: Number.NaN }, "passMark is NaN"],
    [
      "a rubric of which nothing is asked",
      only([{ kind: "reference", measure: "exocanthionToTailEnd", points: 1 }]),
      "needs an item that the tolerances speak of",
    ],
  ])("%s", (_, options, message) => {
    expect(refusal(() => gradeMap({ readings: trainee }, asked, options)).message).toContain(
      message,
    );
  });

  it.each([
    ["a kind", { kind: "beauty", measure: "front" }, 'items[0].kind is "beauty"; needs'],
    ["a measure", { kind: "reference", measure: "colour" }, 'measure is "colour"; needs one of'],
    [
      "evenness of what has no sides",
      { kind: "evenness", measure: "startToStart" },
      'measure is "startToStart"; needs one of front, tail',
    ],
  ])("%s that it does not know", (_, item, message) => {
    const options = only([{ ...item, points: 1 } as never]);
    expect(refusal(() => gradeMap({}, none, options)).message).toContain(message);
  });

  // What JavaScript lets pass: each would read as an empty sheet, or fail somewhere inside.
  it.each([
    ["no map", undefined, none, "drawn is missing; needs an object with dots"],
    ["a sheet for a map", trainee, none, "needs a sheet of readings as { readings: … }"],
    ["no reference", {}, undefined, 'reference is missing; needs an object with kind "plan"'],
    ["a sheet for a reference", {}, teacher, 'reference.kind is missing; needs "plan"'],
    ["no plan", {}, { kind: "plan" }, "reference.plan is missing; needs a plan"],
    [
      "readings as they were written",
      { readings: { right: { front: "33 mm" }, left: {} } },
      none,
      'drawn.readings.right.front is "33 mm"; needs a value with its u, as measuresFromReadings',
    ],
    [
      "a sheet of one side",
      { readings: { right: {} } },
      none,
      "drawn.readings.left is missing; needs what measuresFromReadings answers",
    ],
    [
      "a distance between the sides as it was written",
      { readings: { right: {}, left: {}, startToStart: "31 mm" } },
      none,
      'drawn.readings.startToStart is "31 mm"; needs a value with its u, as measuresFromReadings',
    ],
    ["dots that are none", { dots: 7 }, none, "drawn.dots is 7; needs the dots of both sides"],
    [
      "dots of one side",
      { dots: { right: {} } },
      none,
      "drawn.dots.left is missing; needs an object with dots, or {}",
    ],
  ])("%s", (_, drawn, reference, message) => {
    const error = refusal(() => gradeMap(drawn as never, reference as never));
    expect(error.message).toContain(message);
  });

  it("dots without a plan on whose face they could be read", () => {
    const { dots } = syntheticPlan;
    for (const reference of [asked, none]) {
      const error = refusal(() => gradeMap({ dots }, reference));
      expect(error.code).toBe("missing-landmark");
      expect(error.message).toContain("dots are read on the face of a plan");
    }
  });
});

describe("RULER_SHEET_RUBRIC", () => {
  it("weighs both parts about alike, and asks for nothing that no ruler reads", () => {
    const points = (kind: "reference" | "evenness"): number =>
      RULER_SHEET_RUBRIC.items
        .filter((item) => item.kind === kind)
        .reduce((sum, item) => {
          const sides = kind === "reference" && item.measure !== "startToStart" ? 2 : 1;
          return sum + sides * item.points;
        }, 0);
    expect([points("reference"), points("evenness")]).toEqual([19, 18]);
    const names = RULER_SHEET_RUBRIC.items
      .map(({ measure }) => measure)
      .filter((measure) => measure !== "startToStart");
    const side = Object.fromEntries(names.map((name) => [name, "20 mm"]));
    expect(() => measuresFromReadings({ right: side, left: side })).not.toThrow();
  });
});
