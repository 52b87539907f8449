import { type Face, fromMarkup, mm, naturalDots, type Point, say } from "brow-geometry";
import { hasDepth } from "brow-geometry/units";
import { type MarkupPoint, type MarkupPoints } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { AS_FOUND, faceOfMesh, frontalMesh, meshSamples } from "../../support/sample-faces.js";

const { landmarks, image } = frontalMesh;
const normalised = { coordinates: "normalised", image, ...AS_FOUND } as const;
const inPixels: readonly (readonly number[])[] = landmarks.map(([x = 0, y = 0, z = 0]) => [
  x * image.width,
  y * image.height,
  z * image.width,
]);
const pixels = { coordinates: "pixels", ...AS_FOUND } as const;
const face = faceOfMesh(frontalMesh, AS_FOUND);

describe("a face from the face mesh", () => {
  it("is read from every real face of the fixtures, right and left the client's own", () => {
    expect(meshSamples).toHaveLength(21);
    for (const sample of meshSamples) {
      const { right, left } = faceOfMesh(sample);
      expect(right.exocanthion?.[0]).toBeLessThan(left.exocanthion?.[0] ?? -1);
      expect(right.brow?.upper).toHaveLength(5);
      expect(left.limbusLateral).toBeDefined();
    }
  });

  it("multiplies x and y by the width and the height each (trap 4), and depth by the width", () => {
    const [x = 0, y = 0, z = 0] = landmarks[33] ?? [];
    const inner = [133, 362].map((index) => landmarks[index]?.[2] ?? 0);
    const zero = ((inner[0] ?? 0) + (inner[1] ?? 0)) / 2;
    expectClose(
      face.right.exocanthion,
      [x * image.width, y * image.height, (zero - z) * image.width],
      1e-9,
    );
    expect(doneOnTheWayIn(face.notes)).toEqual(["scaled-to-pixels", "irises-narrowed"]);
  });

  it("gives the same face from pixels, but for the note", () => {
    const same = fromMarkup("mesh-478", inPixels, { ...pixels, image });
    expectClose({ ...same, notes: [] }, { ...face, notes: [] }, 1e-9);
  });

  it("takes objects as detectors hand them out", () => {
    const objects = landmarks.map(([x = 0, y = 0, z = 0]) => ({ x, y, z, visibility: 0 }));
    expect(fromMarkup("mesh-478", objects, normalised)).toEqual(face);
  });

  it("puts depth towards the viewer, zero at the mean of the inner eye corners", () => {
    const depth = (point: Point<"px"> | undefined): number =>
      point !== undefined && hasDepth(point) ? point[2] : Number.NaN;
    expect(depth(face.right.endocanthion) + depth(face.left.endocanthion)).toBeCloseTo(0, 9);
    expect(depth(face.midline.pronasale)).toBeGreaterThan(20);
    expect(depth(face.right.brow?.upper[4])).toBeLessThan(depth(face.right.brow?.upper[0]));
    expect(face.source?.depth).toBe("estimated");
  });

  it("runs borders from the start to the tail and lids from the inner to the outer corner", () => {
    for (const side of [face.right, face.left]) {
      const middle = face.midline.sellion?.[0] ?? Number.NaN;
      const outwards = (side.brow?.upper ?? []).map(([x]) => Math.abs(x - middle));
      expect(outwards).toEqual([...outwards].sort((one, other) => one - other));
      expect(side.upperLid?.[0]).toEqual(side.endocanthion);
      expect(side.upperLid?.[8]).toEqual(side.exocanthion);
      expect(side.lowerLid?.[0]).toEqual(side.endocanthion);
      expect(side.lowerLid?.[8]).toEqual(side.exocanthion);
    }
  });

  it("names what it only approximates", () => {
    expect(face.standIns).toContainEqual({
      landmark: "alare",
      instead: "wing-crease",
    });
    expect(face.standIns?.map(({ landmark }) => landmark)).toEqual([
      "alare",
      "subnasale",
      "menton",
      "brow",
    ]);
  });

  it("notes each of its stand-ins, but none for a landmark that is not there", () => {
    const noted = (of: Face<"px">): unknown =>
      of.notes?.filter(({ code }) => code === "stand-in").map(({ values }) => values);
    expect(noted(face)).toEqual(face.standIns);
    expect(face.notes?.map((note) => say(note))).toContain(
      "The nose wing is only approximated: where the nose wing meets the cheek. Check by eye whatever rests on it.",
    );
    const chinless = fromMarkup("mesh-478", landmarks, {
      ...normalised,
      alare: "none",
      missing: [152],
    });
    expect(chinless.midline.menton).toBeUndefined();
    expect(noted(chinless)).toMatchObject([{ landmark: "subnasale" }, { landmark: "brow" }]);
  });

  it("states what is known of its source, and takes corrections landmark by landmark", () => {
    expect(face.source).toMatchObject({
      markup: "mesh-478",
      uncertainty: { default: 1.3, landmarks: { pupil: 0.5 } },
    });
    expectClose(face.source?.ringFactor, { value: 1, u: 0.02 / 1.11 }, 1e-12);
    const better = fromMarkup("mesh-478", landmarks, {
      ...normalised,
      uncertainty: { landmarks: { alare: mm(0.4) } },
      ringFactor: { value: 1.05, u: 0.03 },
    });
    expect(better.source?.uncertainty).toEqual({
      default: 1.3,
      landmarks: { pupil: 0.5, limbusMedial: 0.5, limbusLateral: 0.5, alare: 0.4 },
    });
    expectClose(better.source?.ringFactor, { value: 1, u: 0.03 / 1.05 }, 1e-12);
  });

  it("takes another stand-in for alare by name, or none", () => {
    const width = ({ right, left }: Face<"px">): number =>
      (left.alare?.[0] ?? 0) - (right.alare?.[0] ?? 0);
    const base = fromMarkup("mesh-478", landmarks, { ...normalised, alare: "wing-base" });
    expect(width(base)).toBeLessThan(width(face));
    expect(base.standIns).toContainEqual({
      landmark: "alare",
      instead: "wing-base",
    });
    const without = fromMarkup("mesh-478", landmarks, { ...normalised, alare: "none" });
    expect(without.right.alare).toBeUndefined();
    expect(without.standIns?.map(({ landmark }) => landmark)).not.toContain("alare");
    expect(
      refusal(() =>
        fromMarkup("mesh-478", landmarks, { ...normalised, alare: "nostril" as never }),
      ),
    ).toMatchObject({ code: "out-of-range", detail: { field: "alare", value: "nostril" } });
  });

  it("pairs every point of the mesh with its mirror partner", () => {
    expect(face.symmetricPoints?.pairs).toHaveLength(220);
    expect(face.symmetricPoints?.middle).toHaveLength(28);
    for (const { right, left } of face.symmetricPoints?.pairs ?? [])
      expect(right[0]).toBeLessThan(left[0]);
  });

  it("has no iris from 468 points (trap 3: only the points behind them hold the centres)", () => {
    const bare = fromMarkup("mesh-468", landmarks.slice(0, 468), normalised);
    expect(bare.right.pupil).toBeUndefined();
    expect(bare.right.limbusLateral).toBeUndefined();
    expect(bare.source).toMatchObject({ markup: "mesh-468", ringFactor: { value: 1, u: 0 } });
    const { pupil, limbusMedial, limbusLateral, ...rest } = face.right;
    expect(bare.right).toEqual(rest);
    // The centre, point 468, lies midway between the points at the rim's two sides.
    expectClose(
      pupil?.slice(0, 2),
      [0, 1].map((axis) => ((limbusMedial?.[axis] ?? 0) + (limbusLateral?.[axis] ?? 0)) / 2),
      0.5,
    );
  });
});

