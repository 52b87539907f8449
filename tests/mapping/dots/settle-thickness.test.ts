import { fc, test } from "@fast-check/vitest";
import { measured, mm, planDots, type PlannableFace, planBrows, type Point } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { plannedThickness } from "../../../src/mapping/dots/settle-thickness.js";
import { expectClose } from "../../support/close.js";
import { syntheticFace } from "../../support/synthetic-face.js";

/** The synthetic face with a straight upper border and hair so thick under its start and its tail end. */
function wedge(atStart: number, atTail: number, u?: number): PlannableFace {
  const face = syntheticFace();
  const side = (sign: 1 | -1): PlannableFace["left"] => {
    const along = (start: number, tail: number): readonly Point<"mm">[] =>
      [15, 25, 35, 45, 60].map((x) =>
        mm([sign * x, 22 + x / 5 - (start + ((tail - start) * (x - 15)) / 45)]),
      );
    return {
      ...(sign === 1 ? face.left : face.right),
      brow: { upper: along(0, 0), lower: along(atStart, atTail) },
    };
  };
  const known = { ...face, right: side(-1), left: side(1) };
  if (u === undefined) return known;
  const uncertainty = { default: mm(u) };
  return {
    ...known,
    source: { markup: "points-98", ringFactor: measured(1, 0), depth: "none", uncertainty },
  };
}

const codes = (face: PlannableFace): readonly string[] =>
  planDots(face).reasons.flatMap(({ code }) => (code.startsWith("thickness") ? [code] : []));

describe("the planned thickness", () => {
  it("is the hair's where that thins outwards", () => {
    const face = wedge(9, 4.5);
    expect(codes(face)).toEqual(["thickness-natural"]);
    const { thickness } = planDots(face).choices;
    expectClose(thickness.start, 9, 1e-9);
    expect(thickness.arch).toBeLessThan(thickness.body);
  });

  it("does not grow towards the arch where the hair's does: stations share their mean", () => {
    const face = wedge(3, 9);
    expect(codes(face)).toEqual(["thickness-evened"]);
    const { start, body, arch } = planDots(face).choices.thickness;
    expectClose([body, arch], [start, start], 1e-12);
    // A straight brow arches at the outer corner of the eye, 43.9 mm out; half-way to it lies the body.
    const hair = (x: number): number => 3 + (6 * (x - 15)) / 45;
    const from = planDots(face).natural.left.dots.upperStart[0];
    expect(from).toBe(15);
    expect(start).toBeGreaterThan(hair(from));
    expect(start).toBeLessThan(hair(45));
  });

  it("is as brows usually are, and as thick on the whole, where borders are known too badly to tell", () => {
    const face = wedge(3, 9, 1.3);
    expect(codes(face)).toEqual(["thickness-usual"]);
    const { start, body, arch } = planDots(face).choices.thickness;
    const sure = planDots(wedge(3, 9)).choices.thickness;
    expectClose([body / start, arch / start], [7 / 8, 6 / 8], 1e-12);
    expectClose(start + body + arch, sure.start + sure.body + sure.arch, 1e-9);
  });

  it("carries the hair's doubt, in whichever way it follows from it", () => {
    for (const face of [wedge(9, 4.5), wedge(3, 9), wedge(3, 9, 1.3)]) {
      const { bodyThickness } = planBrows(face).measures.left;
      expect(bodyThickness?.u).toBeGreaterThan(0.1);
    }
    const u = planBrows(wedge(3, 9, 1.3)).measures.left.bodyThickness?.u ?? 0;
    expect(u).toBeGreaterThan(2 * (planBrows(wedge(3, 9)).measures.left.bodyThickness?.u ?? 0));
  });

  const anyThickness = fc.double({ min: 1, max: 15, noNaN: true });
  const known = syntheticFace();

  test.prop([anyThickness, anyThickness, anyThickness])(
    "never grows outwards, keeps its mean, and stays as it is where it thins",
    (start, body, arch) => {
      const even = plannedThickness(known, { start: mm(start), body: mm(body), arch: mm(arch) });
      expect(even.start).toBeGreaterThanOrEqual(even.body);
      expect(even.body).toBeGreaterThanOrEqual(even.arch);
      expectClose(even.start + even.body + even.arch, start + body + arch, 1e-9);
      if (start >= body && body >= arch) expect(even).toEqual({ start, body, arch });
      // None that does not grow is nearer: by the variational inequality, tried at the corners.
      const off = [start - even.start, body - even.body, arch - even.arch] as const;
      for (const corner of [
        [1, 0, 0],
        [1, 1, 0],
        [-1, -1, -1],
        [0, 0, -1],
        [0, -1, -1],
      ] as const) {
        expect(
          corner.reduce<number>((sum, step, at) => sum + step * (off[at] ?? 0), 0),
        ).toBeLessThan(1e-9);
      }
    },
  );

  test.prop([anyThickness])("takes what no border tells from a usual brow as thick", (body) => {
    const { start, arch } = plannedThickness(known, { body: mm(body) });
    expectClose([start, arch], [(8 / 7) * body, (6 / 7) * body], 1e-9);
    expect(plannedThickness(known, {})).toEqual({ start: 8, body: 7, arch: 6 });
  });
});
