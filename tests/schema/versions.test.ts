import { readFileSync } from "node:fs";
import { drawPlan, type MapRecord, replay, say } from "brow-geometry";
import { drawSheet } from "brow-geometry/drawing";
import { parsePlan, parseRecord } from "brow-geometry/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";
import { syntheticPlan } from "../support/synthetic-plan.js";

type Json = Record<string, unknown>;

function again<Data>(data: Data): Data {
  return JSON.parse(JSON.stringify(data)) as Data;
}

describe.each(["mesh", "points-68", "by-hand"])("a record of 0.1, %s", (name) => {
  const written = JSON.parse(
    readFileSync(`tests/fixtures/records-of-0.1/${name}.json`, "utf8"),
  ) as MapRecord;
  const opened = parseRecord(written);

  it("opens with the dots, measures and choices that were agreed", () => {
    expect(opened.version).toBe(2);
    expect(opened.plan.version).toBe(2);
    for (const part of ["dots", "measures", "choices", "comparison", "reasons"] as const) {
      expect(opened.plan[part]).toEqual(written.plan[part]);
    }
    expect(opened.choices).toEqual(written.choices);
    expect(opened.check).toEqual(written.check);
    expect(opened.notes).toEqual(written.notes);
  });

  it("claims nothing of how sure its moves are", () => {
    const made = opened.plan.moves.filter(({ kind }) => kind !== "place");
    expect(made.length).toBeGreaterThan(0);
    for (const move of made) expect(move).toMatchObject({ up: { u: Infinity } });
  });

  it("says, draws and plans anew", () => {
    const { plan } = opened;
    for (const note of [...plan.reasons, ...plan.cautions, ...plan.moves]) {
      expect(say(note as never)).not.toBe("");
    }
    expect(drawPlan(plan)).toContain("</svg>");
    expect(drawSheet(plan)).toContain("</html>");
    expect(replay(opened).version).toBe(2);
  });

  it("is of this version once it is written again", () => {
    expect(parseRecord(again(opened))).toEqual(opened);
  });

  it("opens as an earlier visit too, and its plan by itself", () => {
    const { plan } = parseRecord({ ...written, earlier: [written] }).earlier?.[0] ?? {};
    expect(plan).toEqual(opened.plan);
    expect(parsePlan(written.plan)).toEqual(opened.plan);
  });

  it.each([17, null, "moves", [7]])("is refused where its moves are %j", (moves) => {
    const { message } = refusal(() => parsePlan({ ...written.plan, moves }));
    expect(message).toContain("parsePlan: moves");
  });
});

describe("names that a later library added", () => {
  const plan = again(syntheticPlan) as unknown as Json;

  it("are refused where it does not say so", () => {
    const { message } = refusal(() => parsePlan({ ...plan, glow: 3 }));
    expect(message).toContain("glow is 3; needs another name");
    for (const minor of [0, "1", null, [1]]) {
      expect(refusal(() => parsePlan({ ...plan, glow: 3, minor })).code).toBe("not-parsed");
    }
  });

  it("are kept where they stand", () => {
    const { moves, measures } = syntheticPlan;
    const later = {
      ...plan,
      minor: 1,
      glow: { by: [1, 2] },
      measures: { ...measures, left: { ...measures.left, glow: 4 } },
      moves: moves.map((move, index) => ({ ...move, order: index })),
    };
    expect(again(parsePlan(later))).toEqual(again(later));
  });

  it("do not hide what is wrong", () => {
    const { message } = refusal(() => parsePlan({ ...plan, minor: 1, glow: 3, dots: 7 }));
    expect(message).toContain("parsePlan: dots is 7");
  });

  it("make no prototype", () => {
    const later: unknown = JSON.parse(
      JSON.stringify({ ...plan, minor: 1 }).replace("{", '{"__proto__":{"glow":3},'),
    );
    const read = parsePlan(later) as unknown as Json;
    expect(read.glow).toBeUndefined();
    expect(Object.keys(read)).toContain("__proto__");
  });

  it("come back whatever they hold, and wherever an object stands", () => {
    const places = [[], ["choices"], ["natural", "left"], ["dots", "right"], ["cautions", 0]];
    fc.assert(
      fc.property(
        fc.constantFrom(...places),
        fc.string({ minLength: 1 }).map((name) => `later ${name}`),
        fc.jsonValue(),
        (path, name, value) => {
          const later = again({ ...plan, minor: 1 }) as Json;
          const place = path.reduce<Json>((one, step) => one[step] as Json, later);
          place[name] = value;
          expect(again(parsePlan(later))).toEqual(again(later));
        },
      ),
    );
  });
});

describe("what an app keeps with a record", () => {
  it("is carried along unread", () => {
    const written = JSON.parse(
      readFileSync("tests/fixtures/records-of-0.1/by-hand.json", "utf8"),
    ) as Json;
    fc.assert(
      fc.property(fc.jsonValue(), (app) => {
        expect(again(parseRecord({ ...written, app }).app)).toEqual(again(app));
      }),
      { numRuns: 20 },
    );
  });
});
