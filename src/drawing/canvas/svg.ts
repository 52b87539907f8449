import { requireFinite } from "../../units/internal.js";
import type { Words } from "../../words/index.js";
import { label, roundingOf } from "../../words/internal.js";
import { FONT_FAMILY } from "./text-size.js";

type ElementName = SvgName | HtmlName;

type SvgName =
  | "circle"
  | "desc"
  | "g"
  | "image"
  | "line"
  | "path"
  | "rect"
  | "style"
  | "svg"
  | "text"
  | "title"
  | "tspan";

type HtmlName =
  | "b"
  | "bdi"
  | "body"
  | "dd"
  | "div"
  | "dl"
  | "dt"
  | "figcaption"
  | "figure"
  | "footer"
  | "h1"
  | "h2"
  | "head"
  | "header"
  | "html"
  | "li"
  | "meta"
  | "p"
  | "section"
  | "span"
  | "table"
  | "tbody"
  | "td"
  | "tfoot"
  | "th"
  | "thead"
  | "tr"
  | "ul";

/** Attributes by their SVG names; one that is undefined is left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One element with what it holds: elements and running text. */
export interface SvgElement {
  readonly name: ElementName;
  readonly attributes: Attributes;
  readonly children: readonly SvgNode[];
}

/** An element, or text as the reader is to see it: escaping is the writer's work. */
export type SvgNode = SvgElement | string;

export function element(
  name: ElementName,
  attributes: Attributes = {},
  children: readonly (SvgNode | undefined)[] = [],
): SvgElement {
  return { name, attributes, children: children.filter((child) => child !== undefined) };
}

/** The namespace of SVG. */
export const SVG_SPACE = "http://www.w3.org/2000/svg";

/**
 * A picture with its name and what it shows for readers who do not see it. It says its own language
 * and direction: on a page that runs the other way its texts would start at their other ends.
 */
export function pictureElement(
  frame: Attributes,
  title: string,
  description: string,
  words: Words,
  children: readonly (SvgNode | undefined)[],
): SvgElement {
  const { language, direction } = words;
  const rounding = roundingOf(words);
  const described = [
    description,
    ...(rounding === undefined ? [] : [label(words, "legend-rounded", rounding)]),
  ].join(" ");
  const named = [element("title", {}, [title]), element("desc", {}, [described])];
  const said = { role: "img", lang: language, direction, "font-family": FONT_FAMILY };
  const attributes = { xmlns: SVG_SPACE, ...frame, ...said };
  return element("svg", attributes, [...named, ...children]);
}

/** The same as SVG source. */
export function pictureSource(...picture: Parameters<typeof pictureElement>): string {
  return svgSource(pictureElement(...picture));
}

/** An element as SVG source, one line for each element that holds no running text. */
export function svgSource(root: SvgElement): string {
  return lines(root, "");
}

/** Thousandths of a picture unit: below a hundredth of a millimetre in every picture made here. */
const DECIMALS = 3;
const STEPS = 10 ** DECIMALS;

export function coordinate(value: number): string {
  requireFinite("coordinate", value);
  const steps = value * STEPS;
  const nearest = Math.round(steps);
  // `toFixed` is exact and many times slower: it is asked where a product could round the other way.
  const rounded =
    Math.abs(steps - nearest) < 0.499 ? nearest / STEPS : Number(value.toFixed(DECIMALS));
  // Adding 0 turns −0 into 0.
  return String(rounded + 0);
}

/** What may hold nothing. HTML reads past the slash of any other element, and takes all that follows into it. */
const CLOSES_SHORT = /^(?:circle|g|image|line|meta|path|rect)$/;

function lines(node: SvgElement, indent: string): string {
  const { name, children } = node;
  const opening = `${indent}<${name}${attributesSource(node.attributes)}`;
  if (children.length === 0) return `${opening}${CLOSES_SHORT.test(name) ? "/>" : `></${name}>`}\n`;
  if (children.some((child) => typeof child === "string")) {
    // HTML reads style sheets as they are: they hold nothing that XML would have escaped.
    const text = children.map(name === "style" ? unescaped : inline).join("");
    return `${opening}>${text}</${name}>\n`;
  }
  let inner = "";
  for (const child of children as readonly SvgElement[]) inner += lines(child, `${indent}  `);
  return `${opening}>\n${inner}${indent}</${name}>\n`;
}

function unescaped(node: SvgNode): string {
  return typeof node === "string" ? node : "";
}

function inline(node: SvgNode): string {
  if (typeof node === "string") return escaped(node);
  const content = node.children.map(inline).join("");
  return `<${node.name}${attributesSource(node.attributes)}>${content}</${node.name}>`;
}

function attributesSource(attributes: Attributes): string {
  let source = "";
  for (const name of Object.keys(attributes)) {
    const value = attributes[name];
    if (value === undefined) continue;
    source += ` ${name}="${typeof value === "number" ? coordinate(value) : escaped(value)}"`;
  }
  return source;
}

/** What is no character of XML 1.0 (production 2), even when escaped: most control characters, halves of pairs. */
const FORBIDDEN = /[^\t\n\r -\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&apos;",
  "\t": "&#9;",
  "\n": "&#10;",
  "\r": "&#13;",
};

/** What needs no escaping: most of what is written, paths and numbers among it. */
const PLAIN = /^[ !#-%(-;=?-~]*$/;

function escaped(text: string): string {
  if (PLAIN.test(text)) return text;
  return text
    .replace(FORBIDDEN, "\uFFFD")
    .replace(/[&<>"'\t\n\r]/g, (character) => ENTITIES[character] as string);
}
