import { decimal } from "../../words/internal.js";
import type { Box, Spot } from "../canvas/box.js";
import { type Brush, pathData } from "../canvas/brush.js";
import { textAt } from "../canvas/label-layer.js";
import { element, type SvgElement } from "../canvas/svg.js";
import { LINE_HEIGHT, textWidth } from "../canvas/text-size.js";

/** A ruler to hold a real one against: a tick for every millimetre, a number for every ten. */
export interface TrueSizeRuler {
  readonly from: Spot;
  /** In millimetres, a multiple of ten. */
  readonly length: number;
  readonly direction: "across" | "up";
}

const TICKS = { one: 1.4, five: 2.2, ten: 3 };
const TYPE_SIZE = 2.5;

function typeSize({ view }: Brush): number {
  return Math.max(TYPE_SIZE, view.least ?? 0);
}

/** How far numbers and ticks of a ruler reach from its edge, in millimetres. */
export function rulerDepth(brush: Brush): number {
  return TICKS.ten + LINE_HEIGHT * typeSize(brush) + 0.3;
}

/** How far the number at its end reaches past it. */
export function pastItsEnd(length: number, brush: Brush): number {
  return textWidth(decimal(length, 0, brush.words), typeSize(brush)) / 2;
}

/** The ruler with its edge along its direction; ticks hang below it, or stand to its right. */
export function trueSizeRuler(
  { from, length, direction }: TrueSizeRuler,
  brush: Brush,
): SvgElement {
  const at = (along: number, aside: number): Spot =>
    direction === "across"
      ? [from[0] + along, from[1] + aside]
      : [from[0] + aside, from[1] - along];
  const size = typeSize(brush);
  const side = brush.words.direction === "rtl" ? "end" : "start";
  const ticks = Array.from({ length: length + 1 }, (_, millimetre) =>
    pathData([at(millimetre, 0), at(millimetre, tickOf(millimetre))]),
  );
  const numbers = Array.from({ length: length / 10 + 1 }, (_, ten) => {
    const [x, y] = at(10 * ten, TICKS.ten + 0.3);
    const text = decimal(10 * ten, 0, brush.words);
    const look = { size, colour: brush.palette.ink };
    return direction === "across"
      ? textAt(text, { x, side: "middle" }, y, look, brush)
      : textAt(text, { x: x + 0.4, side }, y - (LINE_HEIGHT * size) / 2, look, brush);
  });
  return element("g", { class: "true-size-ruler" }, [
    element("path", {
      d: [pathData([at(0, 0), at(length, 0)]), ...ticks].join(""),
      fill: "none",
      stroke: brush.palette.ink,
      "stroke-width": 0.15,
    }),
    ...numbers,
  ]);
}

export function boxOfUprightRuler({ from, length }: TrueSizeRuler, brush: Brush): Box {
  const width = rulerDepth(brush) + 4;
  return { x: from[0] - 1, y: from[1] - length - 2, width, height: length + 4 };
}

function tickOf(millimetre: number): number {
  if (millimetre % 10 === 0) return TICKS.ten;
  return millimetre % 5 === 0 ? TICKS.five : TICKS.one;
}
