import { fc, test } from "@fast-check/vitest";
import {
  type Dot,
  type Face,
  mm,
  NOTICED_BY_CLIENTS,
  type Point,
  say,
  type Side,
} from "brow-geometry";
import { compareCaptures, type Displacement, type DottedFace } from "brow-geometry/symmetry";
import { DOT_NAMES } from "../../../src/landmarks/internal.js";
import { mapFace } from "brow-geometry/landmarks";
import { type Similarity, transform } from "brow-geometry/geometry";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { normalNumbers } from "../../support/random.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";
import { syntheticDots } from "../../support/synthetic-dots.js";

const BEFORE: DottedFace = {
  face: syntheticFace(),
  dots: { right: syntheticDots("right"), left: syntheticDots("left") },
};

/** A capture in which every dot of a side went outward and up by so much. */
function moved(
  capture: DottedFace,
  side: Side,
  [outward, up]: readonly [number, number],
): DottedFace {
  const sign = side === "left" ? 1 : -1;
  const dots = Object.fromEntries(
    Object.entries(capture.dots[side]).map(([dot, [x, y]]) => [
      dot,
      mm([x + sign * outward, y + up]),
    ]),
  );
  return { ...capture, dots: { ...capture.dots, [side]: dots } };
}

/** A capture taken from elsewhere: turned, shifted, of another scale. */
function seenThrough(capture: DottedFace, similarity: Similarity<"mm", "mm">): DottedFace {
  const map = (point: Point<"mm">): Point<"mm"> => transform(point, similarity);
  const sideOf = (side: Side): DottedFace["dots"]["left"] =>
    Object.fromEntries(Object.entries(capture.dots[side]).map(([dot, point]) => [dot, map(point)]));
  return {
    face: mapFace(capture.face, map),
    dots: { right: sideOf("right"), left: sideOf("left") },
  };
}

const anySimilarity: fc.Arbitrary<Similarity<"mm", "mm">> = fc.record({
  rotation: fc.double({ min: -40, max: 40, noNaN: true }),
  factor: fc.double({ min: 0.8, max: 1.25, noNaN: true }),
  from: fc.constant(mm([0, 0])),
  to: fc
    .tuple(
      fc.double({ min: -50, max: 50, noNaN: true }),
      fc.double({ min: -50, max: 50, noNaN: true }),
    )
    .map(([x, y]) => mm([x, y])),
});

const anyMove = fc.tuple(
  fc.double({ min: -6, max: 6, noNaN: true }),
  fc.double({ min: -6, max: 6, noNaN: true }),
);

function everyDot(
  displacements: { readonly [Name in Dot]?: Displacement },
  check: (displacement: Displacement, dot: Dot) => void,
): void {
  for (const dot of DOT_NAMES) {
    const displacement = displacements[dot];
    if (displacement === undefined) throw new Error(`${dot} is missing`);
    check(displacement, dot);
  }
}

