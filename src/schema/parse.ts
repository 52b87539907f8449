import type * as z from "zod/mini";
import { GeometryError, type GeometryErrorDetail } from "../units/index.js";
import { writtenPath } from "../units/internal.js";
import type { Schema } from "./schema.js";

type Problem = Omit<GeometryErrorDetail, "where" | "also">;
type Issue = z.core.$ZodIssue;

/** What a schema makes of foreign data; `root` names the data as a whole. */
export function parse<Type>(
  where: string,
  root: string,
  schema: Schema<Type>,
  json: unknown,
): Type {
  const result = schema.safeParse(json);
  if (result.success) return result.data;
  const places = new Map<string, Problem>();
  for (const problem of result.error.issues.flatMap((issue) => problems(issue, root, json))) {
    // What is no list is also a list of the wrong length: the first thing said of a place is enough.
    if (!places.has(problem.field)) places.set(problem.field, problem);
  }
  const [first, ...also] = places.values();
  throw new GeometryError("not-parsed", { where, ...(first as Problem), also });
}

function problems(issue: Issue, root: string, json: unknown): readonly Problem[] {
  const paths =
    issue.code === "unrecognized_keys"
      ? issue.keys.map((key) => [...issue.path, key])
      : [issue.path];
  return paths.map((path) => ({
    field: path.length === 0 ? root : writtenPath(path),
    value: valueAt(path, json),
    need: issue.message,
  }));
}

/** What stands at a path of foreign data. */
export function valueAt(path: readonly PropertyKey[], json: unknown): unknown {
  return path.reduce<unknown>(
    (value, step) => (value as Readonly<Record<PropertyKey, unknown>> | undefined)?.[step],
    json,
  );
}
