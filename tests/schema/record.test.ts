import { checkDrawn, mm, recordOf } from "brow-geometry";
import { parseRecord, recordJsonSchema, recordSchema } from "brow-geometry/schema";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";
import { syntheticFace } from "../support/synthetic-face.js";
import { syntheticPlan } from "../support/synthetic-plan.js";

const face = syntheticFace();
const plan = syntheticPlan;
const [x, y] = plan.dots.left.upperArch;
const drawn = { right: {}, left: { upperArch: mm([x + 3, y]) } };
const record = recordOf({ kind: "face", face }, {}, { check: checkDrawn(plan, { dots: drawn }) });
const json = (): Record<string, unknown> =>
  JSON.parse(JSON.stringify(record)) as Record<string, unknown>;

describe("parseRecord", () => {
  it("reads back what was written", () => {
    expectClose(parseRecord(json()), record, 0);
    expect(recordSchema.safeParse(json()).success).toBe(true);
  });

  it.each([
    [{ version: 3 }, "version is 3; needs 2, the version of records that this library knows"],
    [{ version: 0 }, "version is 0; needs 2, the version of records"],
    [{ version: "1" }, 'version is "1"; needs 2, the version of records'],
    [{ version: 1.5 }, "version is 1.5; needs 2, the version of records"],
    [{ version: undefined }, "version is missing; needs 2, the version"],
    [{ plan: { ...record.plan, version: 3 } }, "plan.version is 3; needs 2"],
    [{ input: { kind: "scan" } }, 'input.kind is "scan"; needs one of face, photo'],
    [{ input: { kind: "photo" } }, "input.photo is missing"],
    [{ choices: { lead: "top" } }, 'choices.lead is "top"; needs one of right, left, middle'],
    [{ notes: [{}] }, "notes[0].text is missing; needs text of at most 2000 characters"],
    [{ check: { outcome: "good" } }, 'check.outcome is "good"; needs one of within, outside'],
    [{ title: "map" }, 'title is "map"; needs another name: one of version, input, choices'],
  ])("refuses %j", (change, message) => {
    const { code, message: said } = refusal(() => parseRecord({ ...json(), ...change }));
    expect(code).toBe("not-parsed");
    expect(said).toContain(message);
  });

  it("says of another version nothing but that", () => {
    expect(refusal(() => parseRecord({ version: 3, map: [] })).detail.also).toBeUndefined();
  });

  it.each([[null], ["record"], [[]], [17]])("refuses %j", (other) => {
    expect(refusal(() => parseRecord(other)).code).toBe("not-parsed");
  });

  it("stops at endless lists", () => {
    const endless = Array.from({ length: 200_000 }, () => ({}));
    const lists = [
      { notes: endless },
      { check: { ...record.check, dots: endless } },
      { check: { ...record.check, measures: endless } },
    ];
    for (const change of lists) {
      expect(refusal(() => parseRecord({ ...json(), ...change })).detail.also).toEqual([]);
    }
  });
});

/** Every object within a JSON value. */
function objectsIn(value: unknown): readonly Readonly<Record<string, unknown>>[] {
  if (typeof value !== "object" || value === null) return [];
  const inside = Object.values(value).flatMap(objectsIn);
  return Array.isArray(value) ? inside : [value as Record<string, unknown>, ...inside];
}

describe("recordJsonSchema", () => {
  const schema = recordJsonSchema();
  const written: unknown = JSON.parse(JSON.stringify(schema));

  it("is plain JSON of draft 2020-12", () => {
    expect(written).toEqual(schema);
    expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(objectsIn(schema).flatMap(Object.values)).not.toContain(null);
  });

  it("limits every list, and lets no unknown name in", () => {
    const types = objectsIn(schema).filter((one) => typeof one.type === "string");
    const lists = types.filter(({ type }) => type === "array");
    expect(lists.length).toBeGreaterThan(10);
    expect(lists.filter(({ maxItems }) => typeof maxItems !== "number")).toEqual([]);
    const objects = types.filter(({ type, properties }) => type === "object" && properties);
    // Values of notes go by names of their own, and are described one and all.
    const [named, others] = [true, false].map((isNamed) =>
      objects.filter(({ properties }) => Object.keys(properties as object).length > 0 === isNamed),
    );
    expect(named?.filter(({ additionalProperties }) => additionalProperties !== false)).toEqual([]);
    for (const { additionalProperties } of others ?? []) {
      expect(additionalProperties).toHaveProperty("$ref");
    }
    expect(others).not.toHaveLength(0);
  });

  it("points at definitions that it has", () => {
    const defined = Object.keys(schema.$defs ?? {}).map((name) => `#/$defs/${name}`);
    const used = objectsIn(schema).flatMap(({ $ref }) => (typeof $ref === "string" ? [$ref] : []));
    expect(used.length).toBeGreaterThan(20);
    expect(used.filter((one) => !defined.includes(one))).toEqual([]);
  });
});
