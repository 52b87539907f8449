import type { Box, Spot } from "../canvas/box.js";
import {
  arrowData,
  besidePhoto,
  type Brush,
  markerAt,
  pathData,
  rulerLines,
  strokeGroup,
} from "../canvas/brush.js";
import { type Keyed, linesAt, textAt } from "../canvas/label-layer.js";
import { hatchData, type HatchRole } from "../layers/overlap-layer.js";
import { MARKERS, type MarkerShape, type StrokeRole } from "../canvas/palette.js";
import { element, type SvgElement } from "../canvas/svg.js";
import { type Block, gap, inwards, type Room } from "../canvas/block.js";
import { typeSize } from "../canvas/view.js";
import { LINE_HEIGHT, lineOf, rowsOf, TYPE_SIZES, wrapped } from "../canvas/text-size.js";
import type { Face } from "../../landmarks/index.js";
import { isGuide } from "../../landmarks/internal.js";
import { SIDES } from "../../units/internal.js";
import type { Words } from "../../words/index.js";
import { areaFigure, areaSign, label, roundingOf } from "../../words/internal.js";
import { type BrowPlan, type DrawnCheck, planOverlap } from "../../mapping/index.js";
import { isHair } from "../../mapping/internal.js";
import type { OutlineOverlap } from "../../proportions/index.js";
import { correctionEntries, isOutside, isUndecided } from "../layers/check-layer.js";
import { findingEntries } from "../layers/findings-layer.js";
import { pinEntries } from "../layers/pins-layer.js";
import type { AlsoShown } from "../layers/plan-layers.js";

/** A sample of a stroke, of a mark or of a hatching, or a key from the picture, with what it means. */
export type LegendEntry =
  | {
      readonly text: string;
      readonly role: Exclude<StrokeRole, "landmark">;
      /** Whether it is a ruler's line, which has its ends marked. */
      readonly ticked?: boolean;
    }
  | {
      readonly text: string;
      readonly role: "landmark" | "correction" | "planned";
      readonly marker: MarkerShape;
    }
  | Keyed;

/** Length of a sample of a stroke, room around the legend, least width of a column, in steps. */
export const SAMPLE = 9;
const PADDING = 3;
const COLUMN = 55;

/** That lengths are rounded to the marks of a ruler, where words round them. */
export function roundedEntries(words: Words): readonly LegendEntry[] {
  const rounding = roundingOf(words);
  if (rounding === undefined) return [];
  return [{ key: "≈", text: label(words, "legend-rounded", rounding) }];
}

/** Lays out entries in as many columns as the width has room for, read row by row. */
export function legend(entries: readonly LegendEntry[], room: Room): Block {
  const { width, brush } = room;
  const { size } = brush.view;
  const plain = besidePhoto(brush);
  const look = { size: typeSize("legend", brush.view), colour: plain.palette.ink };
  const columns = Math.max(1, Math.floor((width * TYPE_SIZES.legend) / (COLUMN * look.size)));
  const column = (width - 2 * PADDING * size) / columns;
  const indent = (SAMPLE + 1.5) * size;
  const all = [...entries, ...roundedEntries(brush.words)];
  if (all.length === 0) return gap(0);
  const cells = all.map((entry) => ({
    entry,
    lines: wrapped(entry.text, look.size, column - indent),
  }));
  const rows = rowsOf(cells, columns).map((row) => ({
    row,
    height: lineOf(look.size) * Math.max(...row.map(({ lines }) => lines.length)),
  }));
  const height = rows.reduce((sum, row) => sum + row.height, 2 * PADDING * size);
  const drawnAt = (left: number, top: number): readonly SvgElement[] => {
    let below = top + PADDING * size;
    const drawn = rows.flatMap(({ row, height: ofRow }) => {
      const y = below;
      below += ofRow;
      return row.flatMap(({ entry, lines }, index) => {
        const at = inwards(left, room);
        const way = PADDING * size + index * column;
        return [
          sample(entry, at(way, SAMPLE * size), y + (LINE_HEIGHT * look.size) / 2, plain),
          ...linesAt(lines, { x: at(way + indent), side: "start" }, y, look, plain),
        ];
      });
    });
    const paper = element("rect", { x: left, y: top, width, height, fill: plain.palette.backdrop });
    return [element("g", { class: "legend" }, [paper, ...drawn])];
  };
  return { height, drawnAt };
}

export function sample(entry: LegendEntry, x: number, y: number, brush: Brush): SvgElement {
  const { view, palette } = brush;
  const to = x + SAMPLE * view.size;
  if ("key" in entry) {
    const size = typeSize("legend", view);
    const look = { size, weight: "bold", colour: palette.ink } as const;
    const end = brush.words.direction === "rtl" ? x : to;
    return textAt(entry.key, { x: end, side: "end" }, y - (LINE_HEIGHT * size) / 2, look, brush);
  }
  if ("marker" in entry) {
    const look = { shape: entry.marker, colour: palette.strokes[entry.role], radius: 0.9 };
    const at = (share: number, hollow: boolean): SvgElement =>
      markerAt([x + share * (to - x), y], { ...look, hollow }, brush, entry.text);
    return entry.role === "planned"
      ? element("g", {}, [at(0.3, false), at(0.7, true)])
      : at(0.5, entry.marker === "circle");
  }
  if (entry.role === "remove" || entry.role === "fill") {
    return hatchSample(entry.role, { x, y, width: to - x, height: 0 }, brush);
  }
  const lines = rulerLines([x, y], [to, y], view.size);
  const data =
    entry.role === "move" || entry.role === "correction"
      ? arrowData([x, y], [to, y], 0, view.size)
      : (entry.ticked === true ? lines : lines.slice(0, 1)).map((spots) => pathData(spots));
  return strokeGroup(entry.role, "sample", data, brush);
}

