import type { BrowDots, SideMeasures } from "../../landmarks/index.js";
import type { Measured, Side } from "../../units/index.js";
import { type Spot, wayBetween } from "../canvas/box.js";
import { type Brush, pathData, rulerLines, strokeGroup, stretches } from "../canvas/brush.js";
import { type Layer, stacked } from "../canvas/layer.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { seenDirection } from "../canvas/view.js";
import { uncertainLength } from "../canvas/figures.js";

/** How far the ruler's line lies above the chord, in steps. */
const OFFSET = 7.5;
/** Where on its line a figure may stand as well, where the middle is taken. */
const ELSEWHERE = [0.75, 0.25, 1.1, -0.1];

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
  const beside = ([x, y]: Spot): Spot => [
    x + normal[0] * OFFSET * view.size,
    y + normal[1] * OFFSET * view.size,
  ];
  const [start, end] = [beside(from), beside(to)];
  const lines = rulerLines(start, end, view.size);
  const along = (share: number): Spot => [
    (1 - share) * start[0] + share * end[0],
    (1 - share) * start[1] + share * end[1],
  ];
  const size = TYPE_SIZES.label * view.size;
  const data = lines.map((spots) => pathData(spots));
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
        yields: "key",
        colour: palette.ink,
      },
    ],
    barred: lines.flatMap(stretches),
  };
}

function normalTowards(direction: Spot, from: Spot, to: Spot): Spot {
  const [x, y] = wayBetween(from, to).along;
  const normal: Spot = [-y, x];
  const facing = normal[0] * direction[0] + normal[1] * direction[1];
  return facing < 0 ? [-normal[0], -normal[1]] : normal;
}
