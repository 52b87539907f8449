import { distance } from "brow-geometry/geometry";
import {
  type Face,
  fromMarkup,
  fromLandmarks,
  mm,
  naturalDots,
  px,
  requireLandmarks,
} from "brow-geometry";
import { hasDepth } from "brow-geometry/units";
import { type LandmarkNames, landmarkUncertainty, mapFace } from "brow-geometry/landmarks";
import { MARKUP_NAMES } from "../../../src/landmarks/internal.js";
import { MARKUPS } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { INDEX_TABLES } from "../../../src/landmarks/markups/markups.js";
import { expectClose } from "../../support/close.js";
import { points98OfMesh } from "../../support/points98-of-mesh.js";
import { refusal } from "../../support/refusal.js";
import { frontalMesh, frontalPoints68 } from "../../support/sample-faces.js";

type Points = readonly (readonly number[])[];

/** One markup, or another way in, with a real face for it in pixels. */
interface Case {
  readonly name: string;
  readonly points: Points;
  /** The last point of the right brow's upper border but one, and its neighbour towards the start. */
  readonly brow: readonly [number, number];
  readonly cheilion: number;
  readonly pairs: readonly { readonly right: number; readonly left: number }[];
  readonly read: (points: Points, options: object) => Face<"px">;
  /** Reads a point that a detector did not find. */
  readonly readMissing: (points: Points, missing: number, options: object) => Face<"px">;
}

const { image } = frontalMesh;
const pixels = { coordinates: "pixels", image } as const;

/** The 68 points by numbers of an invented program. */
const names: LandmarkNames = {
  right: {
    endocanthion: 39,
    exocanthion: 36,
    cheilion: 48,
    brow: { upper: [21, 20, 19, 18, 17] },
  },
  left: { endocanthion: 42, exocanthion: 45, cheilion: 54, brow: { upper: [22, 23, 24, 25, 26] } },
  midline: { subnasale: 33, stomion: [62, 66] },
};

const unseen = (points: Points, missing: number) =>
  points.map(([x = 0, y = 0, ...z], index) =>
    index === missing
      ? { x: 0, y: 0, visibility: 0 }
      : { x, y, visibility: 1, ...(z[0] === undefined ? {} : { z: z[0] }) },
  );

const triples = (points: Points, missing = -1) =>
  points.flatMap(([x = 0, y = 0], index) => (index === missing ? [0, 0, 0] : [x, y, 2]));

const pixelsOfMesh: Points = frontalMesh.landmarks.map(([x = 0, y = 0, z = 0]) => [
  x * image.width,
  y * image.height,
  z * image.width,
]);

const cases: readonly Case[] = [
  {
    name: "mesh-478",
    points: pixelsOfMesh,
    brow: [63, 105],
    cheilion: 61,
    pairs: [...INDEX_TABLES["mesh-478"].pairs, ...irisPairs()],
    read: (points, options) => fromMarkup("mesh-478", points, { ...pixels, ...options }),
    readMissing: (points, at, options) =>
      fromMarkup("mesh-478", unseen(points, at), { ...pixels, ...options }),
  },
  {
    name: "mesh-468",
    points: pixelsOfMesh.slice(0, 468),
    brow: [63, 105],
    cheilion: 61,
    pairs: INDEX_TABLES["mesh-468"].pairs,
    read: (points, options) => fromMarkup("mesh-468", points, { ...pixels, ...options }),
    readMissing: (points, at, options) =>
      fromMarkup("mesh-468", unseen(points, at), { ...pixels, ...options }),
  },
  {
    name: "points-68",
    points: frontalPoints68.landmarks,
    brow: [18, 19],
    cheilion: 48,
    pairs: INDEX_TABLES["points-68"].pairs,
    read: (points, options) => fromMarkup("points-68", points, { ...pixels, ...options }),
    readMissing: (points, at, options) =>
      fromMarkup("points-68", unseen(points, at), { ...pixels, ...options }),
  },
  {
    name: "coco-wholebody-face",
    points: frontalPoints68.landmarks,
    brow: [18, 19],
    cheilion: 48,
    pairs: INDEX_TABLES["points-68"].pairs,
    read: (points, options) =>
      fromMarkup("coco-wholebody-face", triples(points), { ...pixels, ...options }),
    readMissing: (points, at, options) =>
      fromMarkup("coco-wholebody-face", triples(points, at), { ...pixels, ...options }),
  },
  {
    name: "points-98",
    points: points98OfMesh(frontalMesh),
    brow: [34, 35],
    cheilion: 76,
    pairs: INDEX_TABLES["points-98"].pairs,
    read: (points, options) => fromMarkup("points-98", points, { ...pixels, ...options }),
    readMissing: (points, at, options) =>
      fromMarkup("points-98", unseen(points, at), { ...pixels, ...options }),
  },
  {
    name: "fromLandmarks",
    points: frontalPoints68.landmarks,
    brow: [18, 19],
    cheilion: 48,
    pairs: INDEX_TABLES["points-68"].pairs,
    read: (points, options) => fromLandmarks(points, names, { ...pixels, ...options }),
    readMissing: (points, at, options) =>
      fromLandmarks(unseen(points, at), names, { ...pixels, ...options }),
  },
];

