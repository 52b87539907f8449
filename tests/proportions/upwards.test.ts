import { fc, test } from "@fast-check/vitest";
import { intersect, lineAlong, lineThrough } from "brow-geometry/geometry";
import { mm } from "brow-geometry";
import { atHeight } from "../../src/proportions/internal.js";
import { describe, expect, it } from "vitest";
import { anyNumber } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";

describe("where a line passes a height", () => {
  it("is found by similar triangles", () => {
    expect(atHeight(lineThrough(mm([15, -40]), mm([45, 0])), 20)).toEqual([60, 20]);
  });

  it("is nowhere on a level line", () => {
    expect(atHeight(lineAlong(mm([15, 5]), [1, 0]), 5)).toBeUndefined();
    expect(atHeight(lineAlong(mm([15, 5]), [1, 1e-13]), 20)).toBeUndefined();
  });

  test.prop([anyNumber(60), anyNumber(60), fc.integer({ min: 5, max: 175 }), anyNumber(60)])(
    "agrees with where it meets a level line",
    (x, y, degrees, height) => {
      const angle = (degrees * Math.PI) / 180;
      const line = lineAlong(mm([x, y]), [Math.cos(angle), Math.sin(angle)]);
      const met = intersect(line, lineAlong(mm([0, height]), [1, 0]));
      const at = atHeight(line, height);
      if (met.kind !== "crossing" || at === undefined) expect.unreachable("the line is not level");
      else expectClose(at, met.at, 1e-9);
    },
  );
});
