import { measuresFromReadings } from "brow-geometry";
import { parseReadingSheet } from "brow-geometry/schema";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";

/** A form as it was sent; invented. */
const sheet = {
  startToStart: "31 mm",
  right: { front: "33 mm", tail: 16.5, archHeight: { value: 25.2, u: 0.1 } },
  left: { front: "32,5 mm", startThickness: "0.75 cm" },
};

describe("parseReadingSheet", () => {
  it("reads words with their unit, millimetres, and readings with an uncertainty", () => {
    const parsed = parseReadingSheet(JSON.parse(JSON.stringify(sheet)));
    expect(parsed).toEqual(sheet);
    const { right, left, startToStart } = measuresFromReadings(parsed);
    expect(right).toMatchObject({ front: { value: 33 }, tail: { value: 16.5 } });
    expect(right.archHeight).toEqual({ value: 25.2, u: 0.1 });
    expect(left).toMatchObject({ front: { value: 32.5 }, startThickness: { value: 7.5 } });
    expect(startToStart?.value).toBe(31);
  });

  it("reads a sheet that is filled in half, or not at all", () => {
    expect(parseReadingSheet({})).toEqual({});
    expect(parseReadingSheet({ left: {} })).toEqual({ left: {} });
  });

  const left = (front: unknown): object => ({ left: { front } });

  it.each([
    [left("33"), 'left.front is "33"; needs a length with its unit'],
    [left("0x21 mm"), 'left.front is "0x21 mm"; needs a length with its unit'],
    [left("thirty-three mm"), 'left.front is "thirty-three mm"; needs a length with its unit'],
    [left(-1), "left.front is -1; needs a finite number of at least 0"],
    [left(Number.NaN), "left.front is NaN; needs a length with its unit"],
    [left(null), "left.front is null; needs a length with its unit"],
    [left({ value: 33, u: -1 }), "left.front.u is -1; needs a finite number of at least 0"],
    [left({ value: 33 }), "needs a length with its unit"],
    [{ left: { fronts: 33 } }, "left.fronts is 33; needs another name: one of front, tail"],
    [{ left: { area: 33 } }, "left.area is 33; needs another name"],
    [{ middle: {} }, "middle is {}; needs another name: one of right, left, startToStart"],
    ["33 mm", "sheet is"],
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
        let read;
        try {
          read = measuresFromReadings(parsed).left.front;
        } catch (error) {
          // Its form is right, but no front is so long.
          expect(error).toHaveProperty("detail.need", expect.stringMatching(/^at most 115 mm/));
          return;
        }
        expect(read?.value).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
