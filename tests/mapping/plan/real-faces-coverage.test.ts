import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heldOut } from "../../../bench/accuracy/held-out.js";
import { isHeld } from "../../../bench/accuracy/real-faces.js";
import { deviationsFrom } from "../../../src/units/uncertainty/random.js";
import { londonFaces } from "../../support/london-faces.js";

const faces = londonFaces();
const FOLDS = 4;

/** All people, shared out into folds that change with the seed: each is read with what is known from the others. */
const drawn = deviationsFrom(fc.readConfigureGlobal().seed ?? 1);
const shuffled = faces
  .map((face) => ({ face, rank: drawn.rectangular() }))
  .sort((one, other) => one.rank - other.rank)
  .map(({ face }) => face);
const folds = Array.from({ length: FOLDS }, (_, fold) =>
  shuffled.filter((_face, index) => index % FOLDS === fold),
);

// Source of the hand-drawn points: tests/fixtures/README.md. The readings of a person go together, so that shares over
// some of the people scatter by several percent with who they are; over all of them little depends on the folds.
describe.each(["mesh-478", "points-68"] as const)(
  "intervals stated for unseen faces of %s",
  (markup) => {
    const readings = folds.flatMap((unseen) => heldOut(faces, unseen, markup));

    it.each([
      ["measures of natural brows", "measure"],
      ["differences between them", "difference"],
    ] as const)("hold what a hand drew: %s", (_, group) => {
      const all = readings.filter((reading) => reading.group === group);
      const held = all.filter(isHeld).length / all.length;
      expect(held).toBeGreaterThan(0.93);
      expect(held).toBeLessThan(0.98);
    });
  },
);
