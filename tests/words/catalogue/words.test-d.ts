import type { Side } from "brow-geometry";
import { ENGLISH, type Sentence, type Sentences, wordsOf } from "brow-geometry/words";
import { describe, it } from "vitest";

interface Two {
  readonly one: unknown;
  readonly other: unknown;
}

describe("a catalogue", () => {
  it("has a sentence for every code", () => {
    const say = ({ one }: Sentences<Two>): Sentence<unknown> => one;
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

  it("may pick a sentence by the values of its note, each of whose forms is checked", () => {
    const ofRight = "The {side:sides} one.";
    const sentences = {
      ...ENGLISH.sentences,
      "one-iris": ({ side }: { readonly side: Side }) => (side === "right" ? ofRight : "The left."),
    } as const;
    wordsOf({ ...ENGLISH, sentences });
    const wide = () => "{width:1} wide." as const;
    // @ts-expect-error: "one-iris" has no width
    wordsOf({ ...ENGLISH, sentences: { ...sentences, "one-iris": wide } });
    const counted = ({ count }: { readonly count: number }) => (count > 1 ? "Many." : "One.");
    // @ts-expect-error: "one-iris" has no count
    wordsOf({ ...ENGLISH, sentences: { ...sentences, "one-iris": counted } });
  });
});
