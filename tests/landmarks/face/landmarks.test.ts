import { LANDMARKS } from "brow-geometry/landmarks";
import { MIDLINE_LANDMARKS, SIDE_LANDMARKS } from "../../../src/landmarks/internal.js";
import { describe, expect, it } from "vitest";

describe("the table of landmarks", () => {
  it("names no landmark twice", () => {
    const { side, lines, midline } = LANDMARKS;
    const names = [side, lines, midline].flatMap((part) => Object.keys(part));
    expect(new Set(names).size).toBe(names.length);
  });

  it("lists the points of a side and of the middle", () => {
    expect(SIDE_LANDMARKS).toEqual(Object.keys(LANDMARKS.side));
    expect(MIDLINE_LANDMARKS).toEqual(Object.keys(LANDMARKS.midline));
  });

  it("runs down the middle of the face", () => {
    const { stomionSuperius, stomionInferius, ...single } = LANDMARKS.midline;
    const levels = Object.values(single).map(({ level }) => level);
    expect(levels).toEqual(levels.slice().sort((one, other) => other - one));
    expect(stomionSuperius.level).toBeGreaterThan(stomionInferius.level);
  });
});
