import { type FaceMeasureName, toleranceFor } from "../landmarks/index.js";
import type { Decision, Measured, Note, Side } from "../units/index.js";
import type { GradedItem, GradingReference, UngradedItem } from "./grade.js";
import type { ReadMap } from "./read-map.js";
import type { RubricItem } from "./rubric.js";
import { type FeedbackCode, gradeNote, type UngradedCode, type VerdictNotes } from "./notes.js";
import { correctionOf, type MeasureDeviation } from "../mapping/index.js";
import { amountNote, readingNote, readNote, type ReadNotes } from "../mapping/internal.js";
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
  const what = readNote(measure, side);
  if (toleranceFor(measure, sheet.tolerances) === undefined) {
    return { ...which, reason: noTolerance(what, sheet) };
  }
  const reference = askedFor(sheet.reference, measure, side);
  if (reference === undefined) return { ...which, reason: gradeNote("not-asked", { what }) };
  const found = sheet.deviations.find((one) => one.measure === measure && one.side === side);
  if (found?.decision === undefined) return { ...which, reason: gradeNote("not-read", { what }) };
  const { drawn, difference, decision } = found;
  const earned = decision.outcome === "within" ? points : 0;
  const feedback = referenceFeedback(found, decision);
  return { ...which, drawn, reference, difference, decision, earned, feedback };
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
  const what = readingNote("read-on-both", { measure });
  if (toleranceFor(measure, sheet.tolerances) === undefined) {
    return { ...which, reason: noTolerance(what, sheet) };
  }
  const found = differences.find((one) => one.measure === measure);
  if (found?.decision === undefined) return { ...which, reason: gradeNote("not-read", { what }) };
  const { right, left, difference, decision } = found;
  const earned = decision.outcome === "within" ? points : 0;
  return {
    ...which,
    right,
    left,
    difference,
    decision,
    earned,
    feedback: evennessFeedback(found, decision),
  };
}

function noTolerance(
  what: Note<keyof ReadNotes>,
  { tolerances }: Pick<GradingSheet, "tolerances">,
): Note<UngradedCode> {
  return gradeNote("no-tolerance", { what, tolerances: tolerances.name });
}

function referenceFeedback(found: MeasureDeviation, decision: Decision): Note<FeedbackCode> {
  const { measure, side, difference } = found;
  return (
    correctionOf(found) ??
    gradeNote("measure-off", {
      what: readNote(measure, side),
      amount: amountNote(measure, difference.value),
      verdict: verdict(decision),
    })
  );
}

function evennessFeedback(
  { measure, difference: { value } }: SideDifference,
  decision: Decision,
): Note<FeedbackCode> {
  const said = { what: readNote(measure), verdict: verdict(decision) };
  const amount = amountNote(measure, value);
  // What prints as nothing is on neither side more.
  if (amount.values.amount === 0) return gradeNote("sides-alike", said);
  return gradeNote(value > 0 ? "left-more" : "left-less", { ...said, amount });
}

function verdict({ outcome, advice }: Decision): Note<keyof VerdictNotes> {
  return outcome === "undecided"
    ? gradeNote("verdict-undecided", { advice: advice ?? gradeNote("on-the-limit") })
    : gradeNote(`verdict-${outcome}`);
}