it.each(MARKUP_NAMES)("%s has its case", (markup) => {
  expect(cases.map(({ name }) => name)).toContain(markup);
});

describe.each(cases)("$name", ({ points, brow, cheilion, pairs, read, readMissing }) => {
  const face = read(points, {});
  const places = ({ right, left, midline }: Face<"px">): unknown => [right, left, midline];
  const shares = points.map(([x = 0, y = 0, ...z]) => [
    x / image.width,
    y / image.height,
    ...z.map((depth) => depth / image.width),
  ]);
  const flipped = points.map(([x = 0, ...rest]) => [image.width - x, ...rest]);
  const codes = (of: Face<"px">): readonly string[] => of.notes?.map(({ code }) => code) ?? [];

  it("trap 1: left is the client's, at the larger x of a picture as taken", () => {
    const { right, left } = face;
    expect(left.exocanthion?.[0]).toBeGreaterThan(right.exocanthion?.[0] ?? Infinity);
    expect(left.brow?.upper[0]?.[0]).toBeGreaterThan(right.brow?.upper[0]?.[0] ?? Infinity);
  });

  it("trap 4: shares are multiplied by the picture's size, and refused without it", () => {
    const same = read(shares, { coordinates: "normalised" });
    expectClose(places(same), places(face), 1e-9);
    expect(codes(same)).toContain("scaled-to-pixels");
    const sizeless = { coordinates: "normalised", image: undefined };
    expect(refusal(() => read(shares, sizeless)).code).toBe("image-size-needed");
    const called = { image: undefined };
    expect(refusal(() => read(shares, called)).code).toBe("image-size-needed");
    expect(refusal(() => read(points, { coordinates: "normalised" })).code).toBe("inconsistent");
  });

  it("trap 5: a flipped picture is refused, turned back, or read with its sides exchanged", () => {
    expect(refusal(() => read(flipped, {})).code).toBe("sides-swapped");
    const back = read(flipped, { mirrored: "coordinates" });
    expectClose(places(back), places(face), 1e-9);
    expect(codes(back)).toContain("mirroring-undone");
    // A detector that sees the flipped frame puts each point under its partner's number.
    const seen = flipped.slice();
    for (const { right, left } of pairs) {
      [seen[right], seen[left]] = [flipped[left] ?? [], flipped[right] ?? []];
    }
    const exchanged = read(seen, { mirrored: "frame" });
    expectClose(places(exchanged), places(face), 1e-9);
    expect(codes(exchanged)).toEqual(expect.arrayContaining(["sides-swapped", "mirroring-undone"]));
    const sizeless = { image: undefined, mirrored: "frame" };
    expect(refusal(() => read(seen, sizeless)).code).toBe("image-size-needed");
  });

  it("trap 6: x = y = 0 with visibility 0 is no point, and the rest is as it was", () => {
    const without = readMissing(points, cheilion, {});
    expect(without.right.cheilion).toBeUndefined();
    expect(without.left).toEqual(face.left);
    expect(codes(without)).toContain("point-missing");
  });

  it("trap 7: where pixels are counted from changes no length and no share", () => {
    const moved = read(
      points.map(([x = 0, y = 0, ...z]) => [x + 1, y + 1, ...z]),
      {},
    );
    const back = mapFace<"px", "px">(moved, (point) => {
      const [x, y] = [point[0] - 1, point[1] - 1];
      return hasDepth(point) ? px([x, y, point[2]]) : px([x, y]);
    });
    expectClose(places(back), places(face), 1e-9);
    const width = ({ right, left }: Face<"px">): number =>
      distance(
        requireLandmarks(right, "exocanthion").exocanthion,
        requireLandmarks(left, "exocanthion").exocanthion,
      );
    expect(width(moved)).toBeCloseTo(width(face), 9);
  });

  it("trap 9: a repeated brow point is dropped and noted, and nothing becomes NaN", () => {
    const [outer, inner] = brow;
    const repeating = points.map((point, index) =>
      index === outer ? (points[inner] ?? []) : point,
    );
    const read9 = read(repeating, {});
    expect(codes(read9)).toContain("repeated-points");
    const { upper } = requireLandmarks(read9.right, "brow").brow;
    expect(upper).toHaveLength(4);
    // Turned into a plane whose y grows upwards, as natural dots want it.
    const { dots } = naturalDots({ upper: upper.map(([x, y]) => mm([-x / 3, -y / 3])) });
    expect(Object.values(dots).flat().every(Number.isFinite)).toBe(true);
  });

  it("takes uncertainties landmark by landmark", () => {
    const better = read(points, {
      uncertainty: { default: mm(0.9), landmarks: { cheilion: mm(0.4) } },
    });
    expect(landmarkUncertainty(better, "exocanthion")).toBe(0.9);
    expect(landmarkUncertainty(better, "cheilion")).toBe(0.4);
  });

  it.each([
    ["a word on mirroring that has no meaning", { mirrored: true }, "mirrored is true; needs"],
    ["a point that the markup does not have", { missing: [999] }, "missing is [999]; needs"],
    ["missing points that are no list", { missing: 5 }, "missing is 5; needs a list"],
    ["a negative uncertainty", { uncertainty: { default: -1 } }, "uncertainty.default is -1"],
    [
      "a negative uncertainty of a landmark",
      { uncertainty: { landmarks: { pupil: -1 } } },
      "uncertainty.landmarks.pupil is -1; needs 0 or more",
    ],
    [
      "an uncertainty of no landmark",
      { uncertainty: { landmarks: { canthus: 1 } } },
      "uncertainty.landmarks.canthus is 1; needs another name: one of endocanthion",
    ],
    ["a picture without size", { image: null }, "image is null; needs the width and height"],
  ])("refuses %s", (_, options, message) => {
    expect(refusal(() => read(points, options)).message).toContain(message);
  });

  it("notes every stand-in that it holds", () => {
    const noted = face.notes?.filter(({ code }) => code === "stand-in") ?? [];
    expect(noted.map(({ values }) => values)).toEqual(face.standIns);
  });
});

