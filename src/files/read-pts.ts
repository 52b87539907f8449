import type { GeometryError } from "../units/index.js";
import { refusingAs, refuse } from "../units/internal.js";
import { textWithin } from "./fault.js";
import { type FilePoint, MOST_POINTS, type PointSet, type ReadLimits } from "./point-set.js";
import { lineFault, readPoint, strictNumber, type TextLine, textLines } from "./text-lines.js";

/** How a `.pts` file is to be read. */
export interface PtsOptions extends ReadLimits {
  /** Name of the face, which the file itself does not hold. */
  readonly id?: string;
  /**
   * What the file calls the first pixel of a row. Sets made in MATLAB count from 1 (from memory):
   * with 1, one is subtracted from every coordinate. Default 0.
   */
  readonly firstPixel?: 0 | 1;
}

/**
 * Reads a `.pts` file as 68-point sets come in: `version: 1`, `n_points: 68`, then points between
 * braces. Extra blanks, blank lines, CRLF and a byte order mark are accepted.
 *
 * @throws GeometryError `not-parsed` with line and column, also for the other kind of `.pts`, which
 * 3D landmark editors write; `out-of-range` where the text is too long
 *
 * @example
 * ```ts
 * import { readPts } from "brow-geometry/files";
 * readPts("version: 1\nn_points: 2\n{\n12.5 30\n14 31\n}").points; // → [[12.5, 30], [14, 31]]
 * readPts("Version 1.0\n2\nS000 1 2 3\nS001 4 5 6"); // throws GeometryError: line 1, column 1
 * ```
 */
export function readPts(text: string, options: PtsOptions = {}): PointSet {
  return refusingAs("readPts", () => {
    const { id = "", firstPixel = 0 } = options;
    if (firstPixel !== 0 && firstPixel !== (1 as number)) {
      refuse("out-of-range", "firstPixel", firstPixel, "0 or 1");
    }
    const lines = textLines(textWithin(text, options));
    const end = { line: (lines[lines.length - 1]?.line ?? 0) + 1, text: "" };
    const at = (index: number): TextLine => lines[index] ?? end;
    requireVersion(at(0));
    const count = readCount(at(1));
    requireBrace(at(2), "{");
    const points = Array.from({ length: count }, (_, index): FilePoint => {
      const line = at(3 + index);
      if (line.text.trim() === "}" || line === end) {
        throw fault(line, `${count} points, not ${index}`);
      }
      const [x, y] = readPoint(line, 2);
      return [x - firstPixel, y - firstPixel];
    });
    requireBrace(at(3 + count), "}");
    if (at(4 + count) !== end) throw fault(at(4 + count), "nothing after the closing brace");
    return { id, points };
  });
}

function requireVersion(line: TextLine): void {
  const [name, value] = entryOf(line);
  if (name === "version" && value === "1") return;
  const ofEditor = name.startsWith("version ") && value === undefined;
  throw fault(
    line,
    ofEditor
      ? '"version: 1"; this .pts is of a 3D landmark editor (lines S000 x y z), another format'
      : '"version: 1"',
  );
}

function readCount(line: TextLine): number {
  const [name, value = ""] = entryOf(line);
  const count = strictNumber(value);
  if (name !== "n_points" || count === undefined) throw fault(line, '"n_points: " and a number');
  if (!Number.isInteger(count) || count < 1 || count > MOST_POINTS) {
    throw fault(line, `1 to ${MOST_POINTS} points`);
  }
  return count;
}

/** What stands before the first colon, in small letters, and what behind it. */
function entryOf({ text }: TextLine): readonly [name: string, value?: string] {
  const colon = text.indexOf(":");
  if (colon < 0) return [text.trim().toLowerCase()];
  return [text.slice(0, colon).trim().toLowerCase(), text.slice(colon + 1).trim()];
}

function requireBrace(line: TextLine, brace: "{" | "}"): void {
  if (line.text.trim() !== brace) throw fault(line, `"${brace}"`);
}

function fault(line: TextLine, need: string): GeometryError {
  return lineFault(line, need);
}
