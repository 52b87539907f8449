/**
 * The words of a table, in its order.
 *
 * @example
 * ```ts
 * import { keysOf } from "brow-geometry/units";
 * keysOf({ right: -1, left: 1 }); // → ["right", "left"]
 * ```
 */
export function keysOf<Table extends object>(
  table: Table,
): readonly Extract<keyof Table, string>[] {
  return Object.keys(table) as Extract<keyof Table, string>[];
}
