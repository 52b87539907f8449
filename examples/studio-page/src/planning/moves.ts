import { type BrowPlan, mm, say, type Side, workSteps } from "brow-geometry";
import type { Dot } from "brow-geometry/landmarks";
import type { FlatPoint, Note } from "brow-geometry/units";
import { words } from "../words/language.js";

/** A move as an arrow on the face. */
export interface Arrow {
  readonly dot: Dot;
  /** In words, and in a sign or two as the picture shows it: "↑ 2.5". */
  readonly text: string;
  readonly signs: string;
  readonly from: FlatPoint<"mm">;
  readonly to: FlatPoint<"mm">;
}

/** How many moves an artist has in her head at a time. */
const MOST = 3;

/** The moves that matter most: the greatest ones, from the hair to the plan, in half millimetres. */
export function greatestMoves(plan: BrowPlan): readonly Arrow[] {
  return workSteps(plan)
    .flatMap((step) => {
      const { dot, ways } = step.values;
      return step.code === "dot-moves" && Array.isArray(ways)
        ? [arrowOf(plan, step, dot as Dot, ways as readonly Note[])]
        : [];
    })
    .sort((one, other) => lengthOf(other) - lengthOf(one))
    .slice(0, MOST);
}

function arrowOf(
  plan: BrowPlan,
  step: Note & { readonly side: Side },
  dot: Dot,
  ways: readonly Note[],
): Arrow {
  const { side } = step;
  const [x, y] = plan.dots[side][dot];
  const steps = ways.map((way) => stepOf(way, side));
  const [across, up] = [0, 1].map((axis) =>
    steps.reduce((sum, one) => sum + (one.by[axis] ?? 0), 0),
  );
  return {
    dot,
    text: say(step, words.value),
    signs: steps.map(({ sign }) => sign).join("  "),
    from: mm([x - (across ?? 0), y - (up ?? 0)]),
    to: mm([x, y]),
  };
}

/** One way of a move, as the artist sees it who faces the client: her right is on the left. */
function stepOf({ code, values }: Note, side: Side) {
  const by = Number(values.by);
  const shown = String(by).replace(".", words.value.decimalSign);
  const toTheLeft = (code === "way-outward") === (side === "right");
  switch (code) {
    case "way-up":
      return { by: [0, by], sign: `↑ ${shown}` };
    case "way-down":
      return { by: [0, -by], sign: `↓ ${shown}` };
    default:
      return { by: [toTheLeft ? -by : by, 0], sign: `${toTheLeft ? "←" : "→"} ${shown}` };
  }
}

function lengthOf({ from, to }: Arrow): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}
