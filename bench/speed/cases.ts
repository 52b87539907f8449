import type * as root from "brow-geometry";
import type * as grading from "brow-geometry/grading";
import type * as mapping from "brow-geometry/mapping";
import {
  type Choices,
  type PlannableFace,
  type Polyline,
  requirePlannable,
  type Scale,
} from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import { flatPoint } from "brow-geometry/units";
import { foundFace, londonFaces } from "../../tests/support/london-faces.js";
import { syntheticFace } from "../../tests/support/synthetic-face.js";

/** Root, plans and grades of the library, of this revision or an earlier one. */
export type Library = typeof root & typeof mapping & typeof grading;

/** Something that is timed. */
export interface Case {
  readonly name: string;
  readonly run: () => unknown;
  /** Whether earlier revisions take minutes for it: timed now only. */
  readonly nowOnly?: boolean;
}

const SCALE: Scale = { from: "px", to: "mm", factor: 0.2, u: 0.008, source: "given", notes: [] };

/** What one face costs, each on one way that apps take. */
export function casesOf(lib: Library): readonly Case[] {
  const face = requirePlannable(syntheticFace());
  const photo = requirePlannable(
    mapFace<"mm", "px">(face, ([x, y]) => flatPoint(900 + 5 * x, 700 - 5 * y)),
  );
  const [, , , , found] = londonFaces();
  if (found === undefined) throw new Error("the fixture holds fewer faces than it should");
  const mesh = requirePlannable(foundFace(found, "mesh-478"));
  const points68 = requirePlannable(foundFace(found, "points-68"));
  const scale = lib.scaleFromIris(mesh);
  const frame = lib.faceFrame(mesh, scale);
  const turned = lib.turnToFront(mesh, scale);
  const frame68 = lib.faceFrame(points68, scale);
  const onFace = requirePlannable(lib.toFace(mesh, frame));
  const pins: Choices = {
    pins: [
      { side: "left", dot: "upperArch", at: face.left.brow.upper[3] ?? face.left.exocanthion },
    ],
  };
  const plan = lib.planBrows(face);
  return [
    { name: "dots of both brows", run: () => lib.planDots(face) },
    { name: "robust midline", run: () => lib.fitMidline(mesh) },
    { name: "plan of a face in millimetres, by hand", run: () => lib.planBrows(face) },
    {
      name: "plan on a photo, by hand",
      run: () => lib.planOnPhoto(photo, lib.faceFrame(photo, SCALE)),
    },
    { name: "plan on a photo, face mesh", run: () => lib.planOnPhoto(mesh, frame) },
    {
      name: "plan on a photo, face mesh, head turned to its front",
      run: () => lib.planOnPhoto(mesh, turned),
    },
    { name: "plan on a photo, 68 points", run: () => lib.planOnPhoto(points68, frame68) },
    {
      name: "preview with a pin, and its picture",
      run: () => lib.drawPlan(lib.planBrows(face, pins, { preview: true })),
    },
    { name: "turning a head to its front", run: () => lib.turnToFront(mesh, scale) },
    { name: "checking a capture", run: () => lib.checkCapture(mesh, { purpose: "map" }) },
    {
      name: "weighing 126 choices",
      run: () => lib.weighChoices(onFace, lib.everyChoice().slice(0, 126)),
    },
    { name: "checking what was drawn", run: () => lib.checkDrawn(plan, { dots: plan.dots }) },
    {
      name: "grading a map against a plan",
      run: () => lib.gradeMap({ dots: plan.dots }, { kind: "plan", plan }),
    },
    ...[10, 200, 1000].map((points): Case => {
      const drawn = drawnWith(points);
      const name = `plan of borders of ${points} points`;
      return { name, run: () => lib.planBrows(drawn), nowOnly: true };
    }),
  ];
}

/** The synthetic face with smooth borders, each drawn as so many points. */
function drawnWith(points: number): PlannableFace {
  const side = (outwards: 1 | -1, { brow: _, ...landmarks }: PlannableFace["left"]) => {
    const line = (start: number, rise: number): Polyline<"mm"> =>
      Array.from({ length: points }, (_, index) => {
        const share = index / (points - 1);
        const y = start + (18 - start) * share + rise * Math.sin(Math.PI * share ** 1.3);
        return flatPoint<"mm">(outwards * (15 + 43 * share), y);
      });
    return { ...landmarks, brow: { upper: line(20, 7), lower: line(13, 5) } };
  };
  const face = requirePlannable(syntheticFace());
  return { ...face, right: side(-1, face.right), left: side(1, face.left) };
}
