import * as z from "zod/mini";
import type { Line } from "../geometry/index.js";
import type { ImageSize } from "../landmarks/index.js";
import type {
  FlatPoint,
  Length,
  Measured,
  Note,
  NoteValues,
  Point,
  Polyline,
  Sides,
  Unit,
} from "../units/index.js";
import {
  finite,
  list,
  positive,
  record,
  type RequiredShape,
  type Schema,
  text,
  word,
} from "./schema.js";

/** A border drawn by hand has a dozen points, one traced by a program some hundreds. */
const MOST_POINTS_OF_A_LINE = 2000;
const MOST_CHARACTERS = 2000;
export const MOST_NOTES = 500;
const MOST_VALUES_OF_A_NOTE = 50;

const flatPair = numbers(2, "two finite numbers");
const pairOrTriple = numbers(3, "two or three finite numbers");

export function numbers(most: number, error: string): Schema<readonly number[]> {
  return z.array(finite, error).check(z.maxLength(most, error), z.minLength(2, error));
}

const border = list(pairOrTriple, MOST_POINTS_OF_A_LINE, 2);

/** A number from 0 on, such as a standard uncertainty. */
export const spread: Schema<number> = z
  .number("a finite number of at least 0")
  .check(z.gte(0, "a finite number of at least 0"));

/** A point, with depth or without. The unit is what the reader claims: numbers do not show it. */
export function point<U extends Unit>(): Schema<Point<U>> {
  return pairOrTriple as unknown as Schema<Point<U>>;
}

export function flatPoint<U extends Unit>(): Schema<FlatPoint<U>> {
  return flatPair as unknown as Schema<FlatPoint<U>>;
}

export function polyline<U extends Unit>(): Schema<Polyline<U>> {
  return border as unknown as Schema<Polyline<U>>;
}

export const length: Schema<Length<"mm">> = finite as unknown as Schema<Length<"mm">>;

/** A length from 0 on. */
export const size: Schema<Length<"mm">> = spread as unknown as Schema<Length<"mm">>;

export const positiveLength: Schema<Length<"mm">> = positive as unknown as Schema<Length<"mm">>;

export function line<U extends Unit>(): Schema<Line<U>> {
  return record({ through: flatPair, direction: flatPair }) as unknown as Schema<Line<U>>;
}

export const measured: Schema<Measured> = record<Measured>({ value: finite, u: spread });

/** A standard uncertainty that may be `Infinity`, which JSON writes as `null`: nothing is known of it. */
export const spreadIfKnown: Schema<number> = z
  .nullable(spread)
  .check(z.overwrite((u) => u ?? Infinity)) as unknown as Schema<number>;

/** What a plan reads. */
export const reading: Schema<Measured> = record<Measured>({ value: finite, u: spreadIfKnown });

export const imageSize: Schema<ImageSize> = record<ImageSize>({
  width: positive,
  height: positive,
});

/** Words of a person or a program. */
export const words: Schema<string> = text(MOST_CHARACTERS);

export function sides<Value>(value: Schema<Value>): Schema<Sides<Value>> {
  const shape = { right: value, left: value } as RequiredShape<Sides<Value>>;
  return record<Sides<Value>>(shape);
}

const aFew = `an object of at most ${MOST_VALUES_OF_A_NOTE} values`;

/** Whether an object has few keys, none of them long. */
function isShort(held: object): boolean {
  const keys = Object.keys(held);
  const isName = (key: string): boolean => key.length <= MOST_CHARACTERS;
  return keys.length <= MOST_VALUES_OF_A_NOTE && keys.every(isName);
}

/** Values that are texts, numbers, lists of texts, or of other kinds that are named. */
function valuesOf(...others: readonly z.ZodMiniType[]): Schema<NoteValues> {
  const kinds = [words, finite, list(words, MOST_NOTES), ...others];
  const values = z
    .catchall(z.object({}, aFew), z.union(kinds, "text or a finite number"))
    .check(z.refine(isShort, aFew));
  return values as unknown as Schema<NoteValues>;
}

/** A note of anybody's, with a code of their own. */
export const anyNote: Schema<Note> = record<Note>(
  { code: words, values: valuesOf() },
  { text: words },
);

/** Values of a note that may have other notes within it. */
export const noteValues: Schema<NoteValues> = valuesOf(anyNote, list(anyNote, MOST_NOTES));

export function note<Code extends string>(codes: readonly Code[]): Schema<Note<Code>> {
  return record<Note<Code>>({ code: word(codes), values: noteValues }, { text: words });
}

export function notes<Code extends string>(codes: readonly Code[]): Schema<readonly Note<Code>[]> {
  return list(note(codes), MOST_NOTES);
}
