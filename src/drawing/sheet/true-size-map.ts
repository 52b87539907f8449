import { refuse } from "../../units/internal.js";
import type { BrowPlan } from "../../mapping/index.js";
import type { Box, Spot } from "../canvas/box.js";
import type { Brush } from "../canvas/brush.js";
import { compose, type Composition } from "../canvas/compose.js";
import type { ColouredLabel, Layer } from "../canvas/layer.js";
import type { Attributes } from "../canvas/svg.js";
import { uprightView } from "../canvas/view.js";
import { faceBox } from "../layers/plan-layers.js";
import { PAPERS } from "./paper.js";
import { boxOfUprightRuler, type TrueSizeRuler, trueSizeRuler } from "./true-size-ruler.js";

/** What is drawn of a face, and what stands above it. */
interface MapContent {
  readonly layers: readonly Layer[];
  readonly headings: readonly ColouredLabel[];
}

/** A face at true size, with its upright ruler. */
export interface TrueSizeMap extends Composition {
  /** The size of its picture. */
  readonly frame: Attributes;
}

/** Length of the ruler beside the face, in millimetres. */
const RULER_LENGTH = 50;

/** What a page can do without of a picture's room beside the brows, in millimetres. */
const SPARE = 9;

/** A face seen from the front, 1 mm on it 1 mm on paper, with as much room as its plan needs. */
export function trueSizeMap(
  plan: BrowPlan,
  width: number,
  brush: Brush,
  drawnIn: (box: Box, brush: Brush) => MapContent,
): TrueSizeMap {
  const { least } = brush.view;
  const brushAt = (origin: Spot): Brush => ({ ...brush, view: uprightView(origin, 1, least) });
  const extent = faceBox(plan, brushAt([0, 0]).view);
  requireRoom(extent.width - SPARE, width);
  const { height } = extent;
  const box = { x: 0, y: 0, width, height };
  const placed = brushAt([(width - extent.width) / 2 - extent.x, -extent.y]);
  const ruler: TrueSizeRuler = { from: [1, height - 2], length: RULER_LENGTH, direction: "up" };
  const rulerLayer = {
    elements: [trueSizeRuler(ruler, placed)],
    closed: [boxOfUprightRuler(ruler, placed)],
  };
  const { layers, headings } = drawnIn(box, placed);
  return {
    ...compose([...layers, rulerLayer], headings, box, placed),
    frame: trueSizeFrame(box),
  };
}

/** Attributes of a picture that is drawn in millimetres and printed as large. */
export function trueSizeFrame({ x, y, width, height }: Box): Attributes {
  return {
    width: `${width.toFixed(3)}mm`,
    height: `${height.toFixed(3)}mm`,
    viewBox: [x, y, width, height].map((value) => value.toFixed(3)).join(" "),
    // Browsers round sizes to parts of a pixel: one axis would take the other's error.
    preserveAspectRatio: "none",
  };
}

function requireRoom(needed: number, width: number): void {
  if (needed <= width) return;
  const need = `at most ${Math.floor(width)} mm with its margins, to be printed at true size on ${Object.keys(PAPERS).join(" or ")}`;
  refuse("out-of-range", "width of the face", needed, need);
}
