import { drawPlan } from "brow-geometry";
import { ENGLISH } from "brow-geometry/words";
import { describe, expect, it } from "vitest";
import { PALETTES } from "../../src/drawing/canvas/palette.js";
import { onPhoto, PICTURES } from "../support/every-picture.js";
import { allElements, type XmlElement } from "../support/parse-xml.js";
import { pictureOf, withClass } from "./picture.js";

const { paper } = PALETTES.transparent;

/** Whether an edge of paper lies around what is drawn, all the way and not shining through. */
function isEdged({ attributes }: XmlElement): boolean {
  return attributes.stroke === paper && attributes["stroke-opacity"] === undefined;
}

describe.each(PICTURES)("transparent, the picture of %s", (_, drawn) => {
  const pictures = drawn({ words: ENGLISH, theme: "transparent" }).map(pictureOf);
  const elements = pictures.flatMap((picture) => picture.elements);

  it("lays nothing over what lies beneath it", () => {
    const rects = elements.filter(({ name }) => name === "rect");
    expect(rects.filter(({ attributes }) => attributes.fill !== "none")).toEqual([]);
  });

  it("has an edge around every letter that stands free, whose contrast with it is kept above 4.5", () => {
    const texts = elements.filter(({ name }) => name === "text");
    const plain = texts.filter((text) => !isEdged(text)).map(({ text }) => text);
    expect(plain).toEqual([]);
  });

  it("has an edge beneath the strokes of brows, guides, midline, rulers and arrows", () => {
    const roles = ["planned", "natural", "guide", "midline", "length", "move", "correction"];
    const groups = pictures.flatMap((picture) => roles.flatMap((role) => withClass(picture, role)));
    const bare = groups.filter(({ children }) => !isEdged(children[0] ?? (children[1] as never)));
    expect(bare.map(({ attributes }) => attributes.class)).toEqual([]);
  });
});

it("draws the eyes where no photo lies beneath, and leaves them to the photo where one does", () => {
  const { width = 1, height = 1 } = onPhoto.face.source?.picture ?? {};
  const theme = "transparent";
  expect(withClass(pictureOf(drawPlan(onPhoto, { theme })), "eye").length).toBeGreaterThan(0);
  const over = pictureOf(drawPlan(onPhoto, { theme, photo: { width, height } }));
  expect(withClass(over, "eye").flatMap(allElements)).toEqual([]);
});
