import { GeometryError } from "./geometry-error.js";

/**
 * Something a reader of a result must know: a default that was used, a thing changed on the way in.
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

/**
 * Makes a note from a sentence with places for its values: `{name}`, or `{name:1}` for a number
 * with one decimal.
 *
 * @throws GeometryError `out-of-range` where the sentence names a value that is not given
 *
 * @example
 * ```ts
 * import { note } from "brow-geometry/units";
 * note("tilt", "The head is tilted by {angle:1}°.", { angle: 3.14 }).text; // → "The head is tilted by 3.1°."
 * ```
 */
export function note<Code extends string>(
  code: Code,
  sentence: string,
  values: NoteValues = {},
): Note<Code> {
  const text = sentence.replace(
    /\{(?<name>\w+)(?::(?<decimals>\d))?\}/g,
    (place: string, name: string, decimals: string | undefined) => {
      const value = values[name];
      if (value === undefined) {
        throw new GeometryError("out-of-range", {
          where: "note",
          field: `values.${name}`,
          value,
          need: `the value for ${place} in "${sentence}"`,
        });
      }
      return typeof value === "number" && decimals !== undefined
        ? withoutMinusZero(value.toFixed(Number(decimals)))
        : String(value);
    },
  );
  return { code, text, values };
}

function withoutMinusZero(text: string): string {
  return /^-0(?:\.0*)?$/.test(text) ? text.slice(1) : text;
}
