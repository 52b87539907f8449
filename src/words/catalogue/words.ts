import type { FindingCode } from "../../capture/index.js";
import type { FigureStyle } from "./figures.js";
import type { Labels } from "./labels.js";
import type { Notes } from "./notes.js";
import type { Terms } from "./terms.js";

/** A sentence with places for values; where its form depends on them, such as a plural, what picks it by them. */
export type Sentence<Values> = string | ((values: Values) => string);

/** Sentences of notes, by their codes. */
export type Sentences<Codes> = { readonly [Code in keyof Codes]: Sentence<Codes[Code]> };

/**
 * A catalogue: everything that this library says, in one language.
 *
 * A sentence has places for the values of its note: `{name}`; `{name:1}`, with one decimal; `{name:mm}`
 * or `{name:1mm}`, a length of so many millimetres, written in the reader's unit; `{name:mm2}`, an area; `{name:dots}`, the word that a vocabulary of `terms` has for it. A value that
 * is a note is said in its place. Where words bend with a value, a function picks the sentence by it. A number may
 * stand in the place of a name: `{50:mm}`.
 */
export interface Words extends FigureStyle {
  /** Language, as BCP 47 names it. */
  readonly language: string;
  /** Which way it is read. Pictures never mirror a face for it: right and left stay the client's own. */
  readonly direction: "ltr" | "rtl";
  /** What stands between the parts of a list. */
  readonly separator: string;
  readonly sentences: Sentences<Notes>;
  /** What to do about a finding, said after it. */
  readonly advice: { readonly [Code in FindingCode]: string };
  /** What pictures and sheets are labelled with. */
  readonly labels: Sentences<Labels>;
  readonly terms: Terms;
}

/** How a place in a sentence may be written behind its name. */
type Format = keyof Terms | `${number}` | "mm" | `${number}mm` | "mm2";

/** The places of a sentence that its note has no value for, or whose format there is not. */
type Misfits<Sentence, Values> = Sentence extends `${string}{${infer Place}}${infer Rest}`
  ? | (Place extends `${infer Name}:${infer How}`
        ? How extends Format
          ? Exclude<Name, keyof Values | `${number}`>
          : Place
        : Exclude<Place, keyof Values | `${number}`>)
    | Misfits<Rest, Values>
  : never;

/** What a sentence may read, in each of its forms. */
type Forms<Given> = Given extends (...values: never) => infer Form ? Form : Given;

type Fitting<Given, Codes> = {
  readonly [Code in keyof Given]: Code extends keyof Codes
    ? [Misfits<Forms<Given[Code]>, Codes[Code]>] extends [never]
      ? Given[Code]
      : { readonly "has no place for": Misfits<Forms<Given[Code]>, Codes[Code]> }
    : never;
};

/**
 * A catalogue whose sentences the compiler has checked: there is one for every code, and each fills its
 * places with values that its note has.
 *
 * @example
 * ```ts
 * import { ENGLISH, say, wordsOf } from "brow-geometry/words";
 * const words = wordsOf({
 *   ...ENGLISH,
 *   sentences: { ...ENGLISH.sentences, "one-iris": "Only one iris was measured, the {side:sides} one." },
 * });
 * say({ code: "one-iris", values: { side: "left" } }, words); // → "Only one iris was measured, the left one."
 * ```
 */
export function wordsOf<const Given extends Words>(
  words: Given & {
    readonly sentences: Fitting<Given["sentences"], Notes>;
    readonly advice: Fitting<Given["advice"], Notes>;
    readonly labels: Fitting<Given["labels"], Labels>;
  },
): Words {
  return words;
}
