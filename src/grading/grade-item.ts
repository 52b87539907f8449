import { type FaceMeasureName, MEASURES, toleranceFor } from "../landmarks/index.js";
import type { Decision, Measured, Note, Side } from "../units/index.js";
import { fill, note } from "../units/internal.js";
import type { GradedItem, GradingReference, UngradedItem } from "./grade.js";
import type { ReadMap } from "./read-map.js";
import type { RubricItem } from "./rubric.js";
import { FOUND, ON_THE_LIMIT, READ, UNGRADED, type UngradedCode, VERDICTS } from "./words.js";
import { amountOf, kindOf } from "../landmarks/internal.js";
import type { MeasureDeviation } from "../mapping/index.js";
import type { SideDifference } from "../symmetry/index.js";

/** Everything in which an item of a rubric is looked up. */
export interface GradingSheet extends ReadMap {
  readonly reference: GradingReference;
}

/** What became of one item: against a reference an entry for each side, else one. */
export function gradeItem(
  item: RubricItem,
  sheet: GradingSheet,
): readonly (GradedItem | UngradedItem)[] {
  if (item.kind === "evenness") return [evennessEntry(item, sheet)];
  if (item.measure === "startToStart") return [referenceEntry(item, sheet)];
  return [referenceEntry(item, sheet, "right"), referenceEntry(item, sheet, "left")];
}

function referenceEntry(
  { kind, measure, points }: Extract<RubricItem, { kind: "reference" }>,
  sheet: GradingSheet,
  side?: Side,
): GradedItem | UngradedItem {
  const which = { kind, measure, points, ...(side === undefined ? {} : { side }) };
  const what = named(measure, side);
  if (toleranceFor(measure, sheet.tolerances) === undefined) {
    return { ...which, reason: noTolerance(what, sheet) };
  }
  const reference = askedFor(sheet.reference, measure, side);
  if (reference === undefined) return { ...which, reason: note(UNGRADED, "not-asked", { what }) };
  const found = sheet.deviations.find((one) => one.measure === measure && one.side === side);
  if (found?.decision === undefined)
    return { ...which, reason: note(UNGRADED, "not-read", { what }) };
  const { drawn, difference, decision } = found;
  const earned = decision.outcome === "within" ? points : 0;
  const text = referenceText(found, decision);
  return { ...which, drawn, reference, difference, decision, earned, text };
}

/** A plan asks for its figures exactly; a sheet that was read is as uncertain as its readings. */
function askedFor(
  reference: GradingReference,
  measure: FaceMeasureName,
  side: Side | undefined,
): Measured | undefined {
  if (reference.kind === "none") return undefined;
  const measures = reference.kind === "plan" ? reference.plan.measures : reference.readings;
  const asked =
    measure === "startToStart" ? measures.startToStart : side && measures[side][measure];
  return asked && reference.kind === "plan" ? { value: asked.value, u: 0 } : asked;
}

function evennessEntry(
  { kind, measure, points }: Extract<RubricItem, { kind: "evenness" }>,
  { differences, ...sheet }: GradingSheet,
): GradedItem | UngradedItem {
  const which = { kind, measure, points };
  const what = fill(READ.both, { measure: named(measure) });
  if (toleranceFor(measure, sheet.tolerances) === undefined) {
    return { ...which, reason: noTolerance(what, sheet) };
  }
  const found = differences.find((one) => one.measure === measure);
  if (found?.decision === undefined)
    return { ...which, reason: note(UNGRADED, "not-read", { what }) };
  const { right, left, difference, decision } = found;
  const earned = decision.outcome === "within" ? points : 0;
  return {
    ...which,
    right,
    left,
    difference,
    decision,
    earned,
    text: evennessText(found, decision),
  };
}

function noTolerance(
  what: string,
  { tolerances }: Pick<GradingSheet, "tolerances">,
): Note<UngradedCode> {
  return note(UNGRADED, "no-tolerance", { what, tolerances: tolerances.name });
}

/** What is read, with its side: "left front". */
export function named(measure: FaceMeasureName, side?: Side): string {
  const words = { measure: MEASURES[measure].words };
  return side === undefined ? fill(READ.between, words) : fill(READ.one, { ...words, side });
}

function referenceText(
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

function evennessText({ measure, difference }: SideDifference, decision: Decision): string {
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
