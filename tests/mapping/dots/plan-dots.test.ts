import {
  ARCH_CONVENTIONS,
  type Choices,
  type CompleteDots,
  eachSide,
  FACE_MIDLINE,
  GeometryError,
  lengthBetween,
  mirror,
  mm,
  otherSide,
  outline,
  type Outline,
  type Pin,
  planBrows,
  planDots,
  type PlannableFace,
  type PlannedDots,
  requirePlannable,
  type Side,
  START_CONVENTIONS,
} from "brow-geometry";
import { outlineBorders } from "brow-geometry/proportions";
import { distance, reflectAcross } from "brow-geometry/geometry";
import { DOT_NAMES } from "../../../src/landmarks/internal.js";
import { flatPoint } from "brow-geometry/units";
import { heightOver } from "../../../src/geometry/internal.js";
import { outlinePath, thickness } from "brow-geometry/proportions";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flatten, pathArea } from "../../../src/geometry/internal.js";
import {
  anyBetween,
  anyFace,
  anyNumber,
  anyOutlineShape,
  squareFront,
} from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { isSimplePolygon } from "../../support/polygons.js";
import { syntheticFace } from "../../support/synthetic-face.js";

const codes = (face: PlannableFace, choices: Choices = {}): readonly string[] =>
  planDots(face, choices).reasons.map(({ code }) => code);

/** The synthetic face with one side's brow moved up and outward. */
function unevenFace(up: number, outward: number): PlannableFace {
  const face = syntheticFace();
  const move = (
    point: readonly [number, number, ...number[]],
  ): ReturnType<typeof flatPoint<"mm">> => flatPoint(point[0] + outward, point[1] + up);
  const { upper, lower } = face.left.brow;
  return {
    ...face,
    left: { ...face.left, brow: { upper: upper.map(move), lower: lower.map(move) } },
  };
}

function mirrored(dots: CompleteDots<"mm">): CompleteDots<"mm"> {
  return Object.fromEntries(
    DOT_NAMES.map((dot) => [dot, reflectAcross(dots[dot], FACE_MIDLINE)]),
  ) as CompleteDots<"mm">;
}

