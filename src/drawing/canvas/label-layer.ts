import { type Brush, pathData, strokeGroup } from "./brush.js";
import type { ColouredLabel } from "./layer.js";
import type { PlacedLabel } from "./label.js";
import { element, type SvgElement } from "./svg.js";
import { BASELINE, lineOf } from "./text-size.js";

/** Labels where they found room, each with its leader. */
export function labelElements(
  labels: readonly PlacedLabel<ColouredLabel>[],
  brush: Brush,
): readonly SvgElement[] {
  // Over hatching and strokes, too, letters are read by an edge of paper.
  const edged = { ...brush, edged: true };
  return labels.flatMap(({ label, box, leader }) => {
    const line =
      leader === undefined
        ? []
        : [strokeGroup("landmark", "leader", [pathData([leader.from, leader.to])], brush)];
    const anchor = anchorOf(label.at[0], box.x, box.x + box.width, brush);
    return [...line, textAt(label.text, anchor, box.y, label, edged)];
  });
}

/** Where a text hangs: on the edge nearest to what it names, so that narrower letters stay close to it. */
function anchorOf(at: number, from: number, to: number, { words }: Brush): Anchor {
  if (at > from && at < to) return { x: (from + to) / 2, side: "middle" };
  const isLeft = at <= from;
  return { x: isLeft ? from : to, side: isLeft === (words.direction === "ltr") ? "start" : "end" };
}

/** Where a text hangs, and by which of its edges: it starts where reading starts, at its left or at its right. */
export interface Anchor {
  readonly x: number;
  readonly side: "start" | "middle" | "end";
}

/** A text with the key that stands for it in a picture, or that marks it in a list. */
export interface Keyed {
  readonly key: string;
  readonly text: string;
}

/** How a text looks. */
export interface TextLook {
  readonly size: number;
  readonly weight?: "normal" | "bold";
  readonly colour: string;
}

/** Lines of text one below the other, the first of which begins at a height. */
export function linesAt(
  lines: readonly string[],
  anchor: Anchor,
  top: number,
  look: TextLook,
  brush: Brush,
): readonly SvgElement[] {
  return lines.map((line, index) =>
    textAt(line, anchor, top + index * lineOf(look.size), look, brush),
  );
}

/** One line of text whose box begins at a height. */
export function textAt(
  text: string,
  anchor: Anchor,
  top: number,
  look: TextLook,
  brush: Brush,
): SvgElement {
  return element(
    "text",
    {
      x: anchor.x,
      y: top + BASELINE * look.size,
      "text-anchor": anchor.side === "start" ? undefined : anchor.side,
      "font-size": look.size,
      "font-weight": look.weight === "bold" ? "bold" : undefined,
      fill: look.colour,
      ...(brush.edged
        ? {
            stroke: brush.palette.paper,
            "stroke-width": 0.26 * look.size,
            "stroke-linejoin": "round",
            "paint-order": "stroke",
          }
        : {}),
    },
    [text],
  );
}
