import { planHeadings } from "../layers/verdict-layer.js";
import { type AreaCheck, type BrowPlan, checkAreas, type SkinArea } from "../../mapping/index.js";
import { refusingAs } from "../../units/internal.js";
import { ENGLISH, say, type Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { type Box, boxAround, grown, type Spot } from "../canvas/box.js";
import {
  type Brush,
  brushOf,
  markerAt,
  pathData,
  strokeGroup,
  stretches,
} from "../canvas/brush.js";
import { compose } from "../canvas/compose.js";
import type { Layer } from "../canvas/layer.js";
import { leastOn, requireLook, type ScreenDrawing } from "../canvas/look.js";
import { element, pictureSource } from "../canvas/svg.js";
import { TYPE_SIZES } from "../canvas/text-size.js";
import { placed, planView, type View } from "../canvas/view.js";
import { plannedSpots } from "../layers/brow-layers.js";
import { hatchData } from "../layers/overlap-layer.js";
import { faceBox, planLayers } from "../layers/plan-layers.js";
import { legend, type LegendEntry, planLegend } from "./legend.js";
import { sentencesBeneath } from "./sentences-beneath.js";

/**
 * A plan with areas of skin, such as old pigment or a scar: each by its edge, shaded with its margin; what sticks out of
 * the planned brows or is overlapped by them hatched, with a dot where it reaches farthest, and what there is to say
 * of each beneath.
 *
 * @throws GeometryError as `checkAreas`, and `out-of-range` for an unknown option or theme, or a screen whose width
 * or type size is out of range
 *
 * @example
 * ```ts
 * import { mm, planBrows, type PlannableFace } from "brow-geometry";
 * import { drawAreas } from "brow-geometry/drawing";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 17, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const plan = planBrows({ right: side(-1), left: side(1), midline: {} });
 * const edge = mm([[24, 18], [34, 20], [34, 28], [24, 26]]);
 * drawAreas(plan, [{ name: "scar", aim: "stay-off", edge }]).includes("scar: the planned brows overlap"); // → true
 * ```
 */
export function drawAreas(
  plan: BrowPlan,
  areas: readonly SkinArea[],
  look: ScreenDrawing = {},
): string {
  return refusingAs("drawAreas", () => {
    requireLook(look);
    const { words = ENGLISH } = look;
    const { title = label(words, "title-areas") } = look;
    const checks = checkAreas(plan, areas);
    const view = planView(plan);
    const { width } = boxWith(checks, faceBox(plan, view), view);
    const brush = brushOf({ ...view, least: leastOn(width, look) }, look);
    const box = boxWith(checks, faceBox(plan, brush.view), brush.view);
    const layers = [
      ...planLayers(plan, box, brush),
      ...checks.map((check, index) => areaLayer(plan, check, keyOf(index, words), brush)),
    ];
    const crowding = { isOnScreen: look.screen !== undefined, keysFrom: 1 };
    const headings = planHeadings(plan, box, brush);
    const { elements, unplaced, keyed } = compose(layers, headings, box, brush, crowding);
    const sheet = { width: box.width, brush };
    const explained = legend(
      [...planLegend(plan, words), ...entriesFor(checks, words), ...keyed],
      sheet,
    );
    const said = checks.map(({ note }) => say(note, words));
    const beneath = sentencesBeneath(said, sheet);
    const height = box.height + explained.height + beneath.height;
    return pictureSource(
      { viewBox: [box.x, box.y, box.width, height].map((value) => value.toFixed(3)).join(" ") },
      title,
      [
        label(words, "described-areas"),
        ...said,
        ...(unplaced.length === 0
          ? []
          : [label(words, "described-unplaced", { labels: unplaced.join("; ") })]),
      ].join(" "),
      words,
      [
        element("rect", { ...box, height, fill: brush.palette.backdrop }),
        ...elements,
        ...explained.drawnAt(box.x, box.y + box.height),
        ...beneath.drawnAt(box.x, box.y + box.height + explained.height),
      ],
    );
  });
}

/** Room about an area, in steps. */
const ROOM = 6;

/** The part of the picture that holds the face and every area. */
function boxWith(checks: readonly AreaCheck[], box: Box, view: View): Box {
  const around = checks.map(({ area }) =>
    grown(boxAround(placed(area.edge, view)), ROOM * view.size),
  );
  return boxAround(
    [box, ...around].flatMap(({ x, y, width, height }): readonly Spot[] => [
      [x, y],
      [x + width, y + height],
    ]),
  );
}

/** What stands for an area in the picture: "A1". */
function keyOf(index: number, words: Words): string {
  return label(words, "key-area", { number: index + 1 });
}

/** How dark an area with its margin is shaded. */
const SHADE = 0.14;
/** Half of the dot where an area reaches farthest, in steps. */
const DOT_RADIUS = 0.6;

/** An area by its edge, shaded with its margin; what lies beyond the plan hatched. */
function areaLayer(
  plan: BrowPlan,
  { area, side, at, note }: AreaCheck,
  key: string,
  brush: Brush,
): Layer {
  const { view, palette, words } = brush;
  const { aim, edge, margin = 0 } = area;
  const spots = placed(edge, view);
  const data = pathData(spots, true);
  const shade = element("g", { class: `area ${side}`, opacity: SHADE }, [
    element("path", {
      d: data,
      fill: palette.ink,
      stroke: palette.ink,
      "stroke-width": 2 * margin * view.millimetre,
      "stroke-linejoin": "round",
    }),
  ]);
  const brow = plannedSpots(plan.dots[side], plan.choices.shape, brush);
  const isToCover = aim === "cover";
  const role = isToCover ? "remove" : "fill";
  const beyond = isToCover
    ? hatchData(role, spots, brow, brush)
    : hatchData(role, brow, framed(spots, brow), brush);
  const top = spots.reduce((highest, spot) => (spot[1] < highest[1] ? spot : highest));
  return {
    elements: [
      shade,
      strokeGroup("ruler", `edge ${side}`, [data], brush),
      strokeGroup(role, `beyond ${side}`, beyond === "" ? [] : [beyond], brush),
      ...(at === undefined
        ? []
        : [
            markerAt(
              view.place(at),
              { shape: "circle", colour: palette.ink, radius: DOT_RADIUS },
              brush,
              say(note, words),
            ),
          ]),
    ],
    labels: [
      {
        text: key,
        at: top,
        towards: [
          [0, -1],
          [0, 1],
          [side === "left" ? 1 : -1, 0],
        ],
        size: TYPE_SIZES.legend * view.size,
        gap: margin * view.millimetre + 0.8 * view.size,
        weight: "bold",
        colour: palette.ink,
      },
    ],
    strokes: stretches([...spots, spots[0] as Spot]),
  };
}

/** Everything about an area but the area itself, so that hatching outside of it stays inside the area. */
function framed(area: readonly Spot[], brow: readonly Spot[]): readonly Spot[] {
  const { x, y, width, height } = grown(boxAround([...area, ...brow]), 1);
  const corner: Spot = [x, y];
  return [
    corner,
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
    corner,
    ...area,
    area[0] as Spot,
  ];
}

function entriesFor(checks: readonly AreaCheck[], words: Words): readonly LegendEntry[] {
  const beyond = checks.filter((check) => check.beyond > 0).map(({ area }) => area.aim);
  return [
    ...checks.map(({ area: { aim, name } }, index) => ({
      key: keyOf(index, words),
      text: label(words, `area-${aim}`, { name }),
    })),
    { text: label(words, "legend-area"), role: "ruler" },
    ...(beyond.includes("cover")
      ? [{ text: label(words, "legend-sticks-out"), role: "remove" } as const]
      : []),
    ...(beyond.includes("stay-off")
      ? [{ text: label(words, "legend-overlapped"), role: "fill" } as const]
      : []),
  ];
}
