import { ENGLISH, type Sentences, wordsOf } from "brow-geometry/words";
import { describe, it } from "vitest";

interface Two {
  readonly one: unknown;
  readonly other: unknown;
}

describe("a catalogue", () => {
  it("has a sentence for every code", () => {
    const say = ({ one }: Sentences<Two>): string => one;
    // @ts-expect-error: no sentence for "other"
    say({ one: "One." });
  });

  it("has places for values of its notes only, in formats that there are", () => {
    const { sentences } = ENGLISH;
    wordsOf({ ...ENGLISH, sentences: { ...sentences, "one-iris": "The {side:sides} one." } });
    // @ts-expect-error: "one-iris" has no width
    wordsOf({ ...ENGLISH, sentences: { ...sentences, "one-iris": "{width:1} wide." } });
    // @ts-expect-error: there is no such vocabulary
    wordsOf({ ...ENGLISH, sentences: { ...sentences, "one-iris": "{side:flanks}." } });
  });
});
