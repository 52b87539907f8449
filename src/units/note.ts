/**
 * Something a reader of a result must know: a default that was used, a thing changed on the way in.
 *
 * `code` is stable and meant for programs and translations, `values` are what its sentence is made
 * of, `text` is that sentence in English.
 */
export interface Note<Code extends string = string> {
  readonly code: Code;
  readonly text: string;
  readonly values: Readonly<Record<string, string | number>>;
}
