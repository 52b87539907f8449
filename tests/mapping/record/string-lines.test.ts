import { test } from "@fast-check/vitest";
import { mm, planDots, say } from "brow-geometry";
import { stringLines } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { syntheticFace } from "../../support/synthetic-face.js";

describe("stringLines", () => {
  const plan = planDots(syntheticFace(), { keepHair: mm(0) });
  const { points, lines } = stringLines(plan);

  it("lay a thread along the midline, across both brows, then along guides and borders", () => {
    const side = (name: string): readonly string[] => [
      `${name} start above the nose wing`,
      `${name} tail end on the line from the nose wing through the outer eye corner`,
      `${name} from start to arch`,
      `${name} from arch to tail end`,
      `${name} from lower start to lower arch`,
      `${name} from lower arch to tail end`,
    ];
    expect(lines.map((line) => say(line))).toEqual([
      "along the midline",
      "across both brows at the start",
      "across both brows at the lower start",
      "across both brows at the arch",
      "across both brows at the tail end",
      ...side("right"),
      ...side("left"),
    ]);
  });

  it("mark each point once, before the thread that needs it, in order", () => {
    expect(points.slice(0, 4).map((point) => say(point))).toEqual([
      "midline",
      "midline",
      "right start",
      "left start",
    ]);
    const needed = lines.flatMap(({ through }) => through);
    const firsts = needed.filter((point, index) => needed.indexOf(point) === index);
    expect(firsts).toEqual(points.map((_, index) => index));
  });

  test.prop([anyFace(1)])("run through the outer eye corner to the tail end", (face) => {
    const drawn = stringLines(planDots(face, { lead: "left", keepHair: mm(0) }));
    const line = drawn.lines.find((one) => say(one).startsWith("left tail end on"));
    const [from, to] = (line?.through ?? []).map((point) => drawn.points[point]?.at);
    const corner = face.left.exocanthion;
    if (from === undefined || to === undefined) return expect.fail();
    const [along, off] = [
      [to[0] - from[0], to[1] - from[1]] as const,
      [corner[0] - from[0], corner[1] - from[1]] as const,
    ];
    expectClose(along[0] * off[1] - along[1] * off[0], 0, 1e-6);
  });
});
