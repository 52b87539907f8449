import { eachSide, otherSide } from "brow-geometry";
import { describe, expect, it } from "vitest";

describe("eachSide and otherSide", () => {
  it("know two sides", () => {
    expect(eachSide((side) => otherSide(side))).toEqual({ right: "left", left: "right" });
  });
});
