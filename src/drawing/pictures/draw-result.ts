import {
  type BrowPlan,
  compareResult,
  type ResultCapture,
  type ResultOptions,
  type StageResult,
} from "../../mapping/index.js";
import { eachSide, type Side, type Sides } from "../../units/index.js";
import { refusingAs, SIDES } from "../../units/internal.js";
import { ENGLISH, type Words } from "../../words/index.js";
import { decimal, label } from "../../words/internal.js";
import type { Box } from "../canvas/box.js";
import { type Brush, brushOf } from "../canvas/brush.js";
import { compose, type Composition, headingsOver } from "../canvas/compose.js";
import { linesAt } from "../canvas/label-layer.js";
import type { Layer } from "../canvas/layer.js";
import { leastOn, requireLook, type ScreenDrawing } from "../canvas/look.js";
import { element, pictureSource, type SvgElement } from "../canvas/svg.js";
import { lineOf, wrapped } from "../canvas/text-size.js";
import { placed, typeSize, uprightSize, uprightView } from "../canvas/view.js";
import { bordersLayer, plannedBrowLayer, plannedSpots } from "../layers/brow-layers.js";
import { eyeLayer, midlineLayer } from "../layers/face-layers.js";
import { hatched } from "../layers/overlap-layer.js";
import { extentAround, TOP_ROOM } from "./capture-panel.js";
import { legend, type LegendEntry } from "./legend.js";
import { captionOf, describeResults, saidOf } from "./result-words.js";
import { sentencesBeneath } from "./sentences-beneath.js";

/** How a strip of results is drawn and compared. */
export type ResultDrawing = ScreenDrawing & ResultOptions;

/**
 * A plan and what came of it, one below the other in one frame and at one scale: each capture laid over the face
 * of the plan by landmarks that do not move, what was lost and what spread hatched, with the shares and areas of
 * each brow, how far start and tail end lie off the plan, and what a touch-up would fill.
 *
 * Coordinates are millimetres on the face of the plan.
 *
 * @throws GeometryError as `compareResult`, and `out-of-range` for an unknown option or theme, or a screen whose
 * width or type size is out of range
 *
 * @example
 * ```ts
 * import { mm, planBrows, type PlannableFace } from "brow-geometry";
 * import { drawResult } from "brow-geometry/drawing";
 * const side = (sign: 1 | -1, up: number) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: {
 *     upper: mm([[sign * 17, 20 + up], [sign * 38, 27 + up], [sign * 57, 18 + up]]),
 *     lower: mm([[sign * 17, 13 + up], [sign * 38, 21 + up], [sign * 57, 18 + up]]),
 *   },
 * });
 * const captured = (up: number): PlannableFace => ({ right: side(-1, up), left: side(1, up), midline: {} });
 * const plan = planBrows(captured(0));
 * const captures = [
 *   { name: "fresh", weeks: 0, face: captured(0) },
 *   { name: "healed", weeks: 6, face: captured(-1.5) },
 * ];
 * drawResult(plan, captures).includes("healed"); // → true
 * ```
 */
export function drawResult(
  plan: BrowPlan,
  captures: readonly ResultCapture[],
  options: ResultDrawing = {},
): string {
  return refusingAs("drawResult", () => {
    requireLook(options, [
      "screen",
      "stable",
      "scale",
      "scaleU",
      "tolerances",
      "rule",
      "confidence",
    ]);
    const { words = ENGLISH } = options;
    const { title = label(words, "title-result") } = options;
    const { results } = compareResult(plan, captures, options);
    const size = uprightSize(plan.face);
    const points = results.flatMap(({ brows }) =>
      SIDES.flatMap((side) => [...brows[side].brow.upper, ...(brows[side].brow.lower ?? [])]),
    );
    const ofPlan = SIDES.flatMap((side) => Object.values(plan.dots[side]));
    const tight = extentAround(plan.face, [...points, ...ofPlan], size);
    const brush = brushOf(uprightView([0, 0], size, leastOn(tight.width, options)), options);
    const letters = typeSize("legend", brush.view);
    // Below the eyes, room for what is said of each brow.
    const captioned = results.map((result): Captioned => ({
      ...result,
      captions: eachSide((side) =>
        captionOf(result, side, words).flatMap((line) =>
          wrapped(line, letters, tight.width / 2 - 2 * size),
        ),
      ),
    }));
    const most = Math.max(
      ...captioned.flatMap(({ captions: { right, left } }) => [right.length, left.length]),
    );
    const caption = CAPTION_MARGIN * size + most * lineOf(letters);
    const extent = { ...tight, height: tight.height + caption };
    const shared = { extent, caption, flat: brush };
    const rows = captioned.map((result, row) =>
      panel(plan, result, { ...extent, x: 0, y: row * extent.height }, shared),
    );
    const sheet = { width: extent.width, brush };
    const explained = legend(entriesFor(words), sheet);
    const sentences = results.flatMap((result) => saidOf(result, words));
    const said = sentencesBeneath([...new Set(sentences)], sheet);
    const rowsHeight = rows.length * extent.height;
    const height = rowsHeight + explained.height + said.height;
    const unplaced = rows.flatMap((one) => one.unplaced);
    return pictureSource(
      { viewBox: `0 0 ${extent.width.toFixed(3)} ${height.toFixed(3)}` },
      title,
      describeResults(results, unplaced, words),
      words,
      [
        element("rect", { width: extent.width, height, fill: brush.palette.backdrop }),
        ...rows.flatMap(({ elements }) => elements),
        ...explained.drawnAt(0, rowsHeight),
        ...said.drawnAt(0, rowsHeight + explained.height),
      ],
    );
  });
}

