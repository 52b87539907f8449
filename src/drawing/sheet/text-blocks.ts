import type { Note } from "../../units/index.js";
import { say } from "../../words/index.js";
import type { Block } from "./block.js";
import type { Brush } from "../canvas/brush.js";
import { type Keyed, linesAt } from "../canvas/label-layer.js";
import { element, type SvgElement } from "../canvas/svg.js";
import { lineOf, rowsOf, wrapped } from "../canvas/text-size.js";

/** Type sizes on paper, in millimetres: the body has 7.5 points. */
export const PAPER_TYPE = { title: 5.2, heading: 3.4, body: 2.65, small: 2.4 };

export interface Sheet {
  /** Of the room between the margins, in millimetres. */
  readonly width: number;
  readonly brush: Brush;
}

/** Where something as wide as is said lies, so far from the edge of a sheet's room where reading starts. */
export function inwards(
  left: number,
  { width, brush }: Sheet,
): (way: number, wide?: number) => number {
  return brush.words.direction === "rtl"
    ? (way, wide = 0) => left + width - way - wide
    : (way) => left + way;
}

export function heading(text: string, sheet: Sheet): Block {
  return { ...lines(text, PAPER_TYPE.heading, "bold", 3, sheet), leads: true };
}

export function title(text: string, sheet: Sheet): Block {
  return lines(text, PAPER_TYPE.title, "bold", 0, sheet);
}

export function paragraph(text: string, sheet: Sheet): Block {
  return lines(text, PAPER_TYPE.body, "normal", 0.8, sheet);
}

function lines(
  text: string,
  size: number,
  weight: "normal" | "bold",
  above: number,
  sheet: Sheet,
): Block {
  const { width, brush } = sheet;
  const broken = wrapped(text, size, width, weight);
  const look = { size, weight, colour: brush.palette.ink };
  return {
    height: above + broken.length * lineOf(size),
    drawnAt: (left, top) => {
      const x = inwards(left, sheet)(0);
      return linesAt(broken, { x, side: "start" }, top + above, look, brush);
    },
  };
}

/** Room for the key of an item: a number or a dot. */
const KEY_WIDTH = 6;

/** Lines of an item that are not torn apart: only a longer one may run on to the next page. */
const MOST_TOGETHER = 6;

/** Items over the whole width; neither the last of them nor a line of one goes to a page alone. */
export function list(items: readonly Keyed[], sheet: Sheet): readonly Block[] {
  return items.flatMap(({ key, text }, item) => {
    const broken = wrapped(text, PAPER_TYPE.body, sheet.width - KEY_WIDTH);
    const last = broken.length - 1;
    return broken.map((line, index) => ({
      ...listRow([{ key: index === 0 ? key : "", text: line }], 1, sheet),
      leads:
        index === last
          ? item === items.length - 2
          : last < MOST_TOGETHER || index === 0 || index === last - 1,
    }));
  });
}

export function bullets(notes: readonly Note[], sheet: Sheet): readonly Block[] {
  return list(
    notes.map((note) => ({ key: "•", text: say(note, sheet.brush.words) })),
    sheet,
  );
}

export function listRows(items: readonly Keyed[], columns: number, sheet: Sheet): readonly Block[] {
  return rowsOf(items, columns).map((row) => listRow(row, columns, sheet));
}

function listRow(items: readonly Keyed[], columns: number, sheet: Sheet): Block {
  const { width, brush } = sheet;
  const size = PAPER_TYPE.body;
  const column = width / columns;
  const cells = items.map(({ key, text }) => ({
    key,
    lines: wrapped(text, size, column - KEY_WIDTH),
  }));
  const look = { size, colour: brush.palette.ink };
  return {
    height: 0.3 + Math.max(1, ...cells.map((cell) => cell.lines.length)) * lineOf(size),
    drawnAt: (left, top) =>
      cells.flatMap((cell, index) => {
        const at = inwards(left, sheet);
        const way = index * column + KEY_WIDTH;
        const x = at(way);
        return [
          ...linesAt(
            cell.key === "" ? [] : [cell.key],
            { x: at(way - 1.5), side: "end" },
            top,
            look,
            brush,
          ),
          ...linesAt(cell.lines, { x, side: "start" }, top, look, brush),
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

const FIELD_COLUMNS = 3;

export function fieldRows(fields: readonly SheetField[], sheet: Sheet): readonly Block[] {
  return rowsOf(fields, FIELD_COLUMNS).map((row) => fieldRow(row, sheet));
}

function fieldRow(fields: readonly SheetField[], sheet: Sheet): Block {
  const { width, brush } = sheet;
  const column = width / FIELD_COLUMNS;
  const nameLook = { size: PAPER_TYPE.small, colour: brush.palette.quiet };
  const valueLook = { size: PAPER_TYPE.heading, colour: brush.palette.ink };
  const cells = fields.map(({ name, value = "" }) => ({
    name: wrapped(name, nameLook.size, column - 4),
    value: wrapped(value, valueLook.size, column - 4),
  }));
  const nameHeight = Math.max(1, ...cells.map(({ name }) => name.length)) * lineOf(nameLook.size);
  const valueHeights = cells.map(({ value }) => value.length * lineOf(valueLook.size));
  const height = nameHeight + Math.max(HANDWRITING, ...valueHeights);
  return {
    height: height + 2,
    drawnAt: (left, top) =>
      cells.flatMap(({ name, value }, index) => {
        const at = inwards(left, sheet);
        const x = at(index * column);
        return [
          ...linesAt(name, { x, side: "start" }, top, nameLook, brush),
          ...linesAt(value, { x, side: "start" }, top + nameHeight, valueLook, brush),
          rule(at(index * column, column - 4), top + height, column - 4, brush),
        ];
      }),
  };
}

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

export interface Column {
  /** Of the width, against the shares of the other columns. */
  readonly share: number;
  /** Its edge from which it is set: the one where reading starts, or the one where it ends. */
  readonly from: "start" | "end";
}

export function figureColumns(shares: readonly number[]): readonly Column[] {
  return shares.map((share, index) => ({ share, from: index === 0 ? "start" : "end" }));
}

/** A table whose head stays with its first row, and is there again on every page it runs on to. */
export function table(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  columns: readonly Column[],
  sheet: Sheet,
): readonly Block[] {
  const named = tableRow(head, columns, sheet, true);
  return [named, ...rows.map((row): Block => ({ ...tableRow(row, columns, sheet), head: named }))];
}

/** A row of a table; a head row is bold and stays with the next. */
export function tableRow(
  cells: readonly string[],
  columns: readonly Column[],
  sheet: Sheet,
  isHead = false,
): Block {
  const { width, brush } = sheet;
  const size = PAPER_TYPE.body;
  const look = { size, weight: isHead ? "bold" : "normal", colour: brush.palette.ink } as const;
  const total = columns.reduce((sum, { share }) => sum + share, 0);
  let end = 0;
  const set = columns.map(({ share, from: side }, index) => {
    const start = end;
    end += (share / total) * width;
    const broken = wrapped(cells[index] ?? "", size, end - start - 1.5, look.weight);
    return { way: side === "start" ? start : end, side, lines: broken };
  });
  const height = Math.max(1, ...set.map((cell) => cell.lines.length)) * lineOf(size) + 0.9;
  return {
    height,
    leads: isHead,
    drawnAt: (left, top) => [
      ...set.flatMap(({ way, side, lines: inCell }) =>
        linesAt(inCell, { x: inwards(left, sheet)(way), side }, top + 0.4, look, brush),
      ),
      rule(left, top + height, width, brush),
    ],
  };
}
