import type { Box, Spot } from "../canvas/box.js";
import { type Brush, markerAt, pathData, strokeGroup } from "../canvas/brush.js";
import { textAt } from "../canvas/label-layer.js";
import { hatch } from "../canvas/hatch.js";
import { type HatchRole, hatchingOf } from "../layers/overlap-layer.js";
import type { MarkerShape, StrokeRole } from "../canvas/palette.js";
import { element, type SvgElement } from "../canvas/svg.js";
import type { Block } from "../sheet/block.js";
import { LINE_HEIGHT, TYPE_SIZES, wrapped } from "../canvas/text-size.js";

/** A sample of a stroke, of a mark or of a hatching, or a key from the picture, with what it means. */
export type LegendEntry =
  | { readonly text: string; readonly role: Exclude<StrokeRole, "landmark"> }
  | {
      readonly text: string;
      readonly role: "landmark" | "correction";
      readonly marker: MarkerShape;
    }
  | { readonly text: string; readonly key: string };

/** A legend laid out for a width: how high it is, and how it looks from its top left corner on. */
export interface Legend {
  readonly height: number;
  readonly drawnAt: (left: number, top: number) => SvgElement;
}

/** Length of a sample of a stroke, room around the legend, least width of a column, in steps. */
const SAMPLE = 9;
const PADDING = 3;
const COLUMN = 55;

/** Lays out entries in as many columns as the width has room for, read row by row. */
export function legend(entries: readonly LegendEntry[], width: number, brush: Brush): Legend {
  const { size } = brush.view;
  const plain: Brush = { ...brush, onPhoto: false };
  const type = TYPE_SIZES.legend * size;
  const line = 1.1 * LINE_HEIGHT * type;
  const columns = Math.max(1, Math.floor(width / (COLUMN * size)));
  const column = (width - 2 * PADDING * size) / columns;
  const indent = (SAMPLE + 1.5) * size;
  const cells = entries.map((entry) => ({
    entry,
    lines: wrapped(entry.text, type, column - indent),
  }));
  const rows = Array.from({ length: Math.ceil(cells.length / columns) }, (_, row) =>
    cells.slice(row * columns, (row + 1) * columns),
  );
  const heights = rows.map((row) => line * Math.max(...row.map(({ lines }) => lines.length)));
  const height = heights.reduce((sum, one) => sum + one, 2 * PADDING * size);
  const drawnAt = (left: number, top: number): SvgElement => {
    let y = top + PADDING * size;
    const drawn: SvgElement[] = [];
    for (const [row, inRow] of rows.entries()) {
      for (const [index, { entry, lines }] of inRow.entries()) {
        const x = left + PADDING * size + index * column;
        drawn.push(sample(entry, x, y + (LINE_HEIGHT * type) / 2, plain));
        for (const [down, text] of lines.entries()) {
          const look = { size: type, colour: plain.palette.ink };
          drawn.push(textAt(text, { x: x + indent, side: "start" }, y + down * line, look, plain));
        }
      }
      y += heights[row] ?? 0;
    }
    const paper = element("rect", { x: left, y: top, width, height, fill: plain.palette.paper });
    return element("g", { class: "legend" }, [paper, ...drawn]);
  };
  return { height, drawnAt };
}

function sample(entry: LegendEntry, x: number, y: number, brush: Brush): SvgElement {
  const { view, palette } = brush;
  const to = x + SAMPLE * view.size;
  if ("key" in entry) {
    const size = TYPE_SIZES.legend * view.size;
    const look = { size, weight: "bold", colour: palette.ink } as const;
    return textAt(entry.key, { x: to, side: "end" }, y - (LINE_HEIGHT * size) / 2, look, brush);
  }
  if ("marker" in entry) {
    const look = {
      shape: entry.marker,
      colour: palette.strokes[entry.role],
      radius: 0.9,
      hollow: entry.marker === "circle",
    };
    return markerAt([(x + to) / 2, y], look, brush, entry.text);
  }
  if (entry.role === "remove" || entry.role === "fill") {
    return hatchSample(entry.role, { x, y, width: to - x, height: 0 }, brush);
  }
  const data = pathData([
    [x, y],
    [to, y],
  ]);
  return strokeGroup(entry.role, "sample", [data], brush);
}

/** Half of the height of a sample of a hatching, in steps. */
const HALF_HATCH = 1.1;

function hatchSample(role: HatchRole, { x, y, width }: Box, brush: Brush): SvgElement {
  const half = HALF_HATCH * brush.view.size;
  const corners: readonly Spot[] = [
    [x, y - half],
    [x + width, y - half],
    [x + width, y + half],
    [x, y + half],
  ];
  const strokes = hatch(corners, [], hatchingOf(role, brush.view.size));
  const data = strokes.map(({ from, to }) => pathData([from, to])).join("");
  return strokeGroup(role, "sample", [data], brush);
}

/** A legend as a part of a printed page. */
export function legendBlock(entries: readonly LegendEntry[], width: number, brush: Brush): Block {
  const { height, drawnAt } = legend(entries, width, brush);
  return { height, drawnAt: (left, top) => [drawnAt(left, top)] };
}
