import * as z from "zod/mini";

/**
 * A zod schema of exactly one type: neither wider nor narrower than what it names.
 *
 * Each issue's message says what is needed, as the end of a sentence: "needs …".
 */
export interface Schema<in out Type> extends z.ZodMiniType<Type> {
  /** Compile time only: keeps a schema of a part of a union from passing for the whole. */
  readonly "~exactly"?: (value: Type) => Type;
}

type OptionalKey<Type> = {
  [Key in keyof Type]-?: object extends Pick<Type, Key> ? Key : never;
}[keyof Type];

/** One schema for each key that the type requires, and for no other. */
export type RequiredShape<Type> = {
  readonly [Key in Exclude<keyof Type, OptionalKey<Type>>]: Schema<Type[Key]>;
};

/** One schema for each key that the type leaves open, and for no other. */
export type OptionalShape<Type> = {
  readonly [Key in OptionalKey<Type>]-?: Schema<Exclude<Type[Key], undefined>>;
};

/** A schema for each key of a type: those that it requires, then, where it has such, those it leaves open. */
type Shapes<Type> = readonly [
  required: RequiredShape<Type>,
  ...(OptionalKey<Type> extends never ? [] : [optional: OptionalShape<Type>]),
];

/**
 * An object with the keys of its type and no others. An optional key is absent or has a value: a
 * written `undefined` is refused, as `exactOptionalPropertyTypes` has it.
 */
export function record<Type extends object>(...[required, optional]: Shapes<Type>): Schema<Type> {
  const shape: Record<string, z.ZodMiniType> = { ...(required as Record<string, z.ZodMiniType>) };
  for (const [key, schema] of Object.entries({ ...(optional as Record<string, z.ZodMiniType>) })) {
    shape[key] = z.exactOptional(schema);
  }
  const names = Object.keys(shape).join(", ");
  const known = z.strictObject(shape, {
    error: ({ code }) =>
      code === "unrecognized_keys" ? `another name: one of ${names}` : `an object with ${names}`,
  });
  return known as unknown as Schema<Type>;
}

/** An array of at most `most` items: a schema that reads foreign data has to know where to stop. */
export function list<Item>(item: Schema<Item>, most: number, atLeast = 0): Schema<readonly Item[]> {
  const error =
    atLeast === 0 ? `a list of at most ${most} items` : `a list of ${atLeast} to ${most} items`;
  return z.array(item, error).check(z.maxLength(most, error), z.minLength(atLeast, error));
}

/** One of some words. */
export function word<const Union extends string>(words: readonly Union[]): Schema<Union> {
  return z.enum(words as Union[], `one of ${words.join(", ")}`);
}

export function text(most: number): Schema<string> {
  const error = `text of at most ${most} characters`;
  return z.string(error).check(z.maxLength(most, error));
}

export const flag: Schema<boolean> = z.boolean("true or false");

export const finite: Schema<number> = z.number("a finite number");

export function within(lower: number, upper: number): Schema<number> {
  const error = `a number from ${lower} to ${upper}`;
  return z.number(error).check(z.gte(lower, error), z.lte(upper, error));
}

export const positive: Schema<number> = z
  .number("a finite number above 0")
  .check(z.gt(0, "a finite number above 0"));

/** The same schema under each name: a shape, or part of one. */
export function each<Name extends string, Value>(
  names: readonly Name[],
  value: Schema<Value>,
): { readonly [Key in Name]: Schema<Value> } {
  return Object.fromEntries(names.map((name) => [name, value])) as {
    [Key in Name]: Schema<Value>;
  };
}

type WithKind<Union, Kind> = Union extends { readonly kind: infer Kinds }
  ? Kind extends Kinds
    ? Union
    : never
  : never;

/** One of several kinds of object, told apart by their `kind`: for every kind its other keys. */
export function kinds<Union extends { readonly kind: string }>(shapes: {
  readonly [Kind in Union["kind"]]: Shapes<Omit<WithKind<Union, Kind>, "kind">>;
}): Schema<Union> {
  type Kind = { readonly kind: string; readonly others?: unknown };
  const entries = Object.entries<Shapes<Omit<Kind, "kind">>>(shapes as never);
  const schemas = entries.map(([kind, [required, optional]]) =>
    record<Kind>({ kind: word([kind]), ...required }, optional),
  );
  return z.discriminatedUnion("kind", schemas as never, `one of ${Object.keys(shapes).join(", ")}`);
}
