import { fc, test } from "@fast-check/vitest";
import { bestMirrorPlane, type DeepMirrorPair, type MirrorPlane } from "brow-geometry/geometry";
import { type DeepPoint, deepPoint } from "brow-geometry/units";
import { mm } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { anyDeepPoint, anyNumber } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

type Triple = readonly [number, number, number];

const spread = mm(1);

const dot = (one: Triple, other: Triple): number =>
  one[0] * other[0] + one[1] * other[1] + one[2] * other[2];

function reflected(
  point: Triple,
  { through, normal }: Pick<MirrorPlane<"mm">, "through" | "normal">,
): Triple {
  const twice =
    2 * dot([point[0] - through[0], point[1] - through[1], point[2] - through[2]], normal);
  return [point[0] - twice * normal[0], point[1] - twice * normal[1], point[2] - twice * normal[2]];
}

/** What a plane leaves: squares of each point against the image of its partner. */
function squaresLeft(
  pairs: readonly DeepMirrorPair<"mm">[],
  plane: Pick<MirrorPlane<"mm">, "through" | "normal">,
): number {
  return pairs.reduce((sum, { one, other, weight }) => {
    const image = reflected(other ?? one, plane);
    const square = (one[0] - image[0]) ** 2 + (one[1] - image[1]) ** 2 + (one[2] - image[2]) ** 2;
    return sum + (other === undefined ? 1 : 2) * weight * square;
  }, 0);
}

const anyNormal: fc.Arbitrary<Triple> = fc
  .tuple(anyNumber(1), anyNumber(1), anyNumber(1))
  .filter((parts) => Math.hypot(...parts) > 0.1)
  .map(([x, y, z]) => {
    const size = Math.hypot(x, y, z);
    return [x / size, y / size, z / size];
  });

const anyPlane = fc.record({ through: anyDeepPoint<"mm">(100), normal: anyNormal });

/** Point of a cloud as large as a head; the numbers are those of no head in particular. */
function cloudPoint(index: number, [x, y, z]: Triple): DeepPoint<"mm"> {
  const angle = 2.4 * index;
  const away = 20 + 4 * (index % 11);
  return deepPoint(
    away * Math.cos(angle) + x,
    away * Math.sin(angle) + y,
    30 * Math.sin(index) + z,
  );
}

/** Pairs and points of a plane of symmetry, exactly symmetric about it. */
const anySymmetricPairs = fc
  .tuple(
    anyPlane,
    fc.array(anyDeepPoint<"mm">(8), { minLength: 12, maxLength: 40 }),
    fc.array(anyDeepPoint<"mm">(8), { minLength: 3, maxLength: 10 }),
  )
  .map(([plane, sides, middles]) => {
    const pairs: readonly DeepMirrorPair<"mm">[] = [
      ...sides.map((shift, index) => {
        const one = cloudPoint(index, shift);
        return { one, other: mm(reflected(one, plane)), weight: 1, spread };
      }),
      ...middles.map((shift, index) => {
        const one = cloudPoint(index + 40, shift);
        const [x, y, z] = reflected(one, plane);
        return {
          one: mm([(one[0] + x) / 2, (one[1] + y) / 2, (one[2] + z) / 2]),
          weight: 1,
          spread,
        };
      }),
    ];
    return { plane, pairs };
  });

const anyPairs: fc.Arbitrary<readonly DeepMirrorPair<"mm">[]> = fc
  .array(
    fc.tuple(
      anyDeepPoint<"mm">(8),
      anyDeepPoint<"mm">(8),
      fc.boolean(),
      fc.constantFrom(0.25, 1, 2),
    ),
    { minLength: 4, maxLength: 12 },
  )
  .map((rows) =>
    rows.map(([shift, otherShift, paired, weight], index) => {
      const one = cloudPoint(2 * index, shift);
      const other = cloudPoint(2 * index + 1, otherShift);
      return paired ? { one, other, weight, spread } : { one, weight, spread };
    }),
  );

