import {
  type FaceMeasures,
  type Measured,
  measured,
  measuresFromReadings,
  say,
} from "brow-geometry";
import { evenReadings } from "brow-geometry/mapping";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyBetween } from "../../support/arbitraries.js";
import { refusal } from "../../support/refusal.js";

/** An invented sheet: the left brow arches 2 mm higher. */
const sheet = measuresFromReadings({
  right: { front: "33 mm", tail: "16.5 mm", archHeight: "25 mm", startThickness: "7.5 mm" },
  left: { front: "33 mm", archHeight: "27 mm", startThickness: "6.5 mm" },
});

const textsOf = (readings: FaceMeasures<Measured>, lead: "right" | "left" | "middle") =>
  evenReadings(readings, lead).map((move) => say(move));

describe("evenReadings", () => {
  it("tells the side that follows what to change, and leaves out what one side lacks", () => {
    expect(textsOf(sheet, "right")).toEqual([
      "left front: even with the right one",
      "left height of the arch: 2 mm too high",
      "left thickness at the start: 1 mm too thin",
    ]);
    expect(textsOf(sheet, "left")).toContain("right height of the arch: 2 mm too low");
  });

  it("meets half-way", () => {
    const arch = evenReadings(sheet, "middle").filter(({ measure }) => measure === "archHeight");
    expect(arch.map(({ side, target }) => [side, target])).toEqual([
      ["right", 26],
      ["left", 26],
    ]);
    expect(arch.map((move) => say(move))).toEqual([
      "right height of the arch: 1 mm too low",
      "left height of the arch: 1 mm too high",
    ]);
  });

  it("asks for another reading where neither is proven", () => {
    const unsure = {
      right: { archHeight: measured(25, 0.5) },
      left: { archHeight: measured(25.8, 0.5) },
    };
    expect(textsOf(unsure, "right")).toEqual([
      "left height of the arch: not yet known whether it is even; read it again",
    ]);
  });

  it("refuses a lead that is none", () => {
    expect(refusal(() => evenReadings(sheet, "top" as never)).message).toBe(
      'evenReadings: lead is "top"; needs one of right, left, middle',
    );
  });

  it("aims at what the leading side reads, whatever the numbers", () => {
    fc.assert(
      fc.property(anyBetween(10, 40), anyBetween(10, 40), (right, left) => {
        const readings = {
          right: { front: measured(right, 0.1) },
          left: { front: measured(left, 0.1) },
        };
        expect(evenReadings(readings, "right")[0]?.target).toBeCloseTo(right, 9);
        expect(evenReadings(readings, "left")[0]?.target).toBeCloseTo(left, 9);
        const [one, other] = evenReadings(readings, "middle");
        expect(one?.target).toBeCloseTo(other?.target ?? Number.NaN, 9);
      }),
    );
  });
});
