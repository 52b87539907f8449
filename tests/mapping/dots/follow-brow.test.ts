import { test } from "@fast-check/vitest";
import {
  faceFrame,
  FACE_MIDLINE,
  mirror,
  mm,
  planBrows,
  planDots,
  requirePlannable,
  type PlannableFace,
  type Scale,
  toFace,
} from "brow-geometry";
import { followBrow, type Pin } from "brow-geometry/mapping";
import { describe, expect, it } from "vitest";
import { anyFace } from "../../support/arbitraries.js";
import { expectClose } from "../../support/close.js";
import { londonFaces } from "../../support/london-faces.js";
import { plainFace } from "../../support/plain-face.js";
import { refusal } from "../../support/refusal.js";
import { faceOfMesh, frontalMesh } from "../../support/sample-faces.js";

/** The hand-drawn faces in millimetres, the iris taken as 11.71 mm wide. */
function handFaces(): readonly PlannableFace[] {
  return londonFaces().map(({ hand, millimetres: factor }) => {
    const scale: Scale = { from: "px", to: "mm", factor, u: 0, source: "given", notes: [] };
    return requirePlannable(toFace(hand, faceFrame(hand, scale)));
  });
}

function movesOf(face: PlannableFace): readonly string[] {
  const { moves } = planBrows(face, followBrow(face, "left"), { preview: true });
  return moves.filter(({ kind }) => kind !== "stay").map(({ side, dot }) => `${side} ${dot}`);
}

describe("a brow that is followed", () => {
  it("leaves real brows that are even as they grow, slanted fronts and all", () => {
    const faces = handFaces();
    expect(faces).toHaveLength(102);
    for (const { left, ...face } of faces) {
      const right = { ...face.right, brow: mirror(left.brow, FACE_MIDLINE) };
      expect(movesOf({ ...face, right, left })).toEqual([]);
    }
  });

  it("stays on its own side, and is mirrored on the other", () => {
    for (const face of handFaces()) {
      expect(movesOf(face).filter((move) => move.startsWith("left"))).toEqual([]);
      const { dots, natural } = planDots(face, followBrow(face, "left"));
      expectClose(dots.right, mirror(dots.left, FACE_MIDLINE), 1e-9);
      const grown = Object.entries(natural.left.dots).filter(([dot]) => dot !== "upperBody");
      expect(dots.left).toMatchObject(Object.fromEntries(grown));
    }
  });

  test.prop([anyFace(2)])("of a mirrored face is mirrored", (face) => {
    const { dots } = planDots(face, followBrow(face, "right"));
    const across = requirePlannable(mirror(face, FACE_MIDLINE));
    expectClose(
      planDots(across, followBrow(across, "left")).dots.left,
      mirror(dots.right, FACE_MIDLINE),
      1e-9,
    );
  });

  it("leads, and keeps what else is chosen, pins first", () => {
    const [face] = handFaces() as readonly [PlannableFace];
    const pin: Pin = { side: "left", dot: "tailEnd", at: mm([60, 15]), by: "A. Example" };
    const chosen = followBrow(face, "left", {
      lead: "right",
      tailHeight: "level-with-upper-start",
      pins: [pin],
    });
    expect(chosen).toMatchObject({ lead: "left", tailHeight: "level-with-upper-start" });
    expect(chosen.pins?.[0]).toBe(pin);
    expect(chosen.pins?.filter(({ dot }) => dot === "tailEnd")).toEqual([pin]);
    expect(followBrow(face, "left", chosen)).toEqual(chosen);
  });

  it("has an upper border only, where no lower one is known, and no arch where it is flat", () => {
    const flat = plainFace([
      [15, 20],
      [57, 18],
    ]);
    expect(followBrow(flat, "right").pins?.map(({ dot }) => dot)).toEqual([
      "upperStart",
      "tailEnd",
    ]);
    expect(planDots(flat, followBrow(flat, "right")).dots.right.tailEnd).toEqual([-57, 18]);
  });

  it("has to be hair", () => {
    const guessed = requirePlannable(faceOfMesh(frontalMesh));
    expect(refusal(() => followBrow(guessed as never, "left"))).toMatchObject({
      code: "inconsistent",
      detail: { field: "left.brow", value: "brow-template" },
    });
  });
});
