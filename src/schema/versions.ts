import { MAP_VERSION } from "../mapping/index.js";
import { GeometryError } from "../units/index.js";
import { parse, valueAt } from "./parse.js";
import type { Schema } from "./schema.js";

/** Makes of data what the next version writes for it; what has another form stays as it is. */
type Step = (json: unknown) => unknown;

/** For every version before this one, how to get to the next. */
interface Steps {
  readonly [From: number]: Step;
}

// From version 1, of library 0.1: a midline told of other methods and of no landmark that disagrees, a move did
// not know how sure it is, and a plan had no version.

const midlineFrom1: Step = (json) => {
  if (!isObject(json) || !("others" in json)) return json;
  const { others: _, ...kept } = json;
  return { astray: [], ...kept };
};
const unsure: Step = (by) => (typeof by === "number" ? { value: by, u: null } : by);
const moveFrom1 = inTurn(inside("up", unsure), inside("outward", unsure));
const versionFrom1: Step = (json) => (isObject(json) ? { ...json, version: 2 } : json);
const frameFrom1 = inside("frame", inside("midline", midlineFrom1));
const planFrom1 = inTurn(versionFrom1, frameFrom1, inside("moves", eachOf(moveFrom1)));
const visitFrom1 = inTurn(versionFrom1, inside("input", frameFrom1), inside("plan", planFrom1));

export const PLAN_STEPS: Steps = { 1: planFrom1 };
export const RECORD_STEPS: Steps = { 1: inTurn(visitFrom1, inside("earlier", eachOf(visitFrom1))) };

/**
 * Reads data of this version or an earlier one. Names that it does not know are refused, unless the data says by
 * `minor` that a later library added some: then they are kept, where they stand.
 *
 * @param unversioned the version of data that names none
 */
export function parseVersioned<Type>(
  where: string,
  root: string,
  schema: Schema<Type>,
  steps: Steps,
  json: unknown,
  unversioned?: number,
): Type {
  if (!isObject(json)) return parse(where, root, schema, json);
  let data: unknown = json;
  let version = "version" in json ? json.version : unversioned;
  while (version !== MAP_VERSION) {
    const step = typeof version === "number" ? steps[version] : undefined;
    if (step === undefined) {
      const need = `${MAP_VERSION}, the version of ${root}s that this library knows`;
      throw new GeometryError("not-parsed", { where, field: "version", value: version, need });
    }
    data = step(data);
    version = (version as number) + 1;
  }
  const isLater = typeof json.minor === "number" && json.minor > 0;
  const added = isLater ? unknownNames(schema, data) : [];
  const without = added.map((path) =>
    atHolder(path, (holder, name) => {
      const { [name]: _, ...others } = holder;
      return others;
    }),
  );
  const known = parse(where, root, schema, inTurn(...without)(data));
  const kept = added.map((path) =>
    // A name such as `__proto__` is but a name where it is computed.
    atHolder(path, (holder, name) => ({ ...holder, [name]: valueAt(path, data) })),
  );
  return inTurn(...kept)(known) as Type;
}

type Path = readonly PropertyKey[];

function unknownNames<Type>(schema: Schema<Type>, json: unknown): readonly Path[] {
  const { error } = schema.safeParse(json);
  return (error?.issues ?? []).flatMap((issue) =>
    issue.code === "unrecognized_keys" ? issue.keys.map((key) => [...issue.path, key]) : [],
  );
}

/** Changes what holds a name, at a path of data. */
function atHolder(path: Path, change: (holder: Json, name: string) => Json): Step {
  const holder: Step = (json) => change(json as Json, path.at(-1) as string);
  return path
    .slice(0, -1)
    .reduceRight<Step>(
      (step, name) =>
        typeof name === "number" ? eachOf(step, name) : inside(name as string, step),
      holder,
    );
}

type Json = Readonly<Record<string, unknown>>;

function isObject(json: unknown): json is Json {
  return typeof json === "object" && json !== null && !Array.isArray(json);
}

function inside(name: string, step: Step): Step {
  return (json) =>
    isObject(json) && Object.hasOwn(json, name) ? { ...json, [name]: step(json[name]) } : json;
}

/** In every item of a list, or in one. */
function eachOf(step: Step, only?: number): Step {
  return (json) =>
    Array.isArray(json)
      ? json.map((item: unknown, at) => (only === undefined || at === only ? step(item) : item))
      : json;
}

function inTurn(...steps: readonly Step[]): Step {
  return (json) => steps.reduce((changed, step) => step(changed), json);
}
