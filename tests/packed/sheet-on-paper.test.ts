import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowPlan, say } from "brow-geometry";
import { drawPractice, drawSheet, type Paper, type SheetDrawing } from "brow-geometry/drawing";
import { cautionsToSay } from "brow-geometry/mapping";
import { SPANISH } from "brow-geometry/words";
import { afterAll, describe, expect, it } from "vitest";
import { PICTURED_PLANS } from "../drawing/pictured-plans.js";
import { check, onPhoto, plan } from "../support/every-picture.js";
import { PSEUDO_ARABIC, PSEUDO_RTL } from "../support/pseudo-words.js";

const folder = mkdtempSync(join(tmpdir(), "sheet-"));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** A word where it is printed, in millimetres from the upper left corner of its page. */
interface Word {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

interface Page {
  readonly width: number;
  readonly height: number;
  readonly words: readonly Word[];
}

/** PDF counts in points, 72 to an inch (ISO 32000-1, 8.3.2.3). */
const POINT = 25.4 / 72;

let sheets = 0;

/** The pages of a sheet as a browser prints it, read from its PDF. */
function printed(of: BrowPlan, options: SheetDrawing = {}): readonly Page[] {
  return pagesOf(drawSheet(of, options));
}

function pagesOf(sheet: string): readonly Page[] {
  const file = join(folder, String(++sheets));
  writeFileSync(`${file}.html`, sheet);
  run("chromium", [
    ...["--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer"],
    ...[`--user-data-dir=${folder}/profile`, `--print-to-pdf=${file}.pdf`, `file://${file}.html`],
  ]);
  const boxes = run("pdftotext", ["-bbox", `${file}.pdf`, "-"]);
  return boxes.split("<page ").slice(1).map(pageOf);
}

function run(program: string, given: readonly string[]): string {
  const { status, stdout, stderr, error } = spawnSync(program, given, { encoding: "utf8" });
  if (status !== 0) throw new Error(`${program}: ${error?.message ?? stderr}`);
  return stdout;
}

function pageOf(source: string): Page {
  const [, width = "", height = ""] = /width="([\d.]+)" height="([\d.]+)"/.exec(source) ?? [];
  const words = source.matchAll(
    /xMin="(\S+)" yMin="(\S+)" xMax="(\S+)" yMax="(\S+)">(.*)<\/word>/g,
  );
  return {
    width: Number(width) * POINT,
    height: Number(height) * POINT,
    words: [...words].map(([, left, top, right, bottom, text = ""]) => ({
      text: text.replaceAll("&apos;", "'").replaceAll("&amp;", "&"),
      left: Number(left) * POINT,
      right: Number(right) * POINT,
      top: Number(top) * POINT,
      bottom: Number(bottom) * POINT,
    })),
  };
}

const middle = ({ left, right }: Word): number => (left + right) / 2;
const height = ({ top, bottom }: Word): number => (top + bottom) / 2;

/** The numbers of a ruler, ten by ten in their order: those that stand in its line, no farther away than it is long. */
function numbersOf(
  { words }: Page,
  to: number,
  line: (word: Word) => number,
  along: (word: Word) => number,
): readonly Word[] {
  const named = Array.from({ length: to / 10 + 1 }, (_, ten) => String(10 * ten));
  const rulers = words
    .filter(({ text }) => text === String(to))
    .map((last) => {
      const near = words.filter(
        (one) =>
          Math.abs(line(one) - line(last)) < 2 && Math.abs(along(one) - along(last)) < to + 5,
      );
      return named.flatMap((name) => near.find(({ text }) => text === name) ?? []);
    });
  return rulers.find((found) => found.length === named.length) ?? [];
}

const SIZES = { A4: [210, 297], letter: [215.9, 279.4] } as const;

describe.each(["A4", "letter"] as const)("a sheet printed on %s", (paper: Paper) => {
  const pages = printed(onPhoto, { paper });

  it("has the size of its paper", () => {
    // ISO 216 and ANSI/ASME Y14.1 (from memory); browsers round to parts of a point.
    for (const page of pages) {
      expect(Math.abs(page.width - SIZES[paper][0])).toBeLessThan(0.2);
      expect(Math.abs(page.height - SIZES[paper][1])).toBeLessThan(0.2);
    }
  });

  it("has 100.00 ± 0.05 mm between the ends of the ruler on every page", () => {
    for (const page of pages) {
      const numbers = numbersOf(page, 100, height, middle);
      expect(numbers).toHaveLength(11);
      for (const [ten, number] of numbers.entries()) {
        const from = middle(number) - middle(numbers[0] as Word);
        expect(Math.abs(from - 10 * ten)).toBeLessThan(0.05);
      }
    }
  });

  it("has 50.00 ± 0.05 mm between the ends of the ruler beside the face", () => {
    const numbers = numbersOf(pages[0] as Page, 50, ({ left }) => left, height);
    expect(numbers).toHaveLength(6);
    for (const [ten, number] of numbers.entries()) {
      const up = height(numbers[0] as Word) - height(number);
      expect(Math.abs(up - 10 * ten)).toBeLessThan(0.05);
    }
  });

  it("numbers its pages", () => {
    for (const [index, { words }] of pages.entries()) {
      const last = words.slice(-3).map(({ text }) => text);
      expect(last).toEqual([String(index + 1), "/", String(pages.length)]);
    }
  });
});

describe.each(PICTURED_PLANS)("the printed sheet of a plan: %s", (_, shown) => {
  it.each(["A4", "letter"] as const)("on %s is whole", (paper) => {
    const pages = printed(shown, { paper, overlap: true });
    const said = pages.map(({ words }) => words.map(({ text }) => text).join(" "));
    for (const [index, page] of pages.entries()) {
      for (const { left, right, top, bottom, text } of page.words) {
        expect(left, text).toBeGreaterThan(5);
        expect(right, text).toBeLessThan(page.width - 5);
        expect(top, text).toBeGreaterThan(5);
        expect(bottom, text).toBeLessThan(page.height - 5);
      }
      expect(numbersOf(page, 100, height, middle), `page ${index + 1}`).toHaveLength(11);
      // No page is nearly blank: a foot has 85 words.
      expect(page.words.length).toBeGreaterThan(150);
    }
    // No item of a list runs on from one page to the next.
    const squeezed = said.map((text) => text.replaceAll(/\s+/g, ""));
    for (const note of [...cautionsToSay(shown), ...shown.reasons]) {
      const text = say(note).replaceAll(/\s+/g, "");
      expect(
        squeezed.some((one) => one.includes(text)),
        say(note),
      ).toBe(true);
    }
  });
});

describe("sheets on paper", () => {
  it.each([
    ["by hand", plan],
    ["of a detector", onPhoto],
  ])("take two pages: %s", (_, shown) => {
    expect(printed(shown)).toHaveLength(2);
  });

  it.each([
    ["Spanish", { words: SPANISH }],
    ["Hebrew letters, dark", { words: PSEUDO_RTL, theme: "dark" }],
    ["Arabic letters, in black alone", { words: PSEUDO_ARABIC, theme: "monochrome" }],
    ["large type", { leastType: 14, paper: "letter" }],
    ["inches, large type", { words: { ...SPANISH, lengths: "inch" }, leastType: 12 }],
  ] as const)("are at true size, whatever they say: %s", (_, look) => {
    const digits = "words" in look ? look.words.digits : undefined;
    for (const page of printed(onPhoto, look)) {
      const words = page.words.map((word) => ({ ...word, text: inLatin(word.text, digits) }));
      const numbers = numbersOf({ ...page, words }, 100, height, middle);
      expect(numbers).toHaveLength(11);
      // Marks of direction have a width in some fonts: of numbers with as many digits they lie alike.
      const [first, last] = [numbers[1], numbers[9]] as [Word, Word];
      // What is wider than its page is printed smaller: a page from right to left was, by 0.3 %.
      expect(Math.abs(middle(last) - middle(first) - 80)).toBeLessThan(0.04);
    }
  });

  it.each(["A4", "letter"] as const)(
    "to practise on take one page of %s, at true size",
    (paper) => {
      for (const shown of [plan, onPhoto]) {
        const pages = pagesOf(drawPractice(shown, { paper }));
        expect(pages).toHaveLength(1);
        const numbers = numbersOf(pages[0] as Page, 100, height, middle);
        const [first, last] = [numbers[0], numbers[10]] as [Word, Word];
        expect(Math.abs(middle(last) - middle(first) - 100)).toBeLessThan(0.05);
      }
    },
  );

  it("repeat the head of a table that runs on to the next page", () => {
    const pages = printed(plan, { check, leastType: 11 });
    const shown = pages
      .map(({ words }) => words.map(({ text }) => text).join(" "))
      .filter((text) => /\bthickness\b/.test(text));
    expect(shown.length).toBeGreaterThan(0);
    for (const text of shown) expect(text).toMatch(/drawn − planned|left − right/);
  });
});

/** A number in the digits of English, without marks of direction. */
function inLatin(text: string, digits = "0123456789"): string {
  return text
    .replace(/[\u2066-\u2069]/g, "")
    .replace(/./g, (one) => (digits.includes(one) ? String(digits.indexOf(one)) : one));
}
