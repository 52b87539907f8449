/**
 * Something that a reader of a result must know: a reason, a default that was used, what was found or
 * is to be done.
 *
 * `code` says what, and is stable; `values` are what its sentence is made of. `say` makes the sentence, in
 * the language of a catalogue.
 */
export interface Note<Code extends string = string> {
  readonly code: Code;
  readonly values: NoteValues;
  /**
   * A sentence that the note brings along, shown as it is. Notes of this library have none; those of
   * somebody's own, and those of plans that a version before 0.2 wrote, do.
   */
  readonly text?: string;
}

/** What a place in a sentence is filled with: a figure, a word, a sentence within it, or several. */
export type NoteValue = string | number | Note | readonly (string | Note)[];

/** What a note's sentence is made of. */
export type NoteValues = Readonly<Record<string, NoteValue>>;

/** Values that are numbers. */
export type Numbers<Name extends string> = { readonly [Key in Name]: number };

/** The values of a note that needs none. */
export type NoValues = unknown;

/** The codes of a list that names every note of a table and nothing else. */
export type CodeOf<
  List extends readonly (keyof Table & string)[],
  Table extends { readonly [Code in keyof Table]: Code extends List[number] ? unknown : never },
> = List[number];

/** Values for all places; none where there are no places. */
export type Given<Values> = [keyof Values] extends [never]
  ? readonly [values?: NoteValues]
  : readonly [values: Values & NoteValues];

/** Makes the notes of a table, which says what values each of them has; more may stand beside them. */
export type NoteMaker<Table> = <Code extends keyof Table & string>(
  code: Code,
  ...values: Given<Table[Code]>
) => Note<Code>;

function note<Code extends string>(code: Code, values: NoteValues = {}): Note<Code> {
  return { code, values };
}

/** What makes the notes of a table. */
export function noteMaker<Table>(): NoteMaker<Table> {
  return note as unknown as NoteMaker<Table>;
}
