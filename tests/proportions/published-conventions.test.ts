import { archAtShare, meetGuide } from "brow-geometry/proportions";
import { distanceAlongLine, intersect, lineAlong } from "brow-geometry/geometry";
import {
  faceFrame,
  mm,
  naturalDots,
  type Point,
  requireLandmarks,
  scaleFromIris,
  skinOf,
  toFace,
  type Guide,
  guideLine,
} from "brow-geometry";
import { requireGuideLandmarks } from "../../src/proportions/internal.js";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { AS_FOUND, faceOfMesh, frontalMesh } from "../support/sample-faces.js";
import { syntheticFace } from "../support/synthetic-face.js";

const face = syntheticFace();
const EYE_WIDTH = 28;

/** Where a guide of the left side stands at a height above the canthal line. */
function xAt(guide: Guide, height: number): number {
  const meeting = intersect(guide.line, lineAlong(mm([0, height]), [1, 0]));
  return meeting.kind === "crossing" ? meeting.at[0] : expect.fail("the guide is level");
}

const inEyeWidths = (x: number): number => (x - 15.9) / EYE_WIDTH;

describe("conventions on the synthetic face", () => {
  // Arithmetic on en-en 31.8, ex-ex 87.8, IPD 63, al-al 31.4, WTW 11.71, alare 38 mm below the level
  // canthal line; brow from the vertical through endocanthion (Westmore, as reported by Yalçınkaya et
  // al., doi 10.1007/s00405-014-3356-0) to the line alare–exocanthion (same).
  it.each([
    [12, 52.81, 36.9, 58, 67, 76, 0.88],
    [20, 58.74, 42.84, 50.1, 58, 65.4, 1.02],
    [25, 62.45, 46.6, 46, 53, 60, 1.11],
  ])(
    "tail end %s mm above the outer corner",
    (height, tailX, size, limbus, halfWay, corner, twoThirds) => {
      const start = xAt(guideLine(face, "left", "endocanthion-vertical"), height);
      const tail = xAt(guideLine(face, "left", "alare-through-exocanthion"), height);
      const limbusX = xAt(guideLine(face, "left", "lateral-limbus-vertical"), height);
      const cornerX = xAt(guideLine(face, "left", "exocanthion-vertical"), height);
      const percent = (x: number): number => (100 * (x - start)) / (tail - start);
      expectClose(tail, tailX, 0.005);
      expectClose(tail - start, size, 0.05);
      expectClose(percent(limbusX), limbus, 0.5);
      expectClose(percent((limbusX + cornerX) / 2), halfWay, 0.5);
      expectClose(percent(cornerX), corner, 0.5);

      const [from, to] = [mm([start, height]), mm([tail, height])];
      const arch = archAtShare([from, to], from, to, { kind: "flat" }, 2 / 3);
      expectClose(inEyeWidths(arch.at[0]), twoThirds, 0.005);
    },
  );

  it("puts the lateral limbus inside the published band", () => {
    // 0.762 ± 0.042 eye widths, n = 105: Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239.
    const { through } = guideLine(face, "left", "lateral-limbus-vertical").line;
    expectClose(inEyeWidths(through[0]), 0.766, 0.0005);
    expectClose(inEyeWidths(through[0]), 0.762, 0.042);
  });

  it("keeps the order of the verticals", () => {
    // Shares: Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239; the arch just medial to
    // exocanthion: Sclafani & Jung, Arch Facial Plast Surg 2010;12:123–127; mid-pupil, limbus and
    // half-way: Biller & Kim, Arch Facial Plast Surg 2009, doi 10.1001/archfacial.2008.543.
    const limbus = guideLine(face, "left", "lateral-limbus-vertical").line.through[0];
    const corner = guideLine(face, "left", "exocanthion-vertical").line.through[0];
    const order = [
      face.left.pupil[0],
      limbus,
      (limbus + corner) / 2,
      guideLine(face, "left", "eye-width-share", { share: 0.929 }).line.through[0],
      guideLine(face, "left", "eye-width-share").line.through[0],
      guideLine(face, "left", "eye-width-share", { share: 0.978 }).line.through[0],
      corner,
    ];
    expect(order).toEqual([...order].sort((one, other) => one - other));
    expect(new Set(order).size).toBe(order.length);
  });

  it("meets a brow beyond the outer corner on the line through the lateral limbus", () => {
    const on = (convention: "alare-through-pupil" | "alare-through-lateral-limbus"): number =>
      inEyeWidths(xAt(guideLine(face, "left", convention), 25));
    expect(on("alare-through-lateral-limbus")).toBeGreaterThan(1);
    expect(on("alare-through-pupil")).toBeLessThan(on("alare-through-lateral-limbus"));
  });

  it("starts within a millimetre by either rule where nose and eyes are equally wide", () => {
    // al-al 31.4, en-en 31.8 (Farkas 1994, from memory).
    const starts = (["alare-vertical", "endocanthion-vertical"] as const).map(
      (convention) => guideLine(face, "left", convention).line.through[0],
    );
    expectClose(starts, [15.7, 15.9], 1e-12);
  });

  it("draws the tail line through both landmarks", () => {
    const { line } = guideLine(face, "left", "alare-through-exocanthion");
    const reach = distanceAlongLine(mm([43.9, 0]), line);
    expectClose(reach, Math.hypot(43.9 - 15.7, 38), 1e-12);
  });
});

