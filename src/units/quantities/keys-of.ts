/** The words of a table, in its order. */
export function keysOf<Table extends object>(
  table: Table,
): readonly Extract<keyof Table, string>[] {
  return Object.keys(table) as Extract<keyof Table, string>[];
}