describe("planDots", () => {
  describe("on the symmetric synthetic face", () => {
    // Guides, with the hair past them taken away.
    const { dots, reasons } = planDots(syntheticFace(), { keepHair: mm(0) });

    it("starts above the nose wings, which lie 0.2 mm medial of the inner corners", () => {
      expect(reasons.map(({ code }) => code)).toContain("start-at-alare");
      expect(dots.left.upperStart[0]).toBeCloseTo(15.7, 9);
      expect(dots.left.lowerStart[0]).toBeCloseTo(15.7, 9);
    });

    it("keeps the arch where it grows, between limbus and outer corner", () => {
      expect(reasons.map(({ code }) => code)).toContain("arch-natural");
      expect(dots.left.upperArch[0]).toBeGreaterThan(31.5 + 11.71 / 2);
      expect(dots.left.upperArch[0]).toBeLessThan(43.9);
    });

    it("ends on the line from the nose wing through the outer corner", () => {
      const [x, y] = dots.left.tailEnd;
      // Through (15.7, -38) and (43.9, 0).
      expect((x - 15.7) / (43.9 - 15.7)).toBeCloseTo((y + 38) / 38, 9);
    });

    it("makes both sides mirror images of each other", () => {
      expectClose(mirrored(dots.right), dots.left, 1e-12);
    });
  });

  it("puts the tail end where the table of conventions has it", () => {
    // Derived in the table of sources: tail height 12 → x 52.81, 20 → 58.74, 25 → 62.45.
    const face = syntheticFace();
    for (const [height, x] of [
      [12, 52.81],
      [20, 58.74],
      [25, 62.45],
    ] as const) {
      const start = mm([15.7, height]);
      const pins: Pin[] = [
        { side: "left", dot: "upperStart", at: start },
        { side: "left", dot: "upperArch", at: mm([40, height + 6]) },
      ];
      const plan = planDots(face, {
        keepHair: mm(0),
        tailHeight: "level-with-upper-start",
        pins,
      });
      expect(plan.dots.left.tailEnd[0]).toBeCloseTo(x, 2);
      expect(plan.dots.left.tailEnd[1]).toBeCloseTo(height, 9);
    }
  });

  describe("the start", () => {
    it("goes to the inner corner where the nose is wide", () => {
      const face = syntheticFace();
      const wide = {
        ...face,
        right: { ...face.right, alare: mm([-18, -38]) },
        left: { ...face.left, alare: mm([18, -38]) },
      };
      expect(codes(wide)).toContain("start-at-endocanthion-nose-wide");
      expect(planDots(wide, { keepHair: mm(0) }).dots.left.upperStart[0]).toBeCloseTo(15.9, 9);
    });

    it("goes to the inner corner on both sides where one wing alone is too far out", () => {
      const face = syntheticFace();
      const lopsided = { ...face, right: { ...face.right, alare: mm([-18.1, -38]) } };
      expect(planDots(lopsided).choices.start).toBe("endocanthion-vertical");
    });

    it("trusts neither a bent nose nor a stand-in", () => {
      expect(codes(syntheticFace(), { noseBent: true })).toContain(
        "start-at-endocanthion-nose-bent",
      );
      const standIns = [{ landmark: "alare", instead: "outer point of the nostril row" }] as const;
      expect(codes({ ...syntheticFace(), standIns })).toContain("start-at-endocanthion-stand-in");
    });
  });

  describe("the arch", () => {
    it("is moved along the border to the nearer limit", () => {
      const inward = planDots(unevenFace(0, 6), { lead: "left" });
      expect(inward.reasons.map(({ code }) => code)).toContain("arch-moved-inward");
      expect(inward.dots.left.upperArch[0]).toBeCloseTo(43.9, 9);
      const outward = planDots(unevenFace(0, -10), { lead: "left" });
      expect(outward.reasons.map(({ code }) => code)).toContain("arch-moved-outward");
      expect(outward.dots.left.upperArch[0]).toBeCloseTo(31.5 + 11.71 / 2, 9);
    });

    it("of a flat brow divides front and tail by the ruler instead", () => {
      const face = syntheticFace();
      const level = (sign: 1 | -1): PlannableFace["left"] => ({
        ...(sign === 1 ? face.left : face.right),
        brow: { upper: [14.5, 25, 36, 47, 58].map((x) => mm([sign * x, 20])) },
      });
      const flat = { ...face, right: level(-1), left: level(1) };
      const within = planDots(flat, { frontShare: 0.55 });
      expect(within.reasons.map(({ code }) => code)).toContain("arch-flat");
      expect(within.choices.arch).toBe("brow-length-share");
      const { upperStart, upperArch, tailEnd } = within.dots.left;
      const front = lengthBetween(upperStart, upperArch, within.skin);
      expectClose(front / (front + lengthBetween(upperArch, tailEnd, within.skin)), 0.55, 1e-9);

      // Two thirds would put it beyond the outer corner of the eye, 43.9 mm out.
      const beyond = planDots(flat);
      expect(beyond.choices.arch).toBe("exocanthion-vertical");
      expectClose(beyond.dots.left.upperArch, [43.9, 20], 1e-9);
      const asked = planDots(flat, { arch: "brow-length-share" });
      const past = beyond.reasons.find(({ code }) => code === "arch-share-beyond")?.values;
      expectClose(past?.distance, asked.dots.left.upperArch[0] - 43.9, 1e-9);
      const kept = beyond.dots.left;
      const keptFront = lengthBetween(kept.upperStart, kept.upperArch, beyond.skin);
      const keptTail = lengthBetween(kept.upperArch, kept.tailEnd, beyond.skin);
      expectClose(past?.share, keptFront / (keptFront + keptTail), 1e-9);
      expect(asked.choices.arch).toBe("brow-length-share");
    });

    it("stands on the outer limit where no place of the border divides front and tail as asked", () => {
      const face = syntheticFace();
      // Hair of 12 mm in the middle of the eye: past it nothing is drawn that could be divided.
      const short = (sign: 1 | -1): PlannableFace["left"] => ({
        ...(sign === 1 ? face.left : face.right),
        brow: { upper: [28, 34, 40].map((x) => mm([sign * x, 20])) },
      });
      const plan = planDots(
        { ...face, right: short(-1), left: short(1) },
        { arch: "brow-length-share", frontShare: 0.9 },
      );
      expect(plan.reasons.map(({ code }) => code)).toContain("arch-share-nowhere");
      expectClose(plan.dots.left.upperArch, [43.9, 20], 1e-9);
    });

    it("of the brow that leads counts where the other one is flat", () => {
      const face = syntheticFace();
      const straight = { upper: [14.5, 58].map((x) => mm([-x, 20 - x / 29])) };
      const beside = { ...face, right: { ...face.right, brow: straight } };
      const { dots, choices } = planDots(beside, { lead: "left" });
      expect(choices.arch).toBe("natural");
      expectClose(dots, planDots(face, { lead: "left" }).dots, 1e-12);
      // Told to give the heights, the flat brow has that of its border where the arch comes to lie.
      const levelled = planDots(beside, { lead: "left", levels: "right" }).dots.left.upperArch;
      expectClose(levelled[1], 20 - levelled[0] / 29, 1e-9);
      expect(planBrows(beside, { lead: "left" }).measures.left.front?.u).toBeGreaterThan(0);
    });

    it("divides the ruler lengths exactly by the chosen share", () => {
      fc.assert(
        fc.property(
          anyFace(),
          fc.double({ min: 0.55, max: 0.75, noNaN: true }),
          (face, frontShare) => {
            const { dots, skin } = planDots(face, {
              lead: "left",
              arch: "brow-length-share",
              frontShare,
            });
            const { upperStart, upperArch, tailEnd } = dots.left;
            const front = lengthBetween(upperStart, upperArch, skin);
            const tail = lengthBetween(upperArch, tailEnd, skin);
            expect(front / (front + tail)).toBeCloseTo(frontShare, 9);
          },
        ),
      );
    });
  });

  describe("who leads", () => {
    const face = unevenFace(3, 1);

    it("meets in the middle unless told otherwise", () => {
      const { left } = planDots(face).dots;
      const apart = eachSide((lead) => planDots(face, { lead }).dots.left);
      expect(left.upperStart[1]).toBeCloseTo(
        (apart.left.upperStart[1] + apart.right.upperStart[1]) / 2,
        9,
      );
    });

    it("takes heights from the higher brow while the other leads across", () => {
      const { dots, choices } = planDots(face, { lead: "right", levels: "higher" });
      const left = planDots(face, { lead: "left" }).dots.left;
      expect(choices.levels).toBe("left");
      expect(dots.left.upperStart[1]).toBeCloseTo(left.upperStart[1], 9);
      expect(dots.right.upperArch[1]).toBeCloseTo(left.upperArch[1], 9);
    });
  });

  describe("pins", () => {
    const anyPin = fc.record({
      side: fc.constantFrom<Side>("right", "left"),
      dot: fc.constantFrom("upperStart", "upperArch", "tailEnd", "lowerStart", "lowerArch"),
      across: fc.double({ min: -1, max: 1, noNaN: true }),
      up: fc.double({ min: -1, max: 1, noNaN: true }),
    } as const);

    it("stay put, and the other side mirrors them", () => {
      fc.assert(
        fc.property(anyFace(1), anyPin, (face, { side, dot, across, up }) => {
          const free = planDots(face, { arch: "exocanthion-vertical" }).dots[side][dot];
          const at = flatPoint<"mm">(free[0] + across, free[1] + up);
          const { dots, origins } = planDots(face, {
            arch: "exocanthion-vertical",
            pins: [{ side, dot, at, by: "the artist" }],
          });
          expectClose(dots[side][dot], at, 0);
          expect(origins[side][dot].from).toBe("pinned");
          if (dot !== "lowerStart" && dot !== "lowerArch") {
            expectClose(dots[otherSide(side)][dot], reflectAcross(at, FACE_MIDLINE), 1e-12);
          }
        }),
      );
    });

    it("on both sides stay apart where they differ", () => {
      const pins: Pin[] = [
        { side: "right", dot: "upperArch", at: mm([-40, 27]) },
        { side: "left", dot: "upperArch", at: mm([41, 29]) },
      ];
      const { dots } = planDots(syntheticFace(), { pins });
      expectClose(dots.right.upperArch, [-40, 27], 0);
      expectClose(dots.left.upperArch, [41, 29], 0);
    });

    it.each<[string, number]>([
      ["raise", 0.9],
      ["lower", -0.9],
    ])("%s the border too, where they fix its body", (_, up) => {
      const free = planDots(syntheticFace()).dots.left;
      const at = mm([free.upperBody[0] + 1, free.upperBody[1] + up]);
      const { dots, choices } = planDots(syntheticFace(), {
        pins: [{ side: "left", dot: "upperBody", at }],
      });
      for (const [side, sign] of [
        ["left", 1],
        ["right", -1],
      ] as const) {
        const borders = outlineBorders(outline(dots[side], choices.shape), mm(0.001));
        expectClose(heightOver(mm(sign * at[0]), borders.upper), at[1], 0.02);
        const read = thickness(dots[side].upperBody, borders)?.value;
        expectClose(read, choices.thickness.body, 0.02);
      }
    });

    it("are named where no outline runs through them", () => {
      const pins: Pin[] = [{ side: "left", dot: "upperBody", at: mm([27, 34]) }];
      expect(() => planDots(syntheticFace(), { pins })).toThrow(
        /left upperBody is \[27, 34\].*the arch.*; pinned: left body/,
      );
    });

    it("are the only reason for an arch that they fix", () => {
      const pins: Pin[] = [{ side: "left", dot: "upperArch", at: mm([41, 27]) }];
      const given = codes(syntheticFace(), { pins });
      expect(given).toContain("pinned");
      expect(given.filter((code) => code.startsWith("arch-"))).toEqual([]);
    });

    it("give the other side their thickness", () => {
      const free = planDots(syntheticFace()).dots.left;
      const at = mm([free.upperArch[0], free.upperArch[1] - 9]);
      const { dots } = planDots(syntheticFace(), {
        pins: [{ side: "left", dot: "lowerArch", at }],
      });
      expect(dots.right.upperArch[1] - dots.right.lowerArch[1]).toBeCloseTo(9, 9);
    });

    it("on every lower dot leave no other reason for a thickness", () => {
      const { left } = planDots(syntheticFace()).dots;
      const fuller = (["lowerStart", "lowerBody", "lowerArch"] as const).map((dot): Pin => ({
        side: "left",
        dot,
        at: mm([left[dot][0], left[dot][1] - 1]),
      }));
      const told = (pins: readonly Pin[]): readonly string[] =>
        codes(syntheticFace(), { pins }).filter((code) => code.startsWith("thickness-"));
      expect(told([])).toHaveLength(1);
      expect(told(fuller.slice(1))).toHaveLength(1);
      expect(told(fuller)).toEqual([]);
    });

    it.each([
      [
        "two for one dot",
        [
          { side: "left", dot: "upperArch", at: mm([40, 27]) },
          { side: "left", dot: "upperArch", at: mm([41, 27]) },
        ],
      ],
      ["one on the wrong side", [{ side: "left", dot: "upperArch", at: mm([-40, 27]) }]],
      ["an arch beyond the tail end", [{ side: "left", dot: "upperArch", at: mm([64, 27]) }]],
      ["a lower dot above its upper one", [{ side: "left", dot: "lowerArch", at: mm([42, 40]) }]],
      ["a body above the arch", [{ side: "left", dot: "upperBody", at: mm([27, 34]) }]],
      ["a body under the start", [{ side: "left", dot: "upperBody", at: mm([27, 15]) }]],
    ] satisfies [string, Pin[]][])("contradict each other: %s", (_, pins) => {
      expect(() => planDots(syntheticFace(), { pins })).toThrow(
        expect.objectContaining({ name: "GeometryError", code: "contradicting-pins" }),
      );
    });
  });

  it("plans a mirrored face as the mirrored plan, sides exchanged", () => {
    fc.assert(
      fc.property(
        anyFace(),
        fc.constantFrom<Side | "middle">("right", "left", "middle"),
        (face, lead) => {
          const swapped = lead === "middle" ? lead : otherSide(lead);
          const plan = planDots(face, { lead }).dots;
          const other = planDots(requirePlannable(mirror(face, FACE_MIDLINE)), {
            lead: swapped,
          }).dots;
          expectClose(other.left, mirrored(plan.right), 1e-9);
          expectClose(other.right, mirrored(plan.left), 1e-9);
        },
      ),
    );
  });

  it("takes a planned dot for a pin, whatever its depth", () => {
    const { upperArch } = planDots(syntheticFace()).dots.left;
    const at = mm([upperArch[0] + 1, upperArch[1] + 1, 12]);
    const { dots } = planDots(syntheticFace(), {
      pins: [{ side: "left", dot: "upperArch", at }],
    });
    expectClose(dots.left.upperArch, [upperArch[0] + 1, upperArch[1] + 1], 1e-12);
  });

  it.each<[string, Choices]>([
    ["frontShare", { frontShare: 0.3 }],
    ["frontShare", { frontShare: Number.NaN }],
    ["eyeWidthShare", { eyeWidthShare: 2 }],
    ["noseBent", { noseBent: "yes" as never }],
    ["declared.upright", { declared: { upright: "no" as never } }],
    ["tolerances.tolerances", { tolerances: {} as never }],
    ["thickness.arch", { thickness: { start: mm(8), body: mm(7), arch: mm(-1) } }],
    ["pins[0].at", { pins: [{ side: "left", dot: "upperArch", at: mm([Number.NaN, 1]) }] }],
    ["lead", { lead: "top" } as unknown as Choices],
    ["levels", { levels: "lower" } as unknown as Choices],
    ["start", { start: "golden" } as unknown as Choices],
    ["arch", { arch: "high" } as unknown as Choices],
    ["tailHeight", { tailHeight: "low" } as unknown as Choices],
    ["pins", { pins: { side: "left" } } as unknown as Choices],
    [
      "pins[0].dot",
      { pins: [{ side: "left", dot: "arch", at: mm([40, 27]) }] } as unknown as Choices,
    ],
  ])("refuses a choice out of range by its name: %s", (field, choices) => {
    expect(() => planDots(syntheticFace(), choices)).toThrow(GeometryError);
    expect(() => planDots(syntheticFace(), choices)).toThrow(field);
  });

  it("names the landmark that a chosen guide lacks", () => {
    const { right, left, midline } = syntheticFace();
    const { limbusLateral, ...withoutLimbus } = right;
    const face = { right: withoutLimbus, left, midline };
    expect(() => planDots(face, { arch: "lateral-limbus-vertical" })).toThrow(/limbusLateral/);
  });
});

