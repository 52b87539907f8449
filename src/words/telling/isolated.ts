import type { Words } from "../catalogue/words.js";

/**
 * A number that keeps its order where text runs from right to left: its sign before it, a fraction behind its whole. A
 * line may end before ± only.
 */
export function isolatedNumber(number: string, { direction }: Words): string {
  return direction === "rtl" ? `\u2066${number.replace(/ (?!±)/g, "\u00A0")}\u2069` : number;
}

/** Text of its own direction, such as a name, which leaves the order of what stands around it alone. */
export function isolatedText(text: string, { direction }: Words): string {
  return direction === "rtl" && text !== "" ? `\u2068${text}\u2069` : text;
}