describe("trap 1: what left means", () => {
  it("is the client's: on a picture as taken it lies at the larger x", () => {
    const left = fromMarkup("mesh-478", inPixels, pixels).left.exocanthion;
    expect(left?.slice(0, 2)).toEqual(inPixels[263]?.slice(0, 2));
    expect(left?.[0]).toBeGreaterThan(inPixels[33]?.[0] ?? 0);
  });
});

describe("trap 2: irises appended in the other order", () => {
  const swapped = [
    ...landmarks.slice(0, 468),
    ...landmarks.slice(473),
    ...landmarks.slice(468, 473),
  ];

  it("gives the same face and says so", () => {
    const same = fromMarkup("mesh-478", swapped, normalised);
    expect(same.right).toEqual(face.right);
    expect(same.left).toEqual(face.left);
    expect(doneOnTheWayIn(same.notes)).toEqual([
      "scaled-to-pixels",
      "irises-swapped",
      "irises-narrowed",
    ]);
  });

  it("takes the rim's two sides, the medial one nearer the nose", () => {
    const at = (index: number): unknown => inPixels[index]?.slice(0, 2);
    const sidesOf = (side: Face<"px">["right"]): unknown =>
      [side.limbusLateral, side.limbusMedial].map((point) => point?.slice(0, 2));
    const asDrawn = fromMarkup("mesh-478", landmarks, {
      ...normalised,
      ringFactor: { value: 1, u: 0.02 },
    });
    expectClose(sidesOf(asDrawn.right), [at(471), at(469)], 1e-9);
    expectClose(sidesOf(asDrawn.left), [at(474), at(476)], 1e-9);
    const nose = face.midline.sellion?.[0] ?? Number.NaN;
    for (const { limbusMedial, limbusLateral } of [face.right, face.left]) {
      const off = (point: Point<"px"> | undefined): number => Math.abs((point?.[0] ?? 0) - nose);
      expect(off(limbusMedial)).toBeLessThan(off(limbusLateral));
    }
  });

  it("moves them together, by how much too wide the mesh draws an iris", () => {
    const width = ({ limbusMedial, limbusLateral }: Face<"px">["right"]): number =>
      Math.hypot(
        (limbusLateral?.[0] ?? 0) - (limbusMedial?.[0] ?? 0),
        (limbusLateral?.[1] ?? 0) - (limbusMedial?.[1] ?? 0),
      );
    const [one, other] = [inPixels[471], inPixels[469]] as [number[], number[]];
    const drawn = Math.hypot((one[0] ?? 0) - (other[0] ?? 0), (one[1] ?? 0) - (other[1] ?? 0));
    expectClose(width(face.right), drawn / 1.11, 1e-9);
  });

  it("finds the rim's two sides wherever the ring begins", () => {
    const turned = [
      ...landmarks.slice(0, 469),
      ...landmarks.slice(470, 473),
      ...landmarks.slice(469, 470),
      ...landmarks.slice(473),
    ];
    expect(fromMarkup("mesh-478", turned, normalised).right).toEqual(face.right);
  });

  it("leaves out an iris that lies in no eye, and says so", () => {
    const strayed = landmarks.map((point, index) => (index === 468 ? [0.1, 0.1, 0] : point));
    const { right, left, notes } = fromMarkup("mesh-478", strayed, normalised);
    expect([right.pupil, right.limbusMedial]).toEqual([undefined, undefined]);
    expect(left.pupil).toEqual(face.left.pupil);
    expect(notes).toContainEqual({
      code: "point-misplaced",
      values: { landmark: "right.pupil" },
    });
  });
});

