import { label } from "../../words/internal.js";
import type { Box, Spot } from "./box.js";
import type { Brush } from "./brush.js";
import { labelElements } from "./label-layer.js";
import { type ColouredLabel, type Layer, stacked } from "./layer.js";
import { placeLabels } from "./place-labels.js";
import { element, type SvgElement } from "./svg.js";
import { TYPE_SIZES } from "./text-size.js";

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
  const { elements, labels, closed, barred, strokes } = stacked(layers);
  const { placed, homeless } = placeLabels([...headings, ...labels], {
    bounds: box,
    closed,
    barred,
    strokes,
  });
  return {
    elements: [...elements, element("g", { class: "labels" }, labelElements(placed, brush))],
    unplaced: homeless.map(({ text }) => text),
  };
}

/** A heading in an upper corner of a box. */
export function headingIn(
  corner: "left" | "right",
  text: string,
  box: Box,
  { view, palette }: Brush,
): ColouredLabel {
  const at: Spot = corner === "left" ? [box.x, box.y] : [box.x + box.width, box.y];
  return {
    text,
    at,
    towards: [[corner === "left" ? 1 : -1, 1]],
    size: TYPE_SIZES.heading * view.size,
    weight: "bold",
    gap: 3.5 * view.size,
    colour: palette.ink,
  };
}

/** A heading in the middle of a box's upper edge. */
export function middleHeading(text: string, box: Box, brush: Brush): ColouredLabel {
  const corner = headingIn("left", text, box, brush);
  return {
    ...corner,
    at: [box.x + box.width / 2, box.y],
    towards: [[0, 1]],
    // As far down as headings in a corner, which stand off it sideways as well.
    gap: corner.gap * Math.SQRT1_2,
  };
}

/** Which side of the face is which, in the corners of a box that shows both. */
export function sideHeadings(box: Box, brush: Brush): readonly ColouredLabel[] {
  return [
    headingIn("left", label(brush.words, "corner-right"), box, brush),
    headingIn("right", label(brush.words, "corner-left"), box, brush),
  ];
}
