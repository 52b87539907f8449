import type { FaceMeasureName } from "../../landmarks/index.js";
import type { Note, Side } from "../../units/index.js";
import { correctionOf } from "./correction.js";
import type { DotDeviation, MeasureDeviation } from "./deviation.js";
import type { CorrectionNotes } from "./notes.js";

/** What was checked: dots, readings, or both. */
export interface Checked {
  readonly dots?: readonly DotDeviation[];
  readonly measures?: readonly MeasureDeviation[];
}

const FRONT_ENDS = ["startDistance", "startHeight", "archDistance", "archHeight"] as const;
const TAIL_ENDS = ["archDistance", "archHeight", "tailDistance", "tailHeight"] as const;

/** What goes back with something else: a length with the places of its ends, a tape with the ruler. */
const FOLLOWS: { readonly [Name in FaceMeasureName]?: readonly FaceMeasureName[] } = {
  front: FRONT_ENDS,
  frontAlong: ["front", ...FRONT_ENDS],
  frontOnPhoto: ["front", "frontAlong", ...FRONT_ENDS],
  tail: TAIL_ENDS,
  tailAlong: ["tail", ...TAIL_ENDS],
  tailOnPhoto: ["tail", "tailAlong", ...TAIL_ENDS],
  frontShare: ["front", "frontAlong", "tail", "tailAlong", ...FRONT_ENDS, ...TAIL_ENDS],
  exocanthionToTailEnd: ["tailDistance", "tailHeight"],
  startToStart: ["startDistance"],
};

/**
 * Everything that is to be corrected, each fault once: dots, then measures of sides on which no dot says as much
 * already, and of these none that goes back with another one.
 *
 * @example
 * ```ts
 * import { checkReadings, measuresFromReadings, say } from "brow-geometry";
 * import { correctionsOf } from "brow-geometry/mapping";
 * const asked = measuresFromReadings({ left: { front: "33 mm", frontAlong: "34 mm", tail: "16 mm" } });
 * const read = measuresFromReadings({ left: { front: "35 mm", frontAlong: "36 mm", tail: "16 mm" } });
 * correctionsOf({ measures: checkReadings(asked, read) }).map((correction) => say(correction));
 * // → ["left front: 2 mm too long"]
 * ```
 */
export function correctionsOf({
  dots = [],
  measures = [],
}: Checked): readonly Note<keyof CorrectionNotes>[] {
  const corrected = dots.filter((deviation) => correctionOf(deviation) !== undefined);
  const off = measures
    .filter((deviation) => correctionOf(deviation) !== undefined)
    .filter(({ side }) => !corrected.some((dot) => isBeside(dot.side, side)));
  const told = off.filter(
    ({ measure, side }) =>
      !off.some(
        (other) => FOLLOWS[measure]?.includes(other.measure) === true && isBeside(other.side, side),
      ),
  );
  return [...corrected, ...told].flatMap((deviation) => correctionOf(deviation) ?? []);
}

/** Whether something on a side bears on what is read there, or between both. */
function isBeside(of: Side | undefined, side: Side | undefined): boolean {
  return side === undefined || of === side;
}
