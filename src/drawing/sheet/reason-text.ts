import type { Note } from "../../units/index.js";

/**
 * A reason as a client reads it: where it repeats an error, without the name of the function, and with
 * its fields in words.
 */
export function reasonText({ text, values }: Note): string {
  const { why } = values;
  return typeof why === "string" ? text.replace(why, () => inWords(why)) : text;
}

/** Values of text stay as they were given. */
const QUOTED = /("(?:[^"\\]|\\.)*")/;

function inWords(why: string): string {
  return why
    .replace(/^\w+: /, "")
    .split(QUOTED)
    .map((part, index) => (index % 2 === 0 ? plain(part) : part))
    .join("");
}

function plain(part: string): string {
  return part
    .replace(/; needs /g, ", needs ")
    .replace(/\bpins\[(\d+)\](?:\.at\b)?/g, (_, index: string) => `pin ${Number(index) + 1}`)
    .replace(/(?<=\w)\.(?=[a-z])/g, " ")
    .replace(/\b[a-z]+(?:[A-Z][a-z]*)+\b/g, (name) =>
      name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`),
    )
    .replace(/\d+\.\d+/g, (number) => String(Number(Number(number).toFixed(DECIMALS))));
}

/** Enough to see on which side of a limit a value lies. */
const DECIMALS = 4;
