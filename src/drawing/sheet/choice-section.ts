import type { PlannableFace, PlannedChoice, WeighedChoice } from "../../mapping/index.js";
import { isHair } from "../../mapping/internal.js";
import type { Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { say } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { type Box, boxAround, type Spot } from "../canvas/box.js";
import { type Brush, brushOf } from "../canvas/brush.js";
import { compose } from "../canvas/compose.js";
import type { Layer } from "../canvas/layer.js";
import { element, SVG_SPACE, type SvgElement } from "../canvas/svg.js";
import type { View } from "../canvas/view.js";
import { bordersLayer, grownRole, plannedBrowLayer } from "../layers/brow-layers.js";
import { eyeRoom, roomOutline } from "../layers/eye-room.js";
import { eyeLayer, midlineLayer } from "../layers/face-layers.js";
import { choiceFigures, isSeen, numberedTitle, verdictOf } from "./choice-words.js";
import { keyedList } from "./lists.js";
import type { Print } from "./paper.js";

/** Of the width of a page, what a small picture takes. */
const PICTURE_SHARE = 0.29;

/** Room about the brows and eyes in a small picture, in millimetres on paper. */
const MARGIN = 1.5;

/** What was weighed of one choice: its brows as they grow and as planned, and every figure. */
export function choiceSection(
  weighing: Weighing,
  row: WeighedChoice,
  number: number,
  print: Print,
): SvgElement {
  const { words } = print;
  const verdict = verdictOf(row);
  return element("section", { class: "choice" }, [
    element("h2", {}, [numberedTitle(weighing.face, row.choices, number, words)]),
    keyedList(verdict.map((reason) => ({ key: "✕", text: say(reason, words) }))),
    row.kind === "no-solution" ? undefined : weighed(weighing, row, print),
  ]);
}

function weighed(
  weighing: Weighing,
  row: PlannedChoice,
  { width, brush, words }: Print,
): SvgElement {
  const { face } = weighing;
  const picture = PICTURE_SHARE * width;
  const grown = SIDES.every((side) => isHair(face, side)) ? "small-natural" : "small-before";
  const rows = choiceFigures(row, isSeen(face), words).map((cells) =>
    element(
      "tr",
      {},
      cells.map((text) => element("td", {}, [text])),
    ),
  );
  return element("div", { class: "weighed" }, [
    smallPicture(label(words, grown), weighing, picture, brush, (side, small) =>
      bordersLayer(face[side].brow, side, grownRole(face, side), small),
    ),
    smallPicture(label(words, "small-planned"), weighing, picture, brush, (side, small) =>
      plannedBrowLayer(row.dots[side], side, row.choices.shape ?? {}, small),
    ),
    element("table", { class: "figures" }, [element("tbody", {}, rows)]),
  ]);
}

/** Both brows over the eyes, scaled to a width, with a word beneath. */
function smallPicture(
  name: string,
  { face, extent }: Weighing,
  width: number,
  brush: Brush,
  browOf: (side: Side, brush: Brush) => Layer,
): SvgElement {
  const scale = (width - 2 * MARGIN) / extent.width;
  const height = extent.height * scale + 2 * MARGIN;
  const origin: Spot = [MARGIN - extent.x * scale, MARGIN - extent.y * scale];
  const small: Brush = { ...brush, view: scaledView(origin, scale) };
  const layers = [
    midlineLayer({ top: -extent.y, bottom: -extent.y - extent.height }, small),
    ...SIDES.map((side) => eyeLayer(face[side], small)),
    ...SIDES.map((side) => browOf(side, small)),
  ];
  const { language: lang, direction } = brush.words;
  const viewBox = `0 0 ${width.toFixed(3)} ${height.toFixed(3)}`;
  return element("figure", {}, [
    element("svg", { xmlns: SVG_SPACE, viewBox, role: "img", lang, direction }, [
      element("title", {}, [name]),
      ...compose(layers, [], { x: 0, y: 0, width, height }, small).elements,
    ]),
    element("figcaption", {}, [name]),
  ]);
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
  const drawn = layers.flatMap(({ borders = [] }) => borders.flatMap(({ from, to }) => [from, to]));
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
