import { type FaceMeasureName, toleranceFor } from "../landmarks/index.js";
import { type Measured, type Note, type Side } from "../units/index.js";
import { fill, note } from "../units/internal.js";
import type { GradedItem, GradingReference, UngradedItem } from "./grade.js";
import { evennessText, named, referenceText } from "./item-words.js";
import type { ReadMap } from "./read-map.js";
import type { RubricItem } from "./rubric.js";
import { READ, UNGRADED, type UngradedCode } from "./words.js";

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
