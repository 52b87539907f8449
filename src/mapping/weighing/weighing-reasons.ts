import { DOTS } from "../../landmarks/index.js";
import type { Note } from "../../units/index.js";
import { MEASURE_WORDS } from "../choices/measure-words.js";
import type { PlannedChoice } from "./weighed-choice.js";
import { weighingNote, type WeighingCode } from "./weighing-notes.js";

/** What was weighed of one choice, before it is judged. */
export type Weighed = Omit<PlannedChoice, "kind" | "reasons">;

/** What was weighed of one choice, in words. */
export function weighingReasons(row: Weighed, asked: number): readonly Note<WeighingCode>[] {
  const { greatestMove, meanMove: mean, areas, comparison, lidRoom, frontShare } = row;
  const { side, dot, by: greatest } = greatestMove;
  const apart = comparison.differences
    .filter(({ decision }) => decision?.outcome === "outside")
    .map(({ measure, difference }) => `${MEASURE_WORDS[measure]} (${printed(difference.value)})`);
  return [
    weighingNote("moves", { mean, side, dot: DOTS[dot].words, greatest }),
    areas === undefined
      ? weighingNote("areas-unknown")
      : weighingNote("areas", { hair: areas.hairToRemove, skin: areas.skinToFill }),
    apart.length === 0
      ? weighingNote("sides-even")
      : weighingNote("sides-differ", { measures: apart.join(", ") }),
    lidRoom.right === undefined || lidRoom.left === undefined
      ? weighingNote("lid-room-unknown")
      : weighingNote("lid-room", { right: lidRoom.right, left: lidRoom.left }),
    weighingNote("front-share", {
      right: frontShare.right.value,
      left: frontShare.left.value,
      asked,
    }),
  ];
}

/** A difference, left less right, to a digit more than tolerances have. */
function printed(difference: number): string {
  return Math.abs(difference) < 0.1 ? difference.toFixed(3) : difference.toFixed(1);
}
