import { refusingAs, refuse, requirePositive } from "../units/internal.js";
import { type FilePoint, type PointSet, requireSet } from "./point-set.js";
import type { TpsOptions } from "./read-tps.js";

/**
 * Writes a TPS file that `readTps` reads back. Missing points are written as `NA`.
 *
 * @throws GeometryError `out-of-range` for what TPS cannot hold: a negative coordinate, a name with a
 * line break or with blanks at its ends, flat and deep points in one set; `not-finite`
 *
 * @example
 * ```ts
 * import { writeTps } from "brow-geometry/files";
 * writeTps([{ id: "anna", points: [[12.5, 30], null] }], { imageHeight: 100 });
 * // → "LM=2\n12.5 70\nNA NA\nID=anna\n"
 * ```
 */
export function writeTps(sets: readonly PointSet[], options: TpsOptions = {}): string {
  return refusingAs("writeTps", () => {
    const { imageHeight } = options;
    if (imageHeight !== undefined) requirePositive("imageHeight", imageHeight);
    return sets.map((set, index) => writeSet(set, `sets[${index}]`, imageHeight)).join("");
  });
}

function writeSet(set: PointSet, field: string, imageHeight: number | undefined): string {
  const size = requireSet(set, field) ?? 2;
  const points = set.points.map((point, index) =>
    point === null
      ? Array.from({ length: size }, () => "NA").join(" ")
      : writePoint(point, `${field}.points[${index}]`, imageHeight),
  );
  const { id, image, scale } = set;
  const lines = [
    `${size === 2 ? "LM" : "LM3"}=${points.length}`,
    ...points,
    ...(image === undefined ? [] : [`IMAGE=${requireName(image, `${field}.image`)}`]),
    `ID=${requireName(id, `${field}.id`)}`,
    ...(scale === undefined ? [] : [`SCALE=${scale}`]),
  ];
  return `${lines.join("\n")}\n`;
}

function writePoint(
  [x, y, ...z]: FilePoint,
  field: string,
  imageHeight: number | undefined,
): string {
  const upwards = imageHeight === undefined ? y : imageHeight - y;
  if (x < 0 || upwards < 0) {
    const need = "coordinates of 0 or more, since TPS takes negative ones for missing points";
    refuse("out-of-range", field, [x, upwards], need);
  }
  return [x, upwards, ...z].join(" ");
}

function requireName(name: string, field: string): string {
  if (name === name.trim() && !/[\r\n]/.test(name)) return name;
  const need = "a name without line breaks and without blanks at its ends";
  refuse("out-of-range", field, name, need);
}
