import { DOT_NAMES, isGuide } from "../../landmarks/internal.js";
import type { BrowPlan } from "../../mapping/index.js";
import { requirePlan } from "../../mapping/internal.js";
import { refusingAs } from "../../units/internal.js";
import type { Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { headingsOver } from "../canvas/compose.js";
import { element, pictureElement, type SvgElement } from "../canvas/svg.js";
import { MARKERS } from "../canvas/palette.js";
import { practiceLayers } from "../layers/practice-layer.js";
import { documentSource } from "../sheet/document.js";
import { fieldsIn, headOf, type SheetField, trueSizeFoot } from "../sheet/head-and-foot.js";
import { type PaperDrawing, printOf } from "../sheet/paper.js";
import { inReadingOrder } from "../sheet/plan-tables.js";
import { trueSizeMap } from "../sheet/true-size-map.js";
import type { LegendEntry } from "./legend.js";
import { legendList } from "./legend-list.js";

/** How {@link drawPractice} draws. */
export interface PracticeDrawing extends PaperDrawing {
  /** Written at the head; those without a value get a line to write on. Default: artist, date. */
  readonly fields?: readonly SheetField[];
}

/**
 * A practice sheet to print at true size, an HTML document, of one page unless its type is large: midline, the level of the inner eye corners,
 * landmarks and the guides of a plan, with the names of the dots that belong on them, and no brow; beneath, a line for
 * every dot to write down where a ruler reads it. For trainees and for work with a pen.
 *
 * What it is held against is the plan: `checkDrawn` and `gradeMap` take the dots as they were read. Paper is flat: lengths
 * on it are those that are seen from the front.
 *
 * @throws GeometryError `out-of-range` where the face is too wide for the paper, the type is too small or too large,
 * or the paper or the theme is unknown
 *
 * @example
 * ```ts
 * import { mm, planBrows } from "brow-geometry";
 * import { drawPractice } from "brow-geometry/drawing";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: [mm([sign * 15, 20]), mm([sign * 38, 27]), mm([sign * 57, 18])] },
 * });
 * const plan = planBrows({ right: side(-1), left: side(1), midline: {} }, { arch: "exocanthion-vertical" });
 * drawPractice(plan).includes("start, lower start"); // → true
 * ```
 */
export function drawPractice(plan: BrowPlan, options: PracticeDrawing = {}): string {
  return refusingAs("drawPractice", () => {
    requirePlan(plan);
    const print = printOf(options, ["fields"]);
    const { words, brush, width } = print;
    const { title = label(words, "title-practice") } = options;
    const { fields = fieldsIn(words, ["artist", "date"]) } = options;
    const about = label(words, "practice-about");
    const { frame, elements } = trueSizeMap(plan, width, brush, (box, placed) => ({
      layers: practiceLayers(plan, box, placed),
      headings: headingsOver(box, placed),
    }));
    const body = [
      headOf(title, fields),
      element("figure", {}, [
        pictureElement({ ...frame, class: "map" }, title, about, words, elements),
        legendList(legendOf(plan, words), brush),
      ]),
      element("p", {}, [about]),
      linesToFill(words),
    ];
    return documentSource(title, body, trueSizeFoot(brush), print);
  });
}

function legendOf({ choices }: BrowPlan, words: Words): readonly LegendEntry[] {
  return [
    { text: label(words, "legend-level"), role: "ruler" },
    ...(["start", "arch", "tail"] as const).flatMap((role): readonly LegendEntry[] => {
      const rule = choices[role];
      // Hair has no guide to draw.
      return isGuide(rule) ? [{ text: label(words, `legend-${role}`, { rule }), role }] : [];
    }),
    { text: label(words, "legend-landmark"), role: "landmark", marker: MARKERS.landmark },
  ];
}

/** For every dot of each side its two distances, to be read by ruler and written down. */
function linesToFill(words: Words): SvgElement {
  const sides = inReadingOrder(words);
  const rows = DOT_NAMES.flatMap((dot) =>
    (["axis-outward", "axis-up"] as const).map((axis) =>
      element(
        "tr",
        {},
        sides.flatMap((side) => [
          element("td", {}, [label(words, axis, { side, dot })]),
          element("td", { class: "number" }),
        ]),
      ),
    ),
  );
  const head = sides.flatMap((side) => [
    element("th", {}, [label(words, `corner-${side}`)]),
    element("th", { class: "number" }, [label(words, "column-reads")]),
  ]);
  return element("table", { class: "work blank" }, [
    element("thead", {}, [element("tr", {}, head)]),
    element("tbody", { class: "long" }, rows),
  ]);
}
