import { FaceLandmarker } from "@mediapipe/tasks-vision";
import { describe, expect, it } from "vitest";
import { MESH_478 } from "../../../src/landmarks/markups/meshes.js";

// The package that runs the face mesh exports which of its points the contours join, for the
// client's own right and left.
type Edges = readonly { readonly start: number; readonly end: number }[];

const { right, left, pairs, middle, irises } = MESH_478;

const partners = new Map<number, number>([
  ...pairs.flatMap((pair) => [[pair.right, pair.left] as const, [pair.left, pair.right] as const]),
  ...middle.map((index) => [index, index] as const),
]);

describe("the face mesh's index table, against the constants of @mediapipe/tasks-vision", () => {
  it.each([
    ["right", right, FaceLandmarker.FACE_LANDMARKS_RIGHT_EYEBROW],
    ["left", left, FaceLandmarker.FACE_LANDMARKS_LEFT_EYEBROW],
  ])("has the %s brow's two borders as chains of edges", (_, side, edges: Edges) => {
    expect(chains(edges)).toEqual(asChains([side.browUpper ?? [], side.browLower ?? []]));
  });

  it.each([
    ["right", right, FaceLandmarker.FACE_LANDMARKS_RIGHT_EYE],
    ["left", left, FaceLandmarker.FACE_LANDMARKS_LEFT_EYE],
  ])("has the %s eye's lids as the two halves of its outline", (_, side, edges: Edges) => {
    const { upperLid = [], lowerLid = [], points } = side;
    expect(edgesOf(upperLid).concat(edgesOf(lowerLid)).sort()).toEqual(
      edges.map(({ start, end }) => edge(start, end)).sort(),
    );
    for (const lid of [upperLid, lowerLid]) {
      expect([lid[0], lid[lid.length - 1]]).toEqual([points.endocanthion, points.exocanthion]);
    }
  });

  it.each([
    ["right", irises?.right, FaceLandmarker.FACE_LANDMARKS_RIGHT_IRIS],
    ["left", irises?.left, FaceLandmarker.FACE_LANDMARKS_LEFT_IRIS],
  ])(
    "has the %s iris's rim in order round it, with a centre that no edge has",
    (_, iris, edges: Edges) => {
      const rim = iris?.rim ?? [];
      expect(edgesOf([...rim, rim[0] ?? -1]).sort()).toEqual(
        edges.map(({ start, end }) => edge(start, end)).sort(),
      );
      expect(edges.flatMap(({ start, end }) => [start, end])).not.toContain(iris?.centre);
    },
  );

  it("has the corners of the mouth on the outline of the lips, each on its side", () => {
    const lips = new Set(
      FaceLandmarker.FACE_LANDMARKS_LIPS.flatMap(({ start, end }) => [start, end]),
    );
    expect(lips.has(right.points.cheilion as number)).toBe(true);
    expect(lips.has(left.points.cheilion as number)).toBe(true);
  });

  it("mirrors every edge of the contours onto an edge", () => {
    const edges = FaceLandmarker.FACE_LANDMARKS_CONTOURS.map(({ start, end }) => edge(start, end));
    expect(mirrored(FaceLandmarker.FACE_LANDMARKS_CONTOURS).sort()).toEqual(edges.sort());
  });

  it("mirrors the whole tesselation onto itself, but for six diagonals of its quadrangles", () => {
    const known = new Set(
      FaceLandmarker.FACE_LANDMARKS_TESSELATION.map(({ start, end }) => edge(start, end)),
    );
    const strangers = new Set(
      mirrored(FaceLandmarker.FACE_LANDMARKS_TESSELATION).filter((pair) => !known.has(pair)),
    );
    expect(known.size).toBe(1322);
    expect(strangers.size).toBe(6);
  });
});

describe("the face mesh's mirror partners", () => {
  it("pair each of the 468 points with one other, or with itself on the middle", () => {
    expect(partners.size).toBe(468);
    expect(new Set(partners.values()).size).toBe(468);
    for (const [index, partner] of partners) expect(partners.get(partner)).toBe(index);
  });

  it("map the right side's table onto the left's", () => {
    expect(right.browUpper?.map((index) => partners.get(index))).toEqual(left.browUpper);
    expect(right.browLower?.map((index) => partners.get(index))).toEqual(left.browLower);
    expect(right.upperLid?.map((index) => partners.get(index))).toEqual(left.upperLid);
    expect(right.lowerLid?.map((index) => partners.get(index))).toEqual(left.lowerLid);
    for (const alare of Object.values(MESH_478.alare)) {
      expect(partners.get(alare.right)).toBe(alare.left);
    }
    expect(partners.get(right.points.cheilion as number)).toBe(left.points.cheilion);
  });

  it("leave the midline's landmarks on the middle", () => {
    const indices = Object.values(MESH_478.midline).flat();
    for (const index of indices) expect(middle).toContain(index);
  });
});

function edge(one: number, other: number): string {
  return one < other ? `${one}-${other}` : `${other}-${one}`;
}

function edgesOf(line: readonly number[]): string[] {
  return line.slice(1).map((index, before) => edge(line[before] ?? -1, index));
}

function mirrored(edges: Edges): string[] {
  return edges.map(({ start, end }) => edge(partners.get(start) ?? -1, partners.get(end) ?? -1));
}

/** Chains of points that edges join, each read from its smaller end. */
function chains(edges: Edges): readonly string[] {
  const next = new Map(edges.map(({ start, end }) => [start, end]));
  const ends = new Set(next.values());
  return asChains(
    [...next.keys()]
      .filter((start) => !ends.has(start))
      .map((start) => {
        const chain = [start];
        for (let at = next.get(start); at !== undefined; at = next.get(at)) chain.push(at);
        return chain;
      }),
  );
}

function asChains(lines: readonly (readonly number[])[]): readonly string[] {
  return lines
    .map((line) => ((line[0] ?? 0) < (line[line.length - 1] ?? 0) ? line : line.slice().reverse()))
    .map((line) => line.join(" "))
    .sort();
}
