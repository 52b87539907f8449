import { test } from "@fast-check/vitest";
import {
  type Choices,
  type CompleteDots,
  eachSide,
  FACE_MIDLINE,
  mirror,
  mm,
  planBrows,
  planDots,
  type PlannedDots,
  requirePlannable,
  SHAPE_LIMITS,
  shapeFindings,
} from "brow-geometry";
import { describe, expect, it } from "vitest";
import { heightOver } from "../../../src/geometry/internal.js";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";

const plain = planDots(syntheticFace());

/** The plan with the left brow's dots somewhere else. */
function withLeft(dots: Partial<CompleteDots<"mm">>): PlannedDots {
  return { ...plain, dots: { ...plain.dots, left: { ...plain.dots.left, ...dots } } };
}

/** Code, value and limit of what is found on the left brow. */
function found(plan: PlannedDots): readonly (readonly [string, unknown, unknown])[] {
  return shapeFindings(plan)
    .filter(({ values }) => values.side === "left")
    .map(({ code, values }) => [code, values.value, values.limit]);
}

describe("shapeFindings", () => {
  it("finds nothing in the default plan of an even face", () => {
    expect(shapeFindings(plain)).toEqual([]);
  });

  it("names a claw: a tail that falls by 11.4 mm over 4.8 mm", () => {
    const arch = plain.dots.left.upperArch;
    const tailEnd = mm([arch[0] + 4.8, arch[1] - 11.4]);
    const [[code, value, limit] = []] = found(withLeft({ tailEnd }));
    expect([code, limit]).toEqual(["tail-steep", 60]);
    // atan(11.4 / 4.8), from a calculator.
    expectClose(value, 67.166, 1e-3);
  });

  it("names a tail end above the middle of the arch, and one far below the lower start", () => {
    const { upperArch, lowerArch, lowerStart, tailEnd } = plain.dots.left;
    const middle = (upperArch[1] + lowerArch[1]) / 2;
    const high = found(withLeft({ tailEnd: mm([tailEnd[0], middle + 1.5]) }));
    expect(high.map(([code]) => code)).toContain("tail-above-arch");
    expectClose(high.find(([code]) => code === "tail-above-arch")?.[1], 1.5, 1e-9);
    const low = found(withLeft({ tailEnd: mm([tailEnd[0], lowerStart[1] - 6.5]) }));
    expectClose(low.find(([code]) => code === "tail-below-start")?.[1], 6.5, 1e-9);
  });

  it("names a brow that thickens towards the arch, station by station", () => {
    const thickness = { start: mm(5), body: mm(7), arch: mm(7.6) };
    const plan = planDots(syntheticFace(), { thickness });
    expect(
      shapeFindings(plan).map(({ code, values }) => [code, values.side, values.station]),
    ).toEqual([
      ["thickens-outward", "right", "body"],
      ["thickens-outward", "right", "arch"],
      ["thickens-outward", "left", "body"],
      ["thickens-outward", "left", "arch"],
    ]);
    expectClose(
      shapeFindings(plan).map(({ values }) => values.value),
      [2, 0.6, 2, 0.6],
      1e-9,
    );
  });

  it("names a lid space that closes against what grows, above the pupil", () => {
    const thickness = { start: mm(14), body: mm(13), arch: mm(12) };
    const plan = planBrows(syntheticFace(), { thickness });
    const closes = plan.cautions.filter(({ code }) => code === "lid-space-closes");
    expect(closes.map(({ values }) => values.side)).toEqual(["right", "left"]);
    const { lidToBrow: grown } = plan.naturalMeasures.left;
    const by = (grown?.value ?? 0) - (plan.measures.left.lidToBrow?.value ?? 0);
    expectClose(closes[1]?.values.value, by, 1e-9);
    expectClose(closes[1]?.at?.[0], 31.5, 1e-9);
  });

  it("names a border far from the hair's in the same place, and no dot that slides along it", () => {
    const { upper, lower } = syntheticFace().left.brow;
    const over = (x: number, border: typeof upper): number => heightOver(mm(x), border) ?? NaN;
    const [body] = plain.dots.left.lowerBody;
    const far = found(withLeft({ lowerBody: mm([body, over(body, lower) - 13]) }));
    expectClose(far.find(([code]) => code === "dot-far-off")?.[1], 13, 1e-9);
    // 12.5 mm nearer to the midline, on the border where it grows.
    const [x] = plain.natural.left.dots.upperArch ?? [NaN];
    const arch = { upperArch: mm([x - 12.5, over(x - 12.5, upper)]) };
    expect(found(withLeft(arch)).map(([code]) => code)).not.toContain("dot-far-off");
    // An end is far off sideways, too.
    const { tailEnd } = plain.dots.left;
    const out = found(withLeft({ tailEnd: mm([tailEnd[0] + 13, tailEnd[1]]) }));
    expect(out.map(([code]) => code)).toContain("dot-far-off");
  });

  it("names a steep front", () => {
    const { upperStart, upperArch } = plain.dots.left;
    const across = upperArch[0] - upperStart[0];
    const steep = found(withLeft({ upperArch: mm([upperArch[0], upperStart[1] + across]) }));
    expectClose(steep.find(([code]) => code === "front-steep")?.[1], 45, 1e-9);
  });

  it("takes other limits, and a plan carries by them", () => {
    const choices: Choices = { thickness: { start: mm(5), body: mm(7), arch: mm(7) } };
    const plan = planDots(syntheticFace(), choices);
    expect(shapeFindings(plan, { "thickens-outward": 2 })).toEqual([]);
    const limits = { "thickens-outward": 1.9 };
    expect(shapeFindings(plan, limits)).toHaveLength(2);
    const carried = (options: Parameters<typeof planBrows>[2]): number =>
      planBrows(syntheticFace(), choices, options).cautions.filter(({ at }) => at).length;
    expect(carried({ shapeLimits: { "thickens-outward": 2 } })).toBe(0);
    expect(carried({ shapeLimits: limits })).toBe(2);
    expect(carried({})).toBe(2);
  });

  it("is refused where it would run over the eye, with what is to change", () => {
    const thickness = { start: mm(25), body: mm(25), arch: mm(25) };
    const { code, detail } = refusal(() => planBrows(syntheticFace(), { thickness }));
    expect(code).toBe("no-solution");
    expect(detail.field).toBe("space over the right lid");
    expect(detail.need).toBe("0 mm or more: a thinner brow, higher levels or another guide");
  });

  test.prop([anyFace(2)])("finds the same on the mirrored face, side for side", (any) => {
    const findings = (face: typeof any): readonly string[] => {
      const plan = planDots(requirePlannable(face));
      return shapeFindings(plan, TELLTALE).map(
        ({ code, values }) => `${code} ${Number(values.value).toFixed(6)}`,
      );
    };
    const image = mirror(any, FACE_MIDLINE) as typeof any;
    expect([...findings(image)].sort()).toEqual([...findings(any)].sort());
  });

  test.prop([anyFace(1)])("names what exceeds a limit and nothing else", (any) => {
    const plan = planDots(requirePlannable(any));
    const all = shapeFindings(plan, TELLTALE);
    for (const { code, values } of all) {
      expect(values.value).toBeGreaterThan(-1000);
      const one = shapeFindings(plan, { ...NEVER, [code]: values.value });
      expect(one.every((other) => Number(other.values.value) > Number(values.value))).toBe(true);
    }
    expect(shapeFindings(plan, NEVER)).toEqual([]);
    // Nothing depends on which side is looked at first.
    expect(new Set(all.map(({ values }) => values.side))).toEqual(
      new Set(Object.keys(eachSide(() => 0))),
    );
  });
});

const everyLimit = (limit: number): typeof SHAPE_LIMITS =>
  Object.fromEntries(
    Object.keys(SHAPE_LIMITS).map((code) => [code, limit]),
  ) as unknown as typeof SHAPE_LIMITS;
const TELLTALE = everyLimit(-1000);
const NEVER = everyLimit(1000);
