import {
  compareSides,
  measuresFromReadings,
  mm,
  readCaliper,
  type ReadingSheet,
} from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close.js";
import { refusal } from "../support/refusal.js";

/** A sheet as an artist fills it in; invented. */
const sheet: ReadingSheet = {
  right: { front: mm(33), tail: "16.5 mm", startThickness: "0.75 cm", bodyThickness: mm(7) },
  left: { front: "33,5 mm", tail: mm(14.5), startThickness: mm(7.5), exocanthionToTailEnd: mm(24) },
  startToStart: mm(31),
};

describe("measuresFromReadings", () => {
  it("gives each reading the uncertainty of its ruler", () => {
    const { right, startToStart } = measuresFromReadings(sheet);
    const u = 0.5 / (2 * Math.sqrt(3));
    expectClose(right.front, { value: 33, u }, 1e-12);
    expectClose(right.startThickness, { value: 7.5, u }, 1e-12);
    expectClose(startToStart, { value: 31, u }, 1e-12);
  });

  it("takes the zero off every reading, and knows calipers", () => {
    const { left } = measuresFromReadings({ left: { front: mm(39.5) } }, { zero: mm(10) });
    expectClose(left.front?.value, 29.5, 0);
    const caliper = measuresFromReadings({ left: { front: mm(29.6) } }, { instrument: "caliper" });
    expectClose(caliper.left.front?.u, 0.1 / (2 * Math.sqrt(3)), 1e-12);
    const own = measuresFromReadings({ left: { front: readCaliper(mm(29.6)) } }, { zero: mm(10) });
    expectClose(own.left.front?.value, 29.6, 0);
  });

  it.each<[ReadingSheet, string, string]>([
    [{ left: { front: mm(330) } }, "left.front is 330", "at most 115 mm"],
    [{ right: { archHeight: "250 mm" } }, 'right.archHeight is "250 mm"', "at most 60 mm"],
    [{ left: { startThickness: mm(75) } }, "left.startThickness is 75", "at most 25 mm"],
    [{ startToStart: { value: mm(320), u: mm(1) } }, "startToStart is {", "at most 115 mm"],
  ])("refuses what no face has: %j", (wrong, found, need) => {
    const error = refusal(() => measuresFromReadings(wrong));
    expect(error.code).toBe("out-of-range");
    expect(error.message).toContain(`measuresFromReadings: ${found}`);
    expect(error.message).toContain(`needs ${need}: is it in tenths of a millimetre?`);
  });

  it("takes the largest that a face may have, the ruler's zero taken off", () => {
    const { left } = measuresFromReadings({ left: { front: mm(120) } }, { zero: mm(10) });
    expect(left.front?.value).toBe(110);
  });

  it("derives the front share where front and tail were read", () => {
    const { right, left } = measuresFromReadings(sheet);
    const u = 0.5 / (2 * Math.sqrt(3));
    // The share's slopes are tail/(front + tail)² and front/(front + tail)².
    expectClose(
      right.frontShare,
      { value: 2 / 3, u: (u * Math.hypot(16.5, 33)) / 49.5 ** 2 },
      1e-9,
    );
    expectClose(left.frontShare?.value, 33.5 / 48, 1e-12);
    expect(measuresFromReadings({ right: { front: mm(33) } }).right).not.toHaveProperty(
      "frontShare",
    );
  });

  it("serves an artist with nothing but a ruler: decisions from a half-filled sheet", () => {
    const { differences } = compareSides(measuresFromReadings(sheet));
    const outcomes = differences.map(({ measure, decision }) => [measure, decision?.outcome]);
    expect(outcomes).toEqual([
      ["front", "within"],
      ["tail", "outside"],
      ["frontShare", "undecided"],
      ["startThickness", "within"],
    ]);
  });

  it("takes an empty sheet", () => {
    expect(measuresFromReadings({})).toEqual({ right: {}, left: {} });
  });

  it.each([
    [{ left: { front: "33" } }, 'left.front is "33"; needs a number with its unit'],
    [{ right: { tail: mm(-1) } }, "right.tail is -1; needs"],
    [{ startToStart: "x" }, 'startToStart is "x"; needs a number with its unit'],
    [
      { lefft: { front: "33 mm" } } as never,
      'lefft is {"front":"33 mm"}; needs another name: one of right, left, startToStart',
    ],
    [{ right: null as never }, "right is null; needs an object with readings"],
    [null as never, "sheet is null; needs an object with readings"],
  ] as const)("says in which field of %j something is wrong", (wrong, message) => {
    expect(refusal(() => measuresFromReadings(wrong)).message).toContain(
      `measuresFromReadings: ${message}`,
    );
  });

  it("knows no other instruments", () => {
    const wrong = { instrument: "tape" as never };
    expect(refusal(() => measuresFromReadings({}, wrong)).message).toBe(
      'measuresFromReadings: instrument is "tape"; needs one of ruler, caliper',
    );
  });

  it("says of its ruler what is wrong with the ruler", () => {
    const { detail } = refusal(() =>
      measuresFromReadings({ left: { front: mm(33) } }, { graduation: mm(0) }),
    );
    expect(detail).toMatchObject({ where: "measuresFromReadings", field: "graduation" });
  });

  it.each([
    ["a bare number in words", { right: { front: "33" } }, "not-parsed"],
    ["a slip of the pen", { right: { fronts: mm(33) } as never }, "out-of-range"],
    ["a name of every object", { right: { constructor: mm(33) } as never }, "out-of-range"],
    ["what no ruler reads", { left: { area: mm(33) } as never }, "out-of-range"],
    ["a negative reading", { left: { tail: mm(-1) } }, "out-of-range"],
    ["an empty field of a form", { left: { tail: null as never } }, "out-of-range"],
    ["NaN", { left: { tail: mm(Number.NaN) } }, "not-finite"],
    ["front and tail of nothing", { left: { front: mm(0), tail: mm(0) } }, "out-of-range"],
  ])("refuses %s", (_, wrong, code) => {
    expect(refusal(() => measuresFromReadings(wrong)).code).toBe(code);
  });
});
