import { NOTICED_BY_CLIENTS, NOTICED_BY_OTHERS, WORKING_TOLERANCES } from "brow-geometry";
import { parseToleranceSet } from "brow-geometry/schema";
import { describe, expect, it } from "vitest";
import { refusal } from "../support/refusal.js";

const asJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

const ONE = { lower: -1, upper: 1 };

describe("parseToleranceSet", () => {
  it.each([WORKING_TOLERANCES, NOTICED_BY_CLIENTS, NOTICED_BY_OTHERS])(
    "takes the library's own set $name",
    (set) => {
      expect(parseToleranceSet(asJson(set))).toEqual(set);
    },
  );

  it("takes a limit to one side only", () => {
    const tolerances = { thickness: { limits: { upper: 0.4 }, status: "ours", source: "us" } };
    expect(parseToleranceSet({ name: "studio", tolerances }).tolerances.thickness?.limits).toEqual({
      upper: 0.4,
    });
  });

  it.each([
    [{ tolerances: {} }, "name"],
    [{ name: "x", tolerances: { width: {} } }, "tolerances.width"],
    [
      { name: "x", tolerances: { position: { limits: ONE, status: "guessed", source: "y" } } },
      "tolerances.position.status",
    ],
    [
      { name: "x", tolerances: { position: { limits: ONE, status: "published" } } },
      "tolerances.position.source",
    ],
    [
      { name: "x", tolerances: { position: { limits: {}, status: "ours", source: "y" } } },
      "tolerances.position.limits",
    ],
    [
      {
        name: "x",
        tolerances: { position: { limits: { lower: 1, upper: -1 }, status: "ours", source: "y" } },
      },
      "tolerances.position.limits",
    ],
  ])("refuses %j", (json, field) => {
    expect(refusal(() => parseToleranceSet(json))).toMatchObject({
      code: "not-parsed",
      detail: { field },
    });
  });
});
