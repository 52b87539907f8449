import { type Face, faceFrame, mm, requirePlannable, scaleFromIris, toFace } from "brow-geometry";
import { type LandmarkName, mapFace } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { errorSources, type PointMoves, withMoves } from "../../../src/landmarks/internal.js";
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

describe("the causes of error of a detector's face", () => {
  it("are each point's own", () => {
    const photo = requirePlannable(faceOfMesh(frontalMesh));
    const face = toFace(photo, faceFrame(photo, scaleFromIris(photo)));
    expect(errorSources(face, ["brow"])).toHaveLength(2 * 20);
  });
});
