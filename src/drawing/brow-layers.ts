import {
  type Brow,
  type BrowMarks,
  type CompleteMarks,
  type Dot,
  DOTS,
} from "../landmarks/index.js";
import type { Point, Side } from "../units/index.js";
import type { Spot } from "./box.js";
import { boxOfDot, type Brush, markerAt, pathData, strokeGroup, stretches } from "./brush.js";
import type { Layer } from "./layer.js";
import { type MarkerShape, MARKERS } from "./palette.js";
import { placed } from "./view.js";
import { DOT_WORDS, inMillimetres } from "./words.js";

/** The hair as it grows: a closed outline, or the upper border alone where no lower one is known. */
export function naturalBrowLayer(brow: Brow<"mm">, side: Side, brush: Brush): Layer {
  const upper = placed(brow.upper, brush.view);
  const lower = brow.lower === undefined ? [] : placed(brow.lower, brush.view);
  const closed = lower.length > 0;
  const outline = [...upper, ...[...lower].reverse()];
  return {
    elements: [
      strokeGroup(
        "natural",
        `natural ${side}`,
        [pathData(outline, closed)],
        brush,
        fillOf("natural", closed, brush),
      ),
    ],
    strokes: stretches(outline),
  };
}

/** The planned brow: its marks joined from dot to dot. */
export function plannedBrowLayer(marks: CompleteMarks<"mm">, side: Side, brush: Brush): Layer {
  const outline = ROUND_THE_BROW.map((dot) => brush.view.place(marks[dot]));
  return {
    elements: [
      strokeGroup(
        "planned",
        `planned ${side}`,
        [pathData(outline, true)],
        brush,
        fillOf("planned", true, brush),
      ),
    ],
    strokes: stretches([...outline, outline[0] as Spot]),
  };
}

/** Once round a brow, from its upper start. */
const ROUND_THE_BROW: readonly Dot[] = [
  "upperStart",
  "upperBody",
  "upperArch",
  "tailEnd",
  "lowerArch",
  "lowerBody",
  "lowerStart",
];

/** Half of a dot's width, in millimetres on the face. */
const DOT_RADIUS = 0.8;

/**
 * The dots of a brow that are known, in the colour of what it is; those of the lower border are hollow.
 * The one above the body, where only a reading begins, is small.
 */
export function dotsLayer(
  marks: BrowMarks<"mm">,
  side: Side,
  role: "natural" | "planned",
  brush: Brush,
): Layer {
  const { view, palette } = brush;
  const known = DOTS.flatMap((dot) => {
    const at = marks[dot];
    return at === undefined ? [] : [{ dot, at, spot: view.place(at) }];
  });
  return {
    elements: known.map(({ dot, at, spot }) =>
      markerAt(
        spot,
        {
          shape: shapeOf(dot),
          colour: palette.strokes[role],
          radius: dot === "upperBody" ? DOT_RADIUS / 2 : DOT_RADIUS,
          hollow: dot.startsWith("lower"),
        },
        brush,
        `${side} ${DOT_WORDS[dot]}: ${whereabouts(at)}`,
        { class: "dot", "data-side": side, "data-dot": dot },
      ),
    ),
    closed: known.map(({ spot }) => boxOfDot(spot, 1.5 * DOT_RADIUS * view.size)),
  };
}

function shapeOf(dot: Dot): MarkerShape {
  if (dot.endsWith("Start")) return MARKERS.start;
  if (dot.endsWith("Body")) return MARKERS.body;
  return dot === "tailEnd" ? MARKERS.tail : MARKERS.arch;
}

function whereabouts([x, y]: Point<"mm">): string {
  const level = y < 0 ? "below" : "above";
  return `${inMillimetres(Math.abs(x))} from the midline, ${inMillimetres(Math.abs(y))} ${level} the inner eye corners`;
}

/** On a photo the hair itself is to be seen. */
function fillOf(role: "natural" | "planned", closed: boolean, brush: Brush): string {
  return closed && !brush.onPhoto ? brush.palette.strokes[role] : "none";
}
