import { test } from "@fast-check/vitest";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { element, svgSource } from "../../../src/drawing/canvas/svg.js";
import { parseXml } from "../../support/parse-xml.js";

describe("svgSource", () => {
  it("writes elements, attributes and text", () => {
    const source = svgSource(
      element("g", { class: "guides", "stroke-width": 0.25, id: undefined }, [
        element("line", { x1: 1, x2: 2 }),
        undefined,
        element("text", {}, ["front ", element("tspan", {}, ["32.5"]), " mm"]),
      ]),
    );
    expect(source).toBe(
      [
        '<g class="guides" stroke-width="0.25">',
        '  <line x1="1" x2="2"/>',
        "  <text>front <tspan>32.5</tspan> mm</text>",
        "</g>",
        "",
      ].join("\n"),
    );
  });

  it("closes short what HTML reads as closed, and nothing else", () => {
    const source = svgSource(
      element("body", {}, [
        element("div"),
        element("p", {}, [element("span"), "text"]),
        element("svg", {}, [element("path", { d: "M0 0" }), element("title"), element("g")]),
        element("meta", { charset: "utf-8" }),
      ]),
    );
    expect(source.match(/<\w+[^>]*\/>/g)).toEqual([
      '<path d="M0 0"/>',
      "<g/>",
      '<meta charset="utf-8"/>',
    ]);
    expect(source).toContain("<div></div>");
    expect(source).toContain("<span></span>text");
    expect(source).toContain("<title></title>");
  });

  it.each([
    [1 / 3, "0.333"],
    [-0.0001, "0"],
    [-0, "0"],
    [1920, "1920"],
    [2.5e-7, "0"],
  ])("prints %d as %s", (value, printed) => {
    expect(parseXml(svgSource(element("rect", { x: value }))).attributes.x).toBe(printed);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %d", (value) => {
    expect(() => svgSource(element("rect", { x: value }))).toThrow(/finite/);
  });

  test.prop([fc.string({ unit: "binary" }), fc.string({ unit: "grapheme" })])(
    "lets any text through as text, in content and in attributes",
    (content, attribute) => {
      const parsed = parseXml(svgSource(element("text", { class: attribute }, [content])));
      expect(parsed.text).toBe(readable(content));
      expect(parsed.attributes.class).toBe(readable(attribute));
      expect(parsed.children).toEqual([]);
    },
  );

  it("replaces what no XML document may hold, and nothing else", () => {
    const parsed = parseXml(svgSource(element("text", {}, ["a\u0000b\uD800c\t😀\r\n"])));
    expect(parsed.text).toBe("a\uFFFDb\uFFFDc\t😀\r\n");
  });
});

/** XML 1.0, production 2 (Char), character by character (from memory). */
function readable(text: string): string {
  return Array.from(text, (character) => {
    const code = character.codePointAt(0) as number;
    const allowed =
      [0x9, 0xa, 0xd].includes(code) ||
      (code >= 0x20 && code <= 0xd7ff) ||
      (code >= 0xe000 && code <= 0xfffd) ||
      code >= 0x10000;
    return allowed ? character : "\uFFFD";
  }).join("");
}