describe("every plan that choices allow", () => {
  const optional = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> =>
    fc.option(value, { nil: undefined });
  const half = anyBetween(0.5, 4);
  const anyPin: fc.Arbitrary<(free: CompleteDots<"mm">) => Pin> = fc
    .tuple(fc.constantFrom(...DOT_NAMES), anyNumber(2), anyNumber(2))
    .map(([dot, right, up]) => (free) => {
      const [x, y] = free[dot];
      return { side: "left", dot, at: flatPoint(x + right, y + up) };
    });
  const anyChoices = fc.record({
    lead: optional(fc.constantFrom<NonNullable<Choices["lead"]>>("right", "left", "middle")),
    carry: optional(fc.constantFrom<NonNullable<Choices["carry"]>>("mirror", "measure")),
    levels: optional(
      fc.constantFrom<NonNullable<Choices["levels"]>>("right", "left", "middle", "higher"),
    ),
    levelLimit: optional(half.map((limit) => mm(limit))),
    start: optional(fc.constantFrom(...START_CONVENTIONS)),
    arch: optional(fc.constantFrom(...ARCH_CONVENTIONS)),
    eyeWidthShare: optional(fc.double({ min: 0.4, max: 1.4, noNaN: true })),
    frontShare: optional(fc.double({ min: 0.4, max: 0.9, noNaN: true })),
    tailHeight: optional(
      fc.constantFrom<NonNullable<Choices["tailHeight"]>>(
        "natural",
        "level-with-lower-start",
        "level-with-upper-start",
      ),
    ),
    thickness: optional(
      fc.record({ start: anyBetween(1, 11), body: anyBetween(1, 11), arch: anyBetween(1, 11) }),
    ),
    shape: optional(anyOutlineShape()),
    pins: fc.array(anyPin, { maxLength: 2 }),
  });

  it("is refused by name, or has outlines that are simple, closed and run one way, as thick as asked for", () => {
    let planned = 0;
    fc.assert(
      fc.property(anyFace(1.5), anyChoices, (face, { pins, ...any }) => {
        const chosen = Object.fromEntries(
          Object.entries(any).filter(([, value]) => value !== undefined),
        ) as Choices;
        const plan = planOrRefusal(() => {
          const free = planDots(face, chosen).dots.left;
          return planDots(face, { ...chosen, pins: pins.map((at) => at(free)) });
        });
        if (plan === undefined) return;
        planned += 1;
        for (const side of ["right", "left"] as const) {
          const dots = plan.dots[side];
          const drawn = outline(dots, plan.choices.shape);
          const path = outlinePath(drawn);
          path.forEach(([from], index) => expect(path.at(index - 1)?.[3]).toEqual(from));
          expect(pathArea(path)).toBeGreaterThan(0);
          // Where the tail thins out like a thorn, straight pieces of either border may touch.
          const polygon = flatten(path, mm(2e-4)).filter(
            (point) => distance(point, dots.tailEnd) > 0.5,
          );
          expect(isSimplePolygon(polygon)).toBe(true);
          expectOneTop(drawn, dots);
          // A front that is set back has no thickness at its dots.
          const square = outline(dots, squareFront(plan.choices.shape));
          const borders = outlineBorders(square, mm(0.001));
          for (const [upper, lower] of THICK) {
            const asked = dots[upper][1] - dots[lower][1];
            if (dots[upper][0] !== dots[lower][0]) continue;
            expectClose(thickness(dots[upper], borders)?.value, asked, 0.02);
          }
        }
      }),
      { numRuns: 100 },
    );
    expect(planned).toBeGreaterThan(20);
  });
});

