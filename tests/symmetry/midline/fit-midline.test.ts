import { fc, test } from "@fast-check/vitest";
import {
  type Face,
  FACE_MIDLINE,
  type FaceSide,
  fitMidline,
  type FlatPoint,
  mirror,
  mm,
  type Point,
} from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { mapFace } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { anyFace, anyPose } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { photograph } from "../../support/photograph.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";

/** The eleven landmarks that the midline is fitted to, one point each. */
const SINGLE_POINTS: readonly (readonly ["right" | "left" | "midline", string])[] = [
  ...["endocanthion", "exocanthion", "pupil", "cheilion", "alare"].flatMap(
    (name) =>
      [
        ["right", name],
        ["left", name],
      ] as const,
  ),
  ...["glabella", "sellion", "pronasale", "subnasale", "labialeSuperius", "stomion"].map(
    (name) => ["midline", name] as const,
  ),
];

function displaced(
  face: Face<"mm">,
  part: "right" | "left" | "midline",
  name: string,
  by: readonly [number, number],
): Face<"mm"> {
  const landmarks = face[part] as Readonly<Record<string, readonly [number, number]>>;
  const point = landmarks[name];
  if (point === undefined) throw new Error(`no ${name}`);
  const moved = mm([point[0] + by[0], point[1] + by[1]]);
  return { ...face, [part]: { ...landmarks, [name]: moved } };
}

