import { ENGLISH, type Words } from "../../words/index.js";
import { type Box, type Spot, type Stretch, wayBetween } from "./box.js";
import type { Look } from "./look.js";
import {
  type MarkerShape,
  type Palette,
  PALETTES,
  type StrokeRole,
  STROKES,
  type StrokeStyle,
} from "./palette.js";
import { coordinate, element, type SvgElement } from "./svg.js";
import type { View } from "./view.js";

export interface Brush {
  readonly view: View;
  readonly palette: Palette;
  /** Whether a photo lies beneath, on which eyes and hair are seen. */
  readonly onPhoto: boolean;
  /** Whether anything may lie beneath: strokes and letters then get an edge of paper around them. */
  readonly edged: boolean;
  readonly words: Words;
}

/** The brush of a picture as a caller wants it. */
export function brushOf(
  view: View,
  { theme = "light", words = ENGLISH }: Look,
  onPhoto = false,
): Brush {
  const palette = PALETTES[theme];
  return { view, palette, onPhoto, edged: onPhoto || isClear(palette), words };
}

/** The same brush for what stands beside or beneath a photo. */
export function besidePhoto(brush: Brush): Brush {
  return { ...brush, edged: isClear(brush.palette) };
}

function isClear({ backdrop }: Palette): boolean {
  return backdrop === "none";
}

/** Width of the paper edge on each side of a stroke, in steps. */
const EDGE = 0.25;

export function pathData(spots: readonly Spot[], closed = false): string {
  const steps = spots.map(
    ([x, y], index) => `${index === 0 ? "M" : "L"}${coordinate(x)} ${coordinate(y)}`,
  );
  return `${steps.join("")}${closed ? "Z" : ""}`;
}

/** Strokes of one role as a group that a style sheet can find by its class. */
export function strokeGroup(
  role: StrokeRole,
  name: string,
  data: readonly string[],
  brush: Brush,
  fill = "none",
): SvgElement {
  const { view, palette, edged } = brush;
  const { width, dash }: StrokeStyle = STROKES[role];
  const paths = data.map((d) => element("path", { d }));
  const edge = element(
    "g",
    {
      fill: "none",
      stroke: palette.paper,
      "stroke-width": (width + 2 * EDGE) * view.size,
    },
    paths,
  );
  const strokes = element(
    "g",
    {
      fill,
      "fill-opacity": fill === "none" ? undefined : 0.14,
      stroke: palette.strokes[role],
      "stroke-width": width * view.size,
      "stroke-dasharray":
        dash.length === 0 ? undefined : dash.map((part) => coordinate(part * view.size)).join(" "),
    },
    paths,
  );
  return element(
    "g",
    { class: name, "stroke-linecap": "butt", "stroke-linejoin": "round" },
    edged ? [edge, strokes] : [strokes],
  );
}

/** A dot at a spot; hollow ones show the paper. */
export function markerAt(
  at: Spot,
  look: {
    readonly shape: MarkerShape;
    readonly colour: string;
    /** Half of its width, in steps. */
    readonly radius: number;
    readonly hollow?: boolean;
  },
  brush: Brush,
  title: string,
  attributes: Readonly<Record<string, string>> = {},
): SvgElement {
  const radius = look.radius * brush.view.size;
  const common = {
    ...attributes,
    fill: look.hollow === true ? brush.palette.paper : look.colour,
    stroke: look.hollow === true ? look.colour : brush.palette.paper,
    "stroke-width": (look.hollow === true ? 0.35 : 0.25) * brush.view.size,
  };
  const name = element("title", {}, [title]);
  if (look.shape === "circle") {
    return element("circle", { cx: at[0], cy: at[1], r: radius, ...common }, [name]);
  }
  if (look.shape === "cross" || look.shape === "saltire") {
    return crossAt(at, radius, look.shape, brush, name, attributes);
  }
  const corners = CORNERS[look.shape].map(
    ([x, y]) => [at[0] + radius * x, at[1] + radius * y] as const,
  );
  return element("path", { d: pathData(corners, true), ...common }, [name]);
}

function crossAt(
  [x, y]: Spot,
  radius: number,
  shape: "cross" | "saltire",
  brush: Brush,
  name: SvgElement,
  attributes: Readonly<Record<string, string>>,
): SvgElement {
  const arm = (right: number, down: number): string =>
    pathData(([-1, 1] as const).map((way): Spot => [x + way * right, y + way * down]));
  const [role, arms] =
    shape === "cross"
      ? (["landmark", [arm(radius, 0), arm(0, radius)]] as const)
      : (["finding", [arm(radius, radius), arm(radius, -radius)]] as const);
  return element("g", attributes, [name, strokeGroup(role, shape, arms, brush)]);
}

/** Corners of the shapes about their middle; all cover about the area of a circle of radius 1. */
const CORNERS: Readonly<
  Record<Exclude<MarkerShape, "circle" | "cross" | "saltire">, readonly Spot[]>
> = {
  square: [
    [-0.89, -0.89],
    [0.89, -0.89],
    [0.89, 0.89],
    [-0.89, 0.89],
  ],
  triangle: [
    [0, -1.45],
    [1.27, 0.75],
    [-1.27, 0.75],
  ],
  diamond: [
    [0, -1.3],
    [1.3, 0],
    [0, 1.3],
    [-1.3, 0],
  ],
};

/** Half of the stroke across each end of a ruler's line, in steps. */
const TICK = 0.9;

/** A line that is read as a length: itself, and a stroke across each of its ends. */
export function rulerLines(from: Spot, to: Spot, size: number): readonly (readonly Spot[])[] {
  const [x, y] = wayBetween(from, to).along;
  const ends = [from, to].map((end) =>
    [-TICK, TICK].map((half): Spot => [end[0] - half * size * y, end[1] + half * size * x]),
  );
  return [[from, to], ...ends];
}

/** Half of an arrow's head, and of the least that is seen as one, in steps. */
const HEAD = 0.8;
const LEAST_HEAD = 0.4;

/** An arrow that leaves room for the dot at its tip; the shortest have no head, and their dots tell the way. */
export function arrowData(from: Spot, to: Spot, room: number, size: number): readonly string[] {
  const { length, along } = wayBetween(from, to);
  const head = Math.min(HEAD * size, (length - room) / 2);
  if (head < LEAST_HEAD * size) return [pathData([from, to])];
  const tip: Spot = [to[0] - room * along[0], to[1] - room * along[1]];
  const barb = (aside: 1 | -1): Spot => [
    tip[0] - head * (along[0] + 0.6 * aside * along[1]),
    tip[1] - head * (along[1] - 0.6 * aside * along[0]),
  ];
  return [pathData([from, tip]), pathData([barb(1), tip, barb(-1)])];
}

export function boxOfDot([x, y]: Spot, radius: number): Box {
  return { x: x - radius, y: y - radius, width: 2 * radius, height: 2 * radius };
}

export function stretches(spots: readonly Spot[]): readonly Stretch[] {
  return spots.slice(1).map((to, index) => ({ from: spots[index] as Spot, to }));
}
