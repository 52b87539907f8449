import { refusingAs } from "../units/internal.js";
import papa from "papaparse";
import type { GeometryError } from "../units/index.js";
import { notParsed, placeOf, textWithin } from "./fault.js";
import { unguarded } from "./formula-guard.js";
import { type FilePoint, MOST_POINTS, type PointSet, type ReadLimits } from "./point-set.js";
import { strictNumber } from "./text-lines.js";

/** How a CSV file is to be read. */
export interface CsvOptions extends ReadLimits {
  /** Name of the column that names the face; rows are numbered from 1 where there is none. */
  readonly idColumn?: string;
  /** The delimiter between cells; default a comma. */
  readonly delimiter?: "," | ";" | "\t";
}

/**
 * Reads a CSV file with one face a row and a header that names the coordinates: `x_0 … x_67, y_0 …
 * y_67`, or `x0, y0, x1, y1, …`, counted from 0 or 1, with `z_0 …` where points are deep, in any
 * order; blanks around a name are ignored. No two rows may name the same face. Columns `image` and `scale` are kept, others ignored. A
 * point is missing where all of its cells are empty; trailing empty rows, which spreadsheets leave,
 * are ignored.
 *
 * In the error a column is that of the table, with its name; where quotes are at fault, that of the
 * line.
 *
 * @throws GeometryError `not-parsed` with line and column; `out-of-range` where the text is too
 * long
 *
 * @example
 * ```ts
 * import { readCsv } from "brow-geometry/files";
 * readCsv("id, x_0, x_1, y_0, y_1\nanna,12.5,,30,\n"); // → [{ id: "anna", points: [[12.5, 30], null] }]
 * readCsv("id,x0,y0\nanna,1,2\nanna,3,4\n"); // throws GeometryError: line 3, column 1 (id) is "anna"
 * readCsv("x0,y0\n1,0x10\n"); // throws GeometryError: line 2, column 2 (y0) is "0x10"
 * ```
 */
export function readCsv(text: string, options: CsvOptions = {}): readonly PointSet[] {
  return refusingAs("readCsv", () => {
    const { idColumn = "id", delimiter = "," } = options;
    const content = textWithin(text, options);
    const rows = readRows(content, delimiter);
    const last = rows.reduce((place, cells, index) => (isEmpty(cells) ? place : index), -1);
    const filled = rows
      .slice(0, last + 1)
      .flatMap((cells, index) => (cells.length === 1 && isEmpty(cells) ? [] : [{ cells, index }]));
    const [header, ...records] = filled;
    if (header === undefined) return [];
    const lineOf = (index: number): number =>
      1 + rows.slice(0, index).reduce((sum, cells) => sum + linesOf(cells), 0);
    const fault: Fault = (index, column, value, need) => {
      const line = lineOf(index);
      const name = (header.cells[column]?.trim() ?? "").slice(0, LONGEST_NAME);
      return notParsed({ line, column: column + 1 }, value, need, name);
    };
    const layout = readHeader(header.cells, header.index, idColumn, fault);
    const [first] = records;
    if (layout.places.length === 0 && first !== undefined) {
      const other = DELIMITERS.find((one) => one !== delimiter && header.cells[0]?.includes(one));
      const hint = other === undefined ? "" : `; is the delimiter ${JSON.stringify(other)}?`;
      const need = `columns x_0, y_0 … or x0, y0 …${hint}`;
      throw fault(header.index, 0, header.cells.join(delimiter), need);
    }
    const named = new Map<string, number>();
    return records.map(({ cells, index }, rank) => {
      if (cells.length !== header.cells.length) {
        const need = `${header.cells.length} cells in every row, not ${cells.length}`;
        throw fault(
          index,
          Math.min(cells.length, header.cells.length),
          cells.join(delimiter),
          need,
        );
      }
      const set = readRecord(cells, layout, String(rank + 1), (column, need) =>
        fault(index, column, cells[column], need),
      );
      const before = named.get(set.id);
      if (before !== undefined && layout.id !== undefined) {
        const need = `a name that no other row has: line ${lineOf(before)} has it, too`;
        throw fault(index, layout.id, set.id, need);
      }
      // A cell that was left empty names nobody.
      if (set.id !== "") named.set(set.id, index);
      return set;
    });
  });
}

const DELIMITERS = [",", ";", "\t"] as const;

/** A name in an error; a header whose cells nobody told apart is one long name. */
const LONGEST_NAME = 30;

type Fault = (row: number, column: number, value: unknown, need: string) => GeometryError;

