import { fc, test } from "@fast-check/vitest";
import { Ajv2020 } from "ajv/dist/2020.js";
import {
  checkDrawn,
  eachSide,
  faceFrame,
  type MapRecord,
  measured,
  mm,
  px,
  recordOf,
  requirePlannable,
  scaleFromReference,
} from "brow-geometry";
import { recordJsonSchema, recordSchema } from "brow-geometry/schema";
import { describe, expect, it } from "vitest";
import { photograph } from "../support/photograph.js";
import { syntheticFace } from "../support/synthetic-face.js";
import { syntheticPlan } from "../support/synthetic-plan.js";

const accepts = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(recordJsonSchema());

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

const written = (record: MapRecord): Json => JSON.parse(JSON.stringify(record)) as Json;

/** A record with about everything that a record may hold. */
function fullRecord(): MapRecord {
  const face = syntheticFace();
  const plan = syntheticPlan;
  const dots = eachSide((side) => {
    const [x, y] = plan.dots[side].upperArch;
    return { upperArch: mm([x + 2.5, y]) };
  });
  const readings = { right: {}, left: { front: measured(33, 0.2) } };
  return recordOf(
    { kind: "face", face },
    {
      lead: "left",
      pins: [{ side: "left", dot: "tailEnd", at: mm([57, 18]), by: "Ada", reason: "as it grows" }],
      declared: { upright: true },
    },
    {
      check: checkDrawn(plan, { dots, readings }),
      notes: [{ text: "first visit", by: "Ada" }],
      findings: [{ code: "lips-apart", text: "The lips are apart.", values: {} }],
    },
  );
}

function photoRecord(): MapRecord {
  const photo = requirePlannable(
    photograph(syntheticFace(), { factor: 0.1, tilt: 5, at: [900, 800] }),
  );
  const scale = scaleFromReference(px([0, 0]), px([500, 0]), mm(50));
  return recordOf({ kind: "photo", photo, frame: faceFrame(photo, scale) });
}

/** Records as JSON, and every place within them. */
const RECORDS = [fullRecord(), photoRecord()].map(written);

type Path = readonly (string | number)[];

function pathsOf(value: Json, path: Path = []): readonly Path[] {
  if (typeof value !== "object" || value === null) return [path];
  return [
    path,
    ...Object.entries(value).flatMap(([key, inner]) =>
      pathsOf(inner, [...path, Array.isArray(value) ? Number(key) : key]),
    ),
  ];
}

/** A value with another one, or nothing, at a place within it. */
function changed(value: Json, [key, ...rest]: Path, put: Json | undefined): Json {
  if (key === undefined) return put ?? null;
  if (isList(value)) {
    return value.flatMap((item, index): readonly Json[] => {
      if (index !== key) return [item];
      return rest.length === 0 && put === undefined ? [] : [changed(item, rest, put)];
    });
  }
  const entries = Object.entries(value as { readonly [key: string]: Json });
  return Object.fromEntries(
    entries.flatMap(([name, inner]): readonly (readonly [string, Json])[] => {
      if (name !== key) return [[name, inner]];
      return rest.length === 0 && put === undefined ? [] : [[name, changed(inner, rest, put)]];
    }),
  );
}

const anyPut: fc.Arbitrary<Json | undefined> = fc.oneof(
  fc.constantFrom<Json | undefined>(
    undefined,
    null,
    true,
    0,
    -1,
    0.5,
    1e300,
    "",
    "left",
    "face",
    "photo",
    "x".repeat(3000),
    [],
    {},
    [1, 2],
    [1, 2, 3],
    [1],
    { kind: "flat" },
    { value: 1, u: -1 },
    { value: 1, u: 0.1 },
  ),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.string({ maxLength: 20 }),
);

describe("the JSON Schema of records", () => {
  it("accepts records, as the schema does", () => {
    for (const record of RECORDS) {
      expect(accepts(record), JSON.stringify(accepts.errors?.slice(0, 3))).toBe(true);
      expect(recordSchema.safeParse(record).success).toBe(true);
    }
  });

  const changes = RECORDS.map((record) => ({ record, paths: pathsOf(record) }));
  const anyChange = fc
    .tuple(fc.constantFrom(...changes), fc.nat(), anyPut)
    .map(([{ record, paths }, index, put]) => {
      const path = paths[index % paths.length] ?? [];
      return { path, put, record: changed(record, path, put) };
    });

  test.prop([anyChange], { numRuns: 2000 })(
    "accepts a changed record exactly where the schema does",
    ({ record }) => {
      expect(accepts(record)).toBe(recordSchema.safeParse(record).success);
    },
  );

  const anyUnknown = fc
    .tuple(fc.constantFrom(...changes), fc.nat())
    .map(([{ record, paths }, index]) => {
      const path = paths[index % paths.length] ?? [];
      return changed(record, [...path], addTo(at(record, path)));
    });

  test.prop([anyUnknown], { numRuns: 500 })(
    "refuses an unknown name wherever the schema does",
    (record) => {
      expect(accepts(record)).toBe(recordSchema.safeParse(record).success);
    },
  );
});

function at(value: Json, path: Path): Json {
  return path.reduce<Json>((inner, key) => (inner as { [key: string]: Json })[key] ?? null, value);
}

function addTo(value: Json): Json {
  const isObject = typeof value === "object" && value !== null && !isList(value);
  return isObject ? { ...value, surprise: 1 } : value;
}

/** What `Array.isArray` does not tell of a list that nobody may write to. */
function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}
