import {
  type Face,
  faceFrame,
  mm,
  type PlannableFace,
  type Polyline,
  requirePlannable,
  scaleFromIris,
  toFace,
} from "brow-geometry";
import { distance } from "brow-geometry/geometry";
import { type LandmarkName, mapFace } from "brow-geometry/landmarks";
import { type FlatPoint, flatPoint, type Point } from "brow-geometry/units";
import { describe, expect, it } from "vitest";
import { errorSources, type PointMoves, withMoves } from "../../../src/landmarks/internal.js";
import { expectClose } from "../../support/close.js";
import { AS_FOUND, faceOfMesh, frontalMesh } from "../../support/sample-faces.js";

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
  const [photo, found] = [{}, AS_FOUND].map((options) =>
    requirePlannable(faceOfMesh(frontalMesh, options)),
  ) as [PlannableFace<"px">, PlannableFace<"px">];
  const frame = faceFrame(photo, scaleFromIris(photo));
  const [face, asFound] = [toFace(photo, frame), toFace(found, frame)];
  const width = distance(photo.right.exocanthion, photo.left.exocanthion) * frame.scale.factor;

  it("are patterns that move both brows, and nothing else", () => {
    const sources = errorSources(face, ["brow"]);
    expect(sources.length).toBeLessThan(2 * 20);
    const all = sources.flatMap((source) => moved(face, source));
    expect(new Set(all)).toEqual(new Set(["brow"]));
    for (const source of sources) {
      expect(withMoves(face, source, 1).right).not.toEqual(face.right);
      expect(withMoves(face, source, 1).left).not.toEqual(face.left);
    }
  });

  it("go together between the sides as they were seen to: r = 0.77 at the tail ends", () => {
    const height = ({ brow }: Face<"mm">["left"]): number => brow?.upper.at(-1)?.[1] ?? 0;
    const rises = errorSources(face, ["brow"]).map((source) => {
      const other = withMoves(face, source, 1);
      return [height(other.right) - height(face.right), height(other.left) - height(face.left)];
    });
    const sum = (of: (right: number, left: number) => number): number =>
      rises.reduce((total, [right = 0, left = 0]) => total + of(right, left), 0);
    const squares = [sum((right) => right * right), sum((_, left) => left * left)] as const;
    const r = sum((right, left) => right * left) / Math.sqrt(squares[0] * squares[1]);
    // Measured on the 102 faces of tests/fixtures/london-faces.ndjson.
    expect(r).toBeGreaterThan(0.7);
    expect(r).toBeLessThan(0.84);
    // Standard deviation 3.0 mm, on faces 93 mm wide in the mean.
    const u = (Math.sqrt(squares[1]) * 93) / width;
    expect(u).toBeGreaterThan(2.8);
    expect(u).toBeLessThan(3.2);
  });

  it("are of eye corners and the nose wing sideways and upwards what they were seen to be", () => {
    const [aside, up] = errorSources(face, ["alare"]).map((source) => {
      const [x, y] = withMoves(face, source, 1).right.alare as FlatPoint<"mm">;
      const [fromX, fromY] = face.right.alare as FlatPoint<"mm">;
      return [x - fromX, y - fromY];
    });
    // Standard deviations on those faces: tests/fixtures/README.md names their source.
    expectClose(aside, [1.6, 0], 0.1);
    expectClose(up, [0, 2.9], 0.1);
  });

  it("are the same however densely a border is drawn, and each point's own once it is not corrected", () => {
    const middle = ([one, other]: readonly Point<"mm">[]): Point<"mm"> =>
      flatPoint(
        ((one?.[0] ?? 0) + (other?.[0] ?? 0)) / 2,
        ((one?.[1] ?? 0) + (other?.[1] ?? 0)) / 2,
      );
    const flat = face.left.brow?.upper.map(([x, y]) => flatPoint<"mm">(x, y)) ?? [];
    const dense = flat.flatMap((point, at) =>
      at === 0 ? [point] : [middle(flat.slice(at - 1)), point],
    );
    const withBorder = (upper: Polyline<"mm">): Face<"mm"> => ({
      ...face,
      left: { ...face.left, brow: { upper } },
    });
    const [sparse, drawn] = [withBorder(flat), withBorder(dense)];
    errorSources(drawn, ["brow"]).forEach((source, index) => {
      const every = withMoves(drawn, source, 1).left.brow?.upper.filter((_, at) => at % 2 === 0);
      const other = withMoves(sparse, errorSources(sparse, ["brow"])[index] ?? {}, 1);
      expectClose(every, other.left.brow?.upper, 1e-9);
    });
    expect(errorSources(asFound, ["brow"])).toHaveLength(2 * 20);
  });
});