describe("conventions on a real, frontal face", () => {
  // Means and scatter in eye widths from endocanthion on 244 frontal mesh faces, measured by us.
  const photo = faceOfMesh(frontalMesh, AS_FOUND);
  const frame = faceFrame(photo, scaleFromIris(photo));
  const real = toFace(photo, frame);
  const skin = skinOf(real);

  it.each(["right", "left"] as const)("fall where they were measured to fall: %s", (side) => {
    const { endocanthion, exocanthion } = requireLandmarks(
      real[side],
      "endocanthion",
      "exocanthion",
    );
    const { brow } = requireLandmarks(real[side], "brow");
    const shareOf = (point: Point<"mm"> | undefined): number =>
      ((point?.[0] ?? Number.NaN) - endocanthion[0]) / (exocanthion[0] - endocanthion[0]);
    const onGuide = (convention: "alare-through-pupil" | "alare-through-lateral-limbus"): number =>
      shareOf(
        meetGuide(guideLine(requireGuideLandmarks(real, convention), side, convention), brow)?.at,
      );
    const { upperStart, upperArch, tailEnd } = naturalDots(brow).dots;

    expectClose(onGuide("alare-through-pupil"), 0.78, 2 * 0.06);
    // Between the points beside the drawn one that is farthest: a curve through them can peak only there.
    expect(shareOf(upperArch)).toBeGreaterThan(shareOf(brow.upper[1]));
    expect(shareOf(upperArch)).toBeLessThan(shareOf(brow.upper[3]));
    expectClose(
      shareOf(archAtShare(brow.upper, upperStart, tailEnd, skin, 2 / 3).at),
      1.03,
      2 * 0.04,
    );
    expectClose(onGuide("alare-through-lateral-limbus"), 1.1, 2 * 0.06);
  });

  it("peaks where brows were measured to peak, on average of its sides", () => {
    // Its left brow alone is at 1.06 eye widths by a natural cubic spline through its five points.
    const shares = (["right", "left"] as const).map((side) => {
      const { endocanthion, exocanthion, brow } = requireLandmarks(
        real[side],
        "endocanthion",
        "exocanthion",
        "brow",
      );
      const { upperArch } = naturalDots(brow).dots;
      const across = (upperArch?.[0] ?? Number.NaN) - endocanthion[0];
      return across / (exocanthion[0] - endocanthion[0]);
    });
    expectClose(((shares[0] ?? 0) + (shares[1] ?? 0)) / 2, 0.96, 2 * 0.05);
  });
});