describe("trap 4: shares of a picture", () => {
  it.each([
    ["no size", { coordinates: "normalised" }, "image-size-needed", "image is missing"],
    ["shares called pixels", { coordinates: "pixels" }, "image-size-needed", "shares of it"],
    [
      "shares called pixels of a picture",
      { coordinates: "pixels", image },
      "inconsistent",
      'coordinates is "pixels"; needs "normalised"',
    ],
    [
      "a picture without width",
      { coordinates: "normalised", image: { width: 0, height: 10 } },
      "out-of-range",
      "image.width is 0",
    ],
    ["no word on it", {}, "inconsistent", '"pixels" or "normalised"'],
  ])("are refused with %s", (_, options, code, message) => {
    const error = refusal(() => fromMarkup("mesh-478", landmarks, options as never));
    expect(error.code).toBe(code);
    expect(error.message).toContain(message);
  });

  it("are told from pixels called shares", () => {
    const error = refusal(() => fromMarkup("mesh-478", inPixels, normalised));
    expect(error.code).toBe("inconsistent");
    expect(error.message).toContain('needs "pixels" for values from');
  });

  it("may leave the picture a little", () => {
    const shift = 0.42;
    const left = landmarks.map(([x = 0, y = 0, z = 0]) => [x - 0.6 - shift, y, z]);
    expect(() => fromMarkup("mesh-478", left, normalised)).not.toThrow();
  });

  it("are told from depths that still are shares while x and y are pixels", () => {
    const mixed = inPixels.map(([x = 0, y = 0], index) => [x, y, landmarks[index]?.[2] ?? 0]);
    const error = refusal(() => fromMarkup("mesh-478", mixed, { coordinates: "pixels" }));
    expect(error).toMatchObject({ code: "inconsistent", detail: { field: "landmarks[…].z" } });
  });
});

