import { type MapRecord, mm, recordOf } from "brow-geometry";
import { checkVisits, visitsOf } from "brow-geometry/mapping";
import { parseRecord, recordJsonSchema } from "brow-geometry/schema";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CALENDAR_DAY } from "../../../src/mapping/internal.js";
import { refusal } from "../../support/refusal.js";
import { syntheticFace } from "../../support/synthetic-face.js";

const input = { kind: "face", face: syntheticFace() } as const;
const agreement = [
  { kind: "shown", text: "Invented: two pictures of the map." },
  { kind: "asked-for", text: "Invented: a flatter arch.", by: "the client" },
  { kind: "agreed", text: "Invented: the map as drawn.", by: "the client" },
] as const;
const first = recordOf(
  input,
  {},
  { date: "2026-03-14", artist: "M.", place: "Invented", agreement },
);
const second = recordOf(
  input,
  { lead: "left" },
  { date: "2026-04-25", agreement, earlier: visitsOf(first) },
);
const third = recordOf(input, {}, { date: "2027-04-25", agreement, earlier: visitsOf(second) });

const throughJson = (record: MapRecord): MapRecord =>
  parseRecord(JSON.parse(JSON.stringify(record)));

describe("a chain of visits", () => {
  it("reads as one, and what is read is what was written", () => {
    const read = throughJson(third);
    expect(visitsOf(read).map(({ date }) => date)).toEqual([
      "2026-03-14",
      "2026-04-25",
      "2027-04-25",
    ]);
    expect(visitsOf(read)[0]).toEqual(first);
    expect(read.earlier?.[1]?.choices).toEqual({ lead: "left" });
    expect(read.agreement).toEqual(agreement);
  });

  it("fits where it is kept in order, also after a way through JSON", () => {
    expect(checkVisits(third)).toEqual([]);
    expect(checkVisits(throughJson(third))).toEqual([]);
  });

  it("says which visit does not fit, and why", () => {
    const [, ...later] = visitsOf(second);
    const { date, agreement: agreed, ...undated } = first;
    expect([date, agreed]).toEqual([first.date, agreement]);
    const codes = (record: MapRecord) => checkVisits(record).map(({ code }) => code);
    expect(codes({ ...third, date: "2025-01-01" })).toEqual(["visit-out-of-order"]);
    expect(codes({ ...third, earlier: [undated, ...later] })).toEqual([
      "visit-undated",
      "visit-not-agreed",
    ]);
    expect(
      codes({
        ...third,
        choices: { lead: "left", levels: "right", tailHeight: "level-with-upper-start" },
      }),
    ).toEqual(["visit-replays-differently"]);
  });

  it("says where a visit may be another client's", () => {
    const face = syntheticFace();
    const other = { ...face, left: { ...face.left, exocanthion: mm([50, 5]) } };
    const record = recordOf(
      { kind: "face", face: other },
      {},
      { date: "2027-04-25", agreement, earlier: visitsOf(first) },
    );
    expect(checkVisits(record)).toMatchObject([
      { code: "visit-face-differs", values: { visit: 2 } },
    ]);
  });

  it("refuses what is no day", () => {
    const written = ["14 March", "2026-13-01", "2026-3-14", ""];
    const ofNoMonth = ["2026-02-31", "2026-02-30", "2026-04-31", "2026-11-31", "2026-01-00"];
    for (const date of [...written, ...ofNoMonth]) {
      expect(refusal(() => recordOf(input, {}, { date })).message).toContain("recordOf: date is ");
      expect(refusal(() => parseRecord({ ...first, date })).message).toContain("date is ");
    }
  });

  it("takes every day of a leap year", () => {
    for (let day = 0; day < 366; day += 1) {
      const date = new Date(Date.UTC(2028, 0, 1 + day)).toISOString().slice(0, 10);
      expect(date).toMatch(CALENDAR_DAY);
    }
    expect(parseRecord({ ...first, date: "2028-02-29" }).date).toBe("2028-02-29");
  });

  it("opens a record that knows nothing of visits", () => {
    const old: unknown = JSON.parse(
      readFileSync("tests/fixtures/record-with-sentences.json", "utf8"),
    );
    const record = parseRecord(old);
    expect(visitsOf(record)).toHaveLength(1);
    expect(record.date).toBeUndefined();
  });

  it("is described to other programs", () => {
    expect(Object.keys(recordJsonSchema().properties as object)).toContain("earlier");
  });
});
