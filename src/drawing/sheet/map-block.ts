import { refuse } from "../../units/internal.js";
import type { BrowPlan } from "../../mapping/index.js";
import type { Block } from "./block.js";
import type { Box, Spot } from "../canvas/box.js";
import type { Brush } from "../canvas/brush.js";
import { compose, type Composition, headingsOver } from "../canvas/compose.js";
import { movesLayer } from "../layers/moves-layer.js";
import { PAPERS } from "./page.js";
import { type AlsoShown, faceBox, planLayers } from "../layers/plan-layers.js";
import { boxOfUprightRuler, type TrueSizeRuler, trueSizeRuler } from "./true-size-ruler.js";
import type { Sheet } from "./text-blocks.js";
import { uprightView } from "../canvas/view.js";

/** A face at true size, with its upright ruler; `unplaced` is what found no room in it. */
export interface MapBlock extends Block {
  readonly unplaced: readonly string[];
}

/** Length of the ruler beside the face, in millimetres. */
const RULER_LENGTH = 50;

/** What a page can do without of a picture's room beside the brows, in millimetres. */
const SPARE = 9;

/** A plan seen from the front, 1 mm on the face 1 mm on paper, with its moves or with the check. */
export function mapBlock(plan: BrowPlan, { width, brush }: Sheet, shown: AlsoShown = {}): MapBlock {
  const brushAt = (origin: Spot): Brush => ({ ...brush, view: uprightView(origin) });
  const extent = faceBox(plan, brushAt([0, 0]));
  requireRoom(extent.width - SPARE, width);
  const at = (left: number, top: number): Composition => {
    const origin: Spot = [left + (width - extent.width) / 2 - extent.x, top - extent.y];
    const box = { x: left, y: top, width, height: extent.height };
    return composed(plan, box, brushAt(origin), shown);
  };
  return {
    height: extent.height,
    drawnAt: (left, top) => at(left, top).elements,
    unplaced: at(0, 0).unplaced,
  };
}

function composed(plan: BrowPlan, box: Box, brush: Brush, shown: AlsoShown): Composition {
  const ruler: TrueSizeRuler = {
    from: [box.x + 1, box.y + box.height - 2],
    length: RULER_LENGTH,
    direction: "up",
  };
  const rulerLayer = {
    elements: [trueSizeRuler(ruler, brush)],
    closed: [boxOfUprightRuler(ruler)],
  };
  // Arrows of corrections and of moves would be taken for each other.
  const moves = shown.check === undefined ? [movesLayer(plan, brush)] : [];
  const layers = planLayers(plan, box, brush, shown, moves);
  return compose([...layers, rulerLayer], headingsOver(box, brush), box, brush);
}

function requireRoom(needed: number, width: number): void {
  if (needed <= width) return;
  const need = `at most ${Math.floor(width)} mm with its margins, to be printed at true size on ${Object.keys(PAPERS).join(" or ")}`;
  refuse("out-of-range", "width of the face", needed, need);
}
