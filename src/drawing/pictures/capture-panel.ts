import { transform } from "../../geometry/index.js";
import {
  type BrowDots,
  type FaceWith,
  landmarkUncertainty,
  mapFace,
} from "../../landmarks/index.js";
import { naturalDots } from "../../proportions/index.js";
import { type CaptureComparison, compareCaptures } from "../../symmetry/index.js";
import { mapDots } from "../../symmetry/internal.js";
import {
  eachSide,
  flatPoint,
  measured,
  type Point,
  type Side,
  type Sides,
} from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { label } from "../../words/internal.js";
import { type Box, boxAround, type Spot, withMargin } from "../canvas/box.js";
import { bordersLayer, dotsLayer } from "../layers/brow-layers.js";
import { type Brush, pathData, strokeGroup, stretches } from "../canvas/brush.js";
import { compose, type Composition, type Crowding, headingsOver } from "../canvas/compose.js";
import { eyeRoom, eyeRoomLayer, roomOutline } from "../layers/eye-room.js";
import { eyeLayer, midlineLayer } from "../layers/face-layers.js";
import type { ColouredLabel, Layer } from "../canvas/layer.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { placed, uprightView } from "../canvas/view.js";
import { changeWithUncertainty, lengths, uncertainLength } from "../canvas/figures.js";

/** One of several captures of a face: fresh and healed, upright and lying, relaxed and raised. */
export interface NamedCapture {
  readonly name: string;
  readonly face: FaceWith<"mm", "endocanthion" | "exocanthion" | "brow">;
}

/** A capture laid over the first one, by landmarks that do not move. */
export interface LaidCapture extends NamedCapture {
  readonly dots: Sides<BrowDots<"mm">>;
  /** Standard uncertainty of their heights: of a border, and of the level as the mean of both inner eye corners. */
  readonly heightU: number;
  /** Against the first capture; the first itself has none. */
  readonly change?: CaptureComparison;
}

export function laidOver([first, ...others]: readonly [NamedCapture, ...NamedCapture[]]): readonly [
  LaidCapture,
  ...LaidCapture[],
] {
  const marked = dotsOf(first);
  const laid = others.map((capture): LaidCapture => {
    const dots = dotsOf(capture);
    const change = compareCaptures({ face: first.face, dots: marked }, { ...capture, dots });
    const onFirst = (point: Point<"mm">): Point<"mm"> =>
      transform(point, change.registration.similarity);
    const face = mapFace(capture.face, onFirst) as NamedCapture["face"];
    return {
      name: capture.name,
      face,
      heightU: heightUOf(capture),
      dots: eachSide((side) => mapDots(dots[side], onFirst)),
      change,
    };
  });
  return [{ ...first, dots: marked, heightU: heightUOf(first) }, ...laid];
}

function heightUOf({ face }: NamedCapture): number {
  const level = landmarkUncertainty(face, "endocanthion") * Math.SQRT1_2;
  return Math.hypot(landmarkUncertainty(face, "brow"), level);
}

function dotsOf({ face }: NamedCapture): Sides<BrowDots<"mm">> {
  return eachSide((side) => naturalDots(face[side].brow).dots);
}

/** Room about the brows and eyes, in steps. */
const MARGIN = { top: 22, right: 20, bottom: 5, left: 20 };

/** Above the brows, from the midline's end to the edge, in steps. */
export const TOP_ROOM: number = MARGIN.top / 2;

/** The box about the face's origin that holds its eyes and points, as wide on either side of the midline. */
export function extentAround(
  face: FaceWith<"mm", "endocanthion" | "exocanthion">,
  points: readonly Point<"mm">[],
  size: number,
): Box {
  const rooms = SIDES.flatMap((side) => roomOutline(eyeRoom(face[side])));
  const box = boxAround(placed([...rooms, ...points], uprightView([0, 0])));
  const half = Math.max(-box.x, box.x + box.width);
  return withMargin({ ...box, x: -half, width: 2 * half }, MARGIN, size);
}

