import { mm, planBrows } from "brow-geometry";
import { drawAreas } from "brow-geometry/drawing";
import type { SkinArea } from "brow-geometry/mapping";
import { clientOfTheGuides } from "./client-of-the-guides.js";

/** Old pigment that sticks out of the right brow, and a scar across the left tail; both invented. */
const AREAS: readonly SkinArea[] = [
  {
    name: "old pigment",
    aim: "cover",
    edge: mm([
      [-15, 9],
      [-34, 14],
      [-38, 18],
      [-34, 21.5],
      [-18, 16.5],
    ]),
    margin: mm(0.5),
  },
  {
    name: "scar",
    aim: "stay-off",
    edge: mm([
      [46, 27],
      [49, 27],
      [53, 12],
      [50, 11],
    ]),
    margin: mm(0.5),
  },
];

/** A plan with areas of skin. */
export function areasFigure(): string {
  return drawAreas(planBrows(clientOfTheGuides(), { lead: "left" }), AREAS, {
    title: "A plan over old pigment and a scar",
  });
}
