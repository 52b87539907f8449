import type { PlannableFace, WeighedChoices } from "../../mapping/index.js";
import { eachSide } from "../../units/index.js";
import { refuse, refusingAs, SIDES } from "../../units/internal.js";
import { ENGLISH, say, type Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { type Box, boxAround, withMargin } from "../canvas/box.js";
import { type Brush, brushOf, pathData, strokeGroup } from "../canvas/brush.js";
import { compose, type Composition, depthOf, headingsOver } from "../canvas/compose.js";
import { linesAt } from "../canvas/label-layer.js";
import type { Layer } from "../canvas/layer.js";
import { leastOn, requireLook, type ScreenDrawing } from "../canvas/look.js";
import { element, pictureSource } from "../canvas/svg.js";
import { lineOf, rowsOf, wrapped } from "../canvas/text-size.js";
import { typeSize, uprightSize, uprightView } from "../canvas/view.js";
import { plannedBrowLayer, plannedSpots } from "../layers/brow-layers.js";
import { midlineLayer } from "../layers/face-layers.js";
import { hatched } from "../layers/overlap-layer.js";
import { numberedTitle } from "../sheet/choice-words.js";
import { inwards } from "../canvas/block.js";
import { legend, type LegendEntry } from "./legend.js";
import { sentencesBeneath } from "./sentences-beneath.js";
import { captionOf, currentOf, numbersOf, type Variant, variantsOf } from "./variants.js";

/** How {@link drawVariants} draws. */
export interface VariantsDrawing extends ScreenDrawing {
  /** How many stand beside each other; default 2. On a phone, 1 keeps letters legible. */
  readonly columns?: number;
  /** Which of the weighed rows the others are held against, counted from 0; default: the first that can be planned. */
  readonly current?: number;
}

/**
 * Weighed choices beside each other, cropped to the brows: each result once, with every choice that leads to it, at
 * one scale. Beside the current one, the others carry its outline in fine dots; what they have more than it and what
 * they have less is hatched, and the greatest way between their dots is told. What is ruled out says why, and beneath what
 * cannot be planned.
 *
 * Coordinates are millimetres. For figures of each choice on paper see {@link drawChoices}.
 *
 * @throws GeometryError `wrong-count` where no choice can be planned, `out-of-range` where `columns` is no whole
 * number from 1 on, where `current` is no row that can be planned, or for an unknown option or theme, or a screen
 * whose width or type size is out of range
 *
 * @example
 * ```ts
 * import { mm, type PlannableFace } from "brow-geometry";
 * import { drawVariants } from "brow-geometry/drawing";
 * import { weighChoices } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1, up: number) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 17, 20 + up], [sign * 38, 27 + up], [sign * 57, 18 + up]]) },
 * });
 * const face: PlannableFace = { right: side(-1, 0), left: side(1, 2), midline: {} };
 * const svg = drawVariants(face, weighChoices(face, [{ lead: "right" }, { lead: "left" }]));
 * svg.includes("up to about 2.0 mm from choice 1"); // → true
 * ```
 */
export function drawVariants(
  face: PlannableFace,
  weighed: WeighedChoices,
  options: VariantsDrawing = {},
): string {
  return refusingAs("drawVariants", () => {
    requireLook(options, ["screen", "columns", "current"]);
    const { words = ENGLISH, columns = 2 } = options;
    const { title = label(words, "title-choices") } = options;
    if (!Number.isInteger(columns) || columns < 1) {
      refuse("out-of-range", "columns", columns, "a whole number from 1 on");
    }
    const variants = variantsOf(face, weighed, words);
    const current = currentOf(variants, options.current);
    const size = uprightSize(face);
    const plain = brushOf(uprightView([0, 0], size), options);
    const { palette } = plain;
    const brows = boxAround(
      variants.flatMap(({ dots, shape }) =>
        SIDES.flatMap((side) => plannedSpots(dots[side], shape, plain)),
      ),
    );
    const half = Math.max(-brows.x, brows.x + brows.width);
    const close = withMargin({ ...brows, x: -half, width: 2 * half }, MARGIN, size);
    const across = Math.min(columns, variants.length);
    const least = leastOn(across * close.width, options);
    const flat = { ...plain, view: { ...plain.view, least } };
    const above = variants.map((variant) =>
      depthOf(headingsOver(close, flat, numbersOf(variant, words)), close),
    );
    const top = Math.max(MARGIN.top * size, ...above) / size - MARGIN.top;
    const tight = withMargin(close, { top, right: 0, bottom: 0, left: 0 }, size);
    const captions = variants.map((variant) => captionOf(variant, current, words));
    const look = { size: typeSize("legend", flat.view), colour: palette.ink };
    const lines = captions.map((texts) =>
      texts.flatMap((text) => wrapped(text, look.size, tight.width - 2 * CAPTION_ROOM * size)),
    );
    const most = Math.max(...lines.map(({ length }) => length));
    const caption = (CAPTION_ROOM + most * lineOf(look.size)) / size;
    const extent = withMargin(tight, { top: 0, right: 0, bottom: caption, left: 0 }, size);
    const sheet = { width: across * extent.width, brush: flat };
    const panels = rowsOf(variants, across).flatMap((row, down) =>
      row.map((variant, index) => {
        const at = inwards(0, sheet)(index * extent.width, extent.width);
        return panel(variant, current, { ...extent, x: at, y: down * extent.height }, tight, {
          flat,
          top: -close.y - BELOW_HEADINGS * size,
        });
      }),
    );
    const written = panels.flatMap(({ box }, index) =>
      linesAt(
        lines[index] ?? [],
        { x: box.x + box.width / 2, side: "middle" },
        box.y + box.height - (caption - CAPTION_ROOM / 2) * size,
        look,
        flat,
      ),
    );
    const explained = legend(entriesFor(variants, current, words), sheet);
    const reasons = weighed.rows.flatMap((row, index) =>
      row.kind === "no-solution"
        ? [
            numberedTitle(face, row.choices, index + 1, words),
            ...row.reasons.map((reason) => say(reason, words)),
          ].join(": ")
        : [],
    );
    const beneath = sentencesBeneath(reasons, sheet);
    const rowsHeight = Math.ceil(variants.length / across) * extent.height;
    const height = rowsHeight + explained.height + beneath.height;
    return pictureSource(
      { viewBox: `0 0 ${sheet.width.toFixed(3)} ${height.toFixed(3)}` },
      title,
      [label(words, "described-variants"), ...captions.flat(), ...reasons].join(" "),
      words,
      [
        element("rect", { width: sheet.width, height, fill: palette.backdrop }),
        ...panels.flatMap(({ elements }) => elements),
        ...written,
        ...explained.drawnAt(0, rowsHeight),
        ...beneath.drawnAt(0, rowsHeight + explained.height),
      ],
    );
  });
}

/** Room about the brows: above them for which side is which, in steps. */
const MARGIN = { top: 11, right: 4, bottom: 3, left: 4 };

/** From the upper edge of a panel whose headings take a line to its midline, in steps. */
const BELOW_HEADINGS = 8;

/** Room about what is said of a variant, in steps. */
const CAPTION_ROOM = 3;

function panel(
  variant: Variant,
  current: Variant,
  box: Box,
  tight: Box,
  { flat, top }: { readonly flat: Brush; readonly top: number },
): Composition & { readonly box: Box } {
  const { words } = flat;
  const { size, least } = flat.view;
  const brush = { ...flat, view: uprightView([box.x - tight.x, box.y - tight.y], size, least) };
  const bottom = -tight.y - tight.height;
  const layers: readonly Layer[] = [
    midlineLayer({ top, bottom }, brush),
    ...SIDES.map((side) => plannedBrowLayer(variant.dots[side], side, variant.shape, brush)),
    ...(variant === current ? [] : [differencesLayer(variant, current, brush)]),
  ];
  const named = numbersOf(variant, words);
  const above = { ...box, height: tight.height };
  return { box, ...compose(layers, headingsOver(box, brush, named), above, brush) };
}

/** The current outline in fine dots; what a variant has more than it and what it has less, hatched. */
function differencesLayer(variant: Variant, current: Variant, brush: Brush): Layer {
  const spots = ({ dots, shape }: Variant) =>
    eachSide((side) => plannedSpots(dots[side], shape, brush));
  const [shown, before] = [spots(variant), spots(current)];
  return {
    elements: [
      hatched(
        "fill",
        "fill",
        SIDES.map((side) => [shown[side], before[side]] as const),
        brush,
      ),
      hatched(
        "remove",
        "remove",
        SIDES.map((side) => [before[side], shown[side]] as const),
        brush,
      ),
      strokeGroup(
        "guess",
        "current",
        SIDES.map((side) => pathData(before[side], true)),
        brush,
      ),
    ],
  };
}

function entriesFor(
  variants: readonly Variant[],
  current: Variant,
  words: Words,
): readonly LegendEntry[] {
  const of = numbersOf(current, words);
  return [
    { text: label(words, "legend-planned"), role: "planned" },
    { text: label(words, "line-midline"), role: "midline" },
    ...(variants.length === 1
      ? []
      : ([
          { text: label(words, "legend-current", { of }), role: "guess" },
          { text: label(words, "legend-more", { of }), role: "fill" },
          { text: label(words, "legend-less", { of }), role: "remove" },
        ] as const)),
  ];
}
