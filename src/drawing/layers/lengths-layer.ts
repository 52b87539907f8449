import type { BrowDots, SideMeasures } from "../../landmarks/index.js";
import type { Measured, Side } from "../../units/index.js";
import { type Spot, wayBetween } from "../canvas/box.js";
import { type Brush, pathData, strokeGroup, stretches } from "../canvas/brush.js";
import { type Layer, stacked } from "../canvas/layer.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { seenDirection } from "../canvas/view.js";
import { uncertainLength } from "../canvas/figures.js";

/** How far the ruler's line lies above the chord, in steps. */
const OFFSET = 7.5;
/** Where on its line a figure may stand as well, where the middle is taken. */
const ELSEWHERE = [0.75, 0.25, 1.1, -0.1];
/** Half of the stroke across each end, in steps. */
export const TICK = 0.9;

/** Front and tail as a ruler reads them: a line beside each chord with its length, where both are known. */
export function lengthsLayer(
  dots: BrowDots<"mm">,
  measures: SideMeasures<Measured>,
  side: Side,
  brush: Brush,
): Layer {
  const { upperStart, upperArch, tailEnd } = dots;
  const parts = [
    { from: upperStart, to: upperArch, reading: measures.front },
    { from: upperArch, to: tailEnd, reading: measures.tail },
  ];
  const layers = parts.flatMap(({ from, to, reading }) => {
    if (from === undefined || to === undefined || reading === undefined) return [];
    const [start, end] = [brush.view.place(from), brush.view.place(to)];
    return [rulerLayer(uncertainLength(reading, brush.words), start, end, side, brush)];
  });
  return stacked(layers);
}

function rulerLayer(text: string, from: Spot, to: Spot, side: Side, brush: Brush): Layer {
  const { view, palette } = brush;
  const normal = normalTowards(seenDirection([0, 1], view), from, to);
  const beside = (spot: Spot, distance: number): Spot => [
    spot[0] + normal[0] * distance * view.size,
    spot[1] + normal[1] * distance * view.size,
  ];
  const line = [beside(from, OFFSET), beside(to, OFFSET)];
  const ticks = [from, to].map((spot) => [
    beside(spot, OFFSET - TICK),
    beside(spot, OFFSET + TICK),
  ]);
  const along = (share: number): Spot => [
    (1 - share) * (line[0] as Spot)[0] + share * (line[1] as Spot)[0],
    (1 - share) * (line[0] as Spot)[1] + share * (line[1] as Spot)[1],
  ];
  const size = TYPE_SIZES.label * view.size;
  const data = [line, ...ticks].map((spots) => pathData(spots));
  return {
    elements: [strokeGroup("ruler", `length ${side}`, data, brush)],
    labels: [
      {
        text,
        at: along(0.5),
        orAt: ELSEWHERE.map(along),
        towards: [normal, [-normal[0], -normal[1]]],
        size,
        gap: 0.8 * view.size,
        colour: palette.ink,
      },
    ],
    barred: [line, ...ticks].flatMap(stretches),
  };
}

function normalTowards(direction: Spot, from: Spot, to: Spot): Spot {
  const [x, y] = wayBetween(from, to).along;
  const normal: Spot = [-y, x];
  const facing = normal[0] * direction[0] + normal[1] * direction[1];
  return facing < 0 ? [-normal[0], -normal[1]] : normal;
}
