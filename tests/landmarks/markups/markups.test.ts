import { MARKUPS } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { fromMarkup } from "brow-geometry";
import { MARKUP_NAMES } from "../../../src/landmarks/internal.js";
import type { IndexTable } from "../../../src/landmarks/markups/index-table.js";
import { INDEX_TABLES } from "../../../src/landmarks/markups/markups.js";
import { refusal } from "../../support/refusal.js";
import {
  AS_FOUND,
  faceOfPoints68,
  frontalPoints68,
  points68Samples,
} from "../../support/sample-faces.js";

it.each(MARKUP_NAMES)("%s has points for every choice of alare that it names", (name) => {
  expect(Object.keys(INDEX_TABLES[name].alare)).toEqual(MARKUPS[name].alare);
});

const tables = MARKUP_NAMES.map((name): readonly [string, number, IndexTable] => [
  name,
  MARKUPS[name].size,
  INDEX_TABLES[name],
]);

describe.each(tables)("mirror pairs of %s", (_, size, { pairs, middle, irises, ...markup }) => {
  const partners = new Map<number, number>([
    ...pairs.flatMap(({ right, left }) => [[right, left] as const, [left, right] as const]),
    ...middle.map((index) => [index, index] as const),
  ]);

  it("are a bijection that is its own inverse", () => {
    // The points of the irises have no partners: each iris has a table of its own.
    const paired = size - (irises === undefined ? 0 : 10);
    expect(pairs.length * 2 + middle.length).toBe(paired);
    expect([...partners.keys()].sort((one, other) => one - other)).toEqual(
      Array.from({ length: paired }, (__, index) => index),
    );
    for (const [index, partner] of partners) expect(partners.get(partner)).toBe(index);
  });

  it("turn the right side's table into the left's", () => {
    const mirrored = (place: number | readonly number[] | undefined): unknown =>
      typeof place === "object"
        ? place.map((index) => partners.get(index)).sort()
        : partners.get(place ?? -1);
    const sorted = (place: unknown): unknown =>
      Array.isArray(place) ? place.slice().sort() : place;
    const { right, left } = markup;
    for (const name of Object.keys(right.points) as (keyof typeof right.points)[]) {
      expect(mirrored(right.points[name])).toEqual(sorted(left.points[name]));
    }
    for (const line of ["upperLid", "lowerLid", "browUpper", "browLower"] as const) {
      expect(right[line]?.map((index) => partners.get(index))).toEqual(left[line]);
    }
    for (const alare of Object.values(markup.alare)) {
      expect(partners.get(alare.right)).toBe(alare.left);
    }
  });

  it("leave every midline landmark, or the points it is the mean of, on the middle", () => {
    for (const index of Object.values(markup.midline).flat()) expect(middle).toContain(index);
  });
});

describe("mirror pairs of 68 points", () => {
  // As published with the markup's use in flipping pictures; middle points are their own partners.
  const listed: readonly (readonly [number, number])[] = [
    ...Array.from({ length: 8 }, (_, i) => [i, 16 - i] as const),
    ...Array.from({ length: 5 }, (_, i) => [17 + i, 26 - i] as const),
    [31, 35],
    [32, 34],
    [36, 45],
    [37, 44],
    [38, 43],
    [39, 42],
    [40, 47],
    [41, 46],
    [48, 54],
    [49, 53],
    [50, 52],
    [59, 55],
    [58, 56],
    [60, 64],
    [61, 63],
    [67, 65],
  ];

  it("are those of the markup", () => {
    const key = ([one, other]: readonly [number, number]): number =>
      100 * Math.min(one, other) + Math.max(one, other);
    expect(
      INDEX_TABLES["points-68"].pairs.map(({ right, left }) => key([right, left])).sort(),
    ).toEqual(listed.map(key).sort());
  });
});

const triples = frontalPoints68.landmarks.flatMap(([x = 0, y = 0]) => [x, y, 2]);
const pixels = { coordinates: "pixels" } as const;

describe("a face from COCO-WholeBody keypoints", () => {
  it("is that of the same 68 points, from the face's keypoints or from the whole person's", () => {
    const { source, ...expected } = faceOfPoints68(frontalPoints68, AS_FOUND);
    const body = Array.from({ length: 3 * 23 }, (_, index) => 7 * index);
    const hands = Array.from({ length: 3 * 42 }, (_, index) => index);
    for (const keypoints of [triples, [...body, ...triples, ...hands]]) {
      const { source: ofCoco, ...face } = fromMarkup("coco-wholebody-face", keypoints, pixels);
      expect(face).toEqual(expected);
      expect(ofCoco).toEqual({ ...source, markup: "coco-wholebody-face" });
    }
  });

  it("is the same to the last bit on every real face, padded to a whole person", () => {
    expect(points68Samples).toHaveLength(21);
    for (const sample of points68Samples) {
      const face = sample.landmarks.flatMap(([x = 0, y = 0]) => [x, y, 1]);
      const person = [...zeros(23), ...face, ...zeros(42)];
      expect(person).toHaveLength(3 * 133);
      const { source: _, ...ofPerson } = fromMarkup("coco-wholebody-face", person, pixels);
      const { source: __, ...expected } = faceOfPoints68(sample, AS_FOUND);
      expect(ofPerson).toEqual(expected);
    }
  });

  it("misses a point at 0, 0 with visibility 0 (trap 6)", () => {
    const keypoints = triples.slice();
    keypoints.splice(3 * 48, 3, 0, 0, 0);
    const { right, notes } = fromMarkup("coco-wholebody-face", keypoints, pixels);
    expect(right.cheilion).toBeUndefined();
    expect(notes).toContainEqual({
      code: "point-missing",
      values: { landmark: "right.cheilion", points: "48" },
    });
  });

  it("refuses another number of keypoints", () => {
    const error = refusal(() => fromMarkup("coco-wholebody-face", triples.slice(3), pixels));
    expect(error).toMatchObject({ code: "wrong-count", detail: { value: 201 } });
  });
});

/** Keypoints that nobody found. */
function zeros(count: number): readonly number[] {
  return Array.from({ length: 3 * count }, () => 0);
}
