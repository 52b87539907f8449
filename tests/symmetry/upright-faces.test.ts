import {
  type Face,
  faceFrame,
  type Point,
  type Scale,
  scaleFromIris,
  skinOf,
  toFace,
  turnToFront,
} from "brow-geometry";
import { midpoint } from "brow-geometry/geometry";
import { depthAt } from "brow-geometry/landmarks";
import { hasDepth } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { foundFace, londonFaces } from "../support/london-faces.js";

interface Front {
  readonly pitch: number;
  readonly face: Face<"mm">;
}

/** 102 people photographed upright and from the front, as a face mesh found them: tests/fixtures/README.md. */
const fronts: readonly Front[] = londonFaces().map((london) => {
  const photo = foundFace(london, "mesh-478", false);
  const frame = turnToFront(photo, scaleFromIris(photo));
  return { pitch: frame.turning?.pitch ?? Number.NaN, face: toFace(photo, frame) };
});

function depthOf(point: Point<"mm">): number {
  return hasDepth(point) ? point[2] : Number.NaN;
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function deviationOf(values: readonly number[]): number {
  const mean = meanOf(values);
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1));
}

// Measured by us: what the library states of these two was read on the same faces.
describe("faces that were held upright", () => {
  it("show a pitch of 0.9 ± 4.9 degrees against the average profile, which is off by 5", () => {
    const pitches = fronts.map(({ pitch }) => pitch);
    expectClose(meanOf(pitches), 0.9, 0.05);
    expectClose(deviationOf(pitches), 4.9, 0.05);
    expectClose(Math.hypot(meanOf(pitches), deviationOf(pitches)), 5, 0.1);
  });

  it("have their outer eye corners 0.27 ± 0.035 of |x| behind the modelled skin, off 0.212 by 0.07", () => {
    const shares = fronts.flatMap(({ face }) => {
      const [fitted, modelled] = [skinOf(face, "fitted"), skinOf(face, "modelled")];
      return [face.right, face.left].map(({ exocanthion, brow }) => {
        const [corner, tail] = [exocanthion, brow?.upper.at(-1)] as [Point<"mm">, Point<"mm">];
        const fall = depthAt(corner, modelled) - depthAt(tail, modelled);
        return (fall - depthOf(corner) + depthAt(tail, fitted)) / Math.abs(corner[0]);
      });
    });
    expectClose(meanOf(shares), 0.27, 0.005);
    expectClose(deviationOf(shares), 0.035, 0.002);
    const off = shares.map((share) => (share - 0.212) ** 2);
    expectClose(Math.sqrt(meanOf(off)), 0.07, 0.005);
  });

  it("have heights, drawn by hand, that follow this pitch as those of a turned head do", () => {
    const slopeOver = (heights: readonly number[]): number => {
      const [pitch, height] = [meanOf(fronts.map((front) => front.pitch)), meanOf(heights)];
      const along = heights.map((one, at) => (one - height) * (pitchAt(at) - pitch));
      return meanOf(along) / meanOf(heights.map((_, at) => (pitchAt(at) - pitch) ** 2));
    };
    const pitchAt = (at: number): number => fronts[at]?.pitch ?? Number.NaN;
    const drawn = londonFaces().map(({ hand, millimetres }) =>
      toFace(hand, faceFrame(hand, { ...GIVEN, factor: millimetres })),
    );
    const degree = Math.PI / 180;
    for (const [name, pointOf] of POINTS) {
      const expected = degree * meanOf(fronts.map(({ face }) => depthOf(pointOf(face))));
      const ratio = slopeOver(drawn.map((face) => pointOf(face)[1])) / expected;
      // Their own scatter leaves ± 0.2.
      expect(ratio, name).toBeGreaterThan(0.6);
      expect(ratio, name).toBeLessThan(1.4);
    }
  });
});

const GIVEN: Omit<Scale, "factor"> = { from: "px", to: "mm", u: 0, source: "given", notes: [] };

const POINTS: readonly (readonly [string, (face: Face<"mm">) => Point<"mm">])[] = [
  ["outer eye corners", ({ right, left }) => middle(right.exocanthion, left.exocanthion)],
  ["subnasale", ({ midline }) => midline.subnasale as Point<"mm">],
];

function middle(one: Point<"mm"> | undefined, other: Point<"mm"> | undefined): Point<"mm"> {
  return midpoint(one as Point<"mm">, other as Point<"mm">);
}
