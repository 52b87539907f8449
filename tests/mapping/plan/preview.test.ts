import {
  type BrowPlan,
  checkDrawn,
  type Choices,
  drawPlan,
  faceFrame,
  fitMidline,
  mm,
  planBrows,
  planOnPhoto,
  requirePlannable,
  type Scale,
  workSteps,
} from "brow-geometry";
import { drawSheet } from "brow-geometry/drawing";
import { mapFace } from "brow-geometry/landmarks";
import { flatPoint } from "brow-geometry/units";
import { parsePlan } from "brow-geometry/schema";
import { describe, expect, it } from "vitest";
import { syntheticFace } from "../../support/synthetic-face.js";

const face = requirePlannable(syntheticFace());
const choices: Choices = {
  lead: "left",
  pins: [{ side: "left", dot: "upperArch", at: mm([42, 26.5]) }],
};

/** What has neither an uncertainty nor a decision by one, such as whether a move is worth a word. */
function valuesOf({ moves, ...of }: BrowPlan): unknown {
  const ways = moves.map(({ kind, ...way }) => ({ isPlaced: kind === "place", ...way }));
  return JSON.parse(
    JSON.stringify({ ...of, ways }, (key, value: unknown) =>
      ["u", "decision", "shareDecisions"].includes(key) ? undefined : value,
    ),
  );
}

/** The shapes of a picture: labels, and the lines that lead to them, keep clear of each other anew. */
function drawn(svg: string): readonly string[] {
  const withoutLeaders = svg.replace(/<g class="leader"[^]*?<\/g>\s*<\/g>/g, "");
  return withoutLeaders.match(/<(?:path|circle|line|polyline|rect)[^>]*>/g) ?? [];
}

describe("a preview", () => {
  it("has the dots, readings, moves and cautions of the plan, and no uncertainty", () => {
    const plan = planBrows(face, choices);
    const preview = planBrows(face, choices, { preview: true });
    expect(valuesOf(preview)).toEqual(valuesOf(plan));
    for (const { right, left } of [preview.measures, preview.naturalMeasures]) {
      for (const { u } of [...Object.values(right), ...Object.values(left)]) {
        expect(u).toBe(Infinity);
      }
    }
    for (const { decision } of preview.comparison.differences) {
      expect(decision?.outcome ?? "undecided").toBe("undecided");
    }
  });

  it("comes back through JSON and its schema the same", () => {
    const preview = planBrows(face, choices, { preview: true });
    expect(parsePlan(JSON.parse(JSON.stringify(preview)))).toEqual(preview);
  });

  it("has the same dots on a photo", () => {
    const photo = requirePlannable(
      mapFace<"mm", "px">(face, ([x, y]) => flatPoint(900 + 5 * x, 700 - 5 * y)),
    );
    const scale: Scale = {
      from: "px",
      to: "mm",
      factor: 0.2,
      u: 0.002,
      source: "given",
      notes: [],
    };
    const frame = faceFrame(photo, scale, { midline: fitMidline(photo) });
    const plan = planOnPhoto(photo, frame, choices);
    const preview = planOnPhoto(photo, frame, choices, { preview: true });
    expect(valuesOf(preview)).toEqual(valuesOf(plan));
  });

  it("draws the picture of the plan, each length saying that its doubt is not known yet", () => {
    const plan = drawPlan(planBrows(face, choices));
    const preview = drawPlan(planBrows(face, choices, { preview: true }));
    expect(plan).not.toContain("± ?");
    const sure = plan.match(/>[\d.]+(?: ± [\d.]+)? mm</g) ?? [];
    expect(sure.length).toBeGreaterThan(0);
    expect(preview.match(/>[\d.]+ ± \? mm</g)).toHaveLength(sure.length);
    expect(drawn(preview)).toEqual(drawn(plan));
  });

  it("goes wherever a plan goes", () => {
    const preview = planBrows(face, choices, { preview: true });
    expect(drawSheet(preview)).toContain("± ?");
    expect(drawSheet(preview)).not.toContain("Infinity");
    expect(workSteps(preview).length).toBeGreaterThan(0);
    expect(checkDrawn(preview, { dots: preview.dots }).outcome).not.toBe("outside");
  });
});
