import { fc, test } from "@fast-check/vitest";
import {
  eachSide,
  faceFrame,
  mm,
  planBrows,
  planDots,
  type PlannableFace,
  type Polyline,
  requirePlannable,
  say,
  type Scale,
  shapeFindings,
  type Side,
  toFace,
} from "brow-geometry";
import { placeOnSide } from "brow-geometry/symmetry";
import { describe, expect, it } from "vitest";
import { anyBetween } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { londonFaces } from "../../support/london-faces.js";

/** A symmetric face, invented, whose hair ends 45 mm from the midline. */
function faceWithoutTails(): PlannableFace {
  const side = (sign: 1 | -1): PlannableFace["left"] => ({
    endocanthion: mm([sign * 16, 0]),
    exocanthion: mm([sign * 44, 0]),
    alare: mm([sign * 17, -38]),
    brow: {
      upper: mm([
        [sign * 17, 20],
        [sign * 38, 27],
        [sign * 45, 24],
      ]),
    },
  });
  return { right: side(-1), left: side(1), midline: {} };
}

/** A border up to so far from the midline. */
function cutAt(border: Polyline<"mm">, end: number): Polyline<"mm"> {
  const next = border.findIndex(([x]) => Math.abs(x) > end);
  const [from, to] = [border[next - 1], border[next]];
  if (from === undefined || to === undefined) return border;
  const part = (end - Math.abs(from[0])) / (Math.abs(to[0]) - Math.abs(from[0]));
  const at = mm([from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1])]);
  return [...border.slice(0, next), at];
}

function withoutTails(face: PlannableFace, missing: number): PlannableFace {
  const cut = (side: Side): PlannableFace["left"] => {
    const { upper, lower = [] } = face[side].brow;
    const end = Math.abs(upper.at(-1)?.[0] ?? Number.NaN) - missing;
    return { ...face[side], brow: { upper: cutAt(upper, end), lower: cutAt(lower, end) } };
  };
  return { ...face, right: cut("right"), left: cut("left") };
}

const faces = londonFaces().map(({ hand, millimetres: factor }) => {
  const scale: Scale = { from: "px", to: "mm", factor, u: 0, source: "given", notes: [] };
  return requirePlannable(toFace(hand, faceFrame(hand, scale)));
});

describe("a tail whose hair is missing", () => {
  // The guide runs from the nose wing (17, −38) through the outer corner (44, 0), y = (x − 44) · 38/27; the
  // border goes on from (45, 24) by −3/7: they meet at x = (24 + 45 · 3/7 + 44 · 38/27) / (38/27 + 3/7).
  const met = 105.211_640_2 / 1.835_978_836;
  const height = ((met - 44) * 38) / 27;

  it("bends towards the level of the lower start, on its guide", () => {
    const { dots } = planDots(faceWithoutTails());
    // 12.3 mm are missing: the heading of the last 5 counts for 5/12.3. The lower start lies at 20 − 8.
    const level = 12 + ((height - 12) * 5) / (met - 45);
    expectClose(dots.left.tailEnd, [44 + (level * 27) / 38, level], 1e-6);
    expectClose(dots.left.tailEnd, [54.468, 14.733], 1e-3);
    expectClose(dots.right.tailEnd[1], dots.left.tailEnd[1], 1e-12);
  });

  it("says how much is missing, and places the tail end", () => {
    const { reasons, moves, cautions } = planBrows(faceWithoutTails());
    expect(reasons.flatMap((one) => (one.code === "tail-completed" ? [say(one)] : []))).toEqual([
      "Hair of the right brow ends 12.3 mm before the tail guide: what is added bends towards the level of the lower start.",
      "Hair of the left brow ends 12.3 mm before the tail guide: what is added bends towards the level of the lower start.",
    ]);
    expect(moves.filter(({ dot }) => dot === "tailEnd").map((move) => say(move))).toEqual([
      "right tail end: 54.5 mm from the midline, 14.5 mm above the inner eye corners",
      "left tail end: 54.5 mm from the midline, 14.5 mm above the inner eye corners",
    ]);
    expect(cautions.filter(({ at }) => at)).toEqual([]);
  });

  it("goes on as it heads where no more than 5 mm are missing, without a jump there", () => {
    const endFor = (end: number): readonly number[] => {
      const face = faceWithoutTails();
      const longer = (side: Side): PlannableFace["left"] => {
        const { upper } = face[side].brow;
        const tip = mm([(side === "left" ? 1 : -1) * end, 24 - ((end - 45) * 3) / 7]);
        return { ...face[side], brow: { upper: [...upper.slice(0, 2), tip] } };
      };
      return [
        ...planDots({ ...face, right: longer("right"), left: longer("left") }).dots.left.tailEnd,
      ];
    };
    expectClose(endFor(met - 4.9), [met, height], 1e-6);
    expectClose(endFor(met - 5.001), [met, height], 2e-3);
  });

  test.prop([fc.constantFrom(...faces), anyBetween(5, 14)], { numRuns: 100 })(
    "on 102 real faces ends below the arch, and is found far off nowhere",
    (face, missing) => {
      const plan = planDots(withoutTails(face, missing));
      for (const { tailEnd, upperArch } of [plan.dots.right, plan.dots.left]) {
        expect(upperArch[1] - tailEnd[1]).toBeGreaterThan(2);
      }
      const codes = shapeFindings(plan).map(({ code }) => code);
      expect(codes).not.toContain("dot-far-off");
      expect(codes).not.toContain("tail-above-arch");
    },
  );

  it("does not hide landmarks that take a tail end 18 mm from its hair, nor one beyond where tails end", () => {
    const misplaced = (face: PlannableFace): PlannableFace => {
      const moved = (side: Side): PlannableFace["left"] => {
        const [x, y] = face[side].exocanthion;
        return { ...face[side], exocanthion: mm([x + (side === "left" ? 25 : -25), y]) };
      };
      return { ...face, right: moved("right"), left: moved("left") };
    };
    const far = (face: PlannableFace, isFar: (moved: number, out: number) => boolean): boolean => {
      const plan = planDots(face);
      const { right, left } = eachSide((side) => {
        const at = (point: readonly [number, number, ...number[]]): number =>
          placeOnSide(mm([point[0], point[1]]), side).distance;
        const end = at(plan.dots[side].tailEnd);
        const moved = Math.abs(end - at(plan.natural[side].dots.tailEnd));
        return isFar(moved, end - at(plan.face[side].endocanthion));
      });
      if (!right && !left) return false;
      expect(shapeFindings(plan).map(({ code }) => code)).toContain("dot-far-off");
      return true;
    };
    const whole = faces.filter((face) => far(misplaced(face), (moved) => moved > 18));
    expect(whole.length).toBeGreaterThan(40);
    const cut = faces.map((face) => misplaced(withoutTails(face, 14)));
    const beyond = cut.filter((face) => far(face, (moved, out) => moved > 12 && out > 51));
    expect(beyond.length).toBeGreaterThan(95);
  });
});
