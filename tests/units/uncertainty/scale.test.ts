import { fc, test } from "@fast-check/vitest";
import { mm, px, scaleFromReference, toMillimetres, toPixels } from "brow-geometry";
import { describe } from "vitest";
import { expectClose } from "../../support/close.js";

describe("toMillimetres and toPixels", () => {
  test.prop([
    fc.double({ min: 1, max: 4000, noNaN: true }),
    fc.double({ min: 5, max: 200, noNaN: true }),
    fc.double({ min: -4000, max: 4000, noNaN: true }),
  ])("undo each other", (seen, known, length) => {
    const scale = scaleFromReference(px([0, 0]), px([0, seen]), mm(known));
    expectClose(toPixels(toMillimetres(px(length), scale), scale), length, 1e-9);
    expectClose(toMillimetres(px(seen), scale), known, 1e-9);
  });
});