/** One capture in its box, over the first one where it is not that itself. */
export function capturePanel(
  capture: LaidCapture,
  first: LaidCapture,
  {
    box,
    extent,
    flat,
    crowding,
  }: {
    readonly box: Box;
    readonly extent: Box;
    readonly flat: Brush;
    readonly crowding: Crowding;
  },
): Composition {
  const { name, face, dots, change } = capture;
  const { size, least } = flat.view;
  const brush: Brush = {
    ...flat,
    view: uprightView([box.x - extent.x, box.y - extent.y], size, least),
  };
  const top = -extent.y - TOP_ROOM * size;
  const layers: readonly Layer[] = [
    levelLayer(first.face, extent, brush),
    ...SIDES.map((side) => eyeRoomLayer(eyeRoom(first.face[side]), brush)),
    midlineLayer({ top, bottom: -extent.y - extent.height + size }, brush),
    ...SIDES.map((side) => eyeLayer(face[side], brush)),
    ...(change === undefined
      ? []
      : SIDES.map((side) => bordersLayer(first.face[side].brow, side, "natural", brush))),
    ...SIDES.map((side) => bordersLayer(face[side].brow, side, "capture", brush)),
    ...SIDES.map((side) => dotsLayer(dots[side], side, "capture", brush)),
    ...SIDES.map((side) => heightsLayer(capture, side, brush)),
    ...(change === undefined || change.registration.consistent ? [] : [doubtLayer(box, brush)]),
  ];
  return compose(layers, headingsOver(box, brush, name), box, brush, crowding);
}

/** The level of the inner eye corners, with a gap at each eye. */
function levelLayer(face: NamedCapture["face"], extent: Box, brush: Brush): Layer {
  const { right, left } = eachSide((side) => placed(roomOutline(eyeRoom(face[side])), brush.view));
  const [rightEye, leftEye] = [boxAround(right), boxAround(left)];
  const room = (MARGIN.left / 2) * brush.view.size;
  const [from, y] = brush.view.place(flatPoint(extent.x + room, 0));
  const [to] = brush.view.place(flatPoint(extent.x + extent.width - room, 0));
  const ends = [
    [from, rightEye.x],
    [rightEye.x + rightEye.width, leftEye.x],
    [leftEye.x + leftEye.width, to],
  ] as const;
  const lines = ends.map(([start, end]) => [[start, y] as const, [end, y] as const]);
  const data = lines.map((line) => pathData(line));
  return {
    elements: [strokeGroup("ruler", "level", data, brush)],
    strokes: lines.flatMap(stretches),
  };
}

export const COMPARED = ["upperStart", "upperArch", "tailEnd"] as const;

/** Where what is written of a dot may stand, the best first. */
export function towardsOf(
  side: Side,
): Readonly<Record<(typeof COMPARED)[number], readonly Spot[]>> {
  const outward = side === "left" ? 1 : -1;
  return {
    upperStart: [
      [0, -1],
      [-outward, -1],
      [-outward, 0],
    ],
    upperArch: [
      [0, -1],
      [outward, -1],
    ],
    tailEnd: [
      [outward, -1],
      [outward, 0],
      [0, -1],
    ],
  };
}

/** Heights of the first capture's dots, and how those of a later one differ. */
function heightsLayer({ dots, heightU, change }: LaidCapture, side: Side, brush: Brush): Layer {
  const towards = towardsOf(side);
  const labels = COMPARED.flatMap((dot): readonly ColouredLabel[] => {
    const at = dots[side][dot];
    if (at === undefined) return [];
    const shift = change?.displacements[side][dot];
    if (change !== undefined && shift === undefined) return [];
    return [
      {
        text:
          shift === undefined
            ? uncertainLength(measured(at[1], heightU), brush.words)
            : changeWithUncertainty(shift.up, lengths(brush.words), brush.words),
        at: brush.view.place(at),
        towards: towards[dot],
        size: TYPE_SIZES.label * brush.view.size,
        gap: 1.8 * brush.view.size,
        yields: "key",
        colour: brush.palette.ink,
      },
    ];
  });
  return { elements: [], labels };
}

/** Says that something else has changed between two captures than the brows. */
function doubtLayer(box: Box, { view, palette, words }: Brush): Layer {
  return {
    elements: [],
    labels: [
      {
        text: label(words, "legend-doubt"),
        at: [box.x, box.y + box.height],
        towards: [[1, -1]],
        size: TYPE_SIZES.legend * view.size,
        gap: 2 * view.size,
        colour: palette.quiet,
      },
    ],
  };
}
