import { fc, test } from "@fast-check/vitest";
import {
  FACE_MIDLINE,
  type FlatPoint,
  mirror,
  mm,
  planDots,
  requirePlannable,
  say,
} from "brow-geometry";
import { type AreaCheck, checkAreas, type SkinArea } from "brow-geometry/mapping";
import { flatPoint } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { anyBetween } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { LEVEL_CHOICES, levelFace, rectangle } from "../../support/plain-face.js";
import { syntheticFace } from "../../support/synthetic-face.js";

const plan = planDots(levelFace, LEVEL_CHOICES);

function checked(area: Omit<SkinArea, "name">): AreaCheck {
  const [check] = checkAreas(plan, [{ name: "spot", ...area }]);
  if (check === undefined) expect.fail("no area");
  return check;
}

describe("an area to cover", () => {
  it("sticks out by so much, so far, and there", () => {
    const check = checked({ aim: "cover", edge: rectangle(20, 30, 16, 22) });
    // 10 mm wide, 2 mm above the brow.
    expectClose([check.size, check.beyond, check.distance], [60, 20, 2], 0.01);
    expectClose(check.at?.[1], 22, 1e-9);
    expect([check.side, check.dot]).toEqual(["left", "upperBody"]);
    expect(say(check.note)).toBe(
      "spot: 20 mm² stick out of the planned brows, by 2.0 mm at most, near the left body. Whether pigment can be taken out is for licensed practice to judge.",
    );
  });

  it("counts with its margin", () => {
    const check = checked({ aim: "cover", edge: rectangle(20, 30, 16, 22), margin: mm(1) });
    // 60 + 32 · 1 + π; in the brow 12 mm by 5 mm less two corners of 1 − π/4.
    expectClose(check.size, 92 + Math.PI, 0.01);
    expectClose(check.beyond, 92 + Math.PI - (60 - 2 * (1 - Math.PI / 4)), 0.02);
    expectClose(check.distance, 3, 0.01);
  });

  it("is covered where it lies in a brow, its margin too", () => {
    const edge = rectangle(20, 30, 14, 18);
    for (const margin of [0, 1.9]) {
      const check = checked({ aim: "cover", edge, margin: mm(margin) });
      expect(check).toMatchObject({ beyond: 0, distance: 0 });
      expect(check.at).toBeUndefined();
      expect(say(check.note)).toBe("spot: covered, its margin included.");
    }
    expect(checked({ aim: "cover", edge, margin: mm(2.2) }).note.code).toBe("area-sticks-out");
  });
});

describe("an area to stay off", () => {
  it("is overlapped by so much, so deep", () => {
    const check = checked({ aim: "stay-off", edge: rectangle(24, 34, 17, 22) });
    // 10 mm by 3 mm of it lie in the brow.
    expectClose([check.beyond, check.distance], [30, 3], 0.01);
    expect(check.note.code).toBe("area-overlapped");
  });

  it("is overlapped where it holds all of a brow", () => {
    const check = checked({ aim: "stay-off", edge: rectangle(5, 70, 5, 30) });
    expect(check.note.code).toBe("area-overlapped");
    expect(check.distance).toBeGreaterThan(7);
  });

  it("is clear as far as its margin allows", () => {
    const edge = rectangle(24, 34, 24, 26);
    expect(say(checked({ aim: "stay-off", edge, margin: mm(3.9) }).note)).toBe(
      "spot: the planned brows stay off it and its margin.",
    );
    const near = checked({ aim: "stay-off", edge, margin: mm(5) });
    expectClose(near.distance, 1, 0.01);
    expect(near.beyond).toBeGreaterThan(9);
  });
});

/** A polygon somewhere about the left brow. */
const anyEdge = fc
  .tuple(
    anyBetween(12, 60),
    anyBetween(8, 30),
    fc.array(anyBetween(1, 8), { minLength: 3, maxLength: 7 }),
  )
  .map(([x, y, radii]): readonly FlatPoint<"mm">[] =>
    radii.map((radius, index) => {
      const angle = (2 * Math.PI * (index + 0.3)) / radii.length;
      return flatPoint<"mm">(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
    }),
  );

const crooked = planDots(syntheticFace());

test.prop([anyEdge, fc.constantFrom("cover", "stay-off"), anyBetween(0, 3), anyBetween(0, 3)], {
  numRuns: 40,
})("a larger margin never shrinks what is beyond", (edge, aim, one, other) => {
  const [less, more] = [one, one + other].map((margin) => {
    const [check] = checkAreas(crooked, [{ name: "spot", aim, edge, margin: mm(margin) }]);
    return check;
  });
  if (less === undefined || more === undefined) expect.fail("no area");
  expect(more.beyond).toBeGreaterThanOrEqual(less.beyond - 0.05);
  expect(more.distance).toBeGreaterThanOrEqual(less.distance - 1e-9);
});

test.prop([anyEdge, fc.constantFrom("cover", "stay-off"), anyBetween(0, 3)], { numRuns: 30 })(
  "mirrored areas are checked alike on a mirrored face",
  (edge, aim, margin) => {
    const image = planDots(requirePlannable(mirror(syntheticFace(), FACE_MIDLINE)));
    const area = { name: "spot", aim, margin: mm(margin) } as const;
    const [own] = checkAreas(crooked, [{ ...area, edge }]);
    const [there] = checkAreas(image, [{ ...area, edge: mirror(edge, FACE_MIDLINE) }]);
    if (own === undefined || there === undefined) expect.fail("no area");
    expect([there.side, there.note.code]).toEqual(["right", own.note.code]);
    expectClose(
      [there.size, there.beyond, there.distance],
      [own.size, own.beyond, own.distance],
      0.02,
    );
  },
);

describe("checkAreas refuses", () => {
  const edge = rectangle(20, 30, 16, 22);
  it.each([
    [{ name: "a", aim: "cover", edge: edge.slice(0, 2) }, "areas[0].edge"],
    [{ name: "a", aim: "cover", edge, margin: mm(11) }, "areas[0].margin"],
    [{ name: "a", aim: "hide" as "cover", edge }, "areas[0].aim"],
    [{ name: "a", aim: "cover", edge: [...edge, mm([Number.NaN, 1])] }, "areas[0].edge[4]"],
  ] satisfies readonly (readonly [SkinArea, string])[])("%#", (area, field) => {
    const error = refusal(() => checkAreas(plan, [area]));
    expect(error.detail.where).toBe("checkAreas");
    expect(error.detail.field).toBe(field);
  });
});
