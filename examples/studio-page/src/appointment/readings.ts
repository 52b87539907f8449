import { eachSide, mm, outline, type PlannableFace, type Side } from "brow-geometry";
import { completeDots, outlineBorders } from "brow-geometry/proportions";
import { NONE_BARE, type RulerFace } from "./basis.js";
import { attempt, type FlatPoint, type Sides } from "brow-geometry/units";

/** What a ruler reads at one brow, in millimetres, by the names that the library has for it. */
export interface SideReadings {
  readonly startDistance: number;
  readonly startHeight: number;
  readonly archDistance: number;
  readonly archHeight: number;
  readonly tailDistance: number;
  readonly tailHeight: number;
  readonly startThickness: number;
  readonly archThickness: number;
}

/** What a ruler reads between both sides. */
export interface FaceReadings {
  readonly innerCorners: number;
  readonly outerCorners: number;
  readonly noseWings: number;
}

export interface Readings extends Sides<SideReadings> {
  readonly face: FaceReadings;
}

const PLAIN_SIDE: SideReadings = {
  startDistance: 15,
  startHeight: 19,
  archDistance: 39,
  archHeight: 26,
  tailDistance: 56,
  tailHeight: 19,
  startThickness: 7,
  archThickness: 6,
};

/** The plain face to begin with: nobody's, in whole millimetres, both sides alike. */
export const PLAIN_FACE: Readings = {
  face: { innerCorners: 32, outerCorners: 88, noseWings: 35 },
  right: PLAIN_SIDE,
  left: PLAIN_SIDE,
};

/** What the ruler alone begins with. */
export const BY_RULER: RulerFace = { kind: "ruler", readings: PLAIN_FACE, bare: NONE_BARE };

/** Of the nose wings below the eyes: no guide is moved much by it, and a ruler hardly reads it. */
const NOSE_DOWN = 39;

/** How far drawn borders may stray from the curves through what was read: less than a pencil is thick. */
const ERROR = mm(0.01);

/**
 * The face that a ruler has read, its borders drawn through the dots as the library draws them.
 *
 * @throws GeometryError where no brow has its dots so
 */
export function faceOf(readings: Readings): PlannableFace {
  const { innerCorners, outerCorners, noseWings } = readings.face;
  const side = (of: Side) => {
    const out = of === "left" ? 1 : -1;
    const at = (distance: number, height: number) => mm([out * distance, height]);
    return {
      endocanthion: at(innerCorners / 2, 0),
      exocanthion: at(outerCorners / 2, 0),
      alare: at(noseWings / 2, -NOSE_DOWN),
      brow: browOf(readings[of], at),
    };
  };
  return { ...eachSide(side), midline: {} };
}

function browOf(read: SideReadings, at: (distance: number, height: number) => FlatPoint<"mm">) {
  const { startThickness, archThickness } = read;
  const upper = {
    upperStart: at(read.startDistance, read.startHeight),
    upperArch: at(read.archDistance, read.archHeight),
    tailEnd: at(read.tailDistance, read.tailHeight),
  };
  const thickness = {
    start: mm(startThickness),
    body: mm((startThickness + archThickness) / 2),
    arch: mm(archThickness),
  };
  return outlineBorders(outline(completeDots(upper, thickness)), ERROR);
}

/** Whether there is a face that reads so. */
export function isReadable(readings: Readings): boolean {
  return attempt(() => faceOf(readings)).ok;
}
