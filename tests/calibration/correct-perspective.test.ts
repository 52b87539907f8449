import { fc, test } from "@fast-check/vitest";
import {
  correctPerspective,
  type DeepPoint,
  type Face,
  type Length,
  mm,
  px,
  scaleFromReference,
  toPixels,
} from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";

const scale = scaleFromReference(px([0, 0]), px([500, 0]), mm(100)); // 0.2 mm a pixel
const inPixels = (millimetres: number): Length<"px"> => toPixels(mm(millimetres), scale);

/** What a pinhole camera, `away` mm from the inner eye corners, shows of places in mm. */
function photographed(away: number, ...places: readonly (readonly number[])[]): Face<"px"> {
  const seen = places.map(([x = 0, y = 0, depth = 0]) => {
    const size = away / (away - depth);
    return px([1000 + (x * size) / 0.2, 800 - (y * size) / 0.2, depth / 0.2]);
  });
  return {
    right: { endocanthion: px([920, 800, 0]) },
    left: { endocanthion: px([1080, 800, 0]), brow: { upper: seen } },
    midline: {},
  };
}

describe("correctPerspective", () => {
  it("puts start and tail end of a brow back (vectors: +3.9 % and −2.4 % at 400 mm)", () => {
    const face = photographed(400, [14, 22, 15], [58, 18, -10]);
    const [start, tail] = face.left.brow?.upper ?? [];
    expectClose(((start?.[0] ?? 0) - 1000) / 70, 1.039, 5e-4);
    expectClose(((tail?.[0] ?? 0) - 1000) / 290, 0.976, 5e-4);
    const corrected = correctPerspective(face, inPixels(400));
    expectClose(
      corrected.left.brow?.upper.map((point) => [...point]),
      [
        [1070, 690, 75],
        [1290, 710, -50],
      ],
      1e-9,
    );
  });

  it("leaves points alone that carry no depth, and those of the eye corners' own", () => {
    const face: Face<"px"> = {
      ...photographed(400),
      right: { endocanthion: px([920, 800, 0]), pupil: px([840, 800]), alare: px([920, 900, 0]) },
    };
    const { right } = correctPerspective(face, inPixels(400));
    expectClose(
      [right.pupil, right.alare],
      [
        [840, 800],
        [920, 900, 0],
      ],
      1e-12,
    );
  });

  it("measures depth from the inner eye corners, and turns about the camera's axis", () => {
    const face: Face<"px"> = {
      right: { endocanthion: px([920, 800, 70]) },
      left: { endocanthion: px([1080, 800, 70]), alare: px([1100, 1000, 170]) },
      midline: {},
    };
    const { left } = correctPerspective(face, inPixels(400), { axis: px([1000, 1000]) });
    expectClose(left.alare, [1095, 1000, 170], 1e-9);
  });

  test.prop([
    fc.double({ min: 200, max: 3000, noNaN: true }),
    fc.array(
      fc.tuple(
        fc.double({ min: -80, max: 80, noNaN: true }),
        fc.double({ min: -80, max: 80, noNaN: true }),
        fc.double({ min: -60, max: 40, noNaN: true }),
      ),
      { minLength: 1, maxLength: 6 },
    ),
  ])("undoes a pinhole camera at any distance", (away, places) => {
    const face = photographed(away, ...places);
    const corrected = correctPerspective(face, inPixels(away));
    const upper = (corrected.left.brow?.upper ?? []) as readonly DeepPoint<"px">[];
    expectClose(
      upper.map(([x, y]) => [(x - 1000) * 0.2, (800 - y) * 0.2]),
      places.map(([x, y]) => [x, y]),
      1e-9,
    );
  });

  it.each([
    ["no distance", photographed(400), 0, "cameraDistance is 0"],
    ["a point behind the camera", photographed(400, [0, 0, 90]), 80, "more than the depth"],
    ["no eye corners", { right: {}, left: {}, midline: {} }, 400, "endocanthion"],
  ])("refuses %s", (_, face, away, message) => {
    const work = (): unknown => correctPerspective(face, inPixels(away));
    expect(refusal(work).message).toContain(message);
  });
});
