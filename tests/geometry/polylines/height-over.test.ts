import { test } from "@fast-check/vitest";
import { intersectPolyline, lineAlong } from "brow-geometry/geometry";
import { mm } from "brow-geometry";
import { heightOver } from "../../../src/geometry/internal.js";
import { describe, expect, it } from "vitest";
import { anyNumber, anyPolyline } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";

describe("heightOver", () => {
  const border = mm([
    [10, 20],
    [30, 26],
    [30, 26],
    [50, 18],
  ]);

  it.each([
    ["between points", 20, 23],
    ["on a point drawn twice", 30, 26],
    ["at an end", 50, 18],
    ["before the first point", 0, 17],
    ["past the last point", 60, 14],
  ])("reads a border %s", (_, x, y) => {
    expectClose(heightOver(mm(x), border), y, 1e-12);
  });

  it("has no answer past a vertical end, for a single place or for nothing", () => {
    expect(
      heightOver(
        mm(5),
        mm([
          [10, 20],
          [10, 26],
        ]),
      ),
    ).toBeUndefined();
    expect(
      heightOver(
        mm(10),
        mm([
          [10, 20],
          [10, 20],
        ]),
      ),
    ).toBeUndefined();
    expect(heightOver(mm(10), [])).toBeUndefined();
  });

  test.prop([anyPolyline<"mm">(100), anyNumber(120)])(
    "agrees with where a vertical meets the polyline",
    (polyline, x) => {
      const [met] = intersectPolyline(lineAlong(mm([x, 0]), [0, 1]), polyline);
      const y = heightOver(mm(x), polyline);
      if (met === undefined) expect(y).toBeUndefined();
      else
        expectClose(
          (y ?? Number.NaN) / (1 + Math.abs(y ?? 0)),
          met.at[1] / (1 + Math.abs(met.at[1])),
          1e-6,
        );
    },
  );
});
