import type { BrowMarks, FaceWith } from "../landmarks/index.js";
import { naturalMarks } from "../proportions/index.js";
import { eachSide, flatPoint, GeometryError, type Side, type Sides } from "../units/index.js";
import { type Box, boxAround, type Spot } from "./box.js";
import { bordersLayer, dotsLayer } from "./brow-layers.js";
import { type Brush, pathData, strokeGroup, stretches } from "./brush.js";
import { compose, type Composition, headingIn, sideHeadings } from "./compose.js";
import { eyeRoom, roomOutline } from "./eye-room.js";
import { eyeLayer, midlineLayer } from "./face-layers.js";
import type { ColouredLabel, Layer } from "./layer.js";
import { legend, type LegendEntry } from "./legend.js";
import type { Look } from "./look.js";
import { type Palette, PALETTES } from "./palette.js";
import { element, svgSource } from "./svg.js";
import { FONT_FAMILY, TYPE_SIZES } from "./text-size.js";
import { uprightSize } from "./plan-view.js";
import { placed, SIDES, uprightView } from "./view.js";
import { inMillimetres, withSign } from "./words.js";

/** One of several captures of a face: fresh and healed, upright and lying, relaxed and raised. */
export interface NamedCapture {
  readonly name: string;
  readonly face: FaceWith<"mm", "endocanthion" | "exocanthion" | "brow">;
}

/** Room about the brows and eyes, in steps. */
const MARGIN = { top: 22, bottom: 5, side: 20 };

/**
 * Captures of one face one below the other, upright, at the same scale, each over the first, with the
 * heights of start, arch and tail end above the inner eye corners and how they differ from the first.
 *
 * Each face lies in its own space: the captures are laid over each other by midline and inner eye
 * corners. Coordinates are millimetres on the face.
 *
 * @throws GeometryError `wrong-count` where there is no capture, and what {@link naturalMarks} throws
 *
 * @example
 * ```ts
 * import { drawCaptures, mm } from "brow-geometry";
 * const side = (sign: 1 | -1, up: number) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   brow: { upper: [mm([sign * 15, 20 + up]), mm([sign * 38, 27 + up]), mm([sign * 57, 18 + up])] },
 * });
 * const upright = { right: side(-1, 0), left: side(1, 0), midline: {} };
 * const lying = { right: side(-1, 1), left: side(1, 1), midline: {} };
 * drawCaptures([{ name: "upright", face: upright }, { name: "lying", face: lying }]).includes("+1.0"); // → true
 * ```
 */
export function drawCaptures(captures: readonly NamedCapture[], look: Look = {}): string {
  const [first] = captures;
  if (first === undefined) {
    throw new GeometryError("wrong-count", {
      where: "drawCaptures",
      field: "captures",
      value: captures,
      need: "at least one capture",
    });
  }
  const { theme = "light", title = "Captures of one face" } = look;
  const palette = PALETTES[theme];
  const marks = captures.map(({ face }) => eachSide((side) => naturalMarks(face[side].brow).marks));
  const size = uprightSize(first.face);
  const extent = extentOf(captures, size);
  const rows = captures.map(({ name, face }, row) => {
    const box = { ...extent, x: 0, y: row * extent.height };
    const shown: Row = {
      name,
      face,
      marks: marks[row] as Sides<BrowMarks<"mm">>,
      ...(row === 0 ? {} : { before: { ...first, marks: marks[0] as Sides<BrowMarks<"mm">> } }),
    };
    return capturePanel(shown, box, extent, size, palette);
  });
  const brush: Brush = { view: uprightView([0, 0], size), palette, onPhoto: false };
  const explained = legend(entriesFor(captures), extent.width, brush);
  const rowsHeight = captures.length * extent.height;
  const height = rowsHeight + explained.height;
  return svgSource(
    element(
      "svg",
      {
        xmlns: "http://www.w3.org/2000/svg",
        viewBox: `0 0 ${extent.width.toFixed(3)} ${height.toFixed(3)}`,
        role: "img",
        "font-family": FONT_FAMILY,
      },
      [
        element("title", {}, [title]),
        element("desc", {}, [describe(captures, marks, rows)]),
        element("rect", { width: extent.width, height, fill: palette.paper }),
        ...rows.flatMap(({ elements }) => elements),
        explained.drawnAt(0, rowsHeight),
      ],
    ),
  );
}

interface Row extends NamedCapture {
  readonly marks: Sides<BrowMarks<"mm">>;
  /** The first capture, under every other. */
  readonly before?: NamedCapture & { readonly marks: Sides<BrowMarks<"mm">> };
}

function capturePanel(
  row: Row,
  box: Box,
  extent: Box,
  size: number,
  palette: Palette,
): Composition {
  const { name, face, marks, before } = row;
  const origin: Spot = [box.x - extent.x, box.y - extent.y];
  const brush: Brush = { view: uprightView(origin, size), palette, onPhoto: false };
  const layers: readonly Layer[] = [
    levelLayer(face, extent, brush),
    midlineLayer(
      { top: -extent.y - (MARGIN.top / 2) * size, bottom: -extent.y - extent.height + 1 },
      brush,
    ),
    ...SIDES.map((side) => eyeLayer(face[side], brush)),
    ...(before === undefined
      ? []
      : SIDES.map((side) => bordersLayer(before.face[side].brow, side, "natural", brush))),
    ...SIDES.map((side) => bordersLayer(face[side].brow, side, "capture", brush)),
    ...SIDES.map((side) => dotsLayer(marks[side], side, "capture", brush)),
    ...SIDES.map((side) => heightsLayer(marks[side], before?.marks[side], side, brush)),
  ];
  const corner = headingIn("left", name, box, brush);
  const heading = { ...corner, ...atTopOf(box, corner.gap) };
  return compose(layers, [...sideHeadings(box, brush), heading], box, brush);
}

