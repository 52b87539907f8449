import { GeometryError } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { refusingAs, requirePositive } from "../../../src/units/internal.js";
import { refusal } from "../../support/refusal.js";

const detail = { where: "parseFace", field: "left.pupil", value: [1, Number.NaN], need: "a point" };

const itself: { part?: unknown } = {};
itself.part = itself;
const endless: unknown[] = [];
endless.push(endless);

describe("GeometryError", () => {
  it("says where, which field, what stood there and what is needed", () => {
    const error = new GeometryError("not-finite", detail);
    expect(error.message).toBe("parseFace: left.pupil is [1, NaN]; needs a point");
    expect(error).toMatchObject({ name: "GeometryError", code: "not-finite", detail });
    expect(error).toBeInstanceOf(RangeError);
  });

  it.each([
    ["nothing", undefined, "missing"],
    ["null", null, "null"],
    ["text", "12", '"12"'],
    ["NaN", Number.NaN, "NaN"],
    ["an object", { x: 1 }, '{"x":1}'],
    ["no more decimals than tell", [431.123456789, -1 / 3], "[431.1235, -0.3333]"],
    ["nor within an object", { x: 2 / 3 }, '{"x":0.6667}'],
    ["next to nothing as it is", 1e-9, "1e-9"],
    ["a function", () => 1, "function"],
    ["a big integer", 5n, "5n"],
    ["lists within lists", [[1, [2]], []], "[[1, [2]], []]"],
    ["what holds itself", itself, "an object that JSON cannot hold"],
    ["a list that holds itself", endless, `${"[".repeat(79)}…`],
    ["much", "x".repeat(200), `"${"x".repeat(78)}…`],
  ])("shows %s", (_, value, shown) => {
    const error = new GeometryError("not-finite", { ...detail, value });
    expect(error.message).toBe(`parseFace: left.pupil is ${shown}; needs a point`);
  });

  it("says the first three problems and counts the rest", () => {
    const also = ["a", "b", "c", "d"].map((field) => ({ field, value: 1, need: "text" }));
    expect(new GeometryError("not-parsed", { ...detail, also: also.slice(0, 2) }).message).toBe(
      "parseFace: left.pupil is [1, NaN]; needs a point. a is 1; needs text. b is 1; needs text",
    );
    const error = new GeometryError("not-parsed", { ...detail, also });
    expect(error.message).toBe(
      "parseFace: left.pupil is [1, NaN]; needs a point. a is 1; needs text. b is 1; needs text. And 2 more",
    );
    expect(error.detail.also).toHaveLength(4);
  });
});

describe("refusingAs", () => {
  it("answers what it runs", () => {
    expect(refusingAs("outer", () => 3)).toBe(3);
  });

  it("names the outer function, and keeps everything else", () => {
    const refuse = (): void => refusingAs("inner", () => requirePositive("width", -1));
    const inner = refusal(refuse);
    const outer = refusal(() => refusingAs("outer", refuse));
    expect(outer).toBeInstanceOf(GeometryError);
    expect(outer.code).toBe(inner.code);
    expect(outer.detail).toEqual({ ...inner.detail, where: "outer" });
    expect(outer.message).toBe(inner.message.replace("inner", "outer"));
    expect(outer.cause).toBeInstanceOf(GeometryError);
  });

  it("names the function that was called in what is refused inside of it", () => {
    const bare = refusal(() => requirePositive("width", -1));
    expect(bare.message).toBe("width is -1; needs more than 0");
    const named = refusal(() => refusingAs("f", () => requirePositive("width", -1)));
    expect(named.message).toBe("f: width is -1; needs more than 0");
    expect(named.detail).toEqual({ ...bare.detail, where: "f" });
  });

  it("leaves errors that are not its own alone", () => {
    const error = new TypeError("no");
    const run = (): never => {
      throw error;
    };
    expect(() => refusingAs("outer", run)).toThrow(error);
  });
});
