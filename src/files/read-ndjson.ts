import { refusingAs } from "../units/internal.js";
import { textWithin } from "./fault.js";
import {
  type JsonText,
  parseJson,
  requireName,
  requireObject,
  requirePoints,
} from "./json-text.js";
import type { PointSet, ReadLimits } from "./point-set.js";
import { textLines } from "./text-lines.js";

/**
 * Reads NDJSON with one face a line: an object with `id` (a text or a whole number), `points` (`[x,
 * y]`, `[x, y, z]` or `null` each), and perhaps `image` and `scale`. Other entries are ignored.
 *
 * @throws GeometryError `not-parsed` with line and column; `out-of-range` where the text is too
 * long
 *
 * @example
 * ```ts
 * import { readNdjson } from "brow-geometry/files";
 * readNdjson('{"id":"anna","points":[[12.5,30],null]}\n');
 * // → [{ id: "anna", points: [[12.5, 30], null] }]
 * readNdjson('{"id":"anna","points":[[12.5,"30"]]}'); // throws GeometryError: line 1, column 24 (points[0])
 * ```
 */
export function readNdjson(text: string, limits: ReadLimits = {}): readonly PointSet[] {
  return refusingAs("readNdjson", () => {
    return textLines(textWithin(text, limits)).map((line) => {
      const json = parseJson(line.text, line.line);
      const { id, points, image, scale } = requireObject(json, "", json.value);
      return {
        id: requireName(json, "id", id),
        points: requirePoints(json, "points", points),
        ...(image === undefined ? {} : { image: requireName(json, "image", image) }),
        ...(scale === undefined ? {} : { scale: requireScale(json, scale) }),
      };
    });
  });
}

function requireScale({ fault }: JsonText, scale: unknown): number {
  if (typeof scale === "number" && Number.isFinite(scale) && scale > 0) return scale;
  throw fault("scale", scale, "a number above 0");
}
