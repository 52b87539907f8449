import type { BrowPlan, Caution } from "../../mapping/index.js";
import { SIDES } from "../../units/internal.js";
import { decimal, label } from "../../words/internal.js";
import type { Box } from "../canvas/box.js";
import type { Brush } from "../canvas/brush.js";
import { headingsOver } from "../canvas/compose.js";
import { textAt } from "../canvas/label-layer.js";
import type { ColouredLabel, Layer } from "../canvas/layer.js";
import { LINE_HEIGHT, textWidth } from "../canvas/text-size.js";

/** The most that letters across the picture grow to, in steps. */
const MOST = 10;

/** Where a finding of the capture asks for another photo, that, written across the picture. */
export function verdictLayer({ cautions, face }: BrowPlan, box: Box, brush: Brush): Layer {
  if (cautions.every(({ values }) => values.severity !== "retake")) return { elements: [] };
  const { view, palette, words } = brush;
  const text = label(words, "line-retake");
  const wide = textWidth(text, 1, "bold");
  const size = Math.min((0.9 * box.width) / wide, MOST * view.size);
  const [right = 0, left = 0] = SIDES.map((side) => view.place(face[side].exocanthion)[1]);
  const y = (right + left - LINE_HEIGHT * size) / 2;
  const x = box.x + box.width / 2;
  const look = { size, weight: "bold", colour: palette.ink } as const;
  return {
    elements: [textAt(text, { x, side: "middle" }, y, look, { ...brush, edged: true })],
    closed: [{ x: x - (wide * size) / 2, y, width: wide * size, height: LINE_HEIGHT * size }],
  };
}

/** Which side of a plan is which, and between them how far the head was off the front, where that is too far. */
export function planHeadings(
  { cautions }: BrowPlan,
  box: Box,
  brush: Brush,
): readonly ColouredLabel[] {
  const { words } = brush;
  const angle = Math.max(...cautions.map(offFront));
  const said = label(words, "line-off-front", { angle: decimal(angle, 0, words) });
  return headingsOver(box, brush, angle > 0 ? said : "");
}

/** Degrees by which a caution says that the head was turned, raised or lowered; 0 where it says nothing of it. */
function offFront({ values: { yaw = 0, pitch = 0 }, finding }: Caution): number {
  const size = finding?.code === "head-turned" ? finding.values.size : 0;
  return Math.max(...[yaw, pitch, size].map(Number));
}
