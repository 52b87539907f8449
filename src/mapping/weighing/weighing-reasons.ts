import { DOTS, MEASURES } from "../../landmarks/index.js";
import { type Note } from "../../units/index.js";
import { note } from "../../units/internal.js";
import type { PlannedChoice } from "./weighed-choice.js";
import { WEIGHING, type WeighingCode } from "./words.js";

/** What was weighed of one choice, before it is judged. */
export type Weighed = Omit<PlannedChoice, "kind" | "reasons">;

/** What was weighed of one choice, in words. */
export function weighingReasons(row: Weighed, asked: number): readonly Note<WeighingCode>[] {
  const { greatestMove, meanMove: mean, areas, comparison, lidRoom, frontShare } = row;
  const { side, dot, by: greatest } = greatestMove;
  const apart = comparison.differences
    .filter(({ decision }) => decision?.outcome === "outside")
    .map(({ measure, difference }) => `${MEASURES[measure].words} (${printed(difference.value)})`);
  return [
    note(WEIGHING, "moves", { mean, side, dot: DOTS[dot].words, greatest }),
    areas === undefined
      ? note(WEIGHING, "areas-unknown")
      : note(WEIGHING, "areas", { hair: areas.hairToRemove, skin: areas.skinToFill }),
    apart.length === 0
      ? note(WEIGHING, "sides-even")
      : note(WEIGHING, "sides-differ", { measures: apart.join(", ") }),
    lidRoom.right === undefined || lidRoom.left === undefined
      ? note(WEIGHING, "lid-room-unknown")
      : note(WEIGHING, "lid-room", { right: lidRoom.right, left: lidRoom.left }),
    note(WEIGHING, "front-share", {
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
