import type { GeometryError } from "../units/index.js";
import { notParsed, placeOf } from "./fault.js";
import { walkJson } from "./json-walk.js";
import { type FilePoint, MOST_POINTS } from "./point-set.js";

/** A JSON text being read: its value, and how to say what is wrong with a part of it. */
export interface JsonText {
  readonly value: unknown;
  readonly fault: (path: string, value: unknown, need: string) => GeometryError;
}

/** Parses a JSON text that begins on a line of its file. */
export function parseJson(text: string, firstLine = 1): JsonText {
  const at = (offset: number): { readonly line: number; readonly column: number } => {
    const { line, column } = placeOf(text, offset);
    return { line: line + firstLine - 1, column };
  };
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    const stop = walkJson(text);
    const offset = stop ?? 0;
    const seen = text.slice(offset, offset + 20);
    // An engine may give up on what is JSON all the same.
    const need = stop === undefined ? "JSON that nests less deeply" : "JSON";
    throw notParsed(at(offset), seen === "" ? undefined : seen, need);
  }
  return {
    value,
    fault(path, part, need) {
      let place = 0;
      walkJson(text, (way, offset) => {
        if (path === way || path.startsWith(`${way}.`) || path.startsWith(`${way}[`))
          place = offset;
      });
      return notParsed(at(place), part, need, path);
    },
  };
}

export type JsonObject = Readonly<Record<string, unknown>>;

export function requireObject({ fault }: JsonText, path: string, value: unknown): JsonObject {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) {
    return value as JsonObject;
  }
  throw fault(path, value, "an object");
}

export function requireList(
  { fault }: JsonText,
  path: string,
  value: unknown,
  atMost: number = Infinity,
): readonly unknown[] {
  if (Array.isArray(value) && value.length <= atMost) return value;
  const need = atMost === Infinity ? "a list" : `a list of at most ${atMost}`;
  throw fault(path, Array.isArray(value) ? `a list of ${value.length}` : value, need);
}

/** A name, which may be a whole number. */
export function requireName({ fault }: JsonText, path: string, value: unknown): string {
  if (typeof value === "string") return value;
  if (Number.isSafeInteger(value)) return String(value);
  throw fault(path, value, "a text or a whole number");
}

export function requirePoints(
  json: JsonText,
  path: string,
  value: unknown,
): readonly (FilePoint | null)[] {
  return requireList(json, path, value, MOST_POINTS).map((point, index) => {
    if (point === null) return null;
    const place = `${path}[${index}]`;
    const isPoint =
      Array.isArray(point) &&
      (point.length === 2 || point.length === 3) &&
      point.every((coordinate) => Number.isFinite(coordinate));
    if (isPoint) return point as unknown as FilePoint;
    throw json.fault(place, point, "[x, y], [x, y, z] or null");
  });
}
