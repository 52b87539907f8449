/** Why a question has no answer: stable names that an app can translate. */
export type GeometryErrorCode =
  | "not-finite"
  | "out-of-range"
  | "wrong-count"
  | "missing-landmark"
  | "coincident-points"
  | "sides-swapped"
  | "image-size-needed"
  | "contradicting-pins"
  | "ill-conditioned"
  | "inconsistent"
  | "not-parsed"
  | "no-solution";

/** What a {@link GeometryError} says: which function and field, the value found, what is needed. */
export interface GeometryErrorDetail {
  /** Name of the function that was called. */
  readonly where: string;
  /** Path of the offending field, such as `right.endocanthion`. */
  readonly field: string;
  /** The value found there. */
  readonly value: unknown;
  /** What would be accepted instead, as the end of a sentence: "needs …". */
  readonly need: string;
  /** What else is wrong with the same input, where all of it was looked through. */
  readonly also?: readonly Omit<GeometryErrorDetail, "where" | "also">[];
}

/**
 * The one error that geometry throws: the question is well-typed and has no answer.
 *
 * @example
 * ```ts
 * import { lineThrough } from "brow-geometry/geometry";
 * import { mm } from "brow-geometry";
 * lineThrough(mm([1, 2]), mm([1, 2])); // throws GeometryError: lineThrough
 * ```
 */
export class GeometryError extends RangeError {
  override readonly name = "GeometryError";
  readonly code: GeometryErrorCode;
  readonly detail: GeometryErrorDetail;

  constructor(code: GeometryErrorCode, detail: GeometryErrorDetail, options?: ErrorOptions) {
    super([detail.where, sentences(detail)].filter(Boolean).join(": "), options);
    this.code = code;
    this.detail = detail;
  }
}

/** Ends a question that has no answer. {@link refusingAs} adds whose question it was. */
export function refuse(
  code: GeometryErrorCode,
  field: string,
  value: unknown,
  need: string,
): never {
  throw new GeometryError(code, { where: "", field, value, need });
}

const LONGEST_SHOWN = 80;
const SHOWN_DECIMALS = 4;
const MOST_SENTENCES = 3;

function sentences(detail: GeometryErrorDetail): string {
  const problems = [detail, ...(detail.also ?? [])].map(
    ({ field, value, need }) => `${field} is ${shownValue(value)}; needs ${need}`,
  );
  const unsaid = problems.length - MOST_SENTENCES;
  const said = problems.slice(0, MOST_SENTENCES).join(". ");
  return unsaid > 0 ? `${said}. And ${unsaid} more` : said;
}

/** A path as one would write it in code: `right.brow.upper[3][0]`. */
export function writtenPath(path: readonly PropertyKey[]): string {
  return path
    .map((step) => (typeof step === "number" ? `[${step}]` : `.${String(step)}`))
    .join("")
    .replace(/^\./, "");
}

/** A value in text of at most 80 characters, its numbers to so many decimals as tell. */
export function shownValue(value: unknown): string {
  const text = asText(value, 0);
  return text.length <= LONGEST_SHOWN ? text : `${text.slice(0, LONGEST_SHOWN - 1)}…`;
}

/** More decimals say nothing of a pixel or a millimetre; what would be nothing then keeps all of its own. */
function rounded(value: unknown): unknown {
  return typeof value === "number" ? Number(value.toFixed(SHOWN_DECIMALS)) || value : value;
}

function asText(value: unknown, depth: number): string {
  if (value === undefined) return "missing";
  if (typeof value === "number") return String(rounded(value));
  if (Array.isArray(value)) {
    // More items than fit are not worth their text, and neither are deeper ones.
    if (depth >= LONGEST_SHOWN) return "[…]";
    const items = value.slice(0, LONGEST_SHOWN).map((item) => asText(item, depth + 1));
    return `[${items.join(", ")}]`;
  }
  if (typeof value === "function" || typeof value === "symbol") return typeof value;
  return typeof value === "bigint" ? `${value}n` : asJson(value);
}

/** An error must not fail over what it shows: a value may hold itself, or nest without end. */
function asJson(value: unknown): string {
  try {
    return JSON.stringify(value, (_key, part: unknown) => rounded(part));
  } catch {
    return "an object that JSON cannot hold";
  }
}

/**
 * Runs what a function is made of, so that whatever refuses inside of it is reported by that
 * function's name: the one that the user called. Public functions that refuse begin with it; what they are made of
 * need not know who asked.
 *
 * @throws GeometryError as `run`, with another `where`
 */
export function refusingAs<Result>(where: string, run: () => Result): Result {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof GeometryError) || error.detail.where === where) throw error;
    throw new GeometryError(error.code, { ...error.detail, where }, { cause: error });
  }
}

/** What a question answers; nothing where it is refused in a way that is an answer too. */
export function unlessRefused<Answer>(
  ask: () => Answer,
  isAnswer: (code: GeometryErrorCode) => boolean,
): Answer | undefined {
  try {
    return ask();
  } catch (error) {
    if (error instanceof GeometryError && isAnswer(error.code)) return undefined;
    throw error;
  }
}
