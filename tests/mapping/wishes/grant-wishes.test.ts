import { type Choices, mm, planDots, type PlannableFace, say, shapeFindings } from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import {
  grantWishes,
  type GrantedWish,
  type Wish,
  type WishName,
  WISHES,
} from "brow-geometry/mapping";
import { flatPoint, length } from "brow-geometry/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { keysOf } from "../../../src/units/internal.js";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";

/**
 * Brows 8 mm thick throughout, symmetric: start 17 out and 20 high, arch 38 and 26, tail end 57.5 and 18, on
 * the guide from alare (17, −38) through exocanthion (44, 0): at a height of 18 it is 56.8 out.
 */
const side = (sign: 1 | -1) => ({
  endocanthion: mm([sign * 16, 0]),
  exocanthion: mm([sign * 44, 0]),
  limbusLateral: mm([sign * 36, 1]),
  pupil: mm([sign * 30, 1]),
  alare: mm([sign * 17, -38]),
  brow: {
    upper: mm([
      [sign * 17, 20],
      [sign * 30, 24.5],
      [sign * 38, 26],
      [sign * 50, 22],
      [sign * 56, 19],
    ]),
    lower: mm([
      [sign * 17, 12],
      [sign * 30, 16.5],
      [sign * 38, 18.5],
      [sign * 50, 18],
      [sign * 56, 19],
    ]),
  },
});
const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
const choices: Choices = {
  arch: "lateral-limbus-vertical",
  thickness: { start: mm(8), body: mm(8), arch: mm(7) },
};

const before = planDots(face, choices).dots;
const granted = (wishes: readonly Wish[], given: Choices = choices) => {
  const { choices: made, grants } = grantWishes(face, wishes, given);
  return { made, grants, dots: planDots(face, made).dots };
};
const whyOf = ({ note }: GrantedWish | undefined = expect.fail("no grant")): unknown =>
  (note.values["why"] as { readonly code: string } | undefined)?.code;

