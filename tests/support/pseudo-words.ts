import { ENGLISH, type Sentence, type Words } from "brow-geometry/words";

/** English with every letter outside of its places in another alphabet, by its number. */
function marked(sentence: string, first: number, letters: number): string {
  return sentence.replace(/\{[^}]*\}|[A-Za-z]/g, (found) =>
    found.length > 1
      ? found
      : String.fromCodePoint(first + ((found.toLowerCase().charCodeAt(0) - 97) % letters)),
  );
}

/** A table with its texts in another alphabet, and what its functions pick. */
function allMarked<Table extends object>(table: Table, mark: (sentence: string) => string): Table {
  return Object.fromEntries(
    Object.entries(table).map(([key, text]: [string, Sentence<never>]) => [
      key,
      typeof text === "string" ? mark(text) : (values: never) => mark(text(values)),
    ]),
  ) as Table;
}

function inLetters(first: number, letters: number, mark = marked): Words {
  const table = <Table extends object>(given: Table): Table =>
    allMarked(given, (sentence) => mark(sentence, first, letters));
  return {
    ...ENGLISH,
    sentences: table(ENGLISH.sentences),
    advice: table(ENGLISH.advice),
    labels: table(ENGLISH.labels),
    terms: {
      ...(Object.fromEntries(
        Object.entries(ENGLISH.terms).map(([name, words]) => [name, table(words)]),
      ) as unknown as Words["terms"]),
      lengthSigns: ENGLISH.terms.lengthSigns,
    },
  };
}

/** A language of no meaning in Greek letters, from left to right. */
export const PSEUDO: Words = { ...inLetters(0x3b1, 24), language: "el" };

/** A language of no meaning in Hebrew letters, from right to left, with signs of units in Latin ones. */
export const PSEUDO_RTL: Words = { ...inLetters(0x5d0, 26), language: "he", direction: "rtl" };

/** A language of no meaning in Arabic letters, from right to left, with its own digits and signs of units. */
export const PSEUDO_ARABIC: Words = {
  ...inLetters(0x628, 19),
  language: "ar",
  direction: "rtl",
  digits: "٠١٢٣٤٥٦٧٨٩",
  decimalSign: "٫",
  terms: {
    ...inLetters(0x628, 19).terms,
    lengthSigns: { mm: "مم", cm: "سم", inch: "بوصة" },
  },
};

/** Without spaces between words, with full-width signs, and a character for two letters. */
function ideographs(sentence: string, first: number, letters: number): string {
  const signs: Readonly<Record<string, string>> = { ",": "、", ";": "；", ":": "：", ".": "。" };
  return marked(sentence.replace(/(\{[^}]*\})|([A-Za-z])[A-Za-z]/g, "$1$2"), first, letters)
    .replace(/([,;:.])(?: |$)/g, (_, sign: string) => signs[sign] ?? sign)
    .replace(/(?<=[\u3000-\u9fff]) | (?=[\u3000-\u9fff])/g, "");
}

/** A language of no meaning in Chinese characters, without spaces. */
export const PSEUDO_CHINESE: Words = { ...inLetters(0x7709, 26, ideographs), language: "zh-Hans" };