describe("the name of a markup", () => {
  it("is refused where there is none of it", () => {
    const error = refusal(() => fromMarkup("points-5" as never, [] as never, pixels));
    expect(error).toMatchObject({ code: "out-of-range", detail: { where: "fromMarkup" } });
    expect(error.message).toContain(`name is "points-5"; needs one of ${MARKUP_NAMES.join(", ")}`);
  });

  it.each(MARKUP_NAMES)(
    "%s is refused with the points of another markup, which is named",
    (name) => {
      const { size, form } = MARKUPS[name];
      const others = MARKUP_NAMES.filter((other) => MARKUPS[other].form === "points");
      for (const other of others.filter((one) => MARKUPS[one].size !== size)) {
        const points = Array.from({ length: MARKUPS[other].size }, () => null);
        const { code, message } = refusal(() => fromMarkup(name, points as never, pixels));
        expect(code).toBe("wrong-count");
        expect(message).toContain(
          form === "points"
            ? `needs ${size} points, or the name ${other}`
            : `needs ${3 * size} or 399 numbers`,
        );
      }
    },
  );

  it("tells the face mesh with irises from the one without", () => {
    const bare = frontalMesh.landmarks.slice(0, 468);
    const normalised = { coordinates: "normalised", image } as const;
    expect(fromMarkup("mesh-468", bare, normalised).source?.markup).toBe("mesh-468");
    expect(refusal(() => fromMarkup("mesh-478", bare, normalised)).message).toContain(
      "landmarks.length is 468; needs 478 points, or the name mesh-468",
    );
  });
});

