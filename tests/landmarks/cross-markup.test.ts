import { distance } from "brow-geometry/geometry";
import {
  type Face,
  faceFrame,
  fitMidline,
  type LandmarkName,
  naturalDots,
  type Point,
  requireLandmarks,
  type Scale,
  toFace,
} from "brow-geometry";
import { landmarkUncertainty } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import {
  AS_FOUND,
  faceOfMesh,
  faceOfPoints68,
  meshSamples,
  points68Samples,
} from "../support/sample-faces.js";

/** One thing that both markups tell of the same person, in its own standard uncertainties. */
interface Difference {
  readonly what: string;
  readonly inUncertainties: number;
}

/** Turned further than this, what a face shows of its far side is guessed by both detectors. */
const MOST_TURN = 9;

const differences = meshSamples.flatMap((mesh, index) => {
  const points68 = points68Samples[index];
  if (points68 === undefined) throw new Error("not the same faces");
  const [one, other] = [faceOfMesh(mesh, AS_FOUND), faceOfPoints68(points68, AS_FOUND)];
  return Math.abs(turnOf(one)) > MOST_TURN ? [] : compare(one, other);
});

describe("the same real faces through 478 points and through the 68 of another detector", () => {
  it("are compared on a handful of heads that look ahead", () => {
    const places = ["right", "left"].flatMap((side) =>
      ["start", "arch", "tail end", "pupil"].flatMap((place) => [
        `${side} ${place}, sideways`,
        `${side} ${place}, upwards`,
      ]),
    );
    const widths = ["exocanthion to exocanthion", "endocanthion to endocanthion"];
    const compared = differences.map(({ what }) => what);
    expect(new Set(compared)).toEqual(new Set(["tilt", ...widths, ...places]));
    for (const one of new Set(compared)) {
      expect(compared.filter((what) => what === one).length).toBeGreaterThanOrEqual(5);
    }
  });

  it("agree in midline, widths and dots: no difference is beyond three of its uncertainties", () => {
    const far = differences.filter(({ inUncertainties }) => Math.abs(inUncertainties) > 3);
    expect(far).toEqual([]);
  });

  it("differ by no more than the uncertainties say, all in all", () => {
    const squares = differences.map(({ inUncertainties }) => inUncertainties ** 2);
    const mean = squares.reduce((sum, square) => sum + square, 0) / squares.length;
    expect(Math.sqrt(mean)).toBeLessThan(1.1);
    // Uncertainties that swallow everything would prove nothing.
    expect(Math.sqrt(mean)).toBeGreaterThan(0.4);
  });

  // Points of the nostril row lie inside of the wings, mesh points beside the wings outside of them.
  it("differ in alare by what a stand-in may: both name it one, and 68 points lie medially", () => {
    for (const [index, sample] of points68Samples.entries()) {
      const faces = [
        faceOfMesh(meshSamples[index] ?? sample, AS_FOUND),
        faceOfPoints68(sample, AS_FOUND),
      ];
      const [outside, inside] = faces.map(({ right, left, standIns }) => {
        expect(standIns?.map(({ landmark }) => landmark)).toContain("alare");
        return distance(
          requireLandmarks(right, "alare").alare,
          requireLandmarks(left, "alare").alare,
        );
      });
      expect(inside).toBeLessThan(outside ?? 0);
    }
  });
});

/** Degrees by which a head is turned, from the depth of its outer eye corners. */
function turnOf(face: Face<"px">): number {
  const { exocanthion: right } = requireLandmarks(face.right, "exocanthion");
  const { exocanthion: left } = requireLandmarks(face.left, "exocanthion");
  return (180 / Math.PI) * Math.atan2(right[2] - left[2], distance(right, left));
}

function compare(one: Face<"px">, other: Face<"px">): readonly Difference[] {
  const eyes = requireLandmarks(one.right, "exocanthion").exocanthion;
  const width = distance(eyes, requireLandmarks(one.left, "exocanthion").exocanthion);
  // Both in millimetres by one biocular width of 90 mm.
  const scale: Scale = {
    from: "px",
    to: "mm",
    factor: 90 / width,
    u: 0,
    source: "given",
    notes: [],
  };
  const [first, second] = [one, other].map((face) => toFace(face, faceFrame(face, scale)));
  if (first === undefined || second === undefined) throw new Error("no faces");
  const u = (landmark: LandmarkName): number =>
    Math.hypot(landmarkUncertainty(first, landmark), landmarkUncertainty(second, landmark));
  const tilt = fitMidline(one).tilt - fitMidline(other).tilt;
  const uTilt = (180 / Math.PI) * ((Math.SQRT2 * u("exocanthion")) / 90);
  const widths = (["exocanthion", "endocanthion"] as const).map((landmark) => ({
    what: `${landmark} to ${landmark}`,
    inUncertainties:
      (widthOf(first, landmark) - widthOf(second, landmark)) / (Math.SQRT2 * u(landmark)),
  }));
  const places = (["right", "left"] as const).flatMap((side) => {
    const [here, there] = [first[side], second[side]].map((part) => {
      const { brow, pupil } = requireLandmarks(part, "brow", "pupil");
      const { upperStart, upperArch, tailEnd } = naturalDots(brow).dots;
      if (upperArch === undefined) throw new Error("a flat brow");
      return { upperStart, upperArch, tailEnd, pupil };
    });
    if (here === undefined || there === undefined) throw new Error("no brows");
    return [
      ...apart(`${side} start`, here.upperStart, there.upperStart, u("brow")),
      ...apart(`${side} arch`, here.upperArch, there.upperArch, u("brow")),
      ...apart(`${side} tail end`, here.tailEnd, there.tailEnd, u("brow")),
      ...apart(`${side} pupil`, here.pupil, there.pupil, u("pupil")),
    ];
  });
  return [{ what: "tilt", inUncertainties: tilt / uTilt }, ...widths, ...places];
}

function widthOf(face: Face<"mm">, landmark: "exocanthion" | "endocanthion"): number {
  const right = requireLandmarks(face.right, landmark)[landmark];
  return distance(right, requireLandmarks(face.left, landmark)[landmark]);
}

function apart(
  what: string,
  one: Point<"mm">,
  other: Point<"mm">,
  u: number,
): readonly Difference[] {
  return [
    { what: `${what}, sideways`, inUncertainties: (one[0] - other[0]) / u },
    { what: `${what}, upwards`, inUncertainties: (one[1] - other[1]) / u },
  ];
}
