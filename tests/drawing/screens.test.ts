import { ENGLISH, SPANISH } from "brow-geometry/words";
import { describe, expect, it } from "vitest";
import { PICTURES } from "../support/every-picture.js";
import { PSEUDO_CHINESE, PSEUDO_RTL } from "../support/pseudo-words.js";
import { expectInside, expectNoCollisions } from "./expect-tidy.js";
import { pictureOf } from "./picture.js";

const ON_SCREENS = PICTURES.filter(([, drawn]) => drawn({ words: ENGLISH })[0]?.startsWith("<svg"));

describe.each(ON_SCREENS)("letters of a picture on a screen: %s", (_, drawn) => {
  it.each([
    { width: 375, words: ENGLISH },
    { width: 375, words: SPANISH },
    { width: 375, leastType: 14, words: ENGLISH },
    { width: 375, words: PSEUDO_RTL },
    { width: 375, words: PSEUDO_CHINESE },
    { width: 1440, words: ENGLISH },
  ])("are legible, inside and apart: $width px", ({ words, ...screen }) => {
    for (const source of drawn({ words, screen })) {
      const picture = pictureOf(source);
      const pixels = picture.texts.map(({ size }) => (size * screen.width) / picture.viewBox.width);
      expect(Math.min(...pixels)).toBeGreaterThan((screen.leastType ?? 11) - 0.01);
      expectInside(picture);
      expectNoCollisions(picture);
    }
  });
});

it.each(PICTURES)("letters that a font lacks are taken from the system's: %s", (_, drawn) => {
  for (const source of drawn({ words: PSEUDO_CHINESE })) {
    const lists = source.replaceAll("&apos;", "'").match(/Helvetica[^";}]*/g) ?? [];
    expect(lists.length).toBeGreaterThan(0);
    for (const list of lists) expect(list.trim()).toMatch(/, sans-serif$/);
  }
});
