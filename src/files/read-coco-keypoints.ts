import { refusingAs } from "../units/internal.js";
import { textWithin } from "./fault.js";
import {
  type JsonObject,
  type JsonText,
  parseJson,
  requireList,
  requireName,
  requireObject,
} from "./json-text.js";
import { type FilePoint, MOST_POINTS, type PointSet, type ReadLimits } from "./point-set.js";

/** Which keypoints of a COCO file are read. */
export interface CocoOptions extends ReadLimits {
  /**
   * `"face"`: the 68 of the face, from `face_kpts` or out of the 133 of a whole body; the default.
   * `"all"`: `keypoints` as they stand.
   */
  readonly part?: "face" | "all";
}

/** All keypoints of a whole body, and those of the face among them. */
const WHOLE_BODY = { size: 133, from: 23, to: 91 };

/**
 * Reads COCO keypoints: a file of annotations (`images` and `annotations`), or a list of results. Each
 * annotation or result gives a point set with its `id` (or its `image_id`, where it has none) and the
 * file name of its picture, where the file lists it. A point at 0, 0 with visibility 0 is missing.
 *
 * @throws GeometryError `not-parsed` with line, column and path; `out-of-range` where the text is too
 * long
 *
 * @example
 * ```ts
 * import { readCocoKeypoints } from "brow-geometry/files";
 * const results = '[{"image_id": 7, "keypoints": [12.5, 30, 0.9, 0, 0, 0]}]';
 * readCocoKeypoints(results, { part: "all" }); // → [{ id: "7", points: [[12.5, 30], null] }]
 * ```
 */
export function readCocoKeypoints(text: string, options: CocoOptions = {}): readonly PointSet[] {
  return refusingAs("readCocoKeypoints", () => {
    const { part = "face" } = options;
    const json = parseJson(textWithin(text, options));
    if (Array.isArray(json.value)) return readList(json, "", json.value, new Map(), part);
    const { images = [], annotations } = requireObject(json, "", json.value);
    const pictures = readImages(json, requireList(json, "images", images));
    const list = requireList(json, "annotations", annotations);
    return readList(json, "annotations", list, pictures, part);
  });
}

function readImages(json: JsonText, images: readonly unknown[]): ReadonlyMap<string, string> {
  return new Map(
    images.map((image, index) => {
      const path = `images[${index}]`;
      const { id, file_name: name } = requireObject(json, path, image);
      return [requireName(json, `${path}.id`, id), requireName(json, `${path}.file_name`, name)];
    }),
  );
}

function readList(
  json: JsonText,
  path: string,
  list: readonly unknown[],
  pictures: ReadonlyMap<string, string>,
  part: "face" | "all",
): readonly PointSet[] {
  return list.map((entry, index) => {
    const place = `${path}[${index}]`;
    const annotation = requireObject(json, place, entry);
    const { id, image_id: imageId } = annotation;
    const name = id === undefined ? "image_id" : "id";
    const image =
      imageId === undefined
        ? undefined
        : pictures.get(requireName(json, `${place}.image_id`, imageId));
    return {
      id: requireName(json, `${place}.${name}`, annotation[name]),
      points: readPoints(json, place, annotation, part),
      ...(image === undefined ? {} : { image }),
    };
  });
}

function readPoints(
  json: JsonText,
  place: string,
  annotation: JsonObject,
  part: "face" | "all",
): readonly (FilePoint | null)[] {
  const key = part === "face" && annotation["face_kpts"] !== undefined ? "face_kpts" : "keypoints";
  const path = `${place}.${key}`;
  const numbers = requireList(json, path, annotation[key], 3 * MOST_POINTS);
  numbers.forEach((number, index) => {
    if (!Number.isFinite(number)) throw json.fault(`${path}[${index}]`, number, "a finite number");
  });
  if (numbers.length % 3 !== 0) {
    const need = "three numbers a point: x, y, visibility";
    throw json.fault(path, `a list of ${numbers.length}`, need);
  }
  const points = triples(numbers as readonly number[]);
  if (part === "all" || key === "face_kpts") return points;
  if (points.length === WHOLE_BODY.size) return points.slice(WHOLE_BODY.from, WHOLE_BODY.to);
  const need = `${WHOLE_BODY.size} points, or face_kpts beside it`;
  throw json.fault(path, `${points.length} points`, need);
}

function triples(numbers: readonly number[]): readonly (FilePoint | null)[] {
  return Array.from({ length: numbers.length / 3 }, (_, index) => {
    const [x = 0, y = 0, visibility = 0] = numbers.slice(3 * index, 3 * index + 3);
    return x === 0 && y === 0 && visibility === 0 ? null : ([x, y] as const);
  });
}
