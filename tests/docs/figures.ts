import {
  ARCH_CONVENTIONS,
  type Choices,
  drawPlan,
  mm,
  planBrows,
  type PlannableFace,
  START_CONVENTIONS,
} from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { mapBrow } from "../../src/landmarks/internal.js";
import { LEADS, TAIL_HEIGHTS } from "brow-geometry/mapping";
import { keysOf } from "../../src/units/internal.js";
import { accuracyFigure } from "./accuracy-figure.js";
import { areasFigure } from "./areas-figure.js";
import { clientOfTheGuides } from "./client-of-the-guides.js";
import { carryFigure } from "./carry-figure.js";
import { drawnFigure, planFigure, sheetFigure, variantsFigure } from "./client-figures.js";
import { figure, type Panel } from "./figure.js";
import { findingsFigure } from "./findings-figure.js";
import { lengthsFigure } from "./lengths-figure.js";
import { spacesFigure } from "./spaces-figure.js";
import { carriedFigure, resultFigure } from "./visits-figures.js";
import { yawFigure } from "./yaw-figure.js";

/** The figures of README and guides: name of the file, and what stands in it. */
export const figures: ReadonlyMap<string, () => string> = new Map([
  ["plan.svg", planFigure],
  ["spaces.svg", spacesFigure],
  ["accuracy.svg", accuracyFigure],
  ["dots.svg", () => drawPlan(planBrows(clientOfTheGuides()), { title: "Dots of both brows" })],
  [
    "starts.svg",
    () =>
      figure(
        "Where a brow starts",
        2,
        START_CONVENTIONS.map((start) => panel(start, { start }, wideNose())),
      ),
  ],
  [
    "arches.svg",
    () =>
      figure(
        "Where a brow peaks, by each rule",
        2,
        ARCH_CONVENTIONS.map((arch) => panel(arch, { arch })),
      ),
  ],
  [
    "tails.svg",
    () =>
      figure(
        "How high a brow ends",
        2,
        keysOf(TAIL_HEIGHTS).map((tailHeight) => panel(tailHeight, { tailHeight })),
      ),
  ],
  [
    "leads.svg",
    () =>
      figure(
        "Which brow leads",
        2,
        keysOf(LEADS).map((lead) => panel(lead, { lead }, unevenFace())),
      ),
  ],
  ["lengths.svg", lengthsFigure],
  ["carrying.svg", carryFigure],
  ["yaw.svg", yawFigure],
  ["variants.svg", variantsFigure],
  ["findings.svg", findingsFigure],
  ["sheet.svg", sheetFigure],
  ["drawn.svg", drawnFigure],
  ["areas.svg", areasFigure],
  ["carried.svg", carriedFigure],
  ["result.svg", resultFigure],
]);

function panel(caption: string, choices: Choices, face: PlannableFace = evenFace()): Panel {
  return {
    caption,
    drawing: drawPlan(planBrows(face, { keepHair: mm(0), ...choices }), {
      legend: false,
      title: caption,
    }),
  };
}

/** The client of the guides with the left brow on both sides. */
function evenFace(): PlannableFace {
  const face = clientOfTheGuides();
  const brow = mapBrow(face.left.brow, ([x, y]) => flatPoint<"mm">(-x, y));
  return { ...face, right: { ...face.right, brow } };
}

/** A nose whose wings lie lateral of the inner eye corners: both start rules part. */
function wideNose(): PlannableFace {
  const face = evenFace();
  return {
    ...face,
    right: { ...face.right, alare: mm([-21, -39]) },
    left: { ...face.left, alare: mm([21, -39]) },
  };
}

/** A left brow that grows higher and farther out than the right one. */
function unevenFace(): PlannableFace {
  const face = evenFace();
  const brow = mapBrow(face.left.brow, ([x, y]) => flatPoint<"mm">(x + 3, y + 4));
  return { ...face, left: { ...face.left, brow } };
}