/** Where the parts of a point set stand in a row. */
interface Layout {
  readonly id: number | undefined;
  readonly image: number | undefined;
  readonly scale: number | undefined;
  /** Columns of x, y and perhaps z, point by point. */
  readonly places: readonly (readonly number[])[];
}

function readRows(text: string, delimiter: string): readonly (readonly string[])[] {
  const newline = newlineOf(text);
  const { data, errors } = papa.parse<string[]>(text, { delimiter, newline, quoteChar: '"' });
  const [error] = errors;
  if (error !== undefined) {
    const offset = error.index ?? 0;
    const seen = text.slice(offset, offset + 20);
    throw notParsed(placeOf(text, offset), seen, `well-formed CSV: ${error.message}`);
  }
  // A file that mixes line ends keeps some of them on its last cells.
  return newline === "\n" ? data.map(withoutReturn) : data;
}

/** The line end of the first line, or a line feed where some line between cells ends with that alone. */
function newlineOf(text: string): "\r\n" | "\n" | "\r" {
  const first = text.search(/[\r\n]/);
  if (first < 0 || text[first] === "\n") return "\n";
  if (text[first + 1] !== "\n") return "\r";
  const mixed = text.split('"').some((part, index) => index % 2 === 0 && LONE_FEED.test(part));
  return mixed ? "\n" : "\r\n";
}

const LONE_FEED = /(?<!\r)\n/;

function withoutReturn(cells: readonly string[]): readonly string[] {
  const last = cells[cells.length - 1];
  return last?.endsWith("\r") === true ? [...cells.slice(0, -1), last.slice(0, -1)] : cells;
}

function isEmpty(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === "");
}

/** How many lines of the text a row takes. */
function linesOf(cells: readonly string[]): number {
  return cells.reduce((sum, cell) => sum + (cell.match(/\r\n|\n|\r/g)?.length ?? 0), 1);
}

function readHeader(cells: readonly string[], row: number, idColumn: string, fault: Fault): Layout {
  const named = new Map<string, number>();
  const axes = {
    x: new Map<number, number>(),
    y: new Map<number, number>(),
    z: new Map<number, number>(),
  };
  cells.forEach((cell, column) => {
    const name = unguarded(cell.trim());
    const coordinate = /^([xyz])_?(\d{1,4})$/.exec(name);
    const [group, key] =
      coordinate === null
        ? [named, name]
        : [axes[coordinate[1] as "x" | "y" | "z"], Number(coordinate[2])];
    const seen = group as Map<unknown, number>;
    if (seen.has(key) && (coordinate !== null || [idColumn, "image", "scale"].includes(name))) {
      throw fault(row, column, cell, "a name that no other column has");
    }
    if (!seen.has(key)) seen.set(key, column);
  });
  const first = axes.x.has(0) ? 0 : 1;
  const count = Math.max(axes.x.size, axes.y.size, axes.z.size);
  if (count > MOST_POINTS) throw fault(row, 0, count, `at most ${MOST_POINTS} points`);
  const used = axes.z.size === 0 ? (["x", "y"] as const) : (["x", "y", "z"] as const);
  const places = Array.from({ length: count }, (_, rank) =>
    used.map((axis) => {
      const column = axes[axis].get(first + rank);
      if (column !== undefined) return column;
      const beside = used.map((other) => axes[other].get(first + rank)).find(Number.isInteger) ?? 0;
      throw fault(row, beside, cells[beside], `a column ${axis}_${first + rank} as well`);
    }),
  );
  return { id: named.get(idColumn), image: named.get("image"), scale: named.get("scale"), places };
}

function readRecord(
  cells: readonly string[],
  { id, image, scale, places }: Layout,
  rank: string,
  fault: (column: number, need: string) => GeometryError,
): PointSet {
  const number = (column: number): number => {
    const value = strictNumber((cells[column] ?? "").trim());
    if (value === undefined) throw fault(column, "a decimal number");
    return value;
  };
  const isMissing = (column: number): boolean => (cells[column] ?? "").trim() === "";
  const points = places.map((columns) =>
    columns.every(isMissing) ? null : (columns.map(number) as unknown as FilePoint),
  );
  const imageName = image === undefined ? "" : unguarded(cells[image] ?? "");
  const set: PointSet = { id: id === undefined ? rank : unguarded(cells[id] ?? ""), points };
  return {
    ...set,
    ...(imageName === "" ? {} : { image: imageName }),
    ...(scale === undefined || isMissing(scale) ? {} : { scale: positive(number(scale), scale) }),
  };

  function positive(value: number, column: number): number {
    if (value > 0) return value;
    throw fault(column, "a number above 0");
  }
}
