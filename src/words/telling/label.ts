import type { Given } from "../../units/internal.js";
import type { Labels } from "../catalogue/labels.js";
import type { Words } from "../catalogue/words.js";
import { fill } from "./say.js";

/** A label of a catalogue, with its places filled. */
export function label<Code extends keyof Labels>(
  words: Words,
  code: Code,
  ...[values = {}]: Given<Labels[Code]>
): string {
  return fill(words.labels[code], values, words);
}
