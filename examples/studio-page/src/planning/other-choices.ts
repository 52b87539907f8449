import type { BrowPlan, Choices } from "brow-geometry";
import { everyChoice, weighChoices } from "brow-geometry/mapping";
import { type Dot, DOTS } from "brow-geometry/landmarks";
import { attempt } from "brow-geometry/units";
import type { Wishes } from "../appointment/wishes.js";
import { wishesOf } from "../appointment/wishes.js";
import { grantedBy, type Mapped, planned } from "./map.js";
import { SIDES } from "../stage/sides.js";

/** Choices that lead to another brow, with what they lead to. */
export interface OtherChoice {
  readonly choices: Choices;
  readonly plan: BrowPlan;
}

/** How many are looked at side by side. */
const MOST = 4;
/** Brows that differ by less are told apart by nobody, in millimetres. */
const ALIKE = 0.75;

/** The first few of all choices, as the library weighs them, that differ from the map and from each other. */
export function otherChoices({ input, plan, choices }: Mapped, own: Choices, wishes: Wishes) {
  const { rows } = weighChoices(plan.face, everyChoice(own));
  const others: OtherChoice[] = [];
  for (const row of rows) {
    if (others.length === MOST || row.kind !== "usable") break;
    const made = attempt(() => {
      const declared = choices.declared ?? {};
      const granted = grantedBy(input, { ...row.choices, declared }, wishesOf(wishes));
      return planned(input, granted.choices, { preview: true });
    });
    const known = [plan, ...others.map((other) => other.plan)];
    if (made.ok && known.every((other) => farthest(made.answer, other) > ALIKE)) {
      others.push({ choices: row.choices, plan: made.answer });
    }
  }
  return others;
}

/** The greatest way from a dot of one plan to the same of another, in millimetres. */
function farthest({ dots }: BrowPlan, other: BrowPlan): number {
  const ways = SIDES.flatMap((side) =>
    (Object.keys(DOTS) as Dot[]).map((dot) => {
      const [from, to] = [dots[side][dot], other.dots[side][dot]];
      return Math.hypot(to[0] - from[0], to[1] - from[1]);
    }),
  );
  return Math.max(...ways);
}
