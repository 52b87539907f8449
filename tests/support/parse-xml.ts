import { SaxesParser } from "saxes";

/** An element of a parsed document, with its own text put together. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  readonly text: string;
}

/** Parses a document with a parser that refuses whatever XML 1.0 does not allow. */
export function parseXml(source: string): XmlElement {
  const parser = new SaxesParser();
  const open: (XmlElement & { children: XmlElement[]; text: string })[] = [
    { name: "", attributes: {}, children: [], text: "" },
  ];
  const innermost = (): (typeof open)[number] => open[open.length - 1] as (typeof open)[number];
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ name, attributes }) => {
    open.push({ name, attributes, children: [], text: "" });
  });
  parser.on("text", (text) => {
    innermost().text += text;
  });
  parser.on("closetag", () => {
    const closed = open.pop() as (typeof open)[number];
    innermost().children.push(closed);
  });
  parser.write(source).close();
  return innermost().children[0] as XmlElement;
}

/** The element and everything in it, parents before children. */
export function allElements(root: XmlElement): readonly XmlElement[] {
  return [root, ...root.children.flatMap(allElements)];
}
