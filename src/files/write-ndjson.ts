import { refusingAs } from "../units/internal.js";
import { type PointSet, requireSet } from "./point-set.js";

/**
 * Writes sets of points as NDJSON that `readNdjson` reads back: one set a line.
 *
 * @throws GeometryError `not-finite`, `out-of-range` where flat and deep points stand in one set or a
 * scale is not above 0
 *
 * @example
 * ```ts
 * import { writeNdjson } from "brow-geometry/files";
 * writeNdjson([{ id: "anna", points: [[12.5, 30], null] }]);
 * // → '{"id":"anna","points":[[12.5,30],null]}\n'
 * ```
 */
export function writeNdjson(sets: readonly PointSet[]): string {
  return refusingAs("writeNdjson", () => {
    return sets
      .map((set, index) => {
        requireSet(set, `sets[${index}]`);
        const { id, points, image, scale } = set;
        return `${JSON.stringify({ id, points, image, scale })}\n`;
      })
      .join("");
  });
}
