import { test } from "@fast-check/vitest";
import { fitMidline } from "brow-geometry";
import fc from "fast-check";
import { describe, expect } from "vitest";
import { spaceOf } from "../../../src/symmetry/internal.js";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

describe("the space of a face", () => {
  test.prop([anyFace(), fc.constantFrom("mirror", "midpoints", "endocanthia")])(
    "lies on its midline, level with the inner eye corners, and leans as that does",
    (face, method) => {
      const { through, direction } = fitMidline(face, { method }).line;
      const { x, y, lean } = spaceOf(face, method);
      expectClose([x, y], through, 1e-9);
      expect(direction[1]).toBeGreaterThan(0);
      expectClose([Math.sin(lean), Math.cos(lean)], direction, 1e-9);
    },
  );
});
