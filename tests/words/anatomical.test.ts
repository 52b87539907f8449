import { ANATOMICAL, ENGLISH, say, type Sentence } from "brow-geometry/words";
import { describe, expect, it } from "vitest";
import { PICTURES, textsOf } from "../support/every-picture.js";
import { keysOf } from "../../src/units/internal.js";

const { landmarks } = ENGLISH.terms;
/** Names of landmarks that artists say otherwise, and the parts of which several are made. */
const plain = [
  ...keysOf(landmarks)
    .filter((name) => ANATOMICAL.terms.landmarks[name] !== landmarks[name])
    .map((name) => landmarks[name])
    // A chin is raised in anatomy, too, and a lip has a margin.
    .filter((name) => !["chin", "upper lip"].includes(name)),
  "eye corner",
  "corners? of the (?:eyes?|mouth)",
  "edges? of (?:the|both|an) iris",
  "nose wing",
];
const artists = new RegExp(`\\b(?:${plain.join("|")})`, "gi");
const found = (texts: readonly string[]): readonly string[] =>
  texts.flatMap((text) => text.match(artists) ?? []);

const textsIn = (table: object): readonly string[] =>
  Object.values<Sentence<never>>(table as never).map((text) =>
    typeof text === "string" ? text : text({ field: [], count: 2 } as never),
  );

describe("anatomical English", () => {
  it("names no landmark as artists do, where English names none as researchers do", () => {
    const { sentences, advice, labels, terms } = ANATOMICAL;
    const { standIns, ...others } = terms;
    const texts = [sentences, advice, labels, ...Object.values(others)].flatMap(textsIn);
    expect(found(texts)).toEqual([]);
    expect(found(textsIn(standIns).filter((text) => !text.includes("base of the nose")))).toEqual(
      [],
    );
    expect(texts.filter((text) => /\bthe the\b|\ban? (?:endo|exo)canthia\b/.test(text))).toEqual(
      [],
    );
  });

  it.each(PICTURES)("in the picture of %s, too", (_, drawn) => {
    expect(found(drawn({ words: ANATOMICAL }).flatMap(textsOf))).toEqual([]);
  });

  it("would be found out where it did", () => {
    expect(found(["above the nose wing", "the outer eye corners"]).length).toBe(2);
  });

  it("says all else as English does", () => {
    const moved = { code: "way-up", values: { by: 1.5 } };
    expect(say(moved, ANATOMICAL)).toBe(say(moved));
    const chosen = { code: "start-chosen", values: { convention: "alare-vertical" } };
    expect(say(chosen)).toBe("Start as chosen: above the nose wing.");
    expect(say(chosen, ANATOMICAL)).toBe("Start as chosen: above alare.");
    const arch = { side: "left", limit: "lateral-limbus-vertical", distance: 2, u: 0.4 };
    expect(say({ code: "arch-moved-inward", values: arch }, ANATOMICAL)).toContain(
      "to the vertical of the lateral limbus:",
    );
  });
});
