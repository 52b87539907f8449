import { MEASURE_KINDS } from "brow-geometry/landmarks";
import { type FaceMeasureName, toleranceFor } from "brow-geometry/landmarks";
import { MEASURE_NAMES } from "../../../src/landmarks/internal.js";
import { MEASURES, NOTICED_BY_CLIENTS, WORKING_TOLERANCES } from "brow-geometry";
import { expect, it } from "vitest";

const { position, thickness, frontShare } = WORKING_TOLERANCES.tolerances;

it.each<[FaceMeasureName, unknown]>([
  ["startToStart", position],
  ["tailHeight", position],
  ["bodyThickness", thickness],
  ["frontShare", frontShare],
  ["frontInclination", undefined],
  ["browInclination", undefined],
])("toleranceFor %s is the working set's for its kind", (measure, expected) => {
  expect(toleranceFor(measure, WORKING_TOLERANCES)).toBe(expected);
});

it("toleranceFor says nothing where the set does not", () => {
  expect(toleranceFor("archThickness", NOTICED_BY_CLIENTS)).toBeUndefined();
  const limited = MEASURE_NAMES.filter((name) => toleranceFor(name, NOTICED_BY_CLIENTS));
  const asPositions = MEASURE_NAMES.filter(
    (name) => MEASURE_KINDS[MEASURES[name].kind].tolerance === "position",
  );
  expect(limited).toEqual(asPositions);
  expect(new Set(MEASURE_NAMES).size).toBe(MEASURE_NAMES.length);
});