describe("bestMirrorPlane", () => {
  test.prop([anySymmetricPairs])("finds the plane of a symmetric body", ({ plane, pairs }) => {
    const { normal, through, weights, robust } = bestMirrorPlane(pairs);
    expect(robust).toBe(true);
    expectClose(Math.abs(dot(normal, plane.normal)), 1, 1e-9);
    const offset: Triple = [
      through[0] - plane.through[0],
      through[1] - plane.through[1],
      through[2] - plane.through[2],
    ];
    expectClose(dot(offset, plane.normal), 0, 1e-8);
    expectClose(
      weights,
      pairs.map(() => 1),
      1e-9,
    );
  });

  test.prop([anySymmetricPairs, fc.array(anyDeepPoint<"mm">(60), { minLength: 3, maxLength: 3 })])(
    "stays there when a quarter of the pairs is anywhere",
    ({ plane, pairs }, strays) => {
      const spoiled = pairs.map((pair, index) =>
        index < Math.min(3, Math.floor(pairs.length / 4))
          ? { ...pair, one: strays[index] ?? pair.one }
          : pair,
      );
      const { normal } = bestMirrorPlane(spoiled);
      // A stray within a few spreads of its place still has a small say.
      expect(Math.abs(dot(normal, plane.normal))).toBeGreaterThan(Math.cos((2 * Math.PI) / 180));
    },
  );

  test.prop([anyPairs, anyPlane])("leaves no more than any other plane", (pairs, other) => {
    const best = bestMirrorPlane(pairs, { robust: false });
    const left = squaresLeft(pairs, best);
    expect(left).toBeLessThanOrEqual(squaresLeft(pairs, other) * (1 + 1e-9));
    const nudged = (axis: 0 | 1 | 2, by: number): Triple => {
      const parts = best.normal.map((part, index) => (index === axis ? part + by : part)) as [
        number,
        number,
        number,
      ];
      const size = Math.hypot(...parts);
      return [parts[0] / size, parts[1] / size, parts[2] / size];
    };
    for (const axis of [0, 1, 2] as const) {
      for (const by of [0.01, -0.01]) {
        const near = { through: best.through, normal: nudged(axis, by) };
        expect(left).toBeLessThanOrEqual(squaresLeft(pairs, near) * (1 + 1e-9));
      }
    }
  });

  it("knows how sure the normal is: as sure as small moves of all points say", () => {
    const pairs: readonly DeepMirrorPair<"mm">[] = [
      { one: mm([-16, 0, 0]), other: mm([16, 1, 1]), weight: 1, spread: mm(0.5) },
      { one: mm([-44, 1, -12]), other: mm([43, 0, -10]), weight: 1, spread: mm(1) },
      { one: mm([-25, -66, 9]), other: mm([25, -65, 8]), weight: 0.5, spread: mm(1) },
      { one: mm([0.5, -40, 30]), weight: 1, spread: mm(2) },
      { one: mm([0, 16, 15]), weight: 1, spread: mm(1) },
    ];
    const { normal, normalCovariance } = bestMirrorPlane(pairs, { robust: false });
    const step = 1e-4;
    let [xx, yz, zz] = [0, 0, 0];
    pairs.forEach((pair, index) => {
      for (const end of pair.other === undefined
        ? (["one"] as const)
        : (["one", "other"] as const)) {
        for (const axis of [0, 1, 2]) {
          const at = pair[end] ?? pair.one;
          const moved = mm(
            at.map((part, place) => (place === axis ? part + step : part)) as [
              number,
              number,
              number,
            ],
          );
          const changed = pairs.map((same, place) =>
            place === index ? { ...pair, [end]: moved } : same,
          );
          const turned = bestMirrorPlane(changed, { robust: false }).normal;
          const sign = Math.sign(dot(turned, normal));
          const [x, y, z] = normal.map(
            (part, place) => ((sign * (turned[place] ?? 0) - part) / step) * pair.spread,
          ) as [number, number, number];
          xx += x * x;
          yz += y * z;
          zz += z * z;
        }
      }
    });
    expectClose(normalCovariance.xx, xx, 1e-3 * xx);
    expectClose(normalCovariance.yz, yz, 2e-3 * Math.abs(yz));
    expectClose(normalCovariance.zz, zz, 1e-3 * zz);
  });

  it.each<[string, readonly DeepMirrorPair<"mm">[], string]>([
    ["points in one place", [{ one: mm([1, 2, 3]), weight: 1, spread }], "ill-conditioned"],
    ["a spread of 0", [{ one: mm([1, 2, 3]), weight: 1, spread: mm(0) }], "out-of-range"],
    ["a weight of 0", [{ one: mm([1, 2, 3]), weight: 0, spread }], "out-of-range"],
    ["no number", [{ one: mm([1, 2, Number.NaN]), weight: 1, spread }], "not-finite"],
  ])("refuses %s", (_, pairs, code) => {
    expect(refusal(() => bestMirrorPlane(pairs)).code).toBe(code);
  });

  it("refuses points that mirror each other nowhere", () => {
    const pairs = Array.from({ length: 9 }, (_, index) => ({
      one: mm([97 * Math.sin(7 * index), 89 * Math.cos(11 * index), 83 * Math.sin(13 * index)]),
      other: mm([
        91 * Math.cos(5 * index + 1),
        79 * Math.sin(3 * index + 2),
        97 * Math.cos(17 * index),
      ]),
      weight: 1,
      spread: mm(0.01),
    }));
    expect(refusal(() => bestMirrorPlane(pairs)).code).toBe("inconsistent");
  });
});
