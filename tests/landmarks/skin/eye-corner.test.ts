import { atEyeCorner, onSkin } from "../../../src/landmarks/internal.js";
import { mm, skinOf } from "brow-geometry";
import { spaceDistance } from "brow-geometry/geometry";
import { describe, expect, it } from "vitest";
import {
  CANONICAL_EXOCANTHION,
  CANONICAL_UPPER,
  canonicalFace,
  withoutDepth,
} from "../../support/brow-depth.js";
import { expectClose } from "../../support/close.js";

const exocanthion = mm(CANONICAL_EXOCANTHION);
const tailEnd = mm(CANONICAL_UPPER[4] ?? [0, 0, 0]);
// Straight between the two vertices of the canonical face mesh.
const truth = spaceDistance(exocanthion, tailEnd);

describe("the outer eye corner against the skin of the brow", () => {
  it("keeps its own depth where the skin is fitted", () => {
    const skin = skinOf(canonicalFace());
    expect(atEyeCorner(exocanthion, skin)).toBe(exocanthion);
    expectClose(spaceDistance(exocanthion, onSkin(tailEnd, skin)), truth, 0.2);
  });

  it("is set back into the orbit where it is modelled: lifted onto the brow's skin it would read long", () => {
    const skin = skinOf(withoutDepth(canonicalFace()));
    const flat = mm([CANONICAL_EXOCANTHION[0], CANONICAL_EXOCANTHION[1]]);
    const toTail = (from: typeof exocanthion): number => spaceDistance(from, onSkin(tailEnd, skin));
    expectClose(toTail(atEyeCorner(flat, skin)), truth, 0.1);
    expect(toTail(onSkin(flat, skin)) - truth).toBeGreaterThan(3);
    expect(atEyeCorner(exocanthion, skin)).toEqual(atEyeCorner(flat, skin));
  });

  it("is set back alike on both sides", () => {
    const skin = skinOf(withoutDepth(canonicalFace()));
    expect(atEyeCorner(mm([-44, 1]), skin)[2]).toBe(atEyeCorner(mm([44, 1]), skin)[2]);
  });

  it("is flat on a flat skin", () => {
    expect(atEyeCorner(exocanthion, { kind: "flat" })).toEqual([44.45, 26.6, 0]);
  });
});
