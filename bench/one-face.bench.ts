import { resolve } from "node:path";
import type { Face, Scale } from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { intersect, lineThrough } from "brow-geometry/geometry";
import { mapFace } from "brow-geometry/landmarks";
import { bench, describe } from "vitest";
import { syntheticFace } from "../tests/support/synthetic-face.js";
import { bundled } from "./speed/bundled.js";

const { faceFrame, fitMidline, planBrows, planDots, planOnPhoto, requirePlannable, toFace } =
  await bundled(resolve("."));
const face = syntheticFace();
const photo: Face<"px"> = mapFace<"mm", "px">(face, ([x, y]) =>
  flatPoint(900 + 5 * x, 700 - 5 * y),
);
const scale: Scale = { from: "px", to: "mm", factor: 0.2, u: 0.008, source: "given", notes: [] };
const frame = faceFrame(photo, scale);
const level = lineThrough(face.right.exocanthion, face.left.exocanthion);
const guide = lineThrough(face.left.alare, face.left.exocanthion);

/** For so long, in ms, V8 still compiles what is called. */
const WARMING = { warmupTime: 2000 };

/** The unit that the others are read in: a hundred intersections of two lines. */
const baseline = (): void => {
  for (let round = 0; round < 100; round += 1) intersect(level, guide);
};

describe("one face", () => {
  bench("baseline: 100 intersections of two lines", baseline);
  bench("the robust midline", () => void fitMidline(photo));
  bench(
    "landmarks → frame → dots of both brows",
    () => {
      planDots(requirePlannable(toFace(photo, faceFrame(photo, scale))));
    },
    WARMING,
  );
});

describe("one face with uncertainty", () => {
  bench("baseline: 100 intersections of two lines", baseline);
  bench("a plan in the face space", () => void planBrows(face), WARMING);
  bench("a plan on a photo", () => void planOnPhoto(requirePlannable(photo), frame), WARMING);
});
