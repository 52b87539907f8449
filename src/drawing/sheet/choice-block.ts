import type { PlannableFace, PlannedChoice, WeighedChoice } from "../../mapping/index.js";
import type { Side } from "../../units/index.js";
import { isHair } from "../../mapping/internal.js";
import { SIDES } from "../../units/internal.js";
import { say } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { type Block, drawnBlocks, heightOf } from "./block.js";
import { type Box, boxAround, type Spot } from "../canvas/box.js";
import { bordersLayer, grownRole, plannedBrowLayer } from "../layers/brow-layers.js";
import { type Brush, brushOf } from "../canvas/brush.js";
import { choiceFigures, isSeen, numberedTitle } from "./choice-words.js";
import { compose } from "../canvas/compose.js";
import { eyeRoom, roomOutline } from "../layers/eye-room.js";
import { eyeLayer, midlineLayer } from "../layers/face-layers.js";
import { textAt } from "../canvas/label-layer.js";
import type { Layer } from "../canvas/layer.js";
import type { SvgElement } from "../canvas/svg.js";
import { lineOf } from "../canvas/text-size.js";
import { heading, inwards, list, PAPER_TYPE, rule, type Sheet, tableRow } from "./text-blocks.js";
import type { View } from "../canvas/view.js";

/** How the room of a row is divided: two pictures, then the figures. */
const SHARES = { picture: 0.29, gap: 0.02 };

const COLUMNS = [
  { share: 42, from: "start" },
  { share: 58, from: "start" },
] as const;

/** Room about the brows and eyes in a small picture, in millimetres on paper. */
const MARGIN = 1.5;

/** What was weighed of one choice: its brows as they grow and as planned, and every figure. */
export function choiceBlocks(
  weighing: Weighing,
  row: WeighedChoice,
  number: number,
  sheet: Sheet,
): readonly Block[] {
  const { face } = weighing;
  const { words } = sheet.brush;
  const named = heading(numberedTitle(face, row.choices, number, words), sheet);
  const verdict = list(
    row.reasons
      .filter(({ code }) => code === "lid-room-closes" || code === "no-solution")
      .map((reason) => ({ key: "✕", text: say(reason, words) })),
    sheet,
  );
  const foot: Block = {
    height: 1.5,
    drawnAt: (left, top) => [rule(left, top + 1, sheet.width, sheet.brush)],
  };
  if (row.kind === "no-solution") return [named, ...verdict, foot];
  return [named, ...verdict, weighedBlock(weighing, row, sheet), foot];
}

function weighedBlock(weighing: Weighing, row: PlannedChoice, sheet: Sheet): Block {
  const { width, brush } = sheet;
  const { face } = weighing;
  const picture = SHARES.picture * width;
  const step = picture + SHARES.gap * width;
  const isKnown = isSeen(face);
  const grown = SIDES.every((side) => isHair(face, side)) ? "small-natural" : "small-before";
  const pictures = [
    smallPicture(label(brush.words, grown), weighing, picture, brush, (side, small) =>
      bordersLayer(face[side].brow, side, grownRole(face, side), small),
    ),
    smallPicture(label(brush.words, "small-planned"), weighing, picture, brush, (side, small) =>
      plannedBrowLayer(row.dots[side], side, row.choices.shape ?? {}, small),
    ),
  ];
  const beside = { width: width - 2 * step, brush };
  const figures = choiceFigures(row, isKnown, brush.words).map((cells) =>
    tableRow(cells, COLUMNS, beside),
  );
  return {
    height: Math.max(...pictures.map(({ height }) => height), heightOf(figures)) + 1,
    drawnAt: (left, top) => {
      const at = inwards(left, sheet);
      return [
        ...pictures.flatMap(({ drawnAt }, index) => drawnAt(at(index * step, picture), top)),
        ...drawnBlocks(figures, at(2 * step, beside.width), top),
      ];
    },
  };
}

/** Both brows over the eyes, scaled to a width, with a word beneath. */
function smallPicture(
  name: string,
  { face, extent }: Weighing,
  width: number,
  brush: Brush,
  browOf: (side: Side, brush: Brush) => Layer,
): Block {
  const scale = (width - 2 * MARGIN) / extent.width;
  const height = extent.height * scale + 2 * MARGIN;
  return {
    height: height + lineOf(PAPER_TYPE.small),
    drawnAt: (left, top): readonly SvgElement[] => {
      const origin: Spot = [left + MARGIN - extent.x * scale, top + MARGIN - extent.y * scale];
      const small: Brush = { ...brush, view: scaledView(origin, scale) };
      const box = { x: left, y: top, width, height };
      const layers = [
        midlineLayer({ top: -extent.y, bottom: -extent.y - extent.height }, small),
        ...SIDES.map((side) => eyeLayer(face[side], small)),
        ...SIDES.map((side) => browOf(side, small)),
      ];
      const caption = { size: PAPER_TYPE.small, colour: brush.palette.quiet };
      return [
        ...compose(layers, [], box, small).elements,
        textAt(name, { x: left + width / 2, side: "middle" }, top + height, caption, brush),
      ];
    },
  };
}

/** A face with the part of it that all small pictures show, about its origin, in millimetres. */
export interface Weighing {
  readonly face: PlannableFace;
  readonly extent: Box;
}

/** What both eyes, the brows as they grow and all those planned take: every picture is as large. */
export function weighingOf(face: PlannableFace, rows: readonly WeighedChoice[]): Weighing {
  const view = scaledView([0, 0], 1);
  const brush = brushOf(view, {});
  const layers = SIDES.flatMap((side) => [
    bordersLayer(face[side].brow, side, "natural", brush),
    ...rows.flatMap((row) =>
      row.kind === "no-solution"
        ? []
        : [plannedBrowLayer(row.dots[side], side, row.choices.shape ?? {}, brush)],
    ),
  ]);
  const drawn = layers.flatMap(({ strokes = [] }) => strokes.flatMap(({ from, to }) => [from, to]));
  const eyes = SIDES.flatMap((side) =>
    roomOutline(eyeRoom(face[side])).map(([x, y]): Spot => [x, -y]),
  );
  return { face, extent: boxAround([...eyes, ...drawn]) };
}

/** The upright view of a face at a scale; strokes keep the width that suits paper. */
function scaledView(origin: Spot, scale: number): View {
  return {
    place: ([x, y]) => [origin[0] + scale * x, origin[1] - scale * y],
    millimetre: scale,
    size: STROKE_STEP,
  };
}

/** Strokes of small pictures are finer than those of a face at true size. */
const STROKE_STEP = 0.6;
