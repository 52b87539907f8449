import { fc, test } from "@fast-check/vitest";
import {
  type Choices,
  faceFrame,
  mm,
  planBrows,
  planDots,
  type PlannableFace,
  requirePlannable,
  say,
  type Scale,
  type Side,
  toFace,
} from "brow-geometry";
import { placeOnSide } from "brow-geometry/symmetry";
import { describe, expect, it } from "vitest";
import { anyBetween, anyFace } from "../../support/arbitraries.js";
import { foundFace, londonFaces } from "../../support/london-faces.js";
import { plainFace } from "../../support/plain-face.js";
import { refusal } from "../../support/refusal.js";

/** A symmetric face, invented: both guides are known by hand, the start's 17 mm from the midline. */
function faceWith(start: number, tail: readonly [number, number]): PlannableFace {
  const side = (sign: 1 | -1) => ({
    endocanthion: mm([sign * 16, 0]),
    exocanthion: mm([sign * 44, 0]),
    alare: mm([sign * 17, -38]),
    brow: {
      upper: mm([
        [sign * start, 20],
        [sign * 38, 27],
        [sign * tail[0], tail[1]],
      ]),
    },
  });
  return { right: side(-1), left: side(1), midline: {} };
}

const startOf = (face: PlannableFace, choices?: Choices): readonly number[] => [
  ...planDots(face, choices).dots.left.upperStart,
];

describe("hair past the start guide", () => {
  it("stays as it grows up to 2.5 mm past it", () => {
    expect(startOf(faceWith(15, [57, 18]))).toEqual([15, 20]);
  });

  it("is kept that far where it grows farther: of 3.5 mm 2.5 stay, on the border", () => {
    const [x = 0, y = 0] = startOf(faceWith(13.5, [57, 18]));
    expect(x).toBeCloseTo(14.5, 12);
    // The border rises by 7 on 24.5 mm: 20 + 1 · 2/7.
    expect(y).toBeCloseTo(20 + 2 / 7, 12);
  });

  it("is never taken away by more than 2.5 mm: of 6 mm 3.5 stay", () => {
    const face = faceWith(11, [57, 18]);
    expect(startOf(face)[0]).toBeCloseTo(13.5, 12);
    const said = planDots(face).reasons.find(({ code }) => code === "hair-kept");
    expect(said && say(said)).toBe(
      "Hair of the right brow grows 6.0 mm past the start guide, sideways: 3.5 mm of it stays.",
    );
  });

  it("is kept farther, or not at all, as chosen", () => {
    const face = faceWith(11, [57, 18]);
    expect(startOf(face, { keepHair: mm(5) })[0]).toBeCloseTo(12, 12);
    expect(startOf(face, { keepHair: mm(9) })[0]).toBeCloseTo(11, 12);
    expect(startOf(face, { keepHair: mm(0) })[0]).toBeCloseTo(17, 12);
  });

  it("does not matter where the guide lies past the hair", () => {
    const face = faceWith(18, [57, 18]);
    expect(startOf(face)[0]).toBeCloseTo(17, 12);
    expect(planDots(face).reasons.map(({ code }) => code)).toContain("border-extended");
  });
});

describe("hair past the tail guide", () => {
  // From (17, −38) through (44, 0) it runs along y = (x − 44) · 38/27, and meets the border from (38, 27)
  // to (62, 18), y = 27 − (x − 38) · 3/8, where both are the same.
  const met = (27 + (38 * 3) / 8 + (44 * 38) / 27) / (38 / 27 + 3 / 8);

  it("is kept but for 2.5 mm", () => {
    const { left } = planDots(faceWith(17, [62, 18])).dots;
    expect(met).toBeCloseTo(57.886, 3);
    const past = 62 - met;
    expect(left.tailEnd[0]).toBeCloseTo(62 - Math.min(2.5, past - 2.5), 9);
    expect(left.tailEnd[1]).toBeCloseTo(27 - (left.tailEnd[0] - 38) * (3 / 8), 9);
  });

  it("is kept as far out at a level of its own", () => {
    const at = (keepHair: number): number =>
      planDots(faceWith(17, [62, 18]), {
        keepHair: mm(keepHair),
        tailHeight: "level-with-upper-start",
      }).dots.left.tailEnd[0];
    expect(at(2.5) - at(0)).toBeCloseTo(2.5, 9);
  });
});

