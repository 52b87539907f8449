import { mm, type Note, planBrows, say } from "brow-geometry";
import { drawSheet } from "brow-geometry/drawing";
import { drawStrip } from "brow-geometry/drawing";
import { drawCaptures, drawChoices } from "brow-geometry/drawing";
import { everyChoice, weighChoices } from "brow-geometry/mapping";
import { ENGLISH, type LengthUnit, type Sentence, SPANISH, type Words } from "brow-geometry/words";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lengthIn } from "../../../src/words/internal.js";
import { anyNumber } from "../../support/arbitraries.js";
import { PICTURES, textsOf } from "../../support/every-picture.js";
import { syntheticFace } from "../../support/synthetic-face.js";

const withLengths = (lengths: LengthUnit, decimalSign = "."): Words => ({
  ...ENGLISH,
  lengths,
  decimalSign,
});

/** A whole number and a fraction, read back: "−1 3/16 in". */
function inInches(written: string): number {
  const [, sign, whole = 0, over = 0, under = 1] =
    /^(−?)(?:(\d+)(?: |$))?(?:(\d+)\/(\d+))?/.exec(written.replace(" in", "")) ?? [];
  return (Number(whole) + Number(over) / Number(under)) * (sign === "−" ? -1 : 1);
}

describe("a length in the reader's unit", () => {
  // 1 in is 25.4 mm exactly (international inch of 1959; from memory).
  it.each<[LengthUnit, number, number, string]>([
    ["mm", 29.64, 1, "29.6 mm"],
    ["mm", -0.04, 1, "0.0 mm"],
    ["mm", -1.5, 1, "−1.5 mm"],
    ["cm", 29.64, 1, "2.96 cm"],
    ["cm", 30, 0, "3.0 cm"],
    ["inch", 25.4, 1, "1 in"],
    ["inch", 12.7, 1, "1/2 in"],
    ["inch", 30.1625, 1, "1 3/16 in"],
    ["inch", 0.4, 1, "1/64 in"],
    ["inch", 0.1, 1, "0 in"],
    ["inch", -4.7625, 1, "−3/16 in"],
    ["inch", 26, 0, "1 in"],
    ["inch", 25.35, 1, "1 in"],
  ])("in %s writes %s mm with %i decimals as %s", (lengths, value, decimals, text) => {
    expect(lengthIn(value, decimals, withLengths(lengths))).toBe(text);
  });

  it.each<[Words["inchMarks"], number, string]>([
    [8, 25.4, "1 in"],
    [16, 30.1625, "1 3/16 in"],
    [16, 30.8, "1 3/16 in"],
    [32, 30.8, "1 7/32 in"],
    [32, 0.5, "1/32 in"],
    // Less than half of a sixteenth, 0.79 mm: half a mark tells it better than none.
    [16, 0.5, "1/32 in"],
    [16, 0, "0 in"],
  ])("on a ruler with %s marks an inch writes %s mm as %s", (inchMarks = 64, value, text) => {
    expect(lengthIn(value, 1, { ...withLengths("inch"), inchMarks })).toBe(text);
  });

  it("is rounded to the nearest mark of whatever ruler, and never to nothing but by half of a 64th", () => {
    const marks = fc.constantFrom(8 as const, 16 as const, 32 as const, 64 as const);
    fc.assert(
      fc.property(anyNumber(300), marks, (value, inchMarks) => {
        const written = lengthIn(value, 1, { ...withLengths("inch"), inchMarks });
        const off = Math.abs(inInches(written) * 25.4 - value);
        expect(off).toBeLessThanOrEqual(25.4 / inchMarks / 2 + 1e-9);
        if (Math.abs(value) > 25.4 / 128) expect(inInches(written)).not.toBe(0);
      }),
    );
  });

  it("has the digits of its language", () => {
    const digits = "٠١٢٣٤٥٦٧٨٩";
    expect(lengthIn(-29.64, 1, { ...withLengths("mm", "٫"), digits })).toBe("−٢٩٫٦ mm");
    expect(lengthIn(30.1625, 1, { ...withLengths("inch"), digits })).toBe("١ ٣/١٦ in");
  });

  it("has the decimal sign of its language", () => {
    expect(lengthIn(29.64, 1, withLengths("mm", ","))).toBe("29,6 mm");
    expect(lengthIn(-29.64, 1, withLengths("cm", ","))).toBe("−2,96 cm");
  });

  it("is as exact as a ruler: half of a 64th of an inch, a twentieth of a millimetre", () => {
    fc.assert(
      fc.property(anyNumber(300), (value) => {
        const read = inInches(lengthIn(value, 1, withLengths("inch")));
        expect(Math.abs(read * 25.4 - value)).toBeLessThanOrEqual(25.4 / 128 + 1e-9);
      }),
    );
  });

  it("stands in sentences, areas in its square", () => {
    const note: Note = { code: "areas", values: { hair: 645.16, skin: 20 } };
    expect(say(note)).toBe("Removes 645 mm² of hair and fills 20 mm² of skin.");
    expect(say(note, withLengths("cm", ","))).toBe(
      "Removes 6,45 cm² of hair and fills 0,20 cm² of skin.",
    );
    expect(say(note, withLengths("inch"))).toBe(
      "Removes 1.00 in² of hair and fills 0.03 in² of skin.",
    );
  });
});

