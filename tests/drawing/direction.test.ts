import { say } from "brow-geometry";
import { drawStrip } from "brow-geometry/drawing";
import { ENGLISH, SPANISH, type Words } from "brow-geometry/words";
import { label } from "../../src/words/internal.js";
import { describe, expect, it } from "vitest";
import { check, onPhoto, PICTURES, plan, textsOf } from "../support/every-picture.js";
import { parseXml, type XmlElement } from "../support/parse-xml.js";
import { PSEUDO_ARABIC, PSEUDO_RTL } from "../support/pseudo-words.js";
import { expectInside, expectNoCollisions } from "./expect-tidy.js";
import { type Picture, pictureOf, picturesOf, withClass } from "./picture.js";

/** English set from right to left: its texts are as wide, and every other difference is one of direction. */
const TURNED: Words = { ...ENGLISH, direction: "rtl" };

/** What is drawn of a face: everything but words, their leaders and legends. */
function facePaths({ name, attributes, children }: XmlElement): readonly string[] {
  if (["legend", "leader", "notes", "true-size-ruler"].includes(attributes.class ?? "")) return [];
  const here = name === "path" || name === "circle" ? [JSON.stringify(attributes)] : [];
  return [...here, ...children.flatMap(facePaths)];
}

const bare = (text: string): string =>
  text.replace(/[\u2066-\u2069]/g, "").replaceAll("\u00A0", " ");

describe.each(PICTURES)("from right to left, the picture of %s", (what, drawn) => {
  it("says its language and its direction, whatever page it stands on", () => {
    for (const words of [ENGLISH, PSEUDO_RTL]) {
      for (const source of drawn({ words })) {
        const { name, attributes } = parseXml(source);
        expect(attributes[name === "html" ? "dir" : "direction"]).toBe(words.direction);
        expect(attributes.lang).toBe(words.language);
        for (const { root } of picturesOf(source)) {
          expect(root.attributes.direction).toBe(words.direction);
          expect(root.attributes.lang).toBe(words.language);
        }
      }
    }
  });

  it("has every face as it is, and the sides named where they are", () => {
    const [turned, usual] = [TURNED, ENGLISH].map((words) => drawn({ words }).flatMap(picturesOf));
    // Panels in the order of reading change places.
    if (!["choices", "a strip", "variants"].includes(what)) {
      expect(turned?.map(({ root }) => facePaths(root))).toEqual(
        usual?.map(({ root }) => facePaths(root)),
      );
    }
    const sides = [turned, usual].map((pages = []) =>
      pages.flatMap(({ texts }) =>
        texts
          .filter(({ text }) => text.startsWith("client’s "))
          .map(({ text, box: { x, y, width } }) => ({ text, x, y, width }))
          .sort((one, other) => one.y - other.y || one.x - other.x),
      ),
    );
    if (what !== "a strip") expect(sides[0]).toEqual(sides[1]);
    if (what !== "choices") expect(sides[0]?.length).toBeGreaterThan(1);
  });

  it("is laid out from its right edge as English is from its left", () => {
    for (const [index, source] of drawn({ words: TURNED }).entries()) {
      // Browsers turn what a document says.
      if (parseXml(source).name === "html") continue;
      const [turned, usual] = [source, drawn({ words: ENGLISH })[index] ?? ""].map(pictureOf);
      if (turned === undefined || usual === undefined) return expect.fail("not drawn");
      const edges = (text: string, picture: typeof turned): number[] => {
        const { x, width } = picture.viewBox;
        return picture.texts
          .filter((one) => bare(one.text) === text)
          .map(({ box }) => (picture === turned ? x + width - (box.x + box.width) : box.x - x))
          .sort((one, other) => one - other);
      };
      const legend = (root: XmlElement): readonly XmlElement[] =>
        root.children.flatMap((child) =>
          ["legend", "notes"].includes(child.attributes.class ?? "") ? [child] : legend(child),
        );
      const texts = legend(usual.root).flatMap(({ children }) =>
        children.filter(({ name }) => name === "text").map(({ text }) => text),
      );
      for (const text of texts) {
        const [mirrored, given] = [edges(text, turned), edges(text, usual)];
        // What stands beside the face, too, does not turn with the page.
        if (given.length > 1) continue;
        expect(mirrored.length, text).toBe(1);
        expect(mirrored[0], text).toBeCloseTo(given[0] ?? NaN, 2);
      }
    }
  });

  it.each([
    ["Hebrew letters", PSEUDO_RTL],
    ["Arabic letters and digits", PSEUDO_ARABIC],
  ])("in %s stays inside its frame, without collisions", (_, words) => {
    for (const picture of drawn({ words }).flatMap(picturesOf)) {
      expectInside(picture);
      expectNoCollisions(picture);
    }
  });

  it("keeps the order of every number, its sign, its fraction and its unit", () => {
    for (const lengths of ["mm", "inch"] as const) {
      for (const source of drawn({ words: { ...PSEUDO_RTL, lengths } })) {
        expect(textsOf(source).flatMap(torn)).toEqual([]);
      }
    }
  });
});

