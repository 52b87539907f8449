import { checkDrawn, type Choices, drawPlan, mm, planBrows } from "brow-geometry";
import { drawSheet } from "brow-geometry/drawing";
import { drawVariants } from "brow-geometry/drawing";
import { weighChoices } from "brow-geometry/mapping";
import { placeOnSide, pointOnSide } from "brow-geometry/symmetry";
import { clientOfTheGuides } from "./client-of-the-guides.js";

const face = clientOfTheGuides();
const declared = { upright: true, relaxed: true };
const plan = planBrows(face, { lead: "left", arch: "brow-length-share", declared });

/** The plan that a reader of the README sees first. */
export function planFigure(): string {
  return drawPlan(plan, { legend: false, title: "A plan for both brows" });
}

const choices: readonly Choices[] = [
  { lead: "left", arch: "brow-length-share" },
  { lead: "right", arch: "brow-length-share" },
  { lead: "middle", arch: "brow-length-share" },
  { lead: "left", thickness: { start: mm(9), body: mm(9), arch: mm(8) } },
];

/** Four choices beside each other, cropped to the brows. */
export function variantsFigure(): string {
  return drawVariants(face, weighChoices(face, choices));
}

/** The picture of a sheet, which is at true size there. */
export function sheetFigure(): string {
  const [picture = ""] =
    /<svg .*? class="map".*?<\/svg>/s.exec(drawSheet(plan, { overlap: true })) ?? [];
  return `${picture}\n`;
}

/** A plan with the dots of a map that was drawn, two of them out of tolerance. */
export function drawnFigure(): string {
  const arch = placeOnSide(plan.dots.left.upperArch, "left");
  const tail = placeOnSide(plan.dots.left.tailEnd, "left");
  const { right, left } = plan.dots;
  const check = checkDrawn(plan, {
    dots: {
      right: { upperStart: right.upperStart, upperArch: right.upperArch, tailEnd: right.tailEnd },
      left: {
        upperStart: left.upperStart,
        upperArch: pointOnSide({ ...arch, height: arch.height + 2 }, "left"),
        tailEnd: pointOnSide({ ...tail, distance: tail.distance + 2.5 }, "left"),
      },
    },
  });
  return drawPlan(plan, { check, title: "A plan and what was drawn" });
}