describe("grantWishes", () => {
  it("lifts and lowers a whole brow", () => {
    const { dots, grants } = granted([{ wish: "lift", amount: mm(1.5) }]);
    expect(grants.map(({ note }) => note.code)).toEqual(["wish-granted"]);
    for (const dot of keysOf(dots.left)) {
      expectClose(dots.left[dot][1] - before.left[dot][1], 1.5, 1e-9);
      expectClose(dots.left[dot][0], before.left[dot][0], 1e-9);
    }
    const { dots: lowered } = granted([{ wish: "lower", amount: mm(1) }]);
    expectClose(lowered.right.lowerArch[1] - before.right.lowerArch[1], -1, 1e-9);
  });

  it("lengthens and shortens along the tail", () => {
    const { upperArch, tailEnd } = before.left;
    const [x, y] = [tailEnd[0] - upperArch[0], tailEnd[1] - upperArch[1]];
    const { dots } = granted([{ wish: "shorten", amount: mm(3) }]);
    const long = Math.hypot(x, y);
    expectClose(dots.left.tailEnd[0], tailEnd[0] - (3 * x) / long, 1e-9);
    expectClose(dots.left.tailEnd[1], tailEnd[1] - (3 * y) / long, 1e-9);
    expectClose(dots.left.upperArch, upperArch, 1e-9);
  });

  it("makes a brow fuller from its lower border, thinner likewise", () => {
    const { dots } = granted([{ wish: "fuller", amount: mm(1) }]);
    expectClose(dots.left.lowerBody[1], before.left.lowerBody[1] - 1, 1e-9);
    expectClose(dots.left.upperBody, before.left.upperBody, 1e-9);
    const thin = granted([{ wish: "thinner", amount: mm(9) }]);
    // 7 mm at the arch less 2 mm that stay.
    expect(thin.grants[0]?.granted).toBe(5);
    expect(whyOf(thin.grants[0])).toBe("wish-thin");
  });

  it("brings starts closer as far as the guides go: alare stands at 17, the inner eye corner at 16", () => {
    const { dots, grants } = granted([{ wish: "closer", amount: mm(4) }]);
    expect(grants[0]?.granted).toBe(1);
    expectClose(dots.right.upperStart[0], -16, 1e-9);
    expectClose(dots.right.lowerStart[0], -16, 1e-9);
    const [grant] = grants;
    expect(grant && say(grant.note)).toBe(
      "Closer together by 4.0 mm: 1.0 mm granted, no more. The right brow would leave its guides: the last one is above the inner eye corner.",
    );
  });

  it("does not end a brow before the outer corner of the eye, 44 mm from the midline", () => {
    const { choices: made, grants } = grantWishes(
      face,
      [{ wish: "shorten", amount: mm(20) }],
      choices,
      // So far from its hair that another limit would come first.
      { shapeLimits: { "dot-far-off": 20, "tail-above-arch": 20 } },
    );
    const { dots } = planDots(face, made);
    expect(whyOf(grants[0])).toBe("wish-at-guide");
    expect(dots.left.tailEnd[0]).toBeGreaterThanOrEqual(44);
    expect(dots.left.tailEnd[0]).toBeLessThan(44.2);
  });

  it("grants a side alone, and leaves the other where it was", () => {
    const { dots } = granted([{ wish: "higher-arch", amount: mm(1), side: "right" }]);
    expectClose(dots.left, before.left, 1e-9);
    expectClose(dots.right.upperArch[1] - before.right.upperArch[1], 1, 1e-9);
    expectClose(dots.right.upperStart, before.right.upperStart, 1e-9);
  });

  it("grants wishes one after another, on top of each other", () => {
    const { dots, grants } = granted([
      { wish: "lift", amount: mm(1) },
      { wish: "fuller", amount: mm(0.5), side: "left" },
      { wish: "flatter-arch", amount: mm(0.5) },
    ]);
    expect(grants.map(({ granted: amount }) => amount)).toEqual([1, 0.5, 0.5]);
    expectClose(dots.left.lowerArch[1] - before.left.lowerArch[1], 1 - 0.5 - 0.5, 1e-9);
    expectClose(dots.right.lowerArch[1] - before.right.lowerArch[1], 1 - 0.5, 1e-9);
    expectClose(dots.right.lowerStart[1] - before.right.lowerStart[1], 1, 1e-9);
  });

  it("stops at the limits of a brow's shape, by its finding", () => {
    // The front, 19 mm long, rises by 25° where the arch is 8.86 mm over the start: it is 5.625 over it.
    const rise = before.left.upperArch[1] - before.left.upperStart[1];
    const across = before.left.upperArch[0] - before.left.upperStart[0];
    const most = across * Math.tan((25 * Math.PI) / 180) - rise;
    const { grants } = granted([{ wish: "higher-arch", amount: mm(15) }]);
    expect(whyOf(grants[0])).toBe("front-steep");
    expect(grants[0]?.granted).toBe(Math.floor(most * 10) / 10);
    const given = grantWishes(face, [{ wish: "higher-arch", amount: mm(6) }], choices, {
      shapeLimits: { "front-steep": 45 },
    });
    expect(given.grants[0]?.note.code).toBe("wish-granted");
  });

  it("moves no dot that the artist has pinned", () => {
    const pins = [{ side: "left", dot: "tailEnd", at: mm([57, 18]) }] as const;
    const { grants, made } = granted([{ wish: "lengthen", amount: mm(1) }], { ...choices, pins });
    expect(whyOf(grants[0])).toBe("wish-at-pin");
    expect(made.pins).toEqual(pins);
  });

  it("keeps whose wish it is, and why, with the pins that it makes", () => {
    const { made } = granted([
      {
        wish: "higher-arch",
        amount: mm(1),
        side: "left",
        by: "client",
        reason: "as it used to be",
      },
    ]);
    expect(made.pins?.map(({ side: on, by, reason }) => [on, by, reason])).toEqual([
      ["right", undefined, undefined],
      ["left", "client", "as it used to be"],
    ]);
  });

  it.each<[string, unknown, string]>([
    ["another name", [{ wish: "nicer", amount: 1 }], "wishes[0].wish"],
    ["more than 20 mm", [{ wish: "lift", amount: 21 }], "wishes[0].amount"],
    ["a negative amount", [{ wish: "lift", amount: -1 }], "wishes[0].amount"],
    ["no number", [{ wish: "lift", amount: Number.NaN }], "wishes[0].amount"],
    ["another side", [{ wish: "lift", amount: 1, side: "both" }], "wishes[0].side"],
    [
      "two of a kind on a brow",
      [
        { wish: "lift", amount: 1, side: "left" },
        { wish: "lower", amount: 1 },
      ],
      "wishes[1].wish",
    ],
  ])("refuses %s", (_, wishes, field) => {
    const { detail } = refusal(() => grantWishes(face, wishes as readonly Wish[]));
    expect(detail).toMatchObject({ where: "grantWishes", field });
  });

  const anyWish: fc.Arbitrary<Wish> = fc
    .record({
      wish: fc.constantFrom<WishName[]>(...keysOf(WISHES)),
      tenths: fc.integer({ min: 0, max: 200 }),
      side: fc.constantFrom("right", "left", undefined),
    })
    .map(({ wish, tenths, side: on }) => ({
      wish,
      amount: length(tenths / 10),
      ...(on === undefined ? {} : { side: on }),
    }));

  it("changes nothing by a wish of zero", () => {
    fc.assert(
      fc.property(anyFace(1), anyWish, (someone, wish) => {
        const { choices: made } = grantWishes(someone, [{ ...wish, amount: mm(0) }]);
        expect(planDots(someone, made)).toEqual(planDots(someone));
      }),
    );
  });

  it("grants between nothing and the wish, makes no shape worse, and says why there is not more", () => {
    fc.assert(
      fc.property(anyFace(1), anyWish, (someone, wish) => {
        const { choices: made, grants } = grantWishes(someone, [wish]);
        const [grant = expect.fail("no grant")] = grants;
        expect(grant.granted).toBeGreaterThanOrEqual(0);
        expect(grant.granted).toBeLessThanOrEqual(wish.amount);
        expect(grant.note.code).toBe(grant.granted === wish.amount ? "wish-granted" : "wish-held");
        const kinds = (plan: ReturnType<typeof planDots>): readonly string[] =>
          shapeFindings(plan).map(
            ({ code, values }) => `${code} ${values["side"] === "left" ? "left" : "right"}`,
          );
        const known = kinds(planDots(someone));
        expect(kinds(planDots(someone, made)).filter((kind) => !known.includes(kind))).toEqual([]);
      }),
    );
  });

  it("grants a mirrored face the mirrored wish", () => {
    const mirrored = (someone: PlannableFace): PlannableFace => {
      const flipped = mapFace(someone, ([x, y]) => flatPoint<"mm">(-x, y));
      return { ...flipped, right: flipped.left, left: flipped.right } as PlannableFace;
    };
    fc.assert(
      fc.property(anyFace(1), anyWish, (someone, wish) => {
        const other = { right: "left", left: "right" } as const;
        const swapped = wish.side === undefined ? wish : { ...wish, side: other[wish.side] };
        const [one] = grantWishes(someone, [wish]).grants;
        const [two] = grantWishes(mirrored(someone), [swapped]).grants;
        expect(two?.granted).toBe(one?.granted);
      }),
    );
  });
});