/** What is left of numbers with signs, fractions or units outside of isolates (UAX #9, 2.4), whose order would turn. */
function torn(text: string): readonly string[] {
  let outside = text;
  while (/[\u2066\u2068][^\u2066\u2068\u2069]*\u2069/.test(outside)) {
    outside = outside.replace(/[\u2066\u2068][^\u2066\u2068\u2069]*\u2069/g, "");
  }
  return outside.match(/[−+±]\s?\d|\d\s?[/±]|\d\s?(?:mm|in)\b/g) ?? [];
}

describe("sentences from right to left", () => {
  it("keep the order of every number, and of names", () => {
    const notes = [...plan.reasons, ...plan.cautions, ...onPhoto.reasons, ...onPhoto.cautions];
    expect(notes.flatMap((note) => torn(say(note, PSEUDO_RTL)))).toEqual([]);
    expect(check.measures.length).toBeGreaterThan(0);
    const named = { code: "area-covered", values: { name: "scar (2)" } };
    expect(say(named, PSEUDO_RTL)).toMatch(/^\u2068scar \(2\)\u2069: /);
  });

  it("would be found out where they did not", () => {
    expect(torn("up −1.5 mm")).not.toEqual([]);
    expect(torn("up \u2068\u2066−1.5\u2069\u00A0mm\u2069")).toEqual([]);
  });

  it("are the same as from left to right but for marks of direction", () => {
    for (const note of [...plan.reasons, ...onPhoto.cautions, ...plan.moves]) {
      expect(bare(say(note, TURNED))).toBe(say(note));
    }
  });
});

it("reads a strip from what grows to what is planned, its faces as they are", () => {
  const [turned, usual] = [TURNED, ENGLISH].map((words) => pictureOf(drawStrip(plan, { words })));
  const xOf = (picture: typeof turned, text: string): number =>
    picture?.texts.find((one) => one.text === text)?.box.x ?? NaN;
  for (const side of ["right", "left"]) {
    const [grown, planned] = [`client’s ${side}, as it grows`, `client’s ${side}, as planned`];
    expect(xOf(turned, planned)).toBeLessThan(xOf(turned, grown));
    expect(xOf(usual, planned)).toBeGreaterThan(xOf(usual, grown));
  }
  const half = (usual?.viewBox.width ?? NaN) / 2;
  const dots = (picture: typeof turned, moved: number): readonly string[] =>
    withClass(picture as Picture, "dot")
      .filter(({ name }) => name === "circle")
      .map(({ attributes: { cx, cy } }) => {
        const x = (Number(cx) + moved) % (2 * half);
        return `${x.toFixed(1)} ${Number(cy).toFixed(1)}`;
      })
      .sort();
  expect(dots(turned, half)).toEqual(dots(usual, 0));
});

describe("which side is which", () => {
  const long: Words = {
    ...ENGLISH,
    labels: {
      ...ENGLISH.labels,
      "corner-right": "the side that is to the right of the client and to the left of who looks",
      "corner-left": "the side that is to the left of the client and to the right of who looks",
      "panel-planned": "the {side:sides} of the client, as it is planned to be drawn in the end",
    },
  };

  // Small pictures of choices are too small for it.
  const named = PICTURES.filter(([what]) => what !== "choices");

  it.each(named)("is said in the picture of %s, however long its words are", (_, drawn) => {
    for (const words of [SPANISH, PSEUDO_RTL, PSEUDO_ARABIC, long]) {
      for (const page of drawn({ words }).flatMap(picturesOf)) {
        const said = bare(page.texts.map(({ text }) => text).join(" "));
        const faces = page.elements.filter(({ attributes }) => attributes.class === "labels");
        if (faces.length === 0) continue;
        for (const side of ["right", "left"] as const) {
          const corner = bare(String(words.labels[`corner-${side}`]));
          const panel = bare(label(words, "panel-planned", { side }));
          expect(said.includes(corner) || said.includes(panel), `${side}: ${said}`).toBe(true);
        }
        expectNoCollisions(page);
      }
    }
  });
});
