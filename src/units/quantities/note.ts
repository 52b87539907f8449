import { refuse } from "./geometry-error.js";

/**
 * Something that a reader of a result must know: a default that was used, or what was changed on
 * the way in.
 *
 * `code` is stable and meant for programs and translations, `values` are what its sentence is made
 * of, `text` is that sentence in English.
 */
export interface Note<Code extends string = string> {
  readonly code: Code;
  readonly text: string;
  readonly values: NoteValues;
}

/** What a note's sentence is made of. */
export type NoteValues = Readonly<Record<string, string | number>>;

/** Sentences by their codes, with places for values: `{name}`, or `{name:1}` with one decimal. */
export type Sentences<Code extends string = string> = Readonly<Record<Code, string>>;

/**
 * The codes of a list that names every sentence of a table and nothing else. Schemas read the list: whoever
 * only parses must not carry the sentences.
 */
export type CodeOf<
  List extends readonly (keyof Table & string)[],
  Table extends { readonly [Code in keyof Table]: Code extends List[number] ? string : never },
> = List[number];

/** The names of the places in a sentence. */
type Places<Sentence extends string> = Sentence extends `${string}{${infer Place}}${infer Rest}`
  ? (Place extends `${infer Name}:${string}` ? Name : Place) | Places<Rest>
  : never;

/** Values for every place in a sentence; more may stand beside them. */
export type ValuesFor<Sentence extends string> = NoteValues & {
  readonly [Name in Places<Sentence>]: string | number;
};

/** Nothing to fill in where a sentence has no places. */
type Filling<Sentence extends string> = [Places<Sentence>] extends [never]
  ? readonly [values?: NoteValues]
  : readonly [values: ValuesFor<Sentence>];

/** The note that a table of sentences has under a code, with a value for every place in its sentence. */
export function note<Table extends Sentences, Code extends keyof Table & string>(
  sentences: Table,
  code: Code,
  ...[values = {}]: Filling<Table[Code]>
): Note<Code> {
  return { code, text: filled("note", sentences[code] ?? "", values), values };
}

/** A sentence with its values filled in, for words that are no note. */
export function fill<Sentence extends string>(
  sentence: Sentence,
  ...[values = {}]: Filling<Sentence>
): string {
  return filled("fill", sentence, values);
}

function filled(where: string, sentence: string, values: NoteValues): string {
  return sentence.replace(
    /\{(?<name>\w+)(?::(?<decimals>\d))?\}/g,
    (place: string, name: string, decimals: string | undefined) => {
      const value = values[name];
      if (value === undefined) {
        const need = `the value for ${place} in "${sentence}"`;
        refuse("out-of-range", where, `values.${name}`, value, need);
      }
      return typeof value === "number" && decimals !== undefined
        ? fixed(value, Number(decimals))
        : String(value);
    },
  );
}

/** Adding 0 turns −0 into 0. */
function fixed(value: number, decimals: number): string {
  return (Number(value.toFixed(decimals)) + 0).toFixed(decimals);
}
