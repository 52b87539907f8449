import { type Face, fitMidline, mm, px } from "brow-geometry";
import { otherMidlines } from "brow-geometry/symmetry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";

describe("a midline given by the artist", () => {
  it("runs through both points, also on a head without features", () => {
    const bare: Face<"px"> = { right: {}, left: {}, midline: {} };
    const midline = fitMidline(bare, { given: [px([500, 200]), px([520, 600])] });
    expectClose(midline.tilt, (Math.atan(20 / 400) * 180) / Math.PI, 1e-9);
    expectClose(midline.line.through, [510, 400], 1e-9);
    expect(midline.method).toBe("given");
    expect(otherMidlines(bare, midline)).toEqual([]);
  });

  it("knows up from down where the face tells", () => {
    const given = [mm([1, -60]), mm([0, 40])] as const;
    expectClose(
      fitMidline(syntheticFace(), { given }).tilt,
      (Math.atan(1 / 100) * 180) / Math.PI,
      1e-9,
    );
    expectClose(fitMidline(syntheticFace(), { given }).line.through, [0.4, 0], 5e-3);
  });

  it("is as sure as its points are: √2·u/d in direction, u/√2 half-way", () => {
    const given = [px([500, 200]), px([500, 500])] as const;
    const eyes = { endocanthion: px([440, 350]), exocanthion: px([350, 350]) };
    const others = { endocanthion: px([560, 350]), exocanthion: px([650, 350]) };
    const face: Face<"px"> = { right: eyes, left: others, midline: {} };
    const sure = fitMidline(face, { given, givenU: px(1) });
    // The published closed form for a segment, √2/d rad: 300 px apart.
    expectClose(sure.tiltU, 0.270094896, 1e-7);
    expectClose(sure.throughU, Math.SQRT1_2, 1e-12);

    // Placed by hand: 0.26 mm, which is 0.26/90 of the 300 px between the outer eye corners.
    const byHand = fitMidline(face, { given });
    const u = 0.8666666667;
    expectClose(byHand.tiltU, 0.270094896 * u, 1e-7);
    // A detector's landmarks make the artist's own points no worse.
    const source = {
      markup: "mesh-478",
      uncertainty: { default: mm(1.3) },
      ringFactor: { value: 1, u: 0 },
      depth: "none",
    } as const;
    expect(fitMidline({ ...face, source }, { given }).tiltU).toBe(byHand.tiltU);
  });

  it("is less sure away from its points", () => {
    // Half-way between the points lies 100 above the eyes, which shift by 100·√2·u/40 more.
    const given = [mm([0, 120]), mm([0, 80])] as const;
    const { throughU } = fitMidline(syntheticFace(), { given, givenU: mm(0.2) });
    expectClose(throughU, Math.hypot(0.2 / Math.SQRT2, (100 * Math.SQRT2 * 0.2) / 40), 1e-9);
  });

  it("on a head without eyes takes the points' distance for its width", () => {
    const bare: Face<"mm"> = { right: {}, left: {}, midline: {} };
    const { tiltU } = fitMidline(bare, { given: [mm([0, 45]), mm([0, -45])] });
    expectClose(tiltU, ((Math.SQRT2 * 0.26) / 90) * (180 / Math.PI), 1e-9);
  });

  it("refuses an uncertainty under 0", () => {
    const given = [mm([0, 45]), mm([0, -45])] as const;
    const fit = () => fitMidline(syntheticFace(), { given, givenU: mm(-1) });
    expect(refusal(fit)).toMatchObject({ code: "out-of-range", detail: { field: "givenU" } });
  });

  it.each([
    ["without points", undefined, "given is missing"],
    ["twice the same", [mm([1, 2]), mm([1, 2])] as const, "given[1] is [1, 2]"],
    ["not finite", [mm([1, Number.NaN]), mm([1, 2])] as const, "given[0] is [1, NaN]"],
  ])("is refused %s", (_, given, message) => {
    const options = given === undefined ? {} : { given };
    expect(
      refusal(() => fitMidline(syntheticFace(), { method: "given", ...options })).message,
    ).toContain(message);
  });
});
