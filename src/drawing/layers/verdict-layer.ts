import type { BrowPlan, Caution } from "../../mapping/index.js";
import { SIDES } from "../../units/internal.js";
import { decimal, label } from "../../words/internal.js";
import type { Box } from "../canvas/box.js";
import type { Brush } from "../canvas/brush.js";
import { textAt } from "../canvas/label-layer.js";
import type { Layer } from "../canvas/layer.js";
import { LINE_HEIGHT, textWidth, TYPE_SIZES } from "../canvas/text-size.js";

/** The most that letters across the picture grow to, in steps. */
const MOST = 10;

/** From the upper edge to what stands below the headings, in steps. */
const BELOW_HEADINGS = 8.5;

/** What there is against a plan's capture: a retake across the picture, and how far the head was off the front. */
export function verdictLayer({ cautions, face }: BrowPlan, box: Box, brush: Brush): Layer {
  const { view, palette, words } = brush;
  const angle = Math.max(...cautions.map(offFront));
  const again = label(words, "line-retake");
  const size = Math.min((0.9 * box.width) / textWidth(again, 1, "bold"), MOST * view.size);
  const eyes = SIDES.map((side) => view.place(face[side].exocanthion)[1]);
  const lines = [
    {
      text: cautions.some(({ values }) => values.severity === "retake") ? again : "",
      size,
      top: (Math.min(...eyes) + Math.max(...eyes) - LINE_HEIGHT * size) / 2,
    },
    {
      text: angle > 0 ? label(words, "line-off-front", { angle: decimal(angle, 0, words) }) : "",
      size: TYPE_SIZES.label * view.size,
      top: box.y + BELOW_HEADINGS * view.size,
    },
  ].filter(({ text }) => text !== "");
  const x = box.x + box.width / 2;
  return {
    elements: lines.map(({ text, size, top }) =>
      textAt(
        text,
        { x, side: "middle" },
        top,
        { size, weight: "bold", colour: palette.ink },
        { ...brush, onPhoto: true },
      ),
    ),
    closed: lines.map(({ text, size, top }) => {
      const width = textWidth(text, size, "bold");
      return { x: x - width / 2, y: top, width, height: LINE_HEIGHT * size };
    }),
  };
}

/** Degrees by which a caution says that the head was turned, raised or lowered; 0 where it says nothing of it. */
function offFront({ values: { yaw = 0, pitch = 0 }, finding }: Caution): number {
  const size = finding?.code === "head-turned" ? finding.values.size : 0;
  return Math.max(...[yaw, pitch, size].map(Number));
}
