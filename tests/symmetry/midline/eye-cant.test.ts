import { test } from "@fast-check/vitest";
import { eyeCant, FACE_MIDLINE, mirror, mm } from "brow-geometry";
import { flatPoint } from "brow-geometry/units";
import { mapFace } from "brow-geometry/landmarks";
import { describe, expect, it } from "vitest";
import { anyFace, anyPose } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { photograph } from "../../support/photograph.js";
import { refusal } from "../../support/refusal.js";
import { type SyntheticFace, syntheticFace } from "../../support/synthetic-face.js";

const sure = { line: FACE_MIDLINE, tiltU: 0 };

/** Pupils 63 mm apart, the left one higher. */
function slantedBy(up: number): Pick<SyntheticFace, "right" | "left" | "midline"> {
  const { right, left, midline } = syntheticFace();
  return { right, left: { ...left, pupil: mm([31.5, up]) }, midline };
}

describe("eyeCant", () => {
  // Over pupils 63 mm apart, 2.31° are 2.54 mm, and 3 mm are 2.73°: trigonometric table.
  it.each([
    [2.54, 2.31],
    [3, 2.73],
    [-3, -2.73],
    [0, 0],
  ])("reads a left pupil %s mm higher as %s°", (up, angle) => {
    expectClose(eyeCant(slantedBy(up), { midline: sure }).angle.value, angle, 0.005);
  });

  it("carries both ends and the midline into its uncertainty", () => {
    const { angle } = eyeCant(syntheticFace(), { midline: { ...sure, tiltU: 0.3 } });
    // Placed by hand, 0.26 mm each on a face 87.8 mm wide, 63 mm apart.
    const ends = (((0.26 * 87.8) / 90) * Math.SQRT2 * 180) / (63 * Math.PI);
    expectClose(angle.u, Math.hypot(ends, 0.3), 1e-12);
  });

  // 2.31°: 160 raters, J Oral Maxillofac Surg 2015;73:1606–1614; u is 0.33° with pupils placed by hand.
  it.each([
    [1.5, "within"],
    [2.6, "undecided"],
    [4, "outside"],
    [-4, "outside"],
  ] as const)("is decided at %s mm as %s", (up, outcome) => {
    expect(eyeCant(slantedBy(up), { midline: sure }).decision).toMatchObject({
      outcome,
      limits: { lower: -2.31, upper: 2.31 },
    });
  });

  it("goes by the outer eye corners where a pupil is not known", () => {
    const { right, left, midline } = syntheticFace();
    const { pupil: _, ...closed } = right;
    const face = { right: closed, left: { ...left, exocanthion: mm([43.9, 4]) }, midline };
    const { angle, between } = eyeCant(face, { midline: sure });
    expect(between).toBe("exocanthion");
    expectClose(angle.value, (Math.atan(4 / 87.8) * 180) / Math.PI, 1e-12);
    expect(eyeCant(syntheticFace()).between).toBe("pupil");
  });

  // Measured by us on the synthetic face, all of its eyes turned about the middle between them.
  it.each([
    [1, 0.69],
    [2, 1.44],
    [3, 2.4],
    [4, 3.7],
  ])("of eyes that slant by %s° reads %s° where the midline follows them", (slant, seen) => {
    const [cosine, sine] = [
      Math.cos((slant * Math.PI) / 180),
      Math.sin((slant * Math.PI) / 180),
    ] as const;
    const even = syntheticFace();
    const slanted = mapFace<"mm", "mm">(even, ([x, y], landmark) =>
      landmark === "endocanthion" || landmark === "exocanthion" || landmark === "pupil"
        ? mm([x * cosine - y * sine, x * sine + y * cosine])
        : mm([x, y]),
    ) as SyntheticFace;
    expectClose(eyeCant(slanted).angle.value, seen, 0.01);
    expectClose(eyeCant(slanted, { midline: sure }).angle.value, slant, 1e-9);
  });

  test.prop([anyFace(), anyPose()])("does not care how the photo was taken", (face, pose) => {
    const photo = photograph(face, pose) as unknown as typeof face;
    expectClose(eyeCant(photo).angle, eyeCant(face).angle, 1e-6);
  });

  test.prop([anyFace()])("of the mirrored face has the other sign", (face) => {
    const { angle } = eyeCant(face);
    const mirrored = eyeCant(mirror(face, FACE_MIDLINE) as SyntheticFace).angle;
    expectClose(mirrored, { value: -angle.value, u: angle.u }, 1e-6);
  });

  it("refuses eyes in one place", () => {
    const face = syntheticFace();
    const pupil = flatPoint<"mm">(0, 0);
    const odd = { ...face, right: { ...face.right, pupil }, left: { ...face.left, pupil } };
    expect(refusal(() => eyeCant(odd, { midline: sure })).code).toBe("coincident-points");
  });
});
