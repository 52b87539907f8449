import { measuresFromReadings } from "brow-geometry";
import { parseReadingSheet } from "brow-geometry/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";

/** A form as it was sent; invented. */
const sheet = {
  startToStart: "31 mm",
  right: { front: "30 mm", tail: 15, archHeight: { value: 25.2, u: 0.1 } },
  left: { front: "29,5 mm", startThickness: "0.8 cm" },
};

describe("parseReadingSheet", () => {
  it("reads words with their unit, millimetres, and readings with an uncertainty", () => {
    const parsed = parseReadingSheet(JSON.parse(JSON.stringify(sheet)));
    expect(parsed).toEqual(sheet);
    const { right, left, startToStart } = measuresFromReadings(parsed);
    expect(right).toMatchObject({ front: { value: 30 }, tail: { value: 15 } });
    expect(right.archHeight).toEqual({ value: 25.2, u: 0.1 });
    expect(left).toMatchObject({ front: { value: 29.5 }, startThickness: { value: 8 } });
    expect(startToStart?.value).toBe(31);
  });

  it("reads a sheet that is filled in half, or not at all", () => {
    expect(parseReadingSheet({})).toEqual({});
    expect(parseReadingSheet({ left: {} })).toEqual({ left: {} });
  });

  const left = (front: unknown): object => ({ left: { front } });

  it.each([
    [left("30"), 'left.front is "30"; needs a length with its unit'],
    [left("0x1e mm"), 'left.front is "0x1e mm"; needs a length with its unit'],
    [left("thirty mm"), 'left.front is "thirty mm"; needs a length with its unit'],
    [left(-1), "left.front is -1; needs a finite number of at least 0"],
    [left(Number.NaN), "left.front is NaN; needs a length with its unit"],
    [left(null), "left.front is null; needs a length with its unit"],
    [left({ value: 30, u: -1 }), "left.front.u is -1; needs a finite number of at least 0"],
    [left({ value: 30 }), "needs a length with its unit"],
    [{ left: { fronts: 30 } }, "left.fronts is 30; needs another name: one of front, tail"],
    [{ left: { area: 30 } }, "left.area is 30; needs another name"],
    [{ middle: {} }, "middle is {}; needs another name: one of right, left, startToStart"],
    ["30 mm", "sheet is"],
  ])("refuses %j", (json, message) => {
    const { code, message: said } = refusal(() => parseReadingSheet(json));
    expect(code).toBe("not-parsed");
    expect(said).toContain(message);
  });

  it("lets nothing through that measuresFromReadings would refuse for its form", () => {
    const anything = fc.oneof(fc.string(), fc.double(), fc.jsonValue());
    fc.assert(
      fc.property(anything, (front) => {
        let parsed;
        try {
          parsed = parseReadingSheet({ left: { front } });
        } catch (error) {
          expect(error).toHaveProperty("code", "not-parsed");
          return;
        }
        const read = measuresFromReadings(parsed).left.front;
        expect(read?.value).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
