import type { Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import type { Brush } from "../canvas/brush.js";
import { element, SVG_SPACE, type SvgElement } from "../canvas/svg.js";
import { trueSizeFrame } from "./true-size-map.js";
import { pastItsEnd, rulerDepth, trueSizeRuler } from "./true-size-ruler.js";

/** Something written at the head of a sheet, or to be written there by hand. */
export interface SheetField {
  readonly name: string;
  /** Left out: a line to write on. */
  readonly value?: string;
}

export function fieldsIn(
  words: Words,
  fields: readonly ("client" | "date" | "artist")[],
): readonly SheetField[] {
  return fields.map((field) => ({ name: label(words, `field-${field}`) }));
}

export function headOf(title: string, fields: readonly SheetField[]): SvgElement {
  const cells = fields.map(({ name, value = "" }) =>
    element("div", {}, [
      element("dt", {}, [element("bdi", {}, [name])]),
      element("dd", {}, [element("bdi", {}, [value])]),
    ]),
  );
  return element("header", {}, [
    element("h1", {}, [title]),
    cells.length === 0 ? undefined : element("dl", { class: "fields" }, cells),
  ]);
}

/** Length of the ruler at the foot of every page, in millimetres. */
const RULER_LENGTH = 100;

/** A ruler to hold a real one against, and how; then what always holds. */
export function trueSizeFoot(brush: Brush, always: readonly string[] = []): readonly SvgElement[] {
  const { words } = brush;
  const aside = pastItsEnd(RULER_LENGTH, brush);
  const [width, height] = [RULER_LENGTH + 2 * aside, rulerDepth(brush) + 1];
  const frame = trueSizeFrame({ x: -aside, y: -1, width, height });
  const said = { lang: words.language, direction: words.direction, "aria-hidden": "true" };
  return [
    element("svg", { xmlns: SVG_SPACE, ...frame, ...said }, [
      trueSizeRuler({ from: [0, 0], length: RULER_LENGTH, direction: "across" }, brush),
    ]),
    element("p", {}, [label(words, "sheet-print")]),
    ...(always.length === 0 ? [] : [element("p", { class: "law" }, [always.join(" ")])]),
  ];
}
