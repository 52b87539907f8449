import { expect } from "vitest";
import { grown, isWithin, overlap } from "../../src/drawing/canvas/box.js";
import { drawnBox, type Picture } from "./picture.js";

/** Expects everything that a picture draws and writes to lie inside its view box, as finite numbers. */
export function expectInside(picture: Picture): void {
  const rounding = 1e-3 * picture.viewBox.width;
  const room = grown(picture.viewBox, rounding);
  expect(picture.spots.flat().every(Number.isFinite)).toBe(true);
  expect(isWithin(drawnBox(picture), room), JSON.stringify(drawnBox(picture))).toBe(true);
  const outside = picture.texts.filter(({ box }) => !isWithin(box, room));
  expect(outside.map(({ text }) => text)).toEqual([]);
}

/** Expects no two texts of a picture to touch. */
export function expectNoCollisions({ texts }: Picture): void {
  const touching = texts.flatMap((one, index) =>
    texts
      .slice(index + 1)
      .filter((other) => overlap(one.box, other.box))
      .map((other) => `${one.text} and ${other.text}`),
  );
  expect(touching).toEqual([]);
}
