import {
  type Choices,
  faceFrame,
  planDots,
  type PlannableFace,
  requirePlannable,
  say,
  scaleFromIris,
  toFace,
} from "brow-geometry";
import { weighChoices } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { plainFace } from "../../support/plain-face.js";
import { refusal } from "../../support/refusal.js";
import { faceOfMesh, meshSamples } from "../../support/sample-faces.js";

const LEVEL: Choices = { tailHeight: "level-with-lower-start" };

/** Brows that end early, drawn for the left: the tail's guide runs along x = 44 + 27/38 · y. */
function shortBrows(low: number): PlannableFace {
  return plainFace(
    [
      [17, 20],
      [36, 26],
      [46, 22],
    ],
    [
      [17, low],
      [36, 19],
      [46, 21.5],
    ],
  );
}

describe("a tail end level with the lower start", () => {
  it("stands where the guide has that level", () => {
    // 13 mm up the guide lies 53.24 mm out: past the arch, and past all hair.
    const { dots, choices } = planDots(shortBrows(13), LEVEL);
    expect(dots.left.tailEnd[0]).toBeCloseTo(44 + (27 / 38) * 13, 9);
    expect(choices.tailHeight).toBe("level-with-lower-start");
  });

  it("keeps the brow's own height where that would not lie beyond the arch, and says so", () => {
    // The heads of two samples are turned by 26° and 31°: on one side the guide runs inside the arch at that level.
    const turned = meshSamples.flatMap((sample) => {
      const photo = faceOfMesh(sample);
      const face = requirePlannable(toFace(photo, faceFrame(photo, scaleFromIris(photo))));
      return (["right", "left", "middle"] as const).flatMap((lead) => {
        const asked = (): ReturnType<typeof planDots> => planDots(face, { ...LEVEL, lead });
        let plan: ReturnType<typeof planDots>;
        try {
          plan = asked();
        } catch {
          expect(refusal(asked).detail.field).toMatch(/^space over the/);
          return [];
        }
        const why = plan.reasons.find(({ code }) => code === "tail-level-nowhere");
        if (why === undefined) return [];
        expect(say(why)).toBe(
          "Tail end on the line from the nose wing through the outer eye corner, at the height of the brow there: level with the lower start dot it would not lie beyond the arch.",
        );
        expect(plan.reasons.map(({ code }) => code)).not.toContain("tail-at-guide");
        expect(plan.choices.tailHeight).toBe("natural");
        const [row] = weighChoices(face, [{ ...LEVEL, lead }]).rows;
        expect(row?.reasons).toContainEqual(why);
        expect(plan.dots).toEqual(planDots(face, { lead, tailHeight: "natural" }).dots);
        return [lead];
      });
    });
    expect(turned).toEqual(["right", "left"]);
  });

  it("is not given up where something else is refused", () => {
    const refused = refusal(() =>
      planDots(shortBrows(13), { ...LEVEL, arch: "lateral-limbus-vertical" }),
    );
    expect(refused.detail.field).toContain("limbusLateral");
  });
});
