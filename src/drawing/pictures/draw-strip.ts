import type { BrowPlan } from "../../mapping/index.js";
import { type Side } from "../../units/index.js";
import { SIDES, refusingAs } from "../../units/internal.js";
import { ENGLISH } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { type Box, boxAround, type Spot, withMargin } from "../canvas/box.js";
import { type Brush, brushOf } from "../canvas/brush.js";
import {
  dotsLayer,
  grownLayer,
  grownRole,
  grownWord,
  plannedBrowLayer,
} from "../layers/brow-layers.js";
import {
  compose,
  composeBeside,
  type Composition,
  type Crowding,
  headingIn,
} from "../canvas/compose.js";
import { describePlan } from "./describe-plan.js";
import { eyeRoom, eyeRoomLayer, roomOutline } from "../layers/eye-room.js";
import { eyeLayer, midlineLayer } from "../layers/face-layers.js";
import type { Layer } from "../canvas/layer.js";
import { legend } from "./legend.js";
import { lengthsLayer } from "../layers/lengths-layer.js";
import { leastOn, requireLook, type ScreenDrawing } from "../canvas/look.js";
import { element, pictureSource } from "../canvas/svg.js";
import { placed, uprightSize, uprightView } from "../canvas/view.js";

interface Panel {
  readonly side: Side;
  readonly state: "natural" | "planned";
}

/** Room about each brow, in steps, the midline to its left. */
const MARGIN = { top: 22, right: 15, bottom: 6, left: 3 };

/**
 * Each brow as it grows, or what a source guesses of it, beside itself as planned, all four at the same scale, upright and level
 * with each other, with front and tail by ruler. Coordinates are millimetres on the face.
 *
 * @throws GeometryError `out-of-range` for an unknown option or theme, or a screen whose width or type size is out of
 * range
 *
 * @example
 * ```ts
 * import { mm, planBrows } from "brow-geometry";
 * import { drawStrip } from "brow-geometry/drawing";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: [mm([sign * 15, 20]), mm([sign * 38, 27]), mm([sign * 57, 18])] },
 * });
 * const plan = planBrows({ right: side(-1), left: side(1), midline: {} });
 * drawStrip(plan).includes("client’s left, as planned"); // → true
 * ```
 */
export function drawStrip(plan: BrowPlan, options: ScreenDrawing = {}): string {
  return refusingAs("drawStrip", () => {
    requireLook(options);
    const { words = ENGLISH } = options;
    const { title = label(words, "title-strip") } = options;
    const extent = sideExtent(plan);
    const least = leastOn(2 * extent.width, options);
    const brush = brushOf(uprightView([0, 0], uprightSize(plan.face), least), options);
    // What grows stands first, in the order of reading; a side stays at the midline's side.
    const states = ["natural", "planned"] as const;
    const columns = words.direction === "rtl" ? [...states].reverse() : states;
    const panels = SIDES.flatMap((side, row) =>
      columns.map((state, column) => {
        const box = { ...extent, x: column * extent.width, y: row * extent.height };
        return (crowding: Crowding) =>
          panel(plan, { side, state }, box, { extent, flat: brush, crowding });
      }),
    );
    const [width, rows] = [2 * extent.width, 2 * extent.height];
    const { elements, unplaced, keyed } = composeBeside(panels, options);
    const explained = legend(keyed, { width, brush });
    const height = rows + explained.height;
    return pictureSource(
      { viewBox: `0 0 ${width.toFixed(3)} ${height.toFixed(3)}` },
      title,
      describePlan(plan, unplaced, words),
      words,
      [
        element("rect", { width, height, fill: brush.palette.backdrop }),
        ...elements,
        ...explained.drawnAt(0, rows),
      ],
    );
  });
}

/** The box, about the face's origin, that holds either side with the midline at its inner edge. */
function sideExtent({ face, dots }: BrowPlan): Box {
  const spots = SIDES.flatMap((side) => {
    const { endocanthion, exocanthion, brow } = face[side];
    const room = roomOutline(eyeRoom({ endocanthion, exocanthion }));
    const points = [...room, ...brow.upper, ...(brow.lower ?? []), ...Object.values(dots[side])];
    // Both sides as if they were left ones: away from the midline is to the right.
    return placed(points, uprightView([0, 0])).map(([x, y]): Spot => [Math.abs(x), y]);
  });
  const box = boxAround([...spots, [0, spots[0]?.[1] ?? 0]]);
  return withMargin(box, MARGIN, uprightSize(face));
}

function panel(
  plan: BrowPlan,
  { side, state }: Panel,
  box: Box,
  {
    extent,
    flat,
    crowding,
  }: { readonly extent: Box; readonly flat: Brush; readonly crowding: Crowding },
): Composition {
  const { face, dots, natural, measures, naturalMeasures, choices } = plan;
  const { words } = flat;
  const { size, least } = flat.view;
  const inwards = side === "right" ? box.width + extent.x : -extent.x;
  const brush: Brush = {
    ...flat,
    view: uprightView([box.x + inwards, box.y - extent.y], size, least),
  };
  const brow: readonly Layer[] =
    state === "natural"
      ? [
          grownLayer(face, side, brush),
          lengthsLayer(natural[side].dots, naturalMeasures[side], side, brush),
          dotsLayer(natural[side].dots, side, grownRole(face, side), brush),
        ]
      : [
          plannedBrowLayer(dots[side], side, choices.shape, brush),
          lengthsLayer(dots[side], measures[side], side, brush),
          dotsLayer(dots[side], side, "planned", brush),
        ];
  const [top, bottom] = [
    -extent.y - (MARGIN.top / 2) * size,
    -extent.y - extent.height + (MARGIN.bottom / 2) * size,
  ];
  const layers = [
    midlineLayer({ top, bottom }, brush),
    eyeLayer(face[side], brush),
    eyeRoomLayer(eyeRoom(face[side]), brush),
    ...brow,
  ];
  const named = label(words, `panel-${state === "planned" ? state : grownWord(face, side)}`, {
    side,
  });
  return compose(
    layers,
    headingIn(side === "right" ? "left" : "right", named, box, brush),
    box,
    brush,
    crowding,
  );
}
