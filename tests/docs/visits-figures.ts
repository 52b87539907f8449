import { eachSide, mm, outline, planBrows, type Point } from "brow-geometry";
import { drawCarried, drawResult } from "brow-geometry/drawing";
import { densify } from "brow-geometry/geometry";
import { type Brow, mapFace } from "brow-geometry/landmarks";
import { carryInto } from "brow-geometry/mapping";
import { outlineBorders } from "brow-geometry/proportions";
import { flatPoint } from "brow-geometry/units";
import { mapBrow } from "../../src/landmarks/internal.js";
import { clientOfTheGuides } from "./client-of-the-guides.js";

const face = clientOfTheGuides();
const plan = planBrows(face, { lead: "left", arch: "brow-length-share" });

/** The plan on the client lying down, whose brows rise towards the tail; the capture is tilted, too. */
export function carriedFigure(): string {
  const risen = (brow: Brow<"mm">) =>
    mapBrow(brow, ([x, y]) => flatPoint<"mm">(x, y + 0.5 + 0.04 * Math.abs(x)));
  const lying = {
    ...face,
    ...eachSide((side) => ({ ...face[side], brow: risen(face[side].brow) })),
  };
  const tilted = mapFace(lying, ([x, y]) =>
    flatPoint(0.9994 * x - 0.035 * y, 0.035 * x + 0.9994 * y),
  ) as typeof lying;
  return drawCarried(carryInto(plan, tilted), tilted, { title: "A plan on the client lying down" });
}

/** What came of the plan: fresh, healed with a tail that faded, and years later. */
export function resultFigure(): string {
  const found = (change: (point: Point<"mm">, below: boolean) => Point<"mm">, end: number) => ({
    ...face,
    ...eachSide((side) => {
      const { upper, lower } = outlineBorders(
        outline(plan.dots[side], plan.choices.shape),
        mm(0.01),
      );
      const until = side === "left" ? end : 100;
      const kept = (line: typeof upper, below: boolean) =>
        densify(line, mm(1))
          .filter(([x]) => Math.abs(x) < until)
          .map((point) => change(point, below));
      return { ...face[side], brow: { upper: kept(upper, false), lower: kept(lower, true) } };
    }),
  });
  const still = (point: Point<"mm">): Point<"mm"> => point;
  const wider = ([x, y]: Point<"mm">, below: boolean) => flatPoint<"mm">(x, y + (below ? -0.6 : 0));
  const lower = ([x, y]: Point<"mm">, below: boolean) =>
    flatPoint<"mm">(x, y + (below ? -1.2 : -1.4));
  return drawResult(
    plan,
    [
      { name: "fresh", weeks: 0, face: found(wider, 100) },
      { name: "healed", weeks: 6, face: found(still, 50) },
      { name: "later", weeks: 150, face: found(lower, 52) },
    ],
    { title: "A plan and what came of it" },
  );
}
