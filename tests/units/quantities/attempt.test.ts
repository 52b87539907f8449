import { faceFrame, GeometryError, scaleFromIris } from "brow-geometry";
import { attempt } from "brow-geometry/units";
import { describe, expect, expectTypeOf, it } from "vitest";

const nobody = { right: {}, left: {}, midline: {} };

describe("attempt", () => {
  it("answers what the question answers", () => {
    const answered = attempt(() => 3);
    expect(answered).toEqual({ ok: true, answer: 3 });
    if (answered.ok) expectTypeOf(answered.answer).toEqualTypeOf<number>();
    // @ts-expect-error: whether there is an answer has to be asked first
    expect(answered.answer).toBe(3);
  });

  it("answers a refusal with its reason", () => {
    const refused = attempt(() => scaleFromIris(nobody));
    if (refused.ok) return expect.fail("nobody has irises");
    expect(refused.refusal).toBeInstanceOf(GeometryError);
    expect(refused.refusal.code).toBe("missing-landmark");
  });

  it("throws refusals that are not asked for", () => {
    const ask = (): unknown => attempt(() => scaleFromIris(nobody), ["sides-swapped"]);
    expect(ask).toThrow(GeometryError);
    expect(attempt(ask, ["missing-landmark"]).ok).toBe(false);
  });

  it("answers what a program in JavaScript left out, and throws faults as ever", () => {
    expect(attempt(() => faceFrame(undefined as never, undefined as never)).ok).toBe(false);
    expect(() =>
      attempt(() => {
        throw new TypeError("a fault");
      }),
    ).toThrow(TypeError);
  });
});
