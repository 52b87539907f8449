import { DOT_NAMES } from "../../../src/landmarks/internal.js";
import { DOTS, type FaceSide, mm, requireLandmarks } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { refusal } from "../../support/refusal.js";

describe("landmarks that have to be there", () => {
  const side: FaceSide<"mm"> = {
    endocanthion: mm([16, 0]),
    brow: {
      upper: mm([
        [14, 20],
        [58, 17],
      ]),
    },
  };

  it("are narrowed to be there", () => {
    const { endocanthion, brow } = requireLandmarks(side, "endocanthion", "brow");
    expect(endocanthion[0] + brow.upper.length).toBe(18);
  });

  it("are all named where they are missing", () => {
    const error = refusal(() => requireLandmarks(side, "alare", "brow", "pupil"));
    expect(error).toMatchObject({ code: "missing-landmark", detail: { field: "alare, pupil" } });
  });
});

it("dots are listed once each, along the upper border and then the lower", () => {
  expect(new Set(DOT_NAMES).size).toBe(DOT_NAMES.length);
  const borders = DOT_NAMES.map((dot) => DOTS[dot].border);
  const firstLower = borders.indexOf("lower");
  expect(borders.slice(0, firstLower)).toContain("upper");
  expect(borders.slice(firstLower)).not.toContain("upper");
});