describe.each([ENGLISH, SPANISH])("a catalogue in $language", ({ sentences, advice, labels }) => {
  const texts = [sentences, advice, labels].flatMap((table) =>
    Object.values<Sentence<never>>(table).map((text) =>
      typeof text === "string" ? text : text({ field: [] } as never),
    ),
  );

  it("has a unit behind each of two lengths, so that one of them cannot stay in millimetres", () => {
    const half = /\{\w+(?::\d)?\} (?:±|–|to|and|a|y) \{\w+:\d*mm\}/;
    expect(texts.filter((text) => half.test(text))).toEqual([]);
    expect("{lower:0} to {upper:0mm}").toMatch(half);
  });

  it("has no figure of its own in millimetres", () => {
    expect(texts.filter((text) => /\d\s*mm\b/.test(text.replace(/\{[^}]*\}/g, "")))).toEqual([]);
  });
});

describe("pictures in another unit", () => {
  const face = syntheticFace();
  const plan = planBrows(face, { levelLimit: mm(1) });
  const captures = [
    { name: "1", face },
    { name: "2", face },
  ];
  const drawn = (words: Words): string =>
    [
      drawStrip(plan, { words }),
      drawSheet(plan, { words }),
      drawChoices(face, weighChoices(face, everyChoice().slice(0, 3)), { words }),
      drawCaptures(captures, { words }),
    ]
      .flat()
      .flatMap(textsOf)
      .join("\n");

  it("name no millimetres but those of the ruler that checks the print", () => {
    expect(drawn(withLengths("inch")).match(/.*\bmm²?(?!\w).*/g)).toBeNull();
    expect(drawn(withLengths("inch"))).toMatch(/\d\/\d+ in\b/);
    expect(drawn(withLengths("cm"))).toMatch(/\d\.\d\d cm\b/);
  });

  it.each(PICTURES)("of %s in inches names no millimetre and no decimal of a length", (_, draw) => {
    const texts = draw({ words: withLengths("inch") }).flatMap(textsOf);
    expect(texts.join(" ")).toMatch(/\d\/\d+/);
    expect(texts.filter((text) => /\bmm²?(?!\w)|millimetre|\d\.\d+ in(?!²)\b/i.test(text))).toEqual(
      [],
    );
  });

  it("say in inches that lengths are rounded, and how far they may be off", () => {
    const words = { ...withLengths("inch"), inchMarks: 32 } as const;
    for (const source of [drawStrip(plan, { words }), drawSheet(plan, { words })]) {
      const texts = textsOf(source);
      const said = /nearest mark of the ruler, up to 1\/64 in off/;
      expect(texts.filter((text) => said.test(text)).length).toBeGreaterThan(0);
    }
    expect(drawn(withLengths("mm"))).not.toMatch(/nearest mark/);
  });

  it("have the decimal sign of their language throughout", () => {
    expect(drawn(withLengths("mm", ",")).match(/\d\.\d/g)).toBeNull();
  });
});
