import papa from "papaparse";
import { refuse, requireFinite } from "../units/internal.js";
import { guarded } from "./formula-guard.js";

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
  const cells = rows.map((row, index) => {
    if (row.length !== columns.length) {
      const need = `${columns.length} cells, one for each column`;
      refuse("wrong-count", "writeTable", `rows[${index}].length`, row.length, need);
    }
    return row.map((cell, column) => {
      if (typeof cell === "number") requireFinite("writeTable", `rows[${index}][${column}]`, cell);
      return typeof cell === "string" ? guarded(cell) : cell;
    });
  });
  const text = papa.unparse([columns.map(guarded), ...cells], { newline: "\r\n" });
  return `${text}\r\n`;
}
