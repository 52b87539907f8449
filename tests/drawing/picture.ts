import { type Box, boxAround, type Spot } from "../../src/drawing/canvas/box.js";
import { BASELINE, LINE_HEIGHT, textWidth } from "../../src/drawing/canvas/text-size.js";
import { allElements, parseXml, type XmlElement } from "../support/parse-xml.js";

/** A parsed picture: what can be asked of it without knowing how it was drawn. */
export interface Picture {
  readonly root: XmlElement;
  readonly elements: readonly XmlElement[];
  readonly viewBox: Box;
  /** Every text with the room it may take, in the widest of the usual fonts. */
  readonly texts: readonly { readonly text: string; readonly size: number; readonly box: Box }[];
  /** Every coordinate that is drawn, with half the width of its stroke around it. */
  readonly spots: readonly Spot[];
}

/** Parses a picture. */
export function pictureOf(source: string): Picture {
  return pictureIn(parseXml(source));
}

/** A picture by itself, or every picture of a document with what it shows: samples in legends show nothing. */
export function picturesOf(source: string): readonly Picture[] {
  const root = parseXml(source);
  if (root.name === "svg") return [pictureIn(root)];
  return allElements(root)
    .filter(({ name, attributes }) => name === "svg" && attributes.lang !== undefined)
    .map(pictureIn);
}

/** All that a document or a picture has to read, element by element in its order, with plain spaces. */
export function linesOf(source: string): readonly string[] {
  const read = ({ name, text, children }: XmlElement): readonly string[] =>
    ["head", "desc", "title"].includes(name)
      ? []
      : // Text stands behind what an element holds: the square before a step, the key before what it means.
        [...children.flatMap(read), text.replaceAll(/\s+/g, " ").trim()];
  return read(parseXml(source)).filter((line) => line !== "");
}

function pictureIn(root: XmlElement): Picture {
  const elements = allElements(root);
  const [x = 0, y = 0, width = 0, height = 0] = (root.attributes.viewBox ?? "")
    .split(" ")
    .map(Number);
  return {
    root,
    elements,
    viewBox: { x, y, width, height },
    texts: elements
      .filter(({ name }) => name === "text")
      .map((text) => textBox(text, root.attributes.direction)),
    spots: elements.flatMap(spotsOf),
  };
}

/** Elements with a class, given as one of its words. */
export function withClass(picture: Picture, word: string): readonly XmlElement[] {
  return picture.elements.filter(({ attributes }) => attributes.class?.split(" ").includes(word));
}

/** SVG 1.1 (10.9.1): `start` is where reading starts, the right end of a text that runs from right to left. */
function textBox(element: XmlElement, direction = "ltr"): Picture["texts"][number] {
  const size = numberOf(element, "font-size");
  const weight = element.attributes["font-weight"] === "bold" ? "bold" : "normal";
  const width = textWidth(element.text, size, weight);
  const anchor = element.attributes["text-anchor"] ?? "start";
  const endsAtX = direction === "rtl" ? "start" : "end";
  const x =
    numberOf(element, "x") - width * (anchor === "middle" ? 0.5 : anchor === endsAtX ? 1 : 0);
  const y = numberOf(element, "y") - BASELINE * size;
  return { text: element.text, size, box: { x, y, width, height: LINE_HEIGHT * size } };
}

function numberOf(element: XmlElement, name: string): number {
  return Number(element.attributes[name]);
}

function spotsOf(element: XmlElement): readonly Spot[] {
  const at = (name: string): number => numberOf(element, name);
  switch (element.name) {
    case "path":
      return pathSpots(element.attributes.d ?? "");
    case "line":
      return [
        [at("x1"), at("y1")],
        [at("x2"), at("y2")],
      ];
    case "circle":
      return corners(at("cx") - at("r"), at("cy") - at("r"), 2 * at("r"), 2 * at("r"));
    case "rect":
      return corners(
        Number(element.attributes.x ?? 0),
        Number(element.attributes.y ?? 0),
        at("width"),
        at("height"),
      );
    default:
      return [];
  }
}

/** The spots of a path, control points included: its curves lie between them. */
export function pathSpots(d: string): readonly Spot[] {
  const numbers = d.match(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g)?.map(Number) ?? [];
  return Array.from({ length: numbers.length / 2 }, (_, index) => [
    numbers[2 * index] ?? NaN,
    numbers[2 * index + 1] ?? NaN,
  ]);
}

function corners(x: number, y: number, width: number, height: number): readonly Spot[] {
  return [
    [x, y],
    [x + width, y + height],
  ];
}

/** The smallest box that holds everything a picture draws. */
export function drawnBox({ spots }: Picture): Box {
  return boxAround(spots);
}
