import { type BrowPlan } from "../../mapping/index.js";
import { requirePlan } from "../../mapping/internal.js";
import { flatPoint, type Measured, type Side } from "../../units/index.js";
import { refusingAs, SIDES } from "../../units/internal.js";
import { ENGLISH, type Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { type Box, boxAround, type Spot, withMargin } from "../canvas/box.js";
import {
  type Brush,
  brushOf,
  pathData,
  rulerLines,
  strokeGroup,
  stretches,
} from "../canvas/brush.js";
import {
  compose,
  composeBeside,
  type Composition,
  type Crowding,
  headingIn,
} from "../canvas/compose.js";
import { uncertainLength } from "../canvas/figures.js";
import type { Layer } from "../canvas/layer.js";
import { leastOn, requireLook, type ScreenDrawing } from "../canvas/look.js";
import { element, pictureSource } from "../canvas/svg.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { uprightSize, uprightView } from "../canvas/view.js";
import { dotsLayer, plannedBrowLayer, plannedSpots } from "../layers/brow-layers.js";
import { midlineLayer } from "../layers/face-layers.js";
import { describePlan } from "./describe-plan.js";
import { legend } from "./legend.js";

/**
 * How thick the planned brows are at start, body and arch, and how high start, arch and tail end lie above the level
 * of the inner eye corners: each a line with its ends marked and its length ± u. Right above left, at one scale.
 *
 * Coordinates are millimetres on the face.
 *
 * @throws GeometryError `out-of-range` for an unknown option or theme, or a screen whose width or type size is out of
 * range
 *
 * @example
 * ```ts
 * import { mm, planBrows } from "brow-geometry";
 * import { drawDimensions } from "brow-geometry/drawing";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: {
 *     upper: mm([[sign * 17, 20], [sign * 38, 27], [sign * 57, 18]]),
 *     lower: mm([[sign * 17, 13], [sign * 38, 21], [sign * 57, 18]]),
 *   },
 * });
 * const plan = planBrows({ right: side(-1), left: side(1), midline: {} });
 * plan.measures.left.startHeight; // → { value: 20.0, u: 0.19 }
 * drawDimensions(plan).includes(">20.0 ± 0.2 mm<"); // → true
 * ```
 */
export function drawDimensions(plan: BrowPlan, look: ScreenDrawing = {}): string {
  return refusingAs("drawDimensions", () => {
    requirePlan(plan);
    requireLook(look);
    const { words = ENGLISH } = look;
    const { title = label(words, "title-plan") } = look;
    const size = FINE * uprightSize(plan.face);
    const plain = brushOf(uprightView([0, 0], size), look);
    const extent = extentOf(plan, plain);
    const flat = { ...plain, view: { ...plain.view, least: leastOn(extent.width, look) } };
    const panels = SIDES.map((side, row) => (crowding: Crowding) => {
      const box = { ...extent, x: 0, y: row * extent.height };
      return panel(plan, side, box, { extent, flat, crowding });
    });
    const { elements, unplaced, keyed } = composeBeside(panels, look);
    const sheet = { width: extent.width, brush: flat };
    const explained = legend(
      [
        { text: label(words, "legend-planned"), role: "planned" },
        { text: label(words, "legend-dimensions"), role: "ruler", ticked: true },
        ...keyed,
      ],
      sheet,
    );
    const rowsHeight = panels.length * extent.height;
    const height = rowsHeight + explained.height;
    return pictureSource(
      { viewBox: `0 0 ${extent.width.toFixed(3)} ${height.toFixed(3)}` },
      title,
      [
        describePlan(plan, unplaced, words),
        ...SIDES.flatMap((side) => saidOf(plan, side, words)),
      ].join(" "),
      words,
      [
        element("rect", { width: extent.width, height, fill: flat.palette.backdrop }),
        ...elements,
        ...explained.drawnAt(0, rowsHeight),
      ],
    );
  });
}

/** Of the step of other pictures: half a face is shown as wide as a whole one there. */
const FINE = 0.75;

/** Room about a brow, the midline to its left and the level of the inner eye corners beneath, in steps. */
const MARGIN = { top: 16, right: 36, bottom: 6, left: 3 };

/** How far a line stands beside what it measures, in steps. */
const BESIDE = { height: 3.5, thickness: 3 };

const HEIGHTS = [
  { measure: "startHeight", dot: "upperStart", aside: -1 },
  { measure: "archHeight", dot: "upperArch", aside: 0 },
  { measure: "tailHeight", dot: "tailEnd", aside: 1 },
] as const;

const THICKNESSES = [
  { measure: "startThickness", upper: "upperStart", aside: 1 },
  { measure: "bodyThickness", upper: "upperBody", aside: 0 },
  { measure: "archThickness", upper: "upperArch", aside: -1 },
] as const;

/** The box, about the face's origin, that holds either brow as a left one, from the midline and the level of the eyes. */
function extentOf({ dots, choices }: BrowPlan, flat: Brush): Box {
  const spots = SIDES.flatMap((side) =>
    plannedSpots(dots[side], choices.shape, flat).map(([x, y]): Spot => [Math.abs(x), y]),
  );
  return withMargin(boxAround([...spots, [0, 0]]), MARGIN, flat.view.size);
}

function panel(
  plan: BrowPlan,
  side: Side,
  box: Box,
  {
    extent,
    flat,
    crowding,
  }: { readonly extent: Box; readonly flat: Brush; readonly crowding: Crowding },
): Composition {
  const { dots, choices, measures } = plan;
  const { size, least } = flat.view;
  const toMidline = side === "right" ? box.width + extent.x : -extent.x;
  const brush: Brush = {
    ...flat,
    view: uprightView([box.x + toMidline, box.y - extent.y], size, least),
  };
  const { place } = brush.view;
  const outward = side === "left" ? 1 : -1;
  const beside = ([x, y]: Spot, steps: number): Spot => [x + outward * steps * size, y];
  const read = measures[side];
  const heights = HEIGHTS.flatMap(({ measure, dot, aside }) => {
    const [x, y] = dots[side][dot];
    const [from, to] = [place(flatPoint(x, 0)), place(flatPoint(x, y))].map((spot) =>
      beside(spot, aside * BESIDE.height),
    ) as [Spot, Spot];
    const quarter: Spot = [(from[0] + to[0]) / 2, (3 * from[1] + to[1]) / 4];
    return dimension(
      read[measure],
      from,
      to,
      quarter,
      [
        [outward, 0],
        [-outward, 0],
      ],
      brush,
    );
  });
  const thicknesses = THICKNESSES.flatMap(({ measure, upper, aside }) => {
    const [x, y] = dots[side][upper];
    // Read straight down, also where the lower dot lies aside.
    const thickness = read[measure]?.value ?? 0;
    const [from, to] = [place(flatPoint(x, y - thickness)), place(flatPoint(x, y))].map((spot) =>
      beside(spot, aside * BESIDE.thickness),
    ) as [Spot, Spot];
    return dimension(
      read[measure],
      from,
      to,
      to,
      [
        [0, -1],
        [outward, -1],
        [-outward, -1],
      ],
      brush,
    );
  });
  const level = [
    place(flatPoint(0, 0)),
    place(flatPoint(outward * (extent.x + extent.width - 3 * size), 0)),
  ];
  const [top, bottom] = [-extent.y - 8 * size, -extent.y - extent.height + size];
  const layers: readonly Layer[] = [
    midlineLayer({ top, bottom }, brush),
    {
      elements: [strokeGroup("landmark", "level", [pathData(level)], brush)],
      strokes: stretches(level),
    },
    plannedBrowLayer(dots[side], side, choices.shape, brush),
    ...heights,
    ...thicknesses,
    dotsLayer(dots[side], side, "planned", brush),
  ];
  const named = label(brush.words, side === "right" ? "corner-right" : "corner-left");
  const headings = headingIn(side === "right" ? "left" : "right", named, box, brush);
  return compose(layers, headings, box, brush, crowding);
}

/** A length with its line; none where it was not read. */
function dimension(
  reading: Measured | undefined,
  from: Spot,
  to: Spot,
  at: Spot,
  towards: readonly Spot[],
  brush: Brush,
): readonly Layer[] {
  if (reading === undefined) return [];
  const { view, palette, words } = brush;
  const lines = rulerLines(from, to, view.size);
  return [
    {
      elements: [
        strokeGroup(
          "ruler",
          "length",
          lines.map((spots) => pathData(spots)),
          brush,
        ),
      ],
      labels: [
        {
          text: uncertainLength(reading, words),
          at,
          towards,
          size: TYPE_SIZES.label * view.size,
          gap: 1.2 * view.size,
          yields: "key",
          colour: palette.ink,
        },
      ],
      barred: lines.flatMap(stretches),
    },
  ];
}

/** The dimensions of a side for readers who do not see it. */
function saidOf({ measures }: BrowPlan, side: Side, words: Words): readonly string[] {
  return [...HEIGHTS, ...THICKNESSES].flatMap(({ measure }) => {
    const reading = measures[side][measure];
    if (reading === undefined) return [];
    const what = `${words.terms.measures[measure]} ${uncertainLength(reading, words)}.`;
    return [label(words, "of-side", { side, what })];
  });
}