describe("hair past the tail guide at a level of its own", () => {
  // The guide runs along x = 44 + 27/38 · y: at a height of 13 it lies 53.24 mm out, 8.76 mm from where the hair ends.
  const face = plainFace(
    [
      [17, 20],
      [38, 27],
      [62, 18],
    ],
    [
      [17, 13],
      [38, 20],
      [62, 17.5],
    ],
  );
  const guide = 44 + (27 / 38) * 13;

  it("is taken away by 2.5 mm at most there, too, and the reason says what stays there", () => {
    const { dots, reasons } = planDots(face, { tailHeight: "level-with-lower-start" });
    expect(dots.left.lowerStart[1]).toBeCloseTo(13, 9);
    expect(dots.left.tailEnd[0]).toBeCloseTo(59.5, 9);
    expect(dots.left.tailEnd[1]).toBeCloseTo(13, 9);
    const kept = reasons.find(({ code }) => code === "hair-kept")?.values;
    expect(kept?.past).toBeCloseTo(62 - guide, 9);
    expect(kept?.kept).toBeCloseTo(59.5 - guide, 9);
  });

  it("stays where keepHair says so, and goes where it is 0", () => {
    const endOf = (keepHair: number): number =>
      planDots(face, { tailHeight: "level-with-lower-start", keepHair: mm(keepHair) }).dots.left
        .tailEnd[0];
    expect(endOf(10)).toBeCloseTo(62, 9);
    expect(endOf(7)).toBeCloseTo(guide + 7, 9);
    expect(endOf(0)).toBeCloseTo(guide, 9);
  });

  const level = fc.constantFrom("level-with-upper-start", "level-with-lower-start");
  test.prop([anyFace(1), level, fc.constantFrom<Side>("right", "left")], { numRuns: 100 })(
    "is never taken from the leading brow by more than 2.5 mm",
    (any, tailHeight, lead) => {
      const { dots, natural } = planDots(any, {
        arch: "exocanthion-vertical",
        tailHeight,
        lead,
        thickness: { start: mm(7), body: mm(6.5), arch: mm(6) },
      });
      const out = (at: readonly [number, number, ...number[]]): number => Math.abs(at[0]);
      const own = out(natural[lead].dots.tailEnd);
      expect(own - out(dots[lead].tailEnd)).toBeLessThanOrEqual(2.5 + 1e-9);
    },
  );
});

describe("a brow that starts and ends where it grows", () => {
  it("keeps both ends", () => {
    const face = faceWith(11, [66, 15]);
    const plan = planBrows(face, { start: "natural", tail: "natural" });
    expect(plan.dots.left.upperStart).toEqual(mm([11, 20]));
    expect(plan.dots.left.tailEnd).toEqual(mm([66, 15]));
    expect(plan.guides.left).toEqual([]);
    const ends = plan.moves.filter(({ dot }) => dot === "upperStart" || dot === "tailEnd");
    expect(ends.map(({ kind }) => kind)).toEqual(["stay", "stay", "stay", "stay"]);
    expect(plan.reasons.map((one) => say(one))).toContain(
      "Tail end where it grows, at the height of the brow there.",
    );
  });

  it("may end level with its start, where its hair ends sideways", () => {
    const { dots } = planDots(faceWith(15, [57, 18]), {
      tail: "natural",
      tailHeight: "level-with-upper-start",
    });
    expect(dots.left.tailEnd).toEqual(mm([57, 20]));
  });
});

it("keepHair is no length below 0", () => {
  const face = faceWith(15, [57, 18]);
  expect(refusal(() => planDots(face, { keepHair: mm(-1) })).detail.field).toBe("keepHair");
  expect(refusal(() => planDots(face, { keepHair: mm(Number.NaN) })).detail.field).toBe("keepHair");
});