/** The level of the inner eye corners, with a gap at each eye, over which nothing is written. */
function levelLayer(face: NamedCapture["face"], extent: Box, brush: Brush): Layer {
  const { right, left } = eachSide((side) => placed(roomOutline(eyeRoom(face[side])), brush.view));
  const [rightEye, leftEye] = [boxAround(right), boxAround(left)];
  const room = (MARGIN.side / 2) * brush.view.size;
  const [from, y] = brush.view.place(flatPoint(extent.x + room, 0));
  const [to] = brush.view.place(flatPoint(extent.x + extent.width - room, 0));
  const ends = [
    [from, rightEye.x],
    [rightEye.x + rightEye.width, leftEye.x],
    [leftEye.x + leftEye.width, to],
  ] as const;
  const lines = ends.map(([start, end]) => [[start, y] as const, [end, y] as const]);
  return {
    elements: [
      strokeGroup(
        "ruler",
        "level",
        lines.map((line) => pathData(line)),
        brush,
      ),
    ],
    closed: [rightEye, leftEye],
    strokes: lines.flatMap(stretches),
  };
}

/** At the middle of a box's upper edge, level with the headings in its corners. */
function atTopOf(box: Box, gap: number): Pick<ColouredLabel, "at" | "towards" | "gap"> {
  return { at: [box.x + box.width / 2, box.y], towards: [[0, 1]], gap: gap * Math.SQRT1_2 };
}

/** Marks whose heights are compared. */
const COMPARED = ["upperStart", "upperArch", "tailEnd"] as const;

function heightsLayer(
  marks: BrowMarks<"mm">,
  before: BrowMarks<"mm"> | undefined,
  side: Side,
  brush: Brush,
): Layer {
  const outward = side === "left" ? 1 : -1;
  const towards: Readonly<Record<(typeof COMPARED)[number], readonly Spot[]>> = {
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
  const labels = COMPARED.flatMap((dot): readonly ColouredLabel[] => {
    const at = marks[dot];
    if (at === undefined) return [];
    return [
      {
        text: heightText(at[1], before?.[dot]?.[1]),
        at: brush.view.place(at),
        towards: towards[dot],
        size: TYPE_SIZES.label * brush.view.size,
        gap: 1.8 * brush.view.size,
        colour: brush.palette.ink,
      },
    ];
  });
  return { elements: [], labels };
}

function heightText(height: number, before: number | undefined): string {
  const text = inMillimetres(height);
  return before === undefined ? text : `${text}, ${withSign(height - before, 1)}`;
}

function entriesFor(captures: readonly NamedCapture[]): readonly LegendEntry[] {
  const [first, ...others] = captures;
  const level: LegendEntry = {
    text:
      others.length === 0
        ? "level of the inner eye corners; heights above it"
        : "level of the inner eye corners; heights above it, and how they differ from the first capture",
    role: "ruler",
  };
  if (first === undefined || others.length === 0) return [level];
  return [
    { text: "this capture", role: "capture" },
    { text: `first capture: ${first.name}`, role: "natural" },
    level,
  ];
}

function extentOf(captures: readonly NamedCapture[], size: number): Box {
  const spots = captures.flatMap(({ face }) =>
    SIDES.flatMap((side) => {
      const { brow } = face[side];
      const points = [...roomOutline(eyeRoom(face[side])), ...brow.upper, ...(brow.lower ?? [])];
      return placed(points, uprightView([0, 0]));
    }),
  );
  const box = boxAround(spots);
  const half = Math.max(-box.x, box.x + box.width) + MARGIN.side * size;
  return {
    x: -half,
    y: box.y - MARGIN.top * size,
    width: 2 * half,
    height: box.height + (MARGIN.top + MARGIN.bottom) * size,
  };
}

function describe(
  captures: readonly NamedCapture[],
  marks: readonly Sides<BrowMarks<"mm">>[],
  rows: readonly Composition[],
): string {
  const heights = (of: BrowMarks<"mm">): string =>
    COMPARED.flatMap((dot) => {
      const at = of[dot];
      return at === undefined ? [] : [`${HEIGHT_WORDS[dot]} ${inMillimetres(at[1])}`];
    }).join(", ");
  const sentences = captures.map(({ name }, row) => {
    const { right, left } = marks[row] as Sides<BrowMarks<"mm">>;
    return `${name}: right ${heights(right)}; left ${heights(left)}.`;
  });
  const unplaced = rows.flatMap((one) => one.unplaced);
  return [
    "Brows of one face in several captures; right and left are the client’s own. Heights above the inner eye corners.",
    ...sentences,
    ...(unplaced.length === 0 ? [] : [`Not written in the picture: ${unplaced.join("; ")}.`]),
  ].join(" ");
}

const HEIGHT_WORDS = { upperStart: "start", upperArch: "arch", tailEnd: "tail end" } as const;
