import type { CompleteDots } from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import type { PlannableFace, WeighedChoices } from "../../mapping/index.js";
import type { OutlineOptions } from "../../proportions/index.js";
import type { Sides } from "../../units/index.js";
import { refuse, SIDES } from "../../units/internal.js";
import { say, type Words } from "../../words/index.js";
import { decimal, label } from "../../words/internal.js";
import { shownLength } from "../canvas/figures.js";
import { numberedTitle, verdictOf } from "../sheet/choice-words.js";

/** The brows that choices come to, and the numbers of those choices, counted from 1. */
export interface Variant {
  readonly numbers: readonly number[];
  readonly titles: readonly string[];
  /** What rules the choices out, in words. */
  readonly ruledOut: readonly string[];
  readonly dots: Sides<CompleteDots<"mm">>;
  readonly shape: OutlineOptions;
}

/** Brows whose dots lie no farther apart are the same, in millimetres: no picture shows less. */
const SAME = 0.05;

/** What weighed choices come to, each result once, in their order. */
export function variantsOf(
  face: PlannableFace,
  { rows }: WeighedChoices,
  words: Words,
): readonly [Variant, ...Variant[]] {
  const found: Variant[] = [];
  for (const [index, row] of rows.entries()) {
    if (row.kind === "no-solution") continue;
    const { dots, choices } = row;
    const shape = choices.shape ?? {};
    const one = {
      numbers: [index + 1],
      titles: [numberedTitle(face, choices, index + 1, words)],
      ruledOut: verdictOf(row).map((reason) => `✕ ${say(reason, words)}`),
      dots,
      shape,
    };
    const same = found.findIndex(
      (other) => farthest(one, other) <= SAME && isShapedAs(shape, other.shape),
    );
    const known = found[same];
    if (known === undefined) found.push(one);
    else {
      const numbers = [...known.numbers, ...one.numbers];
      found[same] = { ...known, numbers, titles: [...known.titles, ...one.titles] };
    }
  }
  const [first, ...others] = found;
  if (first !== undefined) return [first, ...others];
  const need = "at least one choice that can be planned";
  return refuse("wrong-count", "weighed.rows", rows, need);
}

function isShapedAs(one: OutlineOptions, other: OutlineOptions): boolean {
  const names = new Set([...Object.keys(one), ...Object.keys(other)]) as Set<keyof OutlineOptions>;
  return [...names].every((name) => one[name] === other[name]);
}

/** The variant that a row leads to; that of the first row that can be planned where none is asked for. */
export function currentOf(
  variants: readonly [Variant, ...Variant[]],
  row: number | undefined,
): Variant {
  if (row === undefined) return variants[0];
  const current = variants.find(({ numbers }) => numbers.includes(row + 1));
  const need = "the place of a row that can be planned";
  return current ?? refuse("out-of-range", "current", row, need);
}

/** The greatest way from a dot of one to the same of the other, in millimetres. */
function farthest(one: Pick<Variant, "dots">, other: Pick<Variant, "dots">): number {
  const ways = SIDES.flatMap((side) =>
    DOT_NAMES.map((dot) => {
      const [from, to] = [one.dots[side][dot], other.dots[side][dot]];
      return Math.hypot(to[0] - from[0], to[1] - from[1]);
    }),
  );
  return Math.max(...ways);
}

/** The numbers of the choices that lead to a variant. */
export function numbersOf({ numbers }: Variant, words: Words): string {
  return numbers.map((number) => decimal(number, 0, words)).join(words.separator);
}

/** The choices that lead to a variant, what rules them out, and how far it lies off the current one. */
export function captionOf(variant: Variant, current: Variant, words: Words): readonly string[] {
  const told = [...variant.titles, ...variant.ruledOut];
  if (variant === current) return told;
  const length = shownLength(farthest(variant, current), words);
  return [...told, label(words, "variant-off", { length, of: numbersOf(current, words) })];
}
