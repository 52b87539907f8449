import {
  type Face,
  faceFrame,
  mm,
  type Polyline,
  requirePlannable,
  scaleFromIris,
  toFace,
} from "brow-geometry";
import { type LandmarkName, mapFace } from "brow-geometry/landmarks";
import { flatPoint } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { errorSources, type PointMoves, withMoves } from "../../../src/landmarks/internal.js";
import { expectClose } from "../../support/close.js";
import { faceOfMesh, frontalMesh } from "../../support/sample-faces.js";

const handPlaced: Face<"mm"> = {
  right: { pupil: mm([-31, 0]) },
  left: { brow: { upper: [mm([12, 20]), mm([50, 18])] }, alare: mm([17, -38]) },
  midline: { sellion: mm([0, 2]) },
};

/** Which landmarks a source moves. */
function moved(face: Face<"mm">, source: PointMoves): readonly (LandmarkName | undefined)[] {
  const other = withMoves(face, source, 1);
  const names: (LandmarkName | undefined)[] = [];
  const points: unknown[] = [];
  mapFace<"mm", "mm">(other, (point) => (points.push(point), point));
  mapFace<"mm", "mm">(face, (point, landmark) => {
    const [x, y] = points[names.length] as readonly number[];
    names.push(x === point[0] && y === point[1] ? undefined : landmark);
    return point;
  });
  return names.filter((name) => name !== undefined);
}

describe("the causes of error of a face placed by hand", () => {
  it("are two for each point that is read, one across and one along the midline, 0.26 mm each", () => {
    const sources = errorSources(handPlaced, ["pupil", "brow", "sellion"]);
    expect(sources.map((source) => moved(handPlaced, source))).toEqual(
      ["pupil", "pupil", "brow", "brow", "brow", "brow", "sellion", "sellion"].map((name) => [
        name,
      ]),
    );
    const { left, right } = withMoves(handPlaced, sources[3] ?? {}, 2);
    expect(left.brow?.upper).toEqual([
      [12, 20.52],
      [50, 18],
    ]);
    expect(right).toBe(handPlaced.right);
  });
});

/** A border over its chord, with as many points as are asked for. */
function arched(points: number): Polyline<"mm"> {
  return Array.from({ length: points }, (_, at) => {
    const share = at / (points - 1);
    return flatPoint<"mm">(15 + 45 * share, 20 + 7 * Math.sin(Math.PI * share ** 1.4));
  });
}

describe("the causes of error of a drawn line", () => {
  const facing = (upper: Polyline<"mm">): Face<"mm"> => ({
    right: {},
    left: { brow: { upper } },
    midline: {},
  });

  it("are those of its corners: what lies straight between two of them errs with both", () => {
    const border = [mm([15, 20]), mm([25, 23]), mm([30, 24.5]), mm([45, 27]), mm([60, 18])];
    const face = facing(border);
    const sources = errorSources(face, ["brow"]);
    expect(sources).toHaveLength(2 * 4);
    const { left } = withMoves(face, sources[1] ?? {}, 1 / 0.26);
    expectClose(left.brow?.upper, [[15, 21], [25, 23 + 1 / 3], ...border.slice(2)], 1e-9);
  });

  it("are at most those of twelve of its points, however many it has", () => {
    expect(errorSources(facing(arched(12)), ["brow"])).toHaveLength(2 * 12);
    const face = facing(arched(200));
    const sources = errorSources(face, ["brow"]);
    expect(sources).toHaveLength(2 * 12);
    // All of them at once move the whole line by as much.
    const all = sources.reduce((moved, source) => withMoves(moved, source, 1 / 0.26), face);
    const expected = arched(200).map(([x, y]) => [x + 1, y + 1]);
    expectClose(all.left.brow?.upper, expected, 1e-9);
  });
});

describe("the causes of error of a detector's face", () => {
  it("are each point's own", () => {
    const photo = requirePlannable(faceOfMesh(frontalMesh));
    const face = toFace(photo, faceFrame(photo, scaleFromIris(photo)));
    expect(errorSources(face, ["brow"])).toHaveLength(2 * 20);
  });
});