describe("compareCaptures", () => {
  test.prop([anyFace(), anySimilarity])(
    "of one capture finds that nothing moved",
    (face, similarity) => {
      const capture = { ...BEFORE, face };
      const { registration, displacements } = compareCaptures(
        capture,
        seenThrough(capture, similarity),
      );
      expect(registration.consistent).toBe(true);
      expectClose(registration.disagreement, 0, 1e-6);
      expectClose(registration.similarity.factor * similarity.factor, 1, 1e-9);
      for (const side of ["right", "left"] as const) {
        everyDot(displacements[side], ({ up, outward, ways }) => {
          expectClose([up.value, outward.value], [0, 0], 1e-8);
          expect(ways).toEqual([]);
        });
      }
    },
  );

  test.prop([anyMove, anyMove, anySimilarity])(
    "finds how far dots went, in the axes of the earlier face",
    (right, left, similarity) => {
      const after = moved(moved(BEFORE, "right", right), "left", left);
      const { displacements } = compareCaptures(BEFORE, seenThrough(after, similarity));
      everyDot(displacements.right, ({ outward, up }) => {
        expectClose([outward.value, up.value], right, 1e-8);
      });
      everyDot(displacements.left, ({ outward, up }) => {
        expectClose([outward.value, up.value], left, 1e-8);
      });
    },
  );

  it.each<[string, readonly [number, number], readonly string[]]>([
    ["up and outward", [3, 3], ["up", "outward"]],
    ["down and inward", [-3, -3], ["down", "inward"]],
    ["up only", [0.1, 3], ["up"]],
    ["not to speak of", [0.1, -0.1], []],
  ])("names the ways of the artist: %s", (_, by, ways) => {
    const { displacements } = compareCaptures(
      BEFORE,
      moved(moved(BEFORE, "right", by), "left", by),
    );
    expect(displacements.right.upperArch?.ways).toEqual(ways);
    expect(displacements.left.upperArch?.ways).toEqual(ways);
  });

  it("keeps a scale that is trusted", () => {
    const similarity = { rotation: 0, factor: 1.1, from: mm([0, 0]), to: mm([0, 0]) };
    const grown = seenThrough(BEFORE, similarity);
    expectClose(compareCaptures(BEFORE, grown).displacements.left.tailEnd?.outward.value, 0, 1e-9);
    const fixed = compareCaptures(BEFORE, grown, { scale: "fixed" });
    expect(fixed.registration.similarity.factor).toBe(1);
    expect(fixed.registration.stretchU).toBe(0);
    expectClose(fixed.displacements.left.tailEnd?.outward.value, 5.7, 1e-9);
  });

  it("is unsure of fixed scales by what is said of them, the more the farther out", () => {
    const read = (scaleU: number): Displacement | undefined =>
      compareCaptures(BEFORE, BEFORE, { scale: "fixed", scaleU }).displacements.left.tailEnd;
    const [exact, loose] = [read(0), read(0.04)];
    const added = Math.sqrt((loose?.outward.u ?? 0) ** 2 - (exact?.outward.u ?? 0) ** 2);
    expectClose(added, 0.04 * (BEFORE.dots.left.tailEnd?.[0] ?? Number.NaN), 1e-9);
    expect(refusal(() => compareCaptures(BEFORE, BEFORE, { scaleU: -1 })).message).toContain(
      "scaleU",
    );
  });

  test.prop([anyMove, anyMove])(
    "finds the opposite where before and after are exchanged",
    (right, left) => {
      const after = moved(moved(BEFORE, "right", right), "left", left);
      const there = compareCaptures(BEFORE, after).displacements;
      const back = compareCaptures(after, BEFORE).displacements;
      for (const side of ["right", "left"] as const) {
        everyDot(there[side], ({ outward, up }, dot) => {
          const other = back[side][dot];
          expectClose([other?.outward.value, other?.up.value], [-outward.value, -up.value], 1e-9);
        });
      }
    },
  );

  it("says when the stable points themselves disagree, and is less sure then", () => {
    const { face } = BEFORE;
    const grimace: Face<"mm"> = {
      ...face,
      left: { ...face.left, exocanthion: mm([43.9, 4]) },
    };
    const calm = compareCaptures(BEFORE, BEFORE);
    const changed = compareCaptures(BEFORE, { ...BEFORE, face: grimace });
    expect(calm.registration.consistent).toBe(true);
    expect(changed.registration.consistent).toBe(false);
    expect(changed.registration.disagreement).toBeGreaterThan(2);
    expect(calm.registration).not.toHaveProperty("note");
    expect(changed.registration.note?.values.landmark).toEqual({
      code: "landmark-of-side",
      values: { side: "left", landmark: "exocanthion" },
    });
    expect(changed.registration.note && say(changed.registration.note)).toMatch(
      /the left outer eye corner most: [1-4]\.\d mm\. Something else has changed/,
    );
    const uOf = ({ displacements }: typeof calm): number => displacements.left.tailEnd?.up.u ?? 0;
    expect(uOf(changed)).toBeGreaterThan(uOf(calm));
    const apart = changed.registration.stable.find(
      ({ landmark, side }) => landmark === "exocanthion" && side === "left",
    );
    expect(apart?.apart).toBeGreaterThan(1);
    // Registered without the point that moved, the rest agrees.
    const without = { stable: ["endocanthion", "subnasale", "sellion"] } as const;
    const rest = compareCaptures(BEFORE, { ...BEFORE, face: grimace }, without);
    expectClose(rest.registration.disagreement, 0, 1e-9);
  });

  it("is as unsure as repeated captures scatter", () => {
    const next = normalNumbers(7);
    const noisy = (): DottedFace => {
      const shift = (point: Point<"mm">): Point<"mm"> =>
        mm([point[0] + 0.26 * next(), point[1] + 0.26 * next()]);
      const sideOf = (side: Side): DottedFace["dots"]["left"] =>
        Object.fromEntries(
          Object.entries(BEFORE.dots[side]).map(([dot, point]) => [dot, shift(point)]),
        );
      return {
        face: mapFace(BEFORE.face, shift),
        dots: { right: sideOf("right"), left: sideOf("left") },
      };
    };
    const results = Array.from({ length: 1500 }, () => compareCaptures(noisy(), noisy()));
    const spread = (read: (displacement: Displacement) => number): number => {
      const values = results.map(({ displacements: { left } }) =>
        left.tailEnd === undefined ? Number.NaN : read(left.tailEnd),
      );
      return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
    };
    const stated = compareCaptures(BEFORE, BEFORE).displacements.left.tailEnd;
    expectClose(
      spread(({ up }) => up.value),
      stated?.up.u,
      0.03,
    );
    expectClose(
      spread(({ outward }) => outward.value),
      stated?.outward.u,
      0.03,
    );
    const rejected = results.filter(({ registration }) => !registration.consistent).length;
    expect(rejected / results.length).toBeGreaterThan(0.03);
    expect(rejected / results.length).toBeLessThan(0.07);
  });

  it("decides by a set of tolerances", () => {
    const after = moved(BEFORE, "left", [0, 4]);
    const { displacements } = compareCaptures(BEFORE, after, { tolerances: NOTICED_BY_CLIENTS });
    expect(displacements.left.upperArch?.decisions?.up.outcome).toBe("outside");
    expect(displacements.left.upperArch?.decisions?.outward.outcome).toBe("within");
    const none = { name: "none", tolerances: {} };
    const undecided = compareCaptures(BEFORE, after, { tolerances: none });
    expect(undecided.displacements.left.upperArch).not.toHaveProperty("decisions");
  });

  it("compares the dots that both captures have", () => {
    const { tailEnd: _, ...fewer } = syntheticDots("left");
    const after = { ...BEFORE, dots: { ...BEFORE.dots, left: fewer } };
    const { left, right } = compareCaptures(BEFORE, after).displacements;
    expect(left.tailEnd).toBeUndefined();
    expect(Object.keys(right)).toEqual([...DOT_NAMES]);
  });

  it("needs two stable points, and says what two leave open", () => {
    const { right, left } = syntheticFace();
    const eyes = (landmarks: Face<"mm">["right"]): Face<"mm">["right"] =>
      landmarks.endocanthion === undefined ? {} : { endocanthion: landmarks.endocanthion };
    const two = { ...BEFORE, face: { right: eyes(right), left: eyes(left), midline: {} } };
    expect(compareCaptures(two, BEFORE).registration).not.toHaveProperty("disagreement");
    const one = { ...BEFORE, face: { right: eyes(right), left: {}, midline: {} } };
    expect(refusal(() => compareCaptures(one, BEFORE)).code).toBe("missing-landmark");
  });
});
