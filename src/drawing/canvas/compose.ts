import { label } from "../../words/internal.js";
import type { Box } from "./box.js";
import type { Brush } from "./brush.js";
import { labelElements } from "./label-layer.js";
import { type ColouredLabel, type Layer, stacked } from "./layer.js";
import { placeLabels } from "./place-labels.js";
import { element, type SvgElement } from "./svg.js";
import type { View } from "./view.js";
import { textWidth, TYPE_SIZES, wrapped } from "./text-size.js";

/** Layers with their labels in place; `unplaced` is what found no room inside the box. */
export interface Composition {
  readonly elements: readonly SvgElement[];
  readonly unplaced: readonly string[];
}

/** Paints layers and writes their labels inside a box, headings first. */
export function compose(
  layers: readonly Layer[],
  headings: readonly ColouredLabel[],
  box: Box,
  brush: Brush,
): Composition {
  const { elements, labels, closed, barred, strokes, borders } = stacked(layers);
  const { least = 0 } = brush.view;
  const legible = labels.map((one) => (one.size < least ? { ...one, size: least } : one));
  const { placed, homeless } = placeLabels(
    [...headings, ...legible],
    { bounds: box, closed, barred, strokes, borders },
    headings.length,
  );
  return {
    elements: [...elements, element("g", { class: "labels" }, labelElements(placed, brush))],
    unplaced: homeless.map(({ text }) => text),
  };
}

/** From one line of a heading to the next, as a multiple of its type size: no two labels come nearer. */
const HEADING_LINE = 1.55;

function headingSize({ size, least = 0 }: View): number {
  return Math.max(TYPE_SIZES.heading * size, least);
}

/** A heading in an upper corner of a box, in as many lines as it takes to be no wider than it may. */
export function headingIn(
  corner: "left" | "right",
  text: string,
  box: Box,
  { view, palette }: Brush,
  width: number = box.width,
): readonly ColouredLabel[] {
  const size = headingSize(view);
  const gap = 3.5 * view.size;
  const x = corner === "left" ? box.x : box.x + box.width;
  return wrapped(text, size, width - gap, "bold").map((line, index) => ({
    text: line,
    at: [x, box.y + index * HEADING_LINE * size],
    towards: [[corner === "left" ? 1 : -1, 1]],
    size,
    weight: "bold",
    gap,
    colour: palette.ink,
  }));
}

/** Which side of the face is which, in the corners of a box that shows both, and what stands between. */
export function headingsOver(box: Box, brush: Brush, middle = ""): readonly ColouredLabel[] {
  const size = headingSize(brush.view);
  const between = textWidth(middle, size, "bold");
  const width = (box.width - between) / 2;
  return [
    ...headingIn("left", label(brush.words, "corner-right"), box, brush, width),
    ...headingIn("right", label(brush.words, "corner-left"), box, brush, width),
    ...(middle === "" ? [] : [middleHeading(middle, box, brush)]),
  ];
}

/** A heading in the middle of a box's upper edge. */
function middleHeading(text: string, box: Box, { view, palette }: Brush): ColouredLabel {
  return {
    text,
    at: [box.x + box.width / 2, box.y],
    towards: [[0, 1]],
    size: headingSize(view),
    weight: "bold",
    // As far down as headings in a corner, which stand off it sideways as well.
    gap: 3.5 * view.size * Math.SQRT1_2,
    colour: palette.ink,
  };
}
