import { guideLine, naturalDots } from "brow-geometry";
import { distanceFromLine } from "brow-geometry/geometry";
import { describe, expect, it } from "vitest";
import { clientOfTheGuides } from "./client-of-the-guides.js";

describe.each(["right", "left"] as const)("the client of the guides, on the %s", (side) => {
  const face = clientOfTheGuides();
  const { endocanthion, exocanthion, alare, brow } = face[side];
  const { upperStart, upperArch, tailEnd } = naturalDots(brow).dots;
  const out = ([x]: readonly [number, ...number[]]): number => Math.abs(x);

  // Roth & Metzinger, Arch Facial Plast Surg 2003;5:235–239: 0.978 and 0.929 eye widths in two groups.
  it("has an arch where the text says that arches grow", () => {
    if (upperArch === undefined) return expect.fail("flat");
    const eyeWidths = (out(upperArch) - out(endocanthion)) / (out(exocanthion) - out(endocanthion));
    expect(eyeWidths).toBeGreaterThan(0.92);
    expect(eyeWidths).toBeLessThan(0.99);
  });

  // Trade practice, no source: above the nose wing, and on the line from it through the outer eye corner.
  it("has a brow that starts and ends at its guides, within a millimetre", () => {
    expect(Math.abs(out(upperStart) - out(alare))).toBeLessThan(1);
    const { line } = guideLine(face, side, "alare-through-exocanthion");
    expect(Math.abs(distanceFromLine(tailEnd, line))).toBeLessThan(1);
  });
});
