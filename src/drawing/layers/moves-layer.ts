import type { BrowPlan, Move } from "../../mapping/index.js";
import { isTold, movesToMake } from "../../mapping/internal.js";
import { flatPoint } from "../../units/index.js";
import { say } from "../../words/index.js";
import { decimal } from "../../words/internal.js";
import { type Spot, wayBetween } from "../canvas/box.js";
import { arrowData, boxOfDot, type Brush, markerAt, strokeGroup } from "../canvas/brush.js";
import { type Layer, stacked } from "../canvas/layer.js";

/** Half of the dot where a brow grows, in steps. */
const DOT_RADIUS = 0.45;
/** Room that the planned dot at an arrow's tip takes. */
const TIP_ROOM = 1.1;
/** A longer arrow has its number beside it, a shorter one behind it; in steps. */
const NUMBERED_IN_THE_MIDDLE = 5;
const TYPE_SIZE = 2.6;

/** Moves as arrows from the hair's border to the planned one, numbered as in the list of moves. */
export function movesLayer(plan: BrowPlan, brush: Brush): Layer {
  const layers = movesToMake(plan).flatMap((move, index): readonly Layer[] => {
    if (move.kind === "place") return [];
    const { side, dot, up, outward } = move;
    const [x, y] = plan.dots[side][dot];
    const out = isTold(outward) ? (outward?.value ?? 0) : 0;
    const grown = flatPoint<"mm">(
      x - (side === "left" ? out : -out),
      y - (isTold(up) ? up.value : 0),
    );
    const ends = [brush.view.place(grown), brush.view.place(flatPoint(x, y))] as const;
    return [arrow(ends, move, index + 1, brush)];
  });
  return stacked(layers);
}

function arrow([from, to]: readonly [Spot, Spot], move: Move, number: number, brush: Brush): Layer {
  const { size } = brush.view;
  const { length, along } = wayBetween(from, to);
  const data = arrowData(from, to, TIP_ROOM * size, size);
  const across: readonly Spot[] = [
    [along[1], -along[0]],
    [-along[1], along[0]],
  ];
  const isLong = length > NUMBERED_IN_THE_MIDDLE * size;
  const middle: Spot = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  return {
    elements: [
      strokeGroup("move", `move ${move.side}`, data, brush),
      markerAt(
        from,
        { shape: "circle", colour: brush.palette.strokes.natural, radius: DOT_RADIUS },
        brush,
        say(move, brush.words),
      ),
    ],
    labels: [
      {
        text: decimal(number, 0, brush.words),
        at: isLong ? middle : from,
        towards: isLong ? across : [[-along[0], -along[1]], ...across],
        size: TYPE_SIZE * size,
        gap: 0.6 * size,
        weight: "bold",
        colour: brush.palette.ink,
      },
    ],
    closed: [boxOfDot(from, DOT_RADIUS * size)],
    strokes: [{ from, to }],
  };
}
