import {
  correctionOf,
  correctionsOf,
  type DotDeviation,
  type DrawnCheck,
  type PlannedDots,
} from "../../mapping/index.js";
import { placeOnSide, pointOnSide } from "../../symmetry/index.js";
import { say, type Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { type Spot, wayBetween } from "../canvas/box.js";
import { arrowData, boxOfDot, type Brush, markerAt, strokeGroup } from "../canvas/brush.js";
import type { Keyed } from "../canvas/label-layer.js";
import { type Layer, stacked } from "../canvas/layer.js";
import { MARKERS } from "../canvas/palette.js";
import { TYPE_SIZES } from "../canvas/text-size.js";

/** Half of a drawn dot's mark, in steps. */
const RADIUS = 1;
/** Room that the planned dot at an arrow's tip takes, in steps. */
const TIP_ROOM = 1.1;

/** Corrections in order, as "C1", each fault once. */
export function correctionEntries(check: DrawnCheck, words: Words): readonly Keyed[] {
  return correctionsOf(check).map((correction, index) => ({
    key: correctionKey(index + 1, words),
    text: say(correction, words),
  }));
}

function correctionKey(number: number, words: Words): string {
  return label(words, "key-correction", { number });
}

export function isOutside(deviation: DotDeviation): boolean {
  return correctionOf(deviation) !== undefined;
}

export function isUndecided({ outward, up }: DotDeviation): boolean {
  return [outward, up].some(({ decision }) => decision?.outcome === "undecided");
}

/** Drawn dots as saltires: outside with an arrow to the plan and its number, undecided with a question mark. */
export function checkLayer(plan: PlannedDots, { dots }: DrawnCheck, brush: Brush): Layer {
  let corrections = 0;
  return stacked(
    dots.map((deviation): Layer => {
      const undecided = isUndecided(deviation) ? "?" : undefined;
      const key = isOutside(deviation) ? correctionKey(++corrections, brush.words) : undecided;
      return drawnDot(plan, deviation, key, brush);
    }),
  );
}

function drawnDot(
  { dots }: PlannedDots,
  deviation: DotDeviation,
  key: string | undefined,
  brush: Brush,
): Layer {
  const { view, palette } = brush;
  const { side, dot, outward, up } = deviation;
  const correction = correctionOf(deviation);
  const planned = dots[side][dot];
  const place = placeOnSide(planned, side);
  const distance = place.distance + outward.difference.value;
  const height = place.height + up.difference.value;
  const drawn = pointOnSide({ distance, height }, side);
  const [from, to] = [view.place(drawn), view.place(planned)];
  const { length, along } = wayBetween(to, from);
  const away: Spot = length === 0 ? [0, 1] : along;
  const size = TYPE_SIZES.legend * view.size;
  const arrow = arrowData(from, to, TIP_ROOM * view.size, view.size);
  const title = label(brush.words, "dot-drawn", { side, dot });
  return {
    elements: [
      ...(correction === undefined
        ? []
        : [strokeGroup("correction", `correction ${side}`, arrow, brush)]),
      markerAt(
        from,
        { shape: MARKERS.drawn, colour: palette.strokes.correction, radius: RADIUS },
        brush,
        correction === undefined ? title : `${title}: ${say(correction, brush.words)}`,
        { class: "drawn", "data-side": side, "data-dot": dot },
      ),
    ],
    labels:
      key === undefined
        ? []
        : [
            {
              text: key,
              at: from,
              towards: [away, [away[1], -away[0]], [-away[1], away[0]]],
              size,
              gap: (RADIUS + 0.5) * view.size,
              weight: "bold",
              colour: palette.ink,
            },
          ],
    closed: [boxOfDot(from, RADIUS * view.size)],
    strokes: [{ from, to }],
  };
}