describe("fitMidline", () => {
  it("finds the middle of a symmetric face", () => {
    const midline = fitMidline(syntheticFace());
    expectClose(midline.line, { through: [0, 0], direction: [0, 1] }, 1e-12);
    expect(midline.tilt).toBe(0);
    expect(midline.trimmed).toEqual([]);
    expect(midline.robust).toBe(true);
    expect(midline.weights).toMatchObject({ endocanthion: 1, alare: 0.25, pronasale: 0.25 });
    expect(Object.keys(midline.weights)).not.toContain("menton");
    expectClose(Object.values(midline.offsets), Array(16).fill(0), 1e-12);
  });

  test.prop([anyFace(), anyPose()])("does not care how the photo was taken", (face, pose) => {
    const onFace = fitMidline(face);
    const onPhoto = fitMidline(photograph(face, pose));
    expectClose(onPhoto.tilt - pose.tilt, onFace.tilt, 1e-7);
    expectClose(onPhoto.tiltU, onFace.tiltU, 1e-7);
    expectClose(onPhoto.weights, onFace.weights, 1e-7);
    const inMillimetres = mapValues(onPhoto.offsets, (offset) => offset * pose.factor);
    expectClose(inMillimetres, onFace.offsets, 1e-7);
    expectClose(onPhoto.throughU * pose.factor, onFace.throughU, 1e-7);
  });

  test.prop([anyFace()])("of a mirrored face is the mirror image", (face) => {
    const midline = fitMidline(face);
    const mirrored = fitMidline(mirror(face, FACE_MIDLINE));
    expectClose(mirrored.tilt, -midline.tilt, 1e-7);
    expectClose(mirrored.line.through, [-midline.line.through[0], midline.line.through[1]], 1e-7);
    expectClose(mirrored.weights, midline.weights, 1e-7);
  });

  test.prop([fc.constantFrom("mirror", "endocanthia", "midpoints"), anyPose()])(
    "is exact on a symmetric face by every method: %s",
    (method, pose) => {
      const { tilt, line } = fitMidline(photograph(syntheticFace(), pose), { method });
      expectClose(tilt, pose.tilt, 1e-9);
      expectClose(line.through, pose.at, 1e-8);
    },
  );

  test.prop(
    [
      fc.constantFrom(...SINGLE_POINTS),
      fc.double({ min: 0, max: 20, noNaN: true }),
      fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
    ],
    { numRuns: 2000 },
  )(
    "turns by at most 0.5° and moves by at most 0.5 mm at brow height for any one landmark up to 20 mm off",
    ([part, name], by, angle) => {
      const off = displaced(syntheticFace(), part, name, [
        by * Math.cos(angle),
        by * Math.sin(angle),
      ]);
      const { line, tilt } = fitMidline(off);
      expect(Math.abs(tilt)).toBeLessThanOrEqual(0.5);
      const atBrow =
        line.through[0] + ((20 - line.through[1]) * line.direction[0]) / line.direction[1];
      expect(Math.abs(atBrow)).toBeLessThanOrEqual(0.5);
    },
  );

  it("names the landmarks that have no say, and how far they lie off", () => {
    const face = syntheticFace();
    const bent = {
      ...face,
      midline: { ...face.midline, pronasale: mm([9, -34]), subnasale: mm([6, -44]) },
    };
    const midline = fitMidline(bent);
    expect(midline.trimmed).toEqual(["pronasale", "subnasale"]);
    expectClose(midline.tilt, 0, 1e-9);
    expectClose(midline.offsets.pronasale, 9, 1e-9);
    expectClose(midline.offsets.sellion, 0, 1e-9);
    expect(midline.weights.pronasale).toBe(0);
  });

  it("costs at most 0.1° for a nose bent by 3 mm", () => {
    const face = syntheticFace();
    const right = { ...face.right, alare: mm([-12.7, -38]) };
    const left = { ...face.left, alare: mm([18.7, -38]) };
    const bent = { ...face.midline, pronasale: mm([3, -34]), subnasale: mm([3, -44]) };
    expect(Math.abs(fitMidline({ right, left, midline: bent }).tilt)).toBeLessThan(0.1);
  });

  it("cannot tell where nose and upper lip are shifted together", () => {
    const face = syntheticFace();
    const { pronasale, subnasale, labialeSuperius, stomion } = face.midline;
    const shifted = mapShift({ pronasale, subnasale, labialeSuperius, stomion }, 6);
    const side = (one: FaceSide<"mm">): FaceSide<"mm"> => ({
      ...one,
      ...mapShift({ alare: one.alare ?? mm([0, 0]), cheilion: one.cheilion ?? mm([0, 0]) }, 6),
    });
    const midline = fitMidline({
      right: side(face.right),
      left: side(face.left),
      midline: { ...face.midline, ...shifted },
    });
    expect(Math.abs(midline.tilt)).toBeGreaterThan(2);
  });

  it("trims nothing under seven pairs, and says so", () => {
    const { right, left, midline } = syntheticFace();
    const few = (count: number): Face<"mm"> => ({
      right: pick(right, ["endocanthion", "exocanthion", "pupil", "cheilion"]),
      left: pick(left, ["endocanthion", "exocanthion", "pupil", "cheilion"]),
      midline: Object.fromEntries(Object.entries(midline).slice(0, count)),
    });
    expect(fitMidline(few(2))).toMatchObject({ robust: false, trimmed: [] });
    expect(fitMidline(few(3))).toMatchObject({ robust: true, trimmed: [] });
    const six = few(2);
    const led = { ...six, midline: { ...six.midline, glabella: mm([10, 16]) } };
    expect(Math.abs(fitMidline(led).line.through[0])).toBeGreaterThan(0.5);
  });

  // Total least squares through the middles: Pearson 1901, slope and intercept by scipy.odr.
  it("by midpoints is the line of least squared distances", () => {
    const x = [0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4];
    const y = [5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5];
    const at = (index: number): FlatPoint<"mm"> => mm([x[index] ?? 0, y[index] ?? 0]);
    const pair = (index: number): readonly [FlatPoint<"mm">, FlatPoint<"mm">] => {
      const middle = at(index);
      return [mm([middle[0] - 1, middle[1] - 1]), mm([middle[0] + 1, middle[1] + 1])];
    };
    const pairs = [pair(0), pair(1), pair(2), pair(8), pair(5)] as const;
    const side = (which: 0 | 1): FaceSide<"mm"> => ({
      endocanthion: pairs[0][which],
      exocanthion: pairs[1][which],
      pupil: pairs[2][which],
      cheilion: pairs[3][which],
      alare: pairs[4][which],
    });
    const { line } = fitMidline(
      {
        right: side(0),
        left: side(1),
        midline: {
          glabella: at(3),
          sellion: at(4),
          pronasale: at(6),
          labialeSuperius: at(7),
          stomion: at(9),
        },
      },
      { method: "midpoints" },
    );
    const slope = line.direction[1] / line.direction[0];
    expectClose(slope, -0.5455611975, 1e-9);
    expectClose(line.through[1] - slope * line.through[0], 5.7840437745, 1e-9);
  });

  describe("refuses", () => {
    const face = syntheticFace();

    it.each<[string, Face<"mm">, string, string]>([
      [
        "a face without an inner eye corner",
        { ...face, right: { cheilion: mm([-25, -66]) } },
        "missing-landmark",
        "right.endocanthion",
      ],
      [
        "one pair's sides swapped",
        {
          ...face,
          right: { ...face.right, pupil: mm([31, 0]) },
          left: { ...face.left, pupil: mm([-31, 0]) },
        },
        "sides-swapped",
        "right.pupil",
      ],
      [
        "coincident corners",
        { ...face, right: { ...face.right, endocanthion: mm([15.9, 0]) } },
        "coincident-points",
        "left.endocanthion",
      ],
      [
        "a coordinate that is no number",
        { ...face, midline: { ...face.midline, stomion: mm([0, Number.NaN]) } },
        "not-finite",
        "midline.stomion",
      ],
      [
        "eyes alone, which tell no up from down",
        { right: { endocanthion: mm([-16, 0]) }, left: { endocanthion: mm([16, 0]) }, midline: {} },
        "missing-landmark",
        "midline",
      ],
    ])("%s", (_, given, code, field) => {
      expect(refusal(() => fitMidline(given))).toMatchObject({ code, detail: { field } });
    });

    it("a mirrored photo", () => {
      const photo = photograph(face, { factor: 0.2, tilt: 0, at: [500, 500] });
      const flipped = mapFace(photo, ([x, y]) => flatPoint<"px">(1000 - x, y));
      expect(refusal(() => fitMidline(flipped)).code).toBe("sides-swapped");
    });
  });
});

function mapValues(
  values: Readonly<Record<string, number>>,
  map: (value: number) => number,
): Readonly<Record<string, number>> {
  return Object.fromEntries(Object.entries(values).map(([name, value]) => [name, map(value)]));
}

function mapShift<Landmarks extends Readonly<Record<string, Point<"mm">>>>(
  landmarks: Landmarks,
  by: number,
): Landmarks {
  return Object.fromEntries(
    Object.entries(landmarks).map(([name, [x, y]]) => [name, mm([x + by, y])]),
  ) as Landmarks;
}

function pick<Whole extends object, Name extends keyof Whole>(
  whole: Whole,
  names: readonly Name[],
): Pick<Whole, Name> {
  return Object.fromEntries(names.map((name) => [name, whole[name]])) as Pick<Whole, Name>;
}

describe("given points beside another method", () => {
  it("are not passed over without a word", () => {
    const given = [mm([0, 40]), mm([0, -40])] as const;
    expect(refusal(() => fitMidline(syntheticFace(), { method: "mirror", given }))).toMatchObject({
      code: "inconsistent",
      detail: { field: "method", value: "mirror" },
    });
  });
});
