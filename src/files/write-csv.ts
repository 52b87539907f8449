import { refusingAs, refuse, requireFinite } from "../units/internal.js";
import { type PointSet, requireSet } from "./point-set.js";
import papa from "papaparse";
import { guarded } from "./formula-guard.js";

/**
 * Writes sets of points as CSV that `readCsv` reads back: columns `id`, `image` and `scale` where a
 * set has them, then `x_0` …, `y_0` …, and `z_0` … where points are deep; one set a row.
 *
 * @throws GeometryError `wrong-count` where sets have different numbers of points, `out-of-range`
 * where only some are deep, two have the same name, a scale is not above 0, or the last set has neither a name nor anything
 * else, `not-finite`
 *
 * @example
 * ```ts
 * import { writeCsv } from "brow-geometry/files";
 * writeCsv([{ id: "anna", points: [[12.5, 30], null] }]);
 * // → "id,x_0,x_1,y_0,y_1\r\nanna,12.5,,30,\r\n"
 * ```
 */
export function writeCsv(sets: readonly PointSet[]): string {
  return refusingAs("writeCsv", () => {
    requireNames(sets);
    const count = sets[0]?.points.length ?? 0;
    const axes = axesOf(sets, count);
    const extras = (["image", "scale"] as const).filter((key) =>
      sets.some((set) => set[key] !== undefined),
    );
    const columns = [
      "id",
      ...extras,
      ...axes.flatMap((axis) => Array.from({ length: count }, (_, index) => `${axis}_${index}`)),
    ];
    const rows = sets.map((set): readonly Cell[] => [
      set.id,
      ...extras.map((key) => set[key]),
      ...axes.flatMap((_, axis) => set.points.map((point) => point?.[axis])),
    ]);
    const last = rows[rows.length - 1];
    if (last?.every((cell) => cell === undefined || String(cell).trim() === "") === true) {
      const need = "an id, or a point: a last row of empty cells is none when it is read back";
      refuse("out-of-range", `sets[${rows.length - 1}]`, sets[rows.length - 1], need);
    }
    return writeTable(columns, rows);
  });
}

function requireNames(sets: readonly PointSet[]): void {
  const named = new Map<string, number>();
  sets.forEach(({ id }, index) => {
    const before = named.get(id);
    if (before !== undefined) {
      const need = `a name that no other set has: sets[${before}] has it, too`;
      refuse("out-of-range", `sets[${index}].id`, id, need);
    }
    if (id !== "") named.set(id, index);
  });
}

function axesOf(sets: readonly PointSet[], count: number): readonly string[] {
  const sizes = new Set<2 | 3>();
  sets.forEach((set, index) => {
    const field = `sets[${index}]`;
    const { points } = set;
    if (points.length !== count || count === 0) {
      const need = count === 0 ? "one point or more" : `${count} points, as in the first set`;
      refuse("wrong-count", `${field}.points.length`, points.length, need);
    }
    const size = requireSet(set, field);
    if (size !== undefined) sizes.add(size);
    if (sizes.size > 1) {
      const need = "points with as many numbers as in the sets before";
      refuse("out-of-range", `${field}.points`, points, need);
    }
  });
  return sizes.has(3) ? ["x", "y", "z"] : ["x", "y"];
}

/** What a cell of a table may hold; left empty where there is nothing. */
export type Cell = string | number | undefined;

/**
 * Writes a table as CSV (RFC 4180), its first row the names of the columns.
 *
 * A text that a spreadsheet would take for a formula gets an apostrophe before it. Numbers are
 * written in full, with a point.
 *
 * @throws GeometryError `wrong-count` where a row is longer or shorter than the first; `not-finite`
 *
 * @example
 * ```ts
 * import { writeTable } from "brow-geometry/files";
 * writeTable(["name", "front"], [["anna", 31.5], ["=1+1", undefined]]);
 * // → "name,front\r\nanna,31.5\r\n'=1+1,\r\n"
 * ```
 */
export function writeTable(columns: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return refusingAs("writeTable", () => {
    const cells = rows.map((row, index) => {
      if (row.length !== columns.length) {
        const need = `${columns.length} cells, one for each column`;
        refuse("wrong-count", `rows[${index}].length`, row.length, need);
      }
      return row.map((cell, column) => {
        if (typeof cell === "number") requireFinite(`rows[${index}][${column}]`, cell);
        return typeof cell === "string" ? guarded(cell) : cell;
      });
    });
    const text = papa.unparse([columns.map(guarded), ...cells], { newline: "\r\n" });
    return `${text}\r\n`;
  });
}
