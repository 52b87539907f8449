import { DOTS, type Face, type FaceWith } from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import type { CarriedBrow, CarriedMap } from "../../mapping/index.js";
import type { Side } from "../../units/index.js";
import { refusingAs, SIDES } from "../../units/internal.js";
import { ENGLISH, say, type Words } from "../../words/index.js";
import { label, lengthSign } from "../../words/internal.js";
import type { Box, Spot } from "../canvas/box.js";
import { arrowData, type Brush, brushOf, strokeGroup } from "../canvas/brush.js";
import { compose, headingsOver } from "../canvas/compose.js";
import { changeWithUncertainty, lengths } from "../canvas/figures.js";
import type { ColouredLabel, Layer } from "../canvas/layer.js";
import { leastOn, requireLook, type ScreenDrawing } from "../canvas/look.js";
import { element, pictureSource } from "../canvas/svg.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { uprightSize, uprightView } from "../canvas/view.js";
import { bordersLayer, dotsLayer, grownRole } from "../layers/brow-layers.js";
import { eyeLayer, midlineLayer } from "../layers/face-layers.js";
import { extentAround, TOP_ROOM, towardsOf } from "./capture-panel.js";
import { grownEntries, legend, type LegendEntry } from "./legend.js";
import { sentencesBeneath } from "./sentences-beneath.js";

/** A capture into which a plan was carried: its eyes, and its brows where they are seen. */
export type CarriedOnto = FaceWith<"mm", "endocanthion" | "exocanthion">;

/**
 * A plan as it appears in another capture of the client, in that capture's own face space: its dots and borders,
 * arrows from where they would be had the skin not moved, how far it moved up or down there, and what holds for it
 * in sentences.
 *
 * @throws GeometryError `out-of-range` for an unknown option or theme, or a screen whose width or type size is out of
 * range
 *
 * @example
 * ```ts
 * import { mm, planBrows } from "brow-geometry";
 * import { drawCarried } from "brow-geometry/drawing";
 * import { carryInto } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1, up: number) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 15, 20 + up], [sign * 38, 27 + up], [sign * 57, 18 + 2 * up]]) },
 * });
 * const plan = planBrows({ right: side(-1, 0), left: side(1, 0), midline: {} });
 * const lying = { right: side(-1, 1.5), left: side(1, 1.5), midline: {} };
 * drawCarried(carryInto(plan, lying), lying).includes("Check every distance again upright"); // → true
 * ```
 */
export function drawCarried(
  carried: CarriedMap,
  capture: CarriedOnto,
  look: ScreenDrawing = {},
): string {
  return refusingAs("drawCarried", () => {
    requireLook(look);
    const { words = ENGLISH } = look;
    const { title = label(words, "title-carried") } = look;
    const size = uprightSize(capture);
    const extent = extentAround(
      capture,
      SIDES.flatMap((side) => pointsOf(capture, carried.brows[side], side)),
      size,
    );
    const box: Box = { ...extent, x: 0, y: 0 };
    const least = leastOn(extent.width, look);
    const brush = brushOf(uprightView([-extent.x, -extent.y], size, least), look);
    const middle = {
      top: -extent.y - TOP_ROOM * size,
      bottom: -extent.y - extent.height + size,
    };
    const layers: readonly Layer[] = [
      midlineLayer(middle, brush),
      ...SIDES.map((side) => eyeLayer(capture[side], brush)),
      ...SIDES.flatMap((side) => {
        const { brow } = capture[side];
        return brow === undefined
          ? []
          : [bordersLayer(brow, side, grownRole(capture, side), brush)];
      }),
      ...SIDES.flatMap((side) => browLayers(carried.brows[side], side, brush)),
    ];
    const headings = headingsOver(box, brush);
    const crowding = { isOnScreen: look.screen !== undefined, keysFrom: 1 };
    const panel = compose(layers, headings, box, brush, crowding);
    const sheet = { width: extent.width, brush };
    const explained = legend([...entriesFor(capture, words), ...panel.keyed], sheet);
    const said = sentencesBeneath(
      carried.notes.map((note) => say(note, words)),
      sheet,
    );
    const height = extent.height + explained.height + said.height;
    return pictureSource(
      { viewBox: `0 0 ${extent.width.toFixed(3)} ${height.toFixed(3)}` },
      title,
      [
        label(words, "described-carried"),
        ...carried.notes.map((note) => say(note, words)),
        ...(panel.unplaced.length === 0
          ? []
          : [label(words, "described-unplaced", { labels: panel.unplaced.join("; ") })]),
      ].join(" "),
      words,
      [
        element("rect", { width: extent.width, height, fill: brush.palette.backdrop }),
        ...panel.elements,
        ...explained.drawnAt(0, extent.height),
        ...said.drawnAt(0, extent.height + explained.height),
      ],
    );
  });
}

function pointsOf(
  capture: Face<"mm">,
  { borders, dots }: CarriedBrow,
  side: Side,
): CarriedBrow["borders"]["upper"] {
  const { upper = [], lower = [] } = capture[side].brow ?? {};
  const unmoved = DOT_NAMES.map((dot) => dots[dot].unmoved);
  return [...upper, ...lower, ...borders.upper, ...borders.lower, ...unmoved];
}

/** Half of what a dot takes at an arrow's tip, in steps. */
const TIP_ROOM = 1.1;
/** A shorter way is hidden by the dot itself, in steps. */
const SHORTEST = 1;

function browLayers({ dots, borders }: CarriedBrow, side: Side, brush: Brush): readonly Layer[] {
  const { view, palette, words } = brush;
  const placed = Object.fromEntries(DOT_NAMES.map((dot) => [dot, dots[dot].at]));
  const ways = DOT_NAMES.filter((dot) => DOTS[dot].placed).flatMap((dot): readonly string[] => {
    const [from, to] = [view.place(dots[dot].unmoved), view.place(dots[dot].at)];
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]) > SHORTEST * view.size;
    return long ? arrowData(from, to, TIP_ROOM * view.size, view.size) : [];
  });
  const towards: Readonly<Record<string, readonly Spot[]>> = towardsOf(side);
  const labels = (["upperStart", "upperArch", "tailEnd"] as const).map((dot): ColouredLabel => ({
    text: changeWithUncertainty(dots[dot].up, lengths(words), words),
    at: view.place(dots[dot].at),
    towards: towards[dot] ?? [],
    size: TYPE_SIZES.label * view.size,
    gap: 1.8 * view.size,
    yields: "key",
    colour: palette.ink,
  }));
  return [
    bordersLayer(borders, side, "capture", brush),
    { elements: ways.length === 0 ? [] : [strokeGroup("move", `moved ${side}`, ways, brush)] },
    dotsLayer(placed, side, "planned", brush),
    { elements: [], labels },
  ];
}

function entriesFor(capture: Face<"mm">, words: Words): readonly LegendEntry[] {
  const seen = SIDES.some((side) => capture[side].brow !== undefined);
  return [
    { text: label(words, "legend-carried"), role: "planned" },
    ...(seen ? grownEntries(capture, words, "legend-found") : []),
    { text: label(words, "legend-skin-moved"), role: "move" },
    {
      text: label(words, "legend-moved-up", { unit: lengthSign(words) }),
      role: "landmark",
      marker: "triangle",
    },
  ];
}
