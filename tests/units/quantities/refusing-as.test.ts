import { GeometryError } from "brow-geometry/units";
import { refusingAs, requirePositive } from "../../../src/units/internal.js";
import { describe, expect, it } from "vitest";
import { refusal } from "../../support/refusal.js";

describe("refusingAs", () => {
  it("answers what it runs", () => {
    expect(refusingAs("outer", () => 3)).toBe(3);
  });

  it("names the outer function, and keeps everything else", () => {
    const inner = refusal(() => requirePositive("inner", "width", -1));
    const outer = refusal(() => refusingAs("outer", () => requirePositive("inner", "width", -1)));
    expect(outer).toBeInstanceOf(GeometryError);
    expect(outer.code).toBe(inner.code);
    expect(outer.detail).toEqual({ ...inner.detail, where: "outer" });
    expect(outer.message).toBe(inner.message.replace("inner", "outer"));
    expect(outer.cause).toBeInstanceOf(GeometryError);
  });

  it("leaves errors that are not its own alone", () => {
    const error = new TypeError("no");
    const run = (): never => {
      throw error;
    };
    expect(() => refusingAs("outer", run)).toThrow(error);
  });
});
