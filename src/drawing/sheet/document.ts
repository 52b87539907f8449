import { element, type SvgElement, type SvgNode, svgSource } from "../canvas/svg.js";
import type { Print } from "./paper.js";
import { styleSheet } from "./style-sheet.js";

/**
 * A document of one file, which browsers lay out and break into pages: no script, no address, no style but one
 * element's. It is XML as well. The foot stands at the foot of every page.
 */
export function documentSource(
  title: string,
  body: readonly (SvgNode | undefined)[],
  foot: readonly SvgNode[],
  print: Print,
): string {
  const { language: lang, direction: dir } = print.words;
  const part = (name: "tbody" | "tfoot", children: readonly (SvgNode | undefined)[]): SvgElement =>
    element(name, {}, [element("tr", {}, [element("td", {}, children.map(prose))])]);
  const html = element("html", { xmlns: "http://www.w3.org/1999/xhtml", lang, dir }, [
    element("head", {}, [
      element("meta", { charset: "utf-8" }),
      element("meta", { name: "viewport", content: "width=device-width" }),
      element("title", {}, [title]),
      element("style", { nonce: print.nonce }, [styleSheet(print)]),
    ]),
    element("body", {}, [
      // The foot of a table stands on every page that the table runs over, and takes the room that it needs.
      element("table", { class: "pages", role: "presentation" }, [
        part("tbody", body),
        foot.length === 0 ? undefined : part("tfoot", [element("footer", {}, foot)]),
      ]),
    ]),
  ]);
  return `<!DOCTYPE html>\n${svgSource(html)}`;
}

/** Spaces between a number and its unit or fraction, and behind ±. */
const KEPT = /(?<=±) |(?<=\p{Nd}) (?=(?:[cm]m²?|in²?|%)(?![\w²])|\p{Nd}+\/\p{Nd})/gu;

/** Text whose numbers stay with their units, wherever a browser breaks its lines. */
function prose(node: SvgNode | undefined): SvgNode | undefined {
  if (typeof node === "string") return node.replace(KEPT, "\u00A0");
  if (node === undefined || node.name === "svg") return node;
  return element(node.name, node.attributes, node.children.map(prose));
}
