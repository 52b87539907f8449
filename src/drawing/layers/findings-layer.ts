import type { BrowPlan } from "../../mapping/index.js";
import type { FlatPoint } from "../../units/index.js";
import { say, type Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import type { Spot } from "../canvas/box.js";
import { boxOfDot, type Brush, pathData, strokeGroup } from "../canvas/brush.js";
import type { Keyed } from "../canvas/label-layer.js";
import { type Layer, stacked } from "../canvas/layer.js";
import { element } from "../canvas/svg.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { seenDirection } from "../canvas/view.js";

/** What a plan found in its own shape, in the order of its cautions, as "F1", with where it lies. */
export function findingEntries(
  { cautions }: Pick<BrowPlan, "cautions">,
  words: Words,
): readonly (Keyed & { readonly at: FlatPoint<"mm"> })[] {
  return cautions
    .flatMap((caution) => (caution.at === undefined ? [] : [{ caution, at: caution.at }]))
    .map(({ caution, at }, index) => ({
      key: label(words, "key-finding", { number: index + 1 }),
      text: say(caution, words),
      at,
    }));
}

/** Half of the frame about a place, in steps: clear of a dot and of the ring of a pin. */
const FRAME = 2.7;

/** Of half a side of the frame, how much is drawn at each end. */
const DRAWN = 0.6;

/** A frame of corners about every place where a plan found something in its shape, with its number. */
export function findingsLayer(plan: BrowPlan, brush: Brush): Layer {
  const { view, palette, words } = brush;
  const down = seenDirection([0, -1], view);
  return stacked(
    findingEntries(plan, words).map(({ key, text, at }): Layer => {
      const spot = view.place(at);
      const data = frameData(spot, FRAME * view.size);
      return {
        elements: [
          element("g", { class: "finding" }, [
            element("title", {}, [`${key}: ${text}`]),
            strokeGroup("finding", "frame", data, brush),
          ]),
        ],
        labels: [
          {
            text: key,
            at: spot,
            towards: [down, [1, 0], [-1, 0]],
            size: TYPE_SIZES.legend * view.size,
            gap: (FRAME + 0.5) * view.size,
            weight: "bold",
            colour: palette.ink,
          },
        ],
        closed: [boxOfDot(spot, FRAME * view.size)],
      };
    }),
  );
}

function frameData([x, y]: Spot, half: number): readonly string[] {
  const rest = half * (1 - DRAWN);
  return ([-1, 1] as const).flatMap((right) =>
    ([-1, 1] as const).map((down) =>
      pathData([
        [x + right * rest, y + down * half],
        [x + right * half, y + down * half],
        [x + right * half, y + down * rest],
      ]),
    ),
  );
}
