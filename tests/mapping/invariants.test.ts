import { fc, test } from "@fast-check/vitest";
import {
  type Brow,
  type BrowPlan,
  checkDrawn,
  type Choices,
  type CompleteDots,
  correctionOf,
  eachSide,
  FACE_MIDLINE,
  faceFrame,
  GeometryError,
  mirror,
  mm,
  otherSide,
  type Pin,
  planBrows,
  planDots,
  type PlannableFace,
  type PlannedDots,
  type Point,
  type Polyline,
  px,
  requirePlannable,
  scaleFromReference,
  type Side,
  type Sides,
  toFace,
} from "brow-geometry";
import { DOT_NAMES } from "../../src/landmarks/internal.js";
import { flatPoint } from "brow-geometry/units";
import { parseChoices } from "brow-geometry/schema";
import { describe, expect } from "vitest";
import { anyBetween, anyChoices, anyFace, anyNumber, anyPose } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import type { SyntheticFace } from "../support/synthetic-face.js";
import { photograph } from "../support/photograph.js";

const anySide = fc.constantFrom<Side>("right", "left");
const anyArch = fc.constantFrom("natural", "lateral-limbus-vertical", "exocanthion-vertical");

/** A plan, or the code with which it is refused. */
function plannedOr(face: PlannableFace, choices: Choices): PlannedDots | string {
  try {
    return planDots(face, choices);
  } catch (error) {
    if (error instanceof GeometryError) return error.code;
    throw error;
  }
}

function swapped(word: Choices["levels"]): Choices["levels"] {
  return word === "right" || word === "left" ? otherSide(word) : word;
}

/** The same choices for the mirrored face. */
function flipped({ lead, levels, ...rest }: Choices): Choices {
  return {
    ...rest,
    ...(lead === undefined ? {} : { lead: swapped(lead) as NonNullable<Choices["lead"]> }),
    ...(levels === undefined ? {} : { levels: swapped(levels) as NonNullable<Choices["levels"]> }),
  };
}

function imageOf({ right, left }: Sides<CompleteDots<"mm">>): Sides<CompleteDots<"mm">> {
  return { right: mirror(left, FACE_MIDLINE), left: mirror(right, FACE_MIDLINE) };
}

/** A brow moved up, and squeezed towards the chord from its first point to its last. */
function reshaped({ upper, lower }: Required<Brow<"mm">>, rise: number, up = 0): Brow<"mm"> {
  const [[fromX, fromY], [toX, toY]] = [upper[0], upper[upper.length - 1]] as [
    Point<"mm">,
    Point<"mm">,
  ];
  const slope = (toY - fromY) / (toX - fromX);
  const squeezed = ([x, y]: Point<"mm">): Point<"mm"> => {
    const chord = fromY + slope * (x - fromX);
    return flatPoint(x, up + chord + rise * (y - chord));
  };
  return { upper: upper.map(squeezed), lower: lower.map(squeezed) };
}

/** A line over the same way, with points at shares of each of its legs. */
function drawnOver(line: Polyline<"mm">, shares: readonly number[]): Polyline<"mm"> {
  const inOrder = [...shares].sort((one, other) => one - other);
  return line.flatMap((to, index) => {
    const from = line[index - 1];
    if (from === undefined) return [to];
    const at = (share: number): Point<"mm"> =>
      flatPoint(from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]));
    return [...inOrder.map(at), to];
  });
}