/** A result with what is said beneath each of its brows, in lines. */
interface Captioned extends StageResult {
  readonly captions: Sides<readonly string[]>;
}

/** Room about what is said of each brow, in steps. */
const CAPTION_MARGIN = 2.7;

function panel(
  plan: BrowPlan,
  result: Captioned,
  box: Box,
  {
    extent,
    caption,
    flat,
  }: {
    readonly extent: Box;
    /** Height of what is said of each brow. */
    readonly caption: number;
    readonly flat: Brush;
  },
): Composition {
  const { face, dots, choices } = plan;
  const { words } = flat;
  const { size, least } = flat.view;
  const view = uprightView([box.x - extent.x, box.y - extent.y], size, least);
  const brush: Brush = { ...flat, view };
  const middle = {
    top: -extent.y - TOP_ROOM * size,
    bottom: -extent.y - extent.height + caption + size,
  };
  const layers: readonly Layer[] = [
    midlineLayer(middle, brush),
    ...SIDES.map((side) => eyeLayer(face[side], brush)),
    ...SIDES.map((side) => bordersLayer(result.brows[side].brow, side, "natural", brush)),
    ...SIDES.map((side) => plannedBrowLayer(dots[side], side, choices.shape, brush)),
    ...SIDES.map((side) => hatchedLayer(plan, result, side, brush)),
    ...SIDES.map((side) => ({
      elements: captionElements(result.captions[side], side, { box, caption }, brush),
    })),
  ];
  const named = label(words, "panel-result", { name: result.name, weeks: weeksOf(result, words) });
  return compose(layers, headingsOver(box, brush, named), box, brush);
}

/** What of the plan is not covered, and what lies outside it. */
function hatchedLayer(
  { dots, choices }: BrowPlan,
  { brows }: StageResult,
  side: Side,
  brush: Brush,
): Layer {
  const { upper, lower } = brows[side].brow;
  if (lower === undefined) return { elements: [] };
  const found = placed([...upper, ...[...lower].reverse()], brush.view);
  const planned = plannedSpots(dots[side], choices.shape, brush);
  return {
    elements: [
      hatched("remove", `remove ${side}`, [[found, planned]], brush),
      hatched("fill", `fill ${side}`, [[planned, found]], brush),
    ],
  };
}

function captionElements(
  lines: readonly string[],
  side: Side,
  { box, caption }: { readonly box: Box; readonly caption: number },
  brush: Brush,
): readonly SvgElement[] {
  const { view, palette } = brush;
  const x = box.x + ((side === "right" ? 1 : 3) / 4) * box.width;
  const top = box.y + box.height - caption + view.size;
  const look = { size: typeSize("legend", view), colour: palette.ink };
  return linesAt(lines, { x, side: "middle" }, top, look, brush);
}

function weeksOf({ weeks }: StageResult, words: Words): string {
  return decimal(weeks, Number.isInteger(weeks) ? 0 : 1, words);
}

function entriesFor(words: Words): readonly LegendEntry[] {
  return [
    { text: label(words, "legend-planned"), role: "planned" },
    { text: label(words, "legend-found"), role: "natural" },
    { text: label(words, "legend-lost"), role: "fill" },
    { text: label(words, "legend-spread"), role: "remove" },
  ];
}
