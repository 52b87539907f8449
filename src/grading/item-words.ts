import { type FaceMeasureName, MEASURES } from "../landmarks/index.js";
import { amountOf, kindOf } from "../landmarks/internal.js";
import type { MeasureDeviation } from "../mapping/index.js";
import type { SideDifference } from "../symmetry/index.js";
import { type Decision, type Side } from "../units/index.js";
import { fill } from "../units/internal.js";
import { FOUND, ON_THE_LIMIT, READ, VERDICTS } from "./words.js";

/** What is read, with its side: "left front". */
export function named(measure: FaceMeasureName, side?: Side): string {
  const words = { measure: MEASURES[measure].words };
  return side === undefined ? fill(READ.between, words) : fill(READ.one, { ...words, side });
}

/** What was found of a reading against the reference. */
export function referenceText(
  { measure, side, difference, correction }: MeasureDeviation,
  decision: Decision,
): string {
  if (correction !== undefined) return correction;
  return fill(FOUND.off, {
    what: named(measure, side),
    amount: amountOf(kindOf(measure), difference.value),
    verdict: verdict(decision),
  });
}

/** What was found of a pair of readings. */
export function evennessText({ measure, difference }: SideDifference, decision: Decision): string {
  const { value } = difference;
  const printed = amountOf(kindOf(measure), value);
  // What prints as nothing is on neither side more.
  const alike = Number.parseFloat(printed) === 0;
  const found = alike ? FOUND.alike : FOUND[value > 0 ? "left-more" : "left-less"];
  return fill(found, { what: named(measure), amount: printed, verdict: verdict(decision) });
}

function verdict({ outcome, advice }: Decision): string {
  return fill(VERDICTS[outcome], { advice: advice?.text ?? ON_THE_LIMIT });
}