describe("alare by name", () => {
  it.each([
    ["mesh-478", "wing-base", 98, 327],
    ["points-68", "nostril-inner", 32, 34],
    ["coco-wholebody-face", "nostril-inner", 32, 34],
    ["points-98", "base-inner", 56, 58],
  ])("of %s may be %s, or none", (name, alare, right, left) => {
    const one = cases.find((each) => each.name === name);
    if (one === undefined) throw new Error(name);
    const face = one.read(one.points, { alare });
    const at = (point: readonly number[] | undefined): unknown => point?.slice(0, 2);
    expectClose(at(face.right.alare), at(one.points[right]), 1e-9);
    expectClose(at(face.left.alare), at(one.points[left]), 1e-9);
    const without = one.read(one.points, { alare: "none" });
    expect(without.right.alare).toBeUndefined();
    expect(without.standIns?.map(({ landmark }) => landmark)).not.toContain("alare");
    const error = refusal(() => one.read(one.points, { alare: "toString" }));
    expect(error.message).toContain('alare is "toString"; needs one of ');
    expect(error.message).toMatch(new RegExp(`[ ,]${alare}(, .+)?, none$`));
  });
});

// What JavaScript lets pass: a detector that found no face, or options that were forgotten.
describe("nothing to read", () => {
  it.each([
    ["mesh-478", "landmarks is missing; needs 478 points"],
    ["points-68", "landmarks is missing; needs 68 points"],
    ["points-98", "landmarks is missing; needs 98 points"],
    ["coco-wholebody-face", "landmarks is missing; needs 204 or 399 numbers"],
  ] as const)("is refused by %s", (name, message) => {
    const { message: said } = refusal(() => fromMarkup(name, undefined as never, pixels));
    expect(said).toContain(`fromMarkup: ${message}`);
  });

  it("is refused where points are none", () => {
    const numbers = (count: number): never => Array.from({ length: count }, () => 5) as never;
    for (const [name, count] of [
      ["mesh-478", 478],
      ["points-68", 68],
      ["points-98", 98],
    ] as const) {
      const { code, message } = refusal(() => fromMarkup(name, numbers(count), pixels));
      expect(code).toBe("not-parsed");
      expect(message).toContain("landmarks[0] is 5; needs [x, y], [x, y, z]");
    }
    const { message } = refusal(() =>
      fromMarkup("coco-wholebody-face", ["5", ...numbers(203)] as never, pixels),
    );
    expect(message).toContain('landmarks[0].x is "5"; needs a finite number');
  });

  it("is refused without options", () => {
    const forgotten = undefined as never;
    for (const work of [
      () => fromMarkup("mesh-478", frontalMesh.landmarks, forgotten),
      () => fromMarkup("points-68", frontalPoints68.landmarks, forgotten),
      () => fromMarkup("points-98", points98OfMesh(frontalMesh), forgotten),
      () => fromMarkup("coco-wholebody-face", triples(frontalPoints68.landmarks), forgotten),
      () => fromLandmarks(frontalPoints68.landmarks, names, forgotten),
    ]) {
      expect(refusal(work).message).toContain(
        "options is missing; needs an object with coordinates",
      );
    }
    expect(refusal(() => fromLandmarks([], forgotten, pixels)).message).toContain(
      "names is missing",
    );
    expect(refusal(() => fromLandmarks([], {} as never, pixels)).message).toContain(
      "names.right is missing",
    );
    expect(refusal(() => fromLandmarks(forgotten, names, pixels)).message).toContain(
      "points is missing",
    );
  });
});

/** Irises: centre, then right, top, left, bottom as the picture shows them. */
function irisPairs(): Case["pairs"] {
  return [
    [468, 473],
    [469, 476],
    [470, 475],
    [471, 474],
    [472, 477],
  ].map(([right = -1, left = -1]) => ({ right, left }));
}
