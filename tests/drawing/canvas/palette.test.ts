import { describe, expect, it } from "vitest";
import { MARKERS, PALETTES, STROKES } from "../../../src/drawing/canvas/palette.js";

type Colour = readonly [red: number, green: number, blue: number];

/** Dichromats' vision on linear RGB, at full severity (matrices from memory). */
const VISION = {
  trichromat: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  protanope: [
    0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998,
  ],
  deuteranope: [
    0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881,
  ],
  tritanope: [
    1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039,
  ],
};

const BOLD_ROLES = ["natural", "planned", "midline", "start", "arch", "tail"] as const;

describe.each(["light", "dark", "transparent"] as const)("the %s palette", (theme) => {
  const { strokes } = PALETTES[theme];

  it.each(Object.entries(VISION))("is told apart by a %s", (_, vision) => {
    for (const [index, one] of BOLD_ROLES.entries()) {
      for (const other of BOLD_ROLES.slice(index + 1)) {
        const apart = difference(seen(strokes[one], vision), seen(strokes[other], vision));
        expect(apart, `${one} and ${other}`).toBeGreaterThan(0.14);
      }
    }
  });
});

describe.each(["light", "dark", "monochrome", "transparent"] as const)(
  "the %s palette",
  (theme) => {
    const { paper, ink, quiet, strokes } = PALETTES[theme];

    // Contrasts as the Web Content Accessibility Guidelines ask: 4.5 for text, 3 for graphics (from memory).
    it("stands out from its paper", () => {
      expect(contrast(ink, paper)).toBeGreaterThan(7);
      // Guides are named in their own colours.
      for (const letters of [quiet, strokes.start, strokes.arch, strokes.tail, strokes.guess]) {
        expect(contrast(letters, paper)).toBeGreaterThan(4.5);
      }
      for (const colour of Object.values(strokes)) {
        expect(contrast(colour, paper)).toBeGreaterThan(3);
      }
    });
  },
);

describe("strokes", () => {
  it("have dashes of their own, so that they differ without colour", () => {
    const dashes = BOLD_ROLES.map((role) => STROKES[role].dash.join(" "));
    expect(new Set(dashes).size).toBe(BOLD_ROLES.length);
  });

  it("tell a correction from a move, both arrows in ink", () => {
    expect(STROKES.correction.dash).not.toEqual(STROKES.move.dash);
    expect(STROKES.correction.dash).not.toEqual(STROKES.ruler.dash);
  });

  it("belong to dots of different shapes", () => {
    const shapes = Object.values(MARKERS);
    expect(new Set(shapes).size).toBe(shapes.length);
  });
});

function linear(colour: string): Colour {
  return [1, 3, 5].map((from) => {
    const share = parseInt(colour.slice(from, from + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as unknown as Colour;
}

function seen(colour: string, vision: readonly number[]): Colour {
  const from = linear(colour);
  return [0, 3, 6].map((row) => {
    const sum = from.reduce((total, part, column) => total + part * (vision[row + column] ?? 0), 0);
    return Math.min(1, Math.max(0, sum));
  }) as unknown as Colour;
}

/** Relative luminance of sRGB and contrast ratio (from memory). */
function contrast(one: string, other: string): number {
  const [brighter, darker] = [one, other]
    .map((colour) => {
      const [red, green, blue] = linear(colour);
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05;
    })
    .sort((left, right) => right - left) as [number, number];
  return brighter / darker;
}

/** Distance in OKLab, Ottosson 2020 (from memory). */
function difference(one: Colour, other: Colour): number {
  const [from, to] = [oklab(one), oklab(other)];
  return Math.hypot(...from.map((value, index) => value - (to[index] ?? 0)));
}

function oklab([red, green, blue]: Colour): readonly number[] {
  const long = Math.cbrt(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
  const medium = Math.cbrt(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
  const short = Math.cbrt(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
  return [
    0.2104542553 * long + 0.793617785 * medium - 0.0040720468 * short,
    1.9779984951 * long - 2.428592205 * medium + 0.4505937099 * short,
    0.0259040371 * long + 0.7827717662 * medium - 0.808675766 * short,
  ];
}
