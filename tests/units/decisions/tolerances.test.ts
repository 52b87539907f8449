import { NOTICED_BY_CLIENTS, NOTICED_BY_OTHERS, WORKING_TOLERANCES } from "brow-geometry";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../support/close.js";

describe("tolerance sets", () => {
  it("of the work are ours: 1 mm of position, 0.5 mm of thickness, 0.03 of front share", () => {
    const { position, thickness, frontShare } = WORKING_TOLERANCES.tolerances;
    expectClose(position.limits, { lower: -1, upper: 1 }, 0);
    expectClose(thickness.limits, { lower: -0.5, upper: 0.5 }, 0);
    expectClose(frontShare.limits, { lower: -0.03, upper: 0.03 }, 0);
  });

  it.each([
    // Tiryaki & Ciloglu, Aesthet Surg J 2007;27:513–517
    [NOTICED_BY_CLIENTS.tolerances.position, 2],
    // Aesthet Surg J 2017;37:375–385
    [NOTICED_BY_OTHERS.tolerances.position, 3.5],
    // J Oral Maxillofac Surg 2015;73:1606–1614
    [NOTICED_BY_OTHERS.tolerances.eyeCant, 2.31],
    [NOTICED_BY_OTHERS.tolerances.noseDeviation, 2.92],
  ])("of what is noticed are published: %j", ({ limits, status, source }, expected) => {
    expectClose(limits, { lower: -expected, upper: expected }, 0);
    expect(status).toBe("published");
    expect(source).toMatch(/\d{4};\d+:\d+/);
  });

  it("are plain data, the same after JSON", () => {
    for (const set of [WORKING_TOLERANCES, NOTICED_BY_CLIENTS, NOTICED_BY_OTHERS]) {
      expect(JSON.parse(JSON.stringify(set))).toEqual(set);
    }
  });
});