/** Half of the height of a sample of a hatching, in steps. */
const HALF_HATCH = 1.1;

function hatchSample(role: HatchRole, { x, y, width }: Box, brush: Brush): SvgElement {
  const half = HALF_HATCH * brush.view.size;
  const corners: readonly Spot[] = [
    [x, y - half],
    [x + width, y - half],
    [x + width, y + half],
    [x, y + half],
  ];
  const plain = { ...brush, edged: false };
  return strokeGroup(role, "sample", [hatchData(role, corners, [], brush)], plain);
}

/** What the strokes and dots of a plan's picture mean, the plan's own conventions included. */
export function planLegend(
  plan: BrowPlan,
  words: Words,
  { overlap = false, check }: AlsoShown = {},
): readonly LegendEntry[] {
  const { choices, face } = plan;
  return [
    { text: label(words, "legend-planned"), role: "planned" },
    ...grownEntries(face, words),
    ...(overlap && SIDES.some((side) => isHair(face, side)) ? overlapEntries(plan, words) : []),
    { text: label(words, "legend-dots"), role: "planned", marker: "square" },
    { text: label(words, "legend-start", { rule: choices.start }), role: "start" },
    { text: archEntry(choices, words), role: "arch" },
    { text: tailEntry(plan, words), role: "tail" },
    { text: label(words, "legend-lengths"), role: "ruler", ticked: true },
    { text: label(words, "legend-landmark"), role: "landmark", marker: MARKERS.landmark },
    ...((face.standIns ?? []).some(({ landmark }) => landmark !== "brow")
      ? [{ text: label(words, "legend-stand-in"), role: "landmark", marker: "circle" } as const]
      : []),
    ...pinEntries(plan, words),
    ...findingEntries(plan, words),
    ...(check === undefined ? [] : checkEntries(check, words)),
  ];
}

/** What a face has for brows: hair, or what stands in for it. */
export function grownEntries(
  face: Face<"mm">,
  words: Words,
  hair: "legend-natural" | "legend-found" = "legend-natural",
): readonly LegendEntry[] {
  const isSeen = SIDES.some((side) => isHair(face, side));
  return [
    ...(isSeen ? [{ text: label(words, hair), role: "natural" } as const] : []),
    ...(face.standIns ?? [])
      .filter(({ landmark }) => landmark === "brow")
      .map(({ instead }) => ({
        text: label(words, "legend-guess", { instead }),
        role: "guess" as const,
      })),
  ];
}

/** Seen from the front a guide is straight; on the photo of a turned head it bends with the face. */
function tailEntry({ choices: { tail: rule }, frame }: BrowPlan, words: Words): string {
  const tail = label(words, "legend-tail", { rule });
  return frame?.turning === undefined || !isGuide(rule)
    ? tail
    : label(words, "legend-bent", { tail });
}

/** A guide is drawn where it runs, wherever the dot was pinned; other arches are where their dot is. */
function archEntry({ arch, pins }: BrowPlan["choices"], words: Words): string {
  return !isGuide(arch) && pins.some(({ dot }) => dot === "upperArch")
    ? label(words, "legend-arch-pinned")
    : label(words, "legend-arch", { rule: arch });
}

function overlapEntries(plan: BrowPlan, words: Words): readonly LegendEntry[] {
  const areas = planOverlap(plan);
  const said = (of: (overlap: OutlineOverlap) => number): string =>
    SIDES.map((side) => {
      const overlap = areas[side];
      return overlap === undefined
        ? label(words, "legend-no-overlap", { side })
        : label(words, "of-side", { side, what: areaFigure(of(overlap), words) });
    }).join(words.separator);
  return [
    {
      text: label(words, "legend-hair", {
        areas: said((one) => one.hairOutside),
        unit: areaSign(words),
      }),
      role: "remove",
    },
    {
      text: label(words, "legend-skin", {
        areas: said((one) => one.skinInside),
        unit: areaSign(words),
      }),
      role: "fill",
    },
  ];
}

/** What the dots of a check mean, and every correction. */
export function checkEntries(check: DrawnCheck, words: Words): readonly LegendEntry[] {
  const { dots, outcome } = check;
  return [
    { text: label(words, "legend-drawn", { outcome }), role: "correction", marker: MARKERS.drawn },
    ...(dots.some(isOutside)
      ? [{ text: label(words, "legend-correction"), role: "correction" } as const]
      : []),
    ...(dots.some((dot) => !isOutside(dot) && isUndecided(dot))
      ? [{ text: label(words, "legend-undecided"), key: "?" }]
      : []),
    ...correctionEntries(check, words),
  ];
}