describe("trap 5: mirrored pictures", () => {
  const partner = new Map(
    [
      [33, 263],
      [133, 362],
    ].flatMap(([right = 0, left = 0]) => [
      [right, left],
      [left, right],
    ]),
  );
  const flippedX = landmarks.map(([x = 0, y = 0, z = 0]) => [1 - x, y, z]);

  it("are refused where nothing is said of them", () => {
    const error = refusal(() => fromMarkup("mesh-478", flippedX, normalised));
    expect(error.code).toBe("sides-swapped");
    expect(error.message).toContain('mirrored: "frame" or "coordinates"');
  });

  it("are turned back where only the coordinates were flipped", () => {
    const { notes, ...same } = fromMarkup("mesh-478", flippedX, {
      ...normalised,
      mirrored: "coordinates",
    });
    const { notes: _, ...expected } = face;
    expectClose(same, expected, 1e-9);
    expect(doneOnTheWayIn(notes)).toEqual([
      "scaled-to-pixels",
      "mirroring-undone",
      "irises-narrowed",
    ]);
  });

  it("have right and left exchanged too where the detector saw the flipped frame", () => {
    // The detector labels what it sees: the eye at the smaller x of the flipped frame is its right.
    const seen = mirroredDetection(landmarks);
    expect(seen[33]).toEqual(flippedX[partner.get(33) ?? 0]);
    const { notes, symmetricPoints, ...same } = fromMarkup("mesh-478", seen, {
      ...normalised,
      mirrored: "frame",
    });
    const { notes: _, symmetricPoints: points, ...expected } = face;
    expectClose(same, expected, 1e-9);
    expectClose(symmetricPoints?.pairs, points?.pairs, 1e-9);
    expect(doneOnTheWayIn(notes)).toEqual([
      "scaled-to-pixels",
      "sides-swapped",
      "mirroring-undone",
      "irises-narrowed",
    ]);
  });

  it("pass unseen where the frame was flipped and nothing is said: the face then is its mirror image", () => {
    const seen = fromMarkup("mesh-478", mirroredDetection(landmarks), normalised);
    expect(seen.right.exocanthion?.[0]).toBeCloseTo(
      image.width - (face.left.exocanthion?.[0] ?? 0),
      9,
    );
  });

  it("cannot be turned back without the picture's width", () => {
    const error = refusal(() =>
      fromMarkup("mesh-478", inPixels, { coordinates: "pixels", mirrored: "coordinates" }),
    );
    expect(error.code).toBe("image-size-needed");
  });
});

describe("a tilted picture", () => {
  it.each([90, 180, -45])("turned by %s° is no swapped one", (degrees) => {
    const angle = (degrees * Math.PI) / 180;
    const turned = inPixels.map(([x = 0, y = 0, z = 0]) => [
      3000 + x * Math.cos(angle) - y * Math.sin(angle),
      3000 + x * Math.sin(angle) + y * Math.cos(angle),
      z,
    ]);
    expect(fromMarkup("mesh-478", turned, { coordinates: "pixels" }).source?.markup).toBe(
      "mesh-478",
    );
  });
});

