import { type DeepPoint, deepPoint, flatPoint } from "brow-geometry/units";
import { type Face, type FaceSide, type LandmarkName, mm, type Point } from "brow-geometry";
import { mapBrow } from "../../../src/landmarks/internal.js";
import { mapFace } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { faceOfMesh, frontalMesh } from "../../support/sample-faces.js";
import { syntheticFace } from "../../support/synthetic-face.js";

describe("a mapped face", () => {
  it("has every point mapped once and everything else as it was", () => {
    const face = faceOfMesh(frontalMesh);
    const seen: (LandmarkName | undefined)[] = [];
    const same = mapFace<"px", "px">(face, (point, landmark) => {
      seen.push(landmark);
      return point;
    });
    expect(same).toEqual(face);
    const onSide = ({ upperLid = [], lowerLid = [], brow, ...points }: FaceSide<"px">): number =>
      [upperLid, lowerLid, brow?.upper, brow?.lower, Object.keys(points)]
        .flatMap((line) => line?.length ?? 0)
        .reduce((sum, count) => sum + count);
    const { right, left, midline, symmetricPoints } = face;
    const named = seen.filter((landmark) => landmark !== undefined);
    expect(named).toHaveLength(onSide(right) + onSide(left) + Object.keys(midline).length);
    const { pairs = [], middle = [] } = symmetricPoints ?? {};
    expect(middle).not.toEqual([]);
    expect(seen.length - named.length).toBe(2 * pairs.length + middle.length);
  });

  it("tells which landmark a point is or belongs to", () => {
    const places = new Map<string, LandmarkName | undefined>();
    const face = syntheticFace();
    mapFace<"mm", "mm">(face, (point, landmark) => {
      places.set(point.join(), landmark);
      return point;
    });
    expect(places.get(face.left.pupil.join())).toBe("pupil");
    expect(places.get(face.midline.subnasale.join())).toBe("subnasale");
    expect(places.get("30,18.2")).toBe("brow");
    expect(places.get("23,3.6")).toBe("upperLid");
  });

  it("leaves out what was left out", () => {
    const face: Face<"mm"> = { right: { pupil: mm([-31, 0]) }, left: {}, midline: {} };
    expect(mapFace<"mm", "px">(face, ([x, y]) => flatPoint(-x, -y))).toEqual({
      right: { pupil: [31, -0] },
      left: {},
      midline: {},
    });
  });
});

describe("a mapped brow", () => {
  it("has a lower border where there was one", () => {
    const lift = ([x, y]: Point<"mm">): DeepPoint<"mm"> => deepPoint(x, y, 1);
    const upper = mm([
      [1, 2],
      [3, 4],
    ]);
    expect(mapBrow<"mm", "mm">({ upper }, lift)).toEqual({
      upper: [
        [1, 2, 1],
        [3, 4, 1],
      ],
    });
    expect(mapBrow<"mm", "mm">({ upper, lower: upper }, lift).lower).toHaveLength(2);
  });
});
