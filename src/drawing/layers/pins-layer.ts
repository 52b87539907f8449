import { say, type Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { DOTS } from "../../landmarks/index.js";
import type { PlannedDots } from "../../mapping/index.js";
import { boxOfDot, type Brush } from "../canvas/brush.js";
import type { Keyed } from "../canvas/label-layer.js";
import { type Layer, stacked } from "../canvas/layer.js";
import { element } from "../canvas/svg.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { seenDirection } from "../canvas/view.js";

/** Radius of the ring about a pinned dot, in steps: clear of the dot itself. */
const RING = 1.9;

/** The pins of a plan in their order, as "P1": who fixed the dot, and why. */
export function pinEntries(
  { reasons }: Pick<PlannedDots, "reasons">,
  words: Words,
): readonly Keyed[] {
  return reasons
    .filter(({ code }) => code === "pinned")
    .map((reason, index) => ({
      key: label(words, "key-pin", { number: index + 1 }),
      text: say(reason, words),
    }));
}

/** A ring about every dot that an artist has fixed, with the number of its pin. */
export function pinsLayer(plan: PlannedDots, brush: Brush): Layer {
  const { view, palette, edged } = brush;
  const entries = pinEntries(plan, brush.words);
  return stacked(
    plan.choices.pins.map(({ side, dot }, index): Layer => {
      const [cx, cy] = view.place(plan.dots[side][dot]);
      const { key = "", text = "" } = entries[index] ?? {};
      const name = say({ code: "dot-of-side", values: { side, dot } }, brush.words);
      const ring = { cx, cy, r: RING * view.size, fill: "none" };
      const width = 0.4 * view.size;
      const down = seenDirection([0, DOTS[dot].border === "lower" ? -1 : 1], view);
      return {
        elements: [
          element("g", { class: "pin", "data-side": side, "data-dot": dot }, [
            element("title", {}, [`${key}, ${name}: ${text}`]),
            edged
              ? element("circle", { ...ring, stroke: palette.paper, "stroke-width": 2.2 * width })
              : undefined,
            element("circle", { ...ring, stroke: palette.ink, "stroke-width": width }),
          ]),
        ],
        labels: [
          {
            text: key,
            at: [cx, cy],
            towards: [down, [1, 0], [-1, 0]],
            size: TYPE_SIZES.legend * view.size,
            gap: (RING + 0.5) * view.size,
            weight: "bold",
            colour: palette.ink,
          },
        ],
        closed: [boxOfDot([cx, cy], (RING + 0.2) * view.size)],
      };
    }),
  );
}
