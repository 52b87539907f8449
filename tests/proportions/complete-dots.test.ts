import { test } from "@fast-check/vitest";
import { completeDots } from "brow-geometry/proportions";
import { FACE_MIDLINE, mirror, mm, naturalDots, outline } from "brow-geometry";
import { outlineBorders } from "brow-geometry/proportions";
import { heightOver } from "../../src/geometry/internal.js";
import { STATION_THICKNESS } from "../../src/proportions/internal.js";
import { describe, expect, it } from "vitest";
import { anyBrow } from "../support/arbitraries.js";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";

const upper = { upperStart: mm([15, 20]), upperArch: mm([45, 26]), tailEnd: mm([60, 18]) };

describe("completeDots", () => {
  it("hangs the lower dots below the upper ones by the thickness", () => {
    const dots = completeDots(upper, { start: mm(9), body: mm(7.5), arch: mm(5) });
    expect(dots).toMatchObject(upper);
    expectClose(
      [dots.lowerStart, dots.lowerArch],
      [
        [15, 11],
        [45, 21],
      ],
      1e-12,
    );
    expectClose(dots.lowerBody, [30, dots.upperBody[1] - 7.5], 1e-12);
  });

  it("falls from 8 to 6 mm unless told otherwise", () => {
    // From 6–8 mm to about 5 mm: trade practice, no source.
    expect(STATION_THICKNESS).toEqual({ start: 8, body: 7, arch: 6 });
    expect(completeDots(upper).lowerStart).toEqual([15, 12]);
  });

  it.each([0, -2, Number.NaN])("refuses a thickness of %s", (body) => {
    const error = refusal(() => completeDots(upper, { ...STATION_THICKNESS, body: mm(body) }));
    expect(error.detail).toMatchObject({ where: "completeDots", field: "thickness.body" });
  });

  it("refuses dots that do not follow each other outwards", () => {
    const error = refusal(() => completeDots({ ...upper, upperArch: mm([62, 26]) }));
    expect(error).toMatchObject({
      code: "inconsistent",
      detail: { where: "completeDots", field: "dots.tailEnd" },
    });
  });

  test.prop([anyBrow()])("puts the body on the border that the outline draws, half-way", (brow) => {
    const { dots: natural } = naturalDots(brow);
    if (natural.upperArch === undefined) return;
    const dots = { ...natural, upperArch: natural.upperArch };
    const complete = completeDots(dots);
    const { upper: border } = outlineBorders(outline(complete), mm(1e-5));
    expectClose(complete.upperBody[0], (dots.upperStart[0] + dots.upperArch[0]) / 2, 1e-12);
    expectClose(complete.upperBody[1], heightOver(mm(complete.upperBody[0]), border), 1e-4);
    expectClose(
      completeDots(mirror(dots, FACE_MIDLINE) as typeof dots),
      mirror(complete, FACE_MIDLINE),
      1e-9,
    );
  });
});
