import { distanceFromLine, type Face, mm, tailGuide } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";
import { syntheticFace } from "../support/synthetic-face.js";

describe("tailGuide", () => {
  const face = syntheticFace();

  it("rises from the nose wing through the outer corner of the eye", () => {
    for (const side of ["right", "left"] as const) {
      const { line, from, mark } = tailGuide(face, side);
      expect(mark).toBe("tail");
      expect(from).toEqual(["alare", "exocanthion"]);
      expect(line.through).toEqual(face[side].alare);
      expectClose(distanceFromLine(face[side].exocanthion, line), 0, 1e-12);
      expect(line.direction[1]).toBeGreaterThan(0);
    }
  });

  it("refuses a face whose landmarks are missing at run time, naming them", () => {
    const bare: Face<"mm"> = { right: {}, left: { alare: mm([15, -40]) }, midline: {} };
    const error = refusal(() => tailGuide(bare as typeof face, "left"));
    expect(error.code).toBe("missing-landmark");
    expect(error.message).toContain("exocanthion");
  });
});
