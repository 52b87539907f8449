import type { FindingCode } from "../../capture/index.js";
import { notProven } from "../../capture/internal.js";
import type { Move } from "../../mapping/index.js";
import { noteOfMove } from "../../mapping/internal.js";
import type { Note, NoteValue, NoteValues } from "../../units/index.js";
import { refuse, refusingAs } from "../../units/internal.js";
import type { Sentence, Words } from "../catalogue/words.js";
import { areaIn, decimal, lengthIn } from "./figures.js";
import { isolatedText } from "./isolated.js";
import { ENGLISH } from "../english/english.js";

/** A note, which may carry another one within it. */
type Said = Note & { readonly finding?: Note };

/**
 * A note, or a move, as a sentence of a catalogue; by default the English one. A note that brings a
 * sentence of its own along is said with it.
 *
 * @throws GeometryError `out-of-range` for a code that the catalogue does not know, and for a value that its
 * sentence needs and the note lacks
 *
 * @example
 * ```ts
 * import { halfFaces, mm, say } from "brow-geometry";
 * const { note } = halfFaces({
 *   right: { exocanthion: mm([-41, 0]) },
 *   left: { exocanthion: mm([47, 0]) },
 *   midline: { sellion: mm([0, 10]) },
 * });
 * note && say(note);
 * // → "The halves of the face differ by 6.0 mm in width: the head is turned by about 8°, or the face is that uneven. The photo cannot tell, and no dot is moved for it."
 * ```
 */
export function say(said: Said | Move, words: Words = ENGLISH): string {
  return refusingAs("say", () => {
    const note: Said = "code" in said ? said : noteOfMove(said);
    const { code, text } = note;
    if (text !== undefined) return text;
    if (!isKnown(code, words.sentences)) {
      refuse("out-of-range", "code", code, "a code of the catalogue, or a text beside it");
    }
    const values = valuesOf(note);
    const found = fill(words.sentences[code], values, words);
    if (!isKnown(code, words.advice)) return found;
    const doubt =
      values.outcome === "undecided"
        ? [fill(words.sentences["not-proven"], inUnitOf(code, values), words)]
        : [];
    return [found, ...doubt, fill(words.advice[code], values, words)].join(" ");
  });
}

/**
 * What to do about a finding, in the words of a catalogue: the end of what `say` says.
 *
 * @throws GeometryError as {@link say}
 *
 * @example
 * ```ts
 * import { sayAdvice } from "brow-geometry/words";
 * sayAdvice({ code: "sides-exchanged", values: {} });
 * // → "Say how the picture is mirrored, or exchange right and left."
 * ```
 */
export function sayAdvice(finding: Note<FindingCode>, words: Words = ENGLISH): string {
  return refusingAs("sayAdvice", () => {
    const { code, values }: Note = finding;
    if (!isKnown(code, words.advice)) {
      refuse("out-of-range", "code", code, "the code of a finding");
    }
    return fill(words.advice[code], values, words);
  });
}

function inUnitOf(code: FindingCode, values: NoteValues): NoteValues {
  return typeof values.u === "number" ? notProven(code, values.u).values : values;
}

function isKnown<Table extends object>(code: string, table: Table): code is keyof Table & string {
  return Object.hasOwn(table, code);
}

function valuesOf({ values, finding }: Said): NoteValues {
  return finding === undefined ? values : { finding, ...values };
}

/** A sentence of a catalogue with its places filled. */
export function fill(sentence: Sentence<never>, values: NoteValues, words: Words): string {
  const picked = sentence as Sentence<NoteValues>;
  return (typeof picked === "string" ? picked : picked(values)).replace(
    /\{(?<name>[\w.]+)(?::(?<format>\w+))?\}/g,
    (place: string, name: string, format: string | undefined) => {
      const value = values[name] ?? (/^\d/.test(name) ? Number(name) : undefined);
      if (value === undefined) {
        refuse("out-of-range", `values.${name}`, value, `a value for ${place}`);
      }
      return shown(value, format, words);
    },
  );
}

function shown(value: NoteValue, format: string | undefined, words: Words): string {
  if (typeof value === "number") {
    return format === "shares" ? shareFigure(value, words) : figure(value, format, words);
  }
  if (typeof value === "string") return term(value, format, words);
  if ("code" in value) return say(value, words);
  return value.map((one) => shown(one, format, words)).join(words.separator);
}

function term(value: string, vocabulary: string | undefined, words: Words): string {
  const { terms } = words;
  const table: Readonly<Record<string, string>> =
    vocabulary !== undefined && isKnown(vocabulary, terms) ? terms[vocabulary] : {};
  return Object.hasOwn(table, value)
    ? fill(table[value] ?? value, {}, words)
    : isolatedText(value, words);
}

/** A share that has a name, or as a number. */
export function shareFigure(value: number, words: Words): string {
  const { shares } = words.terms;
  const key = value.toFixed(2);
  return (Object.hasOwn(shares, key) ? shares[key] : undefined) ?? decimal(value, 2, words);
}

/** A number with so many decimals, or as it is; where it is a length or an area, in the reader's unit. */
function figure(value: number, format = "", words: Words): string {
  if (format === "mm2") return areaIn(value, words);
  const [, digits = "", unit = ""] = /^(\d*)(mm)?$/.exec(format) ?? [];
  const decimals = digits === "" ? decimalsOf(value) : Number(digits);
  if (unit === "") return decimal(value, decimals, words);
  // A length as it is, such as a limit, takes the finest marks that a ruler has.
  return lengthIn(value, digits === "" && words.lengths === "inch" ? 1 : decimals, words);
}

/** As many as a number is written with. */
function decimalsOf(value: number): number {
  return (String(value).split(".")[1] ?? "").length;
}