/** How much of a side's hair a plan takes away at both ends, sideways. */
function taken({ dots, natural }: ReturnType<typeof planDots>, side: Side): number {
  const apart = (dot: "upperStart" | "tailEnd"): number =>
    placeOnSide(dots[side][dot], side).distance -
    placeOnSide(natural[side].dots[dot], side).distance;
  return Math.max(apart("upperStart"), 0) + Math.max(-apart("tailEnd"), 0);
}

test.prop(
  [anyFace(1), anyBetween(0, 8), anyBetween(0, 8), fc.constantFrom<Side>("right", "left")],
  {
    numRuns: 100,
  },
)("enlarging keepHair never takes away more hair", (face, one, other, lead) => {
  const [less, more] = [Math.min(one, other), Math.max(one, other)];
  // The brow that leads: evening takes from the other whatever it takes.
  const takes = (keepHair: number): number =>
    taken(planDots(face, { arch: "exocanthion-vertical", lead, keepHair: mm(keepHair) }), lead);
  expect(takes(more)).toBeLessThanOrEqual(takes(less) + 1e-9);
});

test.prop([anyFace(1), fc.constantFrom<Side>("right", "left")], { numRuns: 100 })(
  "by default no guide takes more than 2.5 mm at either end of a brow that leads",
  (face, lead) => {
    const { dots, natural } = planDots(face, { arch: "exocanthion-vertical", lead });
    const { distance } = placeOnSide(natural[lead].dots.upperStart, lead);
    expect(placeOnSide(dots[lead].upperStart, lead).distance - distance).toBeLessThan(2.5 + 1e-9);
    const end = placeOnSide(natural[lead].dots.tailEnd, lead).distance;
    expect(end - placeOnSide(dots[lead].tailEnd, lead).distance).toBeLessThan(2.5 + 1e-9);
  },
);

describe("a guide", () => {
  /** Of which side and mark guides miss the hair, and past which hair grows. */
  function toldOf(face: PlannableFace, choices?: Choices): readonly (readonly string[])[] {
    const { reasons } = planDots(face, choices);
    const places = (...codes: readonly string[]): readonly string[] =>
      reasons
        .filter(({ code }) => codes.includes(code))
        .map(({ values }) => `${values.side as string} ${values.mark as string}`);
    return [places("border-extended", "guide-missed"), places("hair-kept")];
  }

  it("that meets one border only does not miss the hair that grows past it", () => {
    const face = faceWith(17, [62, 18]);
    const shortened = (sign: 1 | -1) => ({
      lower: mm([
        [sign * 17, 13],
        [sign * 38, 21],
        [sign * 50, 18],
      ]),
    });
    const short: PlannableFace = {
      ...face,
      right: { ...face.right, brow: { ...face.right.brow, ...shortened(-1) } },
      left: { ...face.left, brow: { ...face.left.brow, ...shortened(1) } },
    };
    expect(toldOf(short)).toEqual([[], ["right tail", "left tail"]]);
    expect(toldOf(short, { keepHair: mm(0) })).toEqual([["right tail", "left tail"], []]);
  });

  const faces = londonFaces().flatMap((found) =>
    [found.hand, foundFace(found, "mesh-478"), foundFace(found, "points-68")].map((photo) => {
      const factor = found.millimetres;
      const scale: Scale = { from: "px", to: "mm", factor, u: 0, source: "given", notes: [] };
      return requirePlannable(toFace(photo, faceFrame(photo, scale)));
    }),
  );

  test.prop([fc.constantFrom(...faces), anyBetween(0, 6)], { numRuns: 200 })(
    "is never said to miss hair that grows past it, on 102 real faces",
    (face, keepHair) => {
      const [missed = [], past = []] = toldOf(face, { keepHair: mm(keepHair) });
      expect(past.filter((place) => missed.includes(place))).toEqual([]);
    },
  );
});
