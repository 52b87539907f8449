import { type FaceMeasureName, MEASURE_KINDS } from "../../landmarks/index.js";
import { amountOf, kindOf, measureKindOf } from "../../landmarks/internal.js";
import type { Way } from "../../symmetry/index.js";
import type { Note, Side } from "../../units/index.js";
import { moveNote, type WayCode } from "../plan/move-notes.js";
import { inHalves } from "../plan/moves.js";
import type { Deviation, DotDeviation, MeasureDeviation } from "./deviation.js";
import { type AmountNotes, type CorrectionNotes, type ReadNotes, readingNote } from "./notes.js";

/**
 * What to do about something that was drawn, where it is outside of its tolerance: how far to move a dot
 * back, along those axes on which it is outside, or what of a measure is too much. Undefined elsewhere.
 *
 * @example
 * ```ts
 * import { checkReadings, correctionOf, measuresFromReadings, say } from "brow-geometry";
 * const asked = measuresFromReadings({ left: { archHeight: "25 mm" } });
 * const read = measuresFromReadings({ left: { archHeight: "27 mm" } });
 * const [deviation] = checkReadings(asked, read);
 * const correction = deviation && correctionOf(deviation);
 * correction && say(correction); // → "left height of the arch: 2 mm too high"
 * ```
 */
export function correctionOf(
  deviation: DotDeviation | MeasureDeviation,
): Note<keyof CorrectionNotes> | undefined {
  return "dot" in deviation ? dotCorrection(deviation) : measureCorrection(deviation);
}

function dotCorrection({ side, dot, outward, up }: DotDeviation): Note<"dot-moves"> | undefined {
  const ways = [...wayBack(up, "up", "down"), ...wayBack(outward, "outward", "inward")];
  return ways.length === 0 ? undefined : moveNote("dot-moves", { side, dot, ways });
}

function wayBack(deviation: Deviation, positive: Way, negative: Way): readonly Note<WayCode>[] {
  if (deviation.decision?.outcome !== "outside") return [];
  const { value } = deviation.difference;
  const by = inHalves(Math.abs(value)) || amountOf(MEASURE_KINDS.distance, value);
  return [moveNote(`way-${value < 0 ? positive : negative}`, { by })];
}

export function measureCorrection({
  side,
  measure,
  difference,
  decision,
}: Pick<MeasureDeviation, "side" | "measure" | "difference" | "decision">):
  Note<"too-much" | "too-little"> | undefined {
  if (decision?.outcome !== "outside") return undefined;
  return readingNote(difference.value > 0 ? "too-much" : "too-little", {
    what: readNote(measure, side),
    amount: correctedBy(measure, difference.value),
    kind: measureKindOf(measure),
  });
}

/** In halves of a millimetre, as a pencil draws; finer only where that would say nothing. */
function correctedBy(measure: FaceMeasureName, value: number): Note<keyof AmountNotes> {
  const amount = inHalves(Math.abs(value));
  return kindOf(measure).unit === "mm" && amount !== 0
    ? readingNote("millimetres", { amount })
    : amountNote(measure, value);
}

/** How much of something, without its sign, with as many decimals as its kind has. */
export function amountNote(measure: FaceMeasureName, value: number): Note<keyof AmountNotes> {
  const kind = kindOf(measure);
  return readingNote(AMOUNTS[kind.unit], { amount: amountOf(kind, value) });
}

const AMOUNTS = {
  mm: "millimetres",
  "mm²": "square-millimetres",
  degrees: "degrees",
  "": "share",
} as const;

/** What is read, on a side where it is read on one. */
export function readNote(measure: FaceMeasureName, side?: Side): Note<keyof ReadNotes> {
  return side === undefined
    ? readingNote("read-between", { measure })
    : readingNote("read-on-side", { side, measure });
}
