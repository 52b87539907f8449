import { MEASURE_WORDS, type MeasureDeviation } from "../mapping/index.js";
import type { SideDifference } from "../symmetry/index.js";
import type { Decision, Side } from "../units/index.js";

/** What is read, with its side: "left front". */
export function named(measure: MeasureDeviation["measure"], side?: Side): string {
  return `${side === undefined ? "" : `${side} `}${MEASURE_WORDS[measure]}`;
}

/** What was found of a reading against the reference. */
export function referenceText(
  { measure, side, difference, correction }: MeasureDeviation,
  decision: Decision,
): string {
  if (correction !== undefined) return correction;
  const off = `${named(measure, side)}: ${amount(difference.value, measure)} off`;
  return `${off}, ${verdict(decision)}`;
}

/** What was found of a pair of readings. */
export function evennessText({ measure, difference }: SideDifference, decision: Decision): string {
  const { value } = difference;
  const printed = amount(value, measure);
  // What prints as nothing is on neither side more.
  const apart =
    Number.parseFloat(printed) === 0
      ? "both sides read alike"
      : `the left reads ${printed} ${value > 0 ? "more" : "less"} than the right`;
  return `${named(measure)}: ${apart}, ${verdict(decision)}`;
}

function verdict({ outcome, advice }: Decision): string {
  switch (outcome) {
    case "within":
      return "within tolerance";
    case "outside":
      return "outside";
    case "undecided":
      return `not proven either way. ${advice?.text ?? ON_THE_LIMIT}`;
  }
}

const ON_THE_LIMIT =
  "It lies on the limit itself, where no reading decides: read it once more, or let the value alone decide (rule simple).";

function amount(value: number, measure: MeasureDeviation["measure"]): string {
  const size = Math.abs(value);
  return measure === "frontShare" ? size.toFixed(2) : `${Number(size.toFixed(1))} mm`;
}
