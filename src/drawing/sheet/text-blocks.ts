import type { Block } from "./block.js";
import type { Brush } from "../canvas/brush.js";
import { textAt } from "../canvas/label-layer.js";
import { element, type SvgElement } from "../canvas/svg.js";
import { LINE_HEIGHT, wrapped } from "../canvas/text-size.js";

/** Type sizes on paper, in millimetres: the body has 7.5 points. */
export const PAPER_TYPE = { title: 5.2, heading: 3.4, body: 2.65, small: 2.4 };

/** Distance of lines of a size. */
export function lineOf(size: number): number {
  return 1.1 * LINE_HEIGHT * size;
}

/** A heading that stays with what follows it. */
export function heading(text: string, width: number, brush: Brush): Block {
  return { ...lines(text, width, PAPER_TYPE.heading, brush, "bold", 3), leads: true };
}

/** The title of the sheet. */
export function title(text: string, width: number, brush: Brush): Block {
  return lines(text, width, PAPER_TYPE.title, brush, "bold", 0);
}

/** A paragraph. */
export function paragraph(text: string, width: number, brush: Brush): Block {
  return lines(text, width, PAPER_TYPE.body, brush, "normal", 0.8);
}

function lines(
  text: string,
  width: number,
  size: number,
  brush: Brush,
  weight: "normal" | "bold",
  above: number,
): Block {
  const broken = wrapped(text, size, width, weight);
  const look = { size, weight, colour: brush.palette.ink };
  return {
    height: above + broken.length * lineOf(size),
    drawnAt: (left, top) =>
      broken.map((line, index) =>
        textAt(line, { x: left, side: "start" }, top + above + index * lineOf(size), look, brush),
      ),
  };
}

/** One item of a list with its mark: a number or a dot. */
export interface ListItem {
  readonly mark: string;
  readonly text: string;
}

const MARK_WIDTH = 6;

/** Lines of an item that are not torn apart: only a longer one may run on to the next page. */
const MOST_TOGETHER = 6;

/** Items over the whole width; neither the last of them nor a line of one goes to a page alone. */
export function list(items: readonly ListItem[], width: number, brush: Brush): readonly Block[] {
  return items.flatMap(({ mark, text }, item) => {
    const broken = wrapped(text, PAPER_TYPE.body, width - MARK_WIDTH);
    const last = broken.length - 1;
    return broken.map((line, index) => ({
      ...listRow([{ mark: index === 0 ? mark : "", text: line }], 1, width, brush),
      leads:
        index === last
          ? item === items.length - 2
          : last < MOST_TOGETHER || index === 0 || index === last - 1,
    }));
  });
}

/** A row of list items side by side. */
export function listRow(
  items: readonly ListItem[],
  columns: number,
  width: number,
  brush: Brush,
): Block {
  const size = PAPER_TYPE.body;
  const column = width / columns;
  const cells = items.map(({ mark, text }) => ({
    mark,
    lines: wrapped(text, size, column - MARK_WIDTH),
  }));
  const look = { size, colour: brush.palette.ink };
  return {
    height: 0.3 + Math.max(1, ...cells.map((cell) => cell.lines.length)) * lineOf(size),
    drawnAt: (left, top) =>
      cells.flatMap((cell, index) => {
        const x = left + index * column;
        const marked = { x: x + MARK_WIDTH - 1.5, side: "end" } as const;
        return [
          ...(cell.mark === "" ? [] : [textAt(cell.mark, marked, top, look, brush)]),
          ...cell.lines.map((line, down) =>
            textAt(
              line,
              { x: x + MARK_WIDTH, side: "start" },
              top + down * lineOf(size),
              look,
              brush,
            ),
          ),
        ];
      }),
  };
}

/** Something written at the head of a sheet, or to be written there by hand. */
export interface SheetField {
  readonly name: string;
  /** Left out: a line to write on. */
  readonly value?: string;
}

/** Room for a line of handwriting. */
const HANDWRITING = 6;

/** Fields side by side. */
export function fieldsRow(
  fields: readonly SheetField[],
  columns: number,
  width: number,
  brush: Brush,
): Block {
  const column = width / columns;
  const nameSize = PAPER_TYPE.small;
  const valueSize = PAPER_TYPE.heading;
  const cells = fields.map(({ name, value = "" }) => ({
    name: wrapped(name, nameSize, column - 4),
    value: wrapped(value, valueSize, column - 4),
  }));
  const nameHeight = Math.max(1, ...cells.map(({ name }) => name.length)) * lineOf(nameSize);
  const valueHeight = Math.max(
    HANDWRITING,
    ...cells.map(({ value }) => value.length * lineOf(valueSize)),
  );
  const { quiet, ink } = brush.palette;
  return {
    height: nameHeight + valueHeight + 2,
    drawnAt: (left, top) =>
      cells.flatMap(({ name, value }, index) => {
        const x = left + index * column;
        const foot = top + nameHeight + valueHeight;
        return [
          ...name.map((line, down) =>
            textAt(
              line,
              { x, side: "start" },
              top + down * lineOf(nameSize),
              { size: nameSize, colour: quiet },
              brush,
            ),
          ),
          ...value.map((line, down) =>
            textAt(
              line,
              { x, side: "start" },
              top + nameHeight + down * lineOf(valueSize),
              { size: valueSize, colour: ink },
              brush,
            ),
          ),
          rule(x, foot, column - 4, brush),
        ];
      }),
  };
}

/** A thin horizontal line. */
export function rule(x: number, y: number, width: number, brush: Brush): SvgElement {
  return element("line", {
    x1: x,
    y1: y,
    x2: x + width,
    y2: y,
    stroke: brush.palette.quiet,
    "stroke-width": 0.15,
  });
}

/** A column of a table. */
export interface Column {
  /** Of the width, against the shares of the other columns. */
  readonly share: number;
  /** The edge from which it is set. */
  readonly from: "left" | "right";
}

/** A table whose head stays with its first row, and is there again on every page it runs on to. */
export function table(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  columns: readonly Column[],
  width: number,
  brush: Brush,
): readonly Block[] {
  const named = tableRow(head, columns, width, brush, true);
  return [
    named,
    ...rows.map((row): Block => ({ ...tableRow(row, columns, width, brush), head: named })),
  ];
}

/** A row of a table; a head row is bold and stays with the next. */
export function tableRow(
  cells: readonly string[],
  columns: readonly Column[],
  width: number,
  brush: Brush,
  isHead = false,
): Block {
  const size = PAPER_TYPE.body;
  const weight = isHead ? "bold" : "normal";
  const total = columns.reduce((sum, { share }) => sum + share, 0);
  let right = 0;
  const set = columns.map(({ share, from }, index) => {
    const left = right;
    right += (share / total) * width;
    const anchor = from === "left" ? { x: left, side: "start" } : { x: right, side: "end" };
    const broken = wrapped(cells[index] ?? "", size, right - left - 1.5, weight);
    return { anchor: anchor as { x: number; side: "start" | "end" }, lines: broken };
  });
  const height = Math.max(1, ...set.map((cell) => cell.lines.length)) * lineOf(size) + 0.9;
  return {
    height,
    leads: isHead,
    drawnAt: (left, top) => [
      ...set.flatMap(({ anchor, lines: inCell }) =>
        inCell.map((line, down) =>
          textAt(
            line,
            { ...anchor, x: left + anchor.x },
            top + 0.4 + down * lineOf(size),
            { size, weight, colour: brush.palette.ink },
            brush,
          ),
        ),
      ),
      rule(left, top + height, width, brush),
    ],
  };
}