describe("trap 6: missing points", () => {
  const without = (...indices: readonly number[]): MarkupPoints =>
    landmarks.map(([x = 0, y = 0, z = 0], index): MarkupPoint =>
      indices.includes(index) ? { x: 0, y: 0, visibility: 0 } : { x, y, z, visibility: 1 },
    );

  it("are zeros with visibility 0, null, or named in the options", () => {
    const expected = { ...face.right };
    delete (expected as { cheilion?: unknown }).cheilion;
    const note = {
      code: "point-missing",
      values: { landmark: "right.cheilion", points: "61" },
    };
    const nulls = landmarks.map((point, index) => (index === 61 ? null : point));
    for (const read of [
      fromMarkup("mesh-478", without(61), normalised),
      fromMarkup("mesh-478", nulls, normalised),
      fromMarkup("mesh-478", landmarks, { ...normalised, missing: [61] }),
    ]) {
      expect(read.right).toEqual(expected);
      expect(read.notes).toContainEqual(note);
    }
  });

  it("leave the rest of a line, but no line without its ends", () => {
    expect(fromMarkup("mesh-478", without(105), normalised).right.brow?.upper).toHaveLength(4);
    expect(fromMarkup("mesh-478", without(107), normalised).right.brow).toBeUndefined();
    expect(fromMarkup("mesh-478", without(46), normalised).right.brow?.lower).toBeUndefined();
    expect(fromMarkup("mesh-478", without(159), normalised).right.upperLid).toHaveLength(8);
    expect(fromMarkup("mesh-478", without(33), normalised).right.upperLid).toBeUndefined();
  });

  it("take depth with them where an inner eye corner is gone", () => {
    const flat = fromMarkup("mesh-478", without(133), normalised);
    expect(flat.left.exocanthion).toHaveLength(2);
    expect(flat.source?.depth).toBe("none");
    expect(flat.symmetricPoints).toBeUndefined();
  });

  it("are not points at the corner of the picture without a word on visibility", () => {
    const corner = landmarks.map((point, index) => (index === 61 ? [0, 0, 0] : point));
    expect(fromMarkup("mesh-478", corner, normalised).right.cheilion?.slice(0, 2)).toEqual([0, 0]);
  });

  it("take an iris or a mean with them", () => {
    const { right, midline } = fromMarkup("mesh-478", without(468, 13), normalised);
    expect([right.pupil, right.limbusLateral, midline.stomion]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});

describe("trap 8: the nearly flat upper edge of the mesh's brow", () => {
  it("gives no arch that its 1.3 mm could vouch for, and says how weak it is for less", () => {
    const { brow } = face.right;
    if (brow === undefined) throw new Error("no brow");
    // Millimetres a pixel from a visible iris of 11.71 mm: good enough here.
    const upper = brow.upper.map(([x, y]) => mm([-x / 3, -y / 3]));
    const { arch } = naturalDots({ upper }, { u: mm(1.3) });
    expect(arch.kind).not.toBe("peak");
    const careful = naturalDots({ upper }, { u: mm(0.26) }).arch;
    // Five points leave open how round the border is, however well they are placed.
    expect(careful.kind === "peak" && careful.u).toBeGreaterThan(2);
    expect(face.standIns?.map(({ landmark }) => landmark)).toContain("brow");
  });
});

describe("what is no face mesh", () => {
  it.each([
    ["too few points", landmarks.slice(0, 400), "wrong-count", "landmarks.length is 400"],
    ["68 points", landmarks.slice(0, 68), "wrong-count", "needs 478 points"],
    [
      "NaN",
      landmarks.map((point, index) => (index === 12 ? [Number.NaN, 0.5, 0] : point)),
      "not-finite",
      "landmarks[12].x is NaN",
    ],
    [
      "a point of one number",
      landmarks.map((point, index) => (index === 12 ? [0.5] : point)),
      "not-finite",
      "landmarks[12].y is missing",
    ],
    [
      "text",
      landmarks.map((point, index) => (index === 12 ? ["0.5", 0.5] : point)),
      "not-finite",
      'landmarks[12].x is "0.5"',
    ],
  ])("is refused: %s", (_, points, code, message) => {
    const error = refusal(() => fromMarkup("mesh-478", points as MarkupPoints, normalised));
    expect(error.code).toBe(code);
    expect(error.message).toContain(message);
  });
});

/** Codes of what was changed, beside what the markup only approximates. */
function doneOnTheWayIn(notes: Face<"px">["notes"] = []): readonly string[] {
  return notes.map(({ code }) => code).filter((code) => code !== "stand-in");
}

/** What the same detector answers for the flipped frame: mirrored places under mirrored numbers. */
function mirroredDetection(of: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const middle = new Set([
    0, 1, 2, 4, 5, 6, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 94, 151, 152, 164, 168, 175,
    195, 197, 199, 200,
  ]);
  const rights = Array.from({ length: 248 }, (_, index) => index).filter((i) => !middle.has(i));
  const seen = of.map(([x = 0, y = 0, z = 0]) => [1 - x, y, z]);
  const flip = (one: number, other: number): void => {
    const [first = [], second = []] = [seen[one], seen[other]];
    seen[one] = second;
    seen[other] = first;
  };
  rights.forEach((right, rank) => flip(right, 248 + rank));
  // Irises: centre, then right, top, left, bottom as the picture shows them.
  flip(468, 473);
  flip(469, 476);
  flip(470, 475);
  flip(471, 474);
  flip(472, 477);
  return seen;
}
