import { label } from "../../words/internal.js";
import type { Box } from "./box.js";
import type { Brush } from "./brush.js";
import { type Keyed, labelElements } from "./label-layer.js";
import { type ColouredLabel, type Layer, stacked } from "./layer.js";
import type { ScreenDrawing } from "./look.js";
import { placeLabels } from "./place-labels.js";
import { element, type SvgElement } from "./svg.js";
import { typeSize } from "./view.js";
import { LINE_HEIGHT, textWidth, wrapped } from "./text-size.js";

/** Layers with their labels in place; `unplaced` is what found no room inside the box, nor a key. */
export interface Composition {
  readonly elements: readonly SvgElement[];
  readonly unplaced: readonly string[];
  /** Figures that found no room near what they measure, with the keys that stand there. */
  readonly keyed: readonly Keyed[];
}

/** How far a label is led on a screen, whose letters may be large for the face, in type sizes. */
const REACH = 3.5;

/**
 * Paints layers and writes their labels inside a box, headings first. What would be led far is left out where letters
 * are as large as a screen asks for, the later the sooner; figures get a key where a legend can explain it, and are led
 * as far as it takes where none can.
 */
export function compose(
  layers: readonly Layer[],
  headings: readonly ColouredLabel[],
  box: Box,
  brush: Brush,
  { isOnScreen = false, keysFrom = 0 }: Crowding = {},
): Composition {
  const { elements, labels, ...drawn } = stacked(layers);
  const { least = 0 } = brush.view;
  const around = { ...drawn, bounds: box, ...(isOnScreen ? { reach: REACH } : {}) };
  const written = [...headings, ...labels].map((one) => ({
    ...one,
    size: Math.max(one.size, least),
    yields: one.yields === "key" && keysFrom === 0 ? undefined : one.yields,
  }));
  for (let keyed: readonly ColouredLabel[] = []; ;) {
    const keys = keyed.map(({ text }, index) => ({
      key: label(brush.words, "key-length", { number: keysFrom + index }),
      text,
    }));
    const shown = written.map((one): ColouredLabel => {
      const { key } = keys[keyed.indexOf(one)] ?? {};
      return key === undefined ? one : { ...one, text: key, weight: "bold", yields: undefined };
    });
    const { placed, homeless } = placeLabels(shown, around, headings.length);
    const missing = homeless.filter(({ yields }) => yields === "key");
    if (missing.length === 0) {
      return {
        elements: [...elements, element("g", { class: "labels" }, labelElements(placed, brush))],
        // Of a key, too, what it stands for.
        unplaced: homeless.map((one) => (written[shown.indexOf(one)] as ColouredLabel).text),
        keyed: keys,
      };
    }
    keyed = written.filter((one) => keyed.includes(one) || missing.includes(one));
  }
}

/** What is done where labels crowd. */
export interface Crowding {
  readonly isOnScreen?: boolean;
  /** The number of the first key, where there may be any; default 0, for no keys. */
  readonly keysFrom?: number;
}

/** Compositions beside each other, whose keys go on from one to the next. */
export function composeBeside(
  panels: readonly ((crowding: Crowding) => Composition)[],
  { screen }: ScreenDrawing,
): Composition {
  const isOnScreen = screen !== undefined;
  return panels.reduce<Composition>(
    ({ elements, unplaced, keyed }, panel) => {
      const one = panel({ isOnScreen, keysFrom: keyed.length + 1 });
      return {
        elements: [...elements, ...one.elements],
        unplaced: [...unplaced, ...one.unplaced],
        keyed: [...keyed, ...one.keyed],
      };
    },
    { elements: [], unplaced: [], keyed: [] },
  );
}

/** From one line of a heading to the next, as a multiple of its type size: no two labels come nearer. */
const HEADING_LINE = 1.55;

/** A heading in an upper corner of a box, in as many lines as it takes to be no wider than it may. */
export function headingIn(
  corner: "left" | "right",
  text: string,
  box: Box,
  { view, palette }: Brush,
  width: number = box.width,
): readonly ColouredLabel[] {
  const size = typeSize("heading", view);
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

/** How far headings reach down from the upper edge of their box. */
export function depthOf(headings: readonly ColouredLabel[], { y }: Box): number {
  return Math.max(...headings.map(({ at, gap, size }) => at[1] + gap + LINE_HEIGHT * size - y));
}

/** Which side of the face is which, in the corners of a box that shows both, and what stands between. */
export function headingsOver(box: Box, brush: Brush, middle = ""): readonly ColouredLabel[] {
  const size = typeSize("heading", brush.view);
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
    size: typeSize("heading", view),
    weight: "bold",
    // As far down as headings in a corner, which stand off it sideways as well.
    gap: 3.5 * view.size * Math.SQRT1_2,
    colour: palette.ink,
  };
}
