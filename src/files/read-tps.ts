import { refusingAs, requirePositive } from "../units/internal.js";
import { notParsed, textWithin } from "./fault.js";
import { type FilePoint, MOST_POINTS, type PointSet, type ReadLimits } from "./point-set.js";
import { lineFault, readPoint, strictNumber, type TextLine, textLines } from "./text-lines.js";

/** How a TPS file is to be read or written. */
export interface TpsOptions {
  /**
   * Height of the pictures in pixels. TPS counts y upwards from the bottom left (from memory): with
   * the height, y is turned to count downwards from the top. Left out, y stays as it is written.
   */
  readonly imageHeight?: number;
}

/**
 * Reads a TPS file: for each face `LM=` (or `LM3=`) with the number of its points, the points, then
 * `IMAGE=`, `ID=` and `SCALE=`, in any case and order. A point with `NA` or a negative coordinate
 * is missing. `COMMENT=` and `VARIABLES=` are ignored; curves and outlines are refused.
 *
 * @throws GeometryError `not-parsed` with line and column; `out-of-range` where the text is too
 * long or the height is not more than 0
 *
 * @example
 * ```ts
 * import { readTps } from "brow-geometry/files";
 * const text = "LM=2\n12.5 70\nNA NA\nIMAGE=anna.png\nID=anna\n";
 * readTps(text, { imageHeight: 100 });
 * // → [{ id: "anna", points: [[12.5, 30], null], image: "anna.png" }]
 * ```
 */
export function readTps(text: string, options: TpsOptions & ReadLimits = {}): readonly PointSet[] {
  return refusingAs("readTps", () => {
    const { imageHeight } = options;
    if (imageHeight !== undefined) requirePositive("imageHeight", imageHeight);
    const sets: Draft[] = [];
    const lines = textLines(textWithin(text, options));
    for (let index = 0; index < lines.length; index += 1) {
      const entry = readEntry(lines[index] as TextLine);
      if (entry.key === "LM" || entry.key === "LM3") {
        const size = entry.key === "LM" ? 2 : 3;
        const count = readCount(entry);
        const following = lines.slice(index + 1, index + 1 + count);
        sets.push({ points: readPoints(following, entry, count, size, imageHeight) });
        index += count;
      } else {
        const set = sets[sets.length - 1];
        if (set === undefined) throw fault(entry, '"LM=" and the number of points first');
        describe(set, entry);
      }
    }
    return sets.map(({ id = "", ...set }) => ({ id, ...set }));
  });
}

interface Draft {
  readonly points: readonly (FilePoint | null)[];
  id?: string;
  image?: string;
  scale?: number;
}

interface Entry extends TextLine {
  readonly key: string;
  readonly value: string;
}

function readEntry(line: TextLine): Entry {
  const equals = line.text.indexOf("=");
  if (equals < 0) throw fault(line, 'a key and "=", such as "LM=68"');
  const key = line.text.slice(0, equals).trim().toUpperCase();
  return { ...line, key, value: line.text.slice(equals + 1).trim() };
}

function readCount(entry: Entry): number {
  const count = strictNumber(entry.value);
  if (count !== undefined && Number.isInteger(count) && count >= 0 && count <= MOST_POINTS)
    return count;
  throw valueFault(entry, `0 to ${MOST_POINTS} points`);
}

function readPoints(
  lines: readonly TextLine[],
  entry: Entry,
  count: number,
  size: 2 | 3,
  imageHeight: number | undefined,
): readonly (FilePoint | null)[] {
  if (lines.length < count) {
    throw valueFault(entry, `${count} lines of points after it, not ${lines.length}`);
  }
  return lines.map((line) => {
    if (isMissing(line.text, size)) return null;
    const [x, y, ...z] = readPoint(line, size);
    if (x < 0 || y < 0) return null;
    return [x, imageHeight === undefined ? y : imageHeight - y, ...z] as unknown as FilePoint;
  });
}

function isMissing(text: string, size: number): boolean {
  const words = text.trim().toUpperCase().split(/\s+/);
  return words.length === size && words.every((word) => word === "NA");
}

function describe(set: Draft, entry: Entry): void {
  switch (entry.key) {
    case "ID":
      if (set.id !== undefined) throw fault(entry, "one ID for a face");
      set.id = entry.value;
      return;
    case "IMAGE":
      if (set.image !== undefined) throw fault(entry, "one IMAGE for a face");
      set.image = entry.value;
      return;
    case "SCALE": {
      const scale = strictNumber(entry.value);
      if (scale === undefined || scale <= 0) throw valueFault(entry, "a number above 0");
      if (set.scale !== undefined) throw fault(entry, "one SCALE for a face");
      set.scale = scale;
      return;
    }
    case "COMMENT":
    case "VARIABLES":
      return;
    default:
      throw fault(entry, "LM, LM3, IMAGE, ID, SCALE, COMMENT or VARIABLES: nothing else is read");
  }
}

function fault(line: TextLine, need: string): Error {
  return lineFault(line, need);
}

function valueFault({ line, text, value }: Entry, need: string): Error {
  return notParsed({ line, column: text.indexOf("=") + 2 }, value, need);
}