const THICK = [
  ["upperStart", "lowerStart"],
  ["upperBody", "lowerBody"],
  ["upperArch", "lowerArch"],
] as const;

/** The dots, or nothing where they are refused: never for what is not a matter of their places. */
function planOrRefusal(plan: () => PlannedDots): PlannedDots | undefined {
  try {
    return plan();
  } catch (error) {
    if (!(error instanceof GeometryError)) throw error;
    expect(["no-solution", "contradicting-pins", "inconsistent"], error.message).toContain(
      error.code,
    );
    expect(error.detail.field).not.toBe("");
    return undefined;
  }
}

/** Expects an outline to rise to its arch and to fall from there, where that is above both ends. */
function expectOneTop(
  { upper }: Outline<"mm">,
  { upperStart, upperArch, tailEnd }: CompleteDots<"mm">,
): void {
  if (upperArch[1] <= Math.max(upperStart[1], tailEnd[1]) + 1e-6) return;
  const heights = flatten(upper, mm(0.001)).map(([, y]) => y);
  const top = heights.indexOf(Math.max(...heights));
  expectClose(heights[top], upperArch[1], 1e-9);
  heights.slice(1).forEach((height, index) => {
    expect((index < top ? 1 : -1) * (height - (heights[index] ?? NaN))).toBeGreaterThan(-1e-9);
  });
}

describe("a slanted front that is pinned", () => {
  // Invented: the lower corner 1.5 mm nearer to the nose than the upper one, and 7.5 mm below it.
  const pins: Pin[] = [
    { side: "left", dot: "upperStart", at: mm([17, 20]) },
    { side: "left", dot: "lowerStart", at: mm([15.5, 12.5]) },
  ];

  it("is mirrored whole", () => {
    const { dots } = planDots(syntheticFace(), { pins });
    expect(dots.right.upperStart).toEqual(mm([-17, 20]));
    expect(dots.right.lowerStart).toEqual(mm([-15.5, 12.5]));
  });

  it("keeps its slant below an upper corner that is pinned elsewhere", () => {
    const elsewhere: Pin = { side: "right", dot: "upperStart", at: mm([-18, 21]) };
    const { dots } = planDots(syntheticFace(), { pins: [...pins, elsewhere] });
    expect(dots.right.lowerStart).toEqual(mm([-16.5, 13.5]));
  });
});
