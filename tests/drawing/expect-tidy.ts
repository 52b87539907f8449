import { expect } from "vitest";
import { grown, isWithin, overlap } from "../../src/drawing/canvas/box.js";
import { drawnBox, type Picture } from "./picture.js";

/** Expects everything that a picture draws and writes to lie inside its view box, as finite numbers. */
export function expectInside(picture: Picture): void {
  const rounding = 1e-3 * picture.viewBox.width;
  const room = grown(picture.viewBox, rounding);
  expect(picture.spots.flat().every(Number.isFinite)).toBe(true);
  expect(isWithin(drawnBox(picture), room), JSON.stringify(drawnBox(picture))).toBe(true);
  for (const { text, box } of picture.texts) expect(isWithin(box, room), text).toBe(true);
}

/** Expects no two texts of a picture to touch. */
export function expectNoCollisions({ texts }: Picture): void {
  for (const [index, one] of texts.entries()) {
    for (const other of texts.slice(index + 1)) {
      expect(overlap(one.box, other.box), `${one.text} and ${other.text}`).toBe(false);
    }
  }
}