describe("a plan", () => {
  test.prop([anyFace(1.5), anyChoices()])("of the mirrored face is mirrored", (face, choices) => {
    const plan = plannedOr(face, choices);
    const twin = plannedOr(requirePlannable(mirror(face, FACE_MIDLINE)), flipped(choices));
    if (typeof plan === "string" || typeof twin === "string") {
      expect(twin).toBe(plan);
      return;
    }
    expectClose(twin.dots, imageOf(plan.dots), 1e-9);
    expectClose(twin.choices.thickness, plan.choices.thickness, 1e-9);
    const codes = ({ reasons }: PlannedDots) => reasons.map(({ code }) => code).sort();
    expect(codes(twin)).toEqual(codes(plan));
  });

  test.prop([anyFace(1), fc.array(anyBetween(0, 1), { maxLength: 4 })], { numRuns: 10 })(
    "reads and doubts a border the same, however densely it is drawn",
    (face, shares) => {
      const side = ({ brow, ...points }: SyntheticFace["left"]): SyntheticFace["left"] => ({
        ...points,
        brow: { upper: drawnOver(brow.upper, shares), lower: drawnOver(brow.lower, shares) },
      });
      const dense = planBrows({ ...face, right: side(face.right), left: side(face.left) });
      const sparse = planBrows(face);
      expectClose(dense.measures, sparse.measures, 1e-6);
      expectClose(dense.naturalMeasures, sparse.naturalMeasures, 1e-6);
      const differences = ({ naturalComparison }: BrowPlan): unknown =>
        naturalComparison.differences.map(({ measure, difference }) => ({ measure, difference }));
      expectClose(differences(dense), differences(sparse), 1e-6);
    },
  );

  test.prop([anyFace(1.5), anyPose(), anyChoices()])(
    "does not care how the photo was taken",
    (face, pose, choices) => {
      const seen = (factor: number, tilt: number, at: readonly [number, number]) => {
        const photo = photograph(face, { factor, tilt, at });
        const scale = scaleFromReference(px([0, 0]), px([50 / factor, 0]), mm(50));
        const frame = faceFrame(photo, scale);
        return plannedOr(requirePlannable(toFace(photo, frame)), choices);
      };
      const upright = seen(0.2, 0, [500, 500]);
      const posed = seen(pose.factor, pose.tilt, pose.at);
      if (typeof upright === "string" || typeof posed === "string") {
        expect(posed).toBe(upright);
        return;
      }
      expectClose(posed.dots, upright.dots, 1e-6);
    },
  );

  test.prop([anyFace(1.5), anyChoices()])(
    "is symmetric where nothing is pinned or held near its hair",
    (face, { levelLimit: _, ...choices }) => {
      const plan = plannedOr(face, choices);
      if (typeof plan !== "string") expectClose(plan.dots, imageOf(plan.dots), 1e-12);
    },
  );

  test.prop([anyFace(1.5), anyChoices()])(
    "is the same once every open choice is settled, also after JSON",
    (face, choices) => {
      const plan = plannedOr(face, choices);
      if (typeof plan === "string") return;
      const again = planDots(face, parseChoices(JSON.parse(JSON.stringify(plan.choices))));
      expectClose(again.dots, plan.dots, 0);
      expectClose(again.choices, plan.choices, 0);
    },
  );

  test.prop([anyFace(1), anySide, anyArch, anyBetween(0, 1), anyNumber(3)])(
    "follows the brow that leads alone, however flat the other one is",
    (face, lead, arch, rise, up) => {
      const side = otherSide(lead);
      const other = { ...face[side], brow: reshaped(face[side].brow, rise, up) };
      const plan = plannedOr(face, { lead, arch });
      const beside = plannedOr({ ...face, [side]: other }, { lead, arch });
      if (typeof plan === "string") {
        expect(beside).toBe(plan);
        return;
      }
      expectClose(typeof beside === "string" ? beside : beside.dots, plan.dots, 0);
    },
  );

  test.prop([anyFace(1), anySide, anyArch, anyNumber(3)])(
    "goes up with the hair of the brow that leads",
    (face, lead, arch, up) => {
      const raised = { ...face[lead], brow: reshaped(face[lead].brow, 1, up) };
      const [low, high] = [
        plannedOr(face, { lead, arch }),
        plannedOr({ ...face, [lead]: raised }, { lead, arch }),
      ];
      if (typeof low === "string" || typeof high === "string") return;
      expect(high.choices.arch).toBe(low.choices.arch);
      if (low.choices.arch !== arch) return;
      for (const dot of ["upperStart", "upperArch"] as const) {
        const [x, y] = low.dots.left[dot];
        expectClose(high.dots.left[dot], [x, y + up], 1e-9);
      }
    },
  );

  const anyPins = fc.uniqueArray(
    fc.record({
      side: anySide,
      dot: fc.constantFrom(...DOT_NAMES),
      across: anyNumber(1),
      up: anyNumber(1),
    }),
    { minLength: 1, maxLength: 5, selector: ({ side, dot }) => `${side} ${dot}` },
  );

  test.prop([anyFace(1), anyPins, anyArch])("keeps every pin", (face, moved, arch) => {
    const free = plannedOr(face, { arch });
    if (typeof free === "string") return;
    const pins: readonly Pin[] = moved.map(({ side, dot, across, up }) => {
      const [x, y] = free.dots[side][dot];
      return { side, dot, at: flatPoint(x + across, y + up) };
    });
    const plan = plannedOr(face, { arch, pins });
    if (typeof plan === "string") return;
    for (const { side, dot, at } of pins) {
      expectClose(plan.dots[side][dot], at, 1e-12);
      expect(plan.origins[side][dot].from).toBe("pinned");
    }
    const pinned = eachSide((side) =>
      DOT_NAMES.filter((dot) => plan.origins[side][dot].from === "pinned"),
    );
    expect(pinned.right.length + pinned.left.length).toBe(pins.length);
  });

  test.prop([anyFace(1), anyPins, anyArch])(
    "stays as it is where dots are pinned that lie there already",
    (face, moved, arch) => {
      const free = plannedOr(face, { arch });
      if (typeof free === "string" || free.choices.arch !== arch) return;
      const pins = moved.map(({ side, dot }) => ({ side, dot, at: free.dots[side][dot] }));
      expectClose(planDots(face, { arch, pins }).dots, free.dots, 1e-9);
    },
  );

  test.prop([anyFace(1), anyChoices()], { numRuns: 5 })(
    "that is drawn to the dot is within every tolerance, and nothing is to be corrected",
    (face, choices) => {
      const plan = planBrows(face, choices);
      for (const drawn of [{ dots: plan.dots, u: mm(0) }, { readings: plan.measures }]) {
        const { dots, measures } = checkDrawn(plan, drawn, { rule: "simple" });
        for (const { outward, up } of dots) {
          expectClose([outward.difference.value, up.difference.value], [0, 0], 1e-12);
        }
        for (const one of measures) {
          const { difference, decision } = one;
          expectClose(difference.value, 0, 1e-9);
          expect([undefined, "within"]).toContain(decision?.outcome);
          expect(correctionOf(one)).toBeUndefined();
        }
      }
    },
  );
});
