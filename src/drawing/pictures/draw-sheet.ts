import {
  type BrowPlan,
  type CautionCode,
  cautionsToSay,
  type DrawnCheck,
} from "../../mapping/index.js";
import { movesToMake, requirePlan } from "../../mapping/internal.js";
import { type Length, length } from "../../units/index.js";
import { refusingAs } from "../../units/internal.js";
import { say } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { element, pictureElement, type SvgElement, type SvgNode } from "../canvas/svg.js";
import { correctionEntries } from "../layers/check-layer.js";
import { findingEntries } from "../layers/findings-layer.js";
import { movesLayer } from "../layers/moves-layer.js";
import { pinEntries } from "../layers/pins-layer.js";
import { type AlsoShown, planLayers } from "../layers/plan-layers.js";
import { planHeadings } from "../layers/verdict-layer.js";
import { documentSource } from "../sheet/document.js";
import { fieldsIn, headOf, type SheetField, trueSizeFoot } from "../sheet/head-and-foot.js";
import { keyedList, listOfNotes } from "../sheet/lists.js";
import { type PaperDrawing, type Print, printOf } from "../sheet/paper.js";
import { checkTable, readingsTable, stepsTable } from "../sheet/plan-tables.js";
import { trueSizeMap } from "../sheet/true-size-map.js";
import { describePlan } from "./describe-plan.js";
import { checkEntries, planLegend } from "./legend.js";
import { legendList } from "./legend-list.js";

/** How {@link drawSheet} draws. */
export interface SheetDrawing extends PaperDrawing, AlsoShown {
  /** What the artist's ruler shows at the point it is laid to first, see `workSteps`. Default 0. */
  readonly rulerZero?: Length<"mm">;
  /** Written at the head; those without a value get a line to write on. Default: client, date, artist. */
  readonly fields?: readonly SheetField[];
}

/** What holds for every map, at the foot of every page. */
const ALWAYS: readonly string[] = [
  "planning-aid",
  "local-law",
  "hygiene",
] satisfies readonly CautionCode[];

/**
 * A plan as a sheet to print at true size, an HTML document of one file: cautions about this map; the face with
 * outlines, dots, lengths and moves; the work step by step, numbered as the moves in the picture, with the ruler's
 * readings that check it; then the reasons, the check of what was drawn where it is given, and
 * everything that is read on the brows with decisions. What the plan holds by itself has no uncertainty there,
 * and no decision.
 *
 * Browsers lay it out and break it into pages: two by default, on paper; on a screen it takes the width that there is.
 * It has no script and loads nothing. The face is drawn as it is seen from the front, at its size in
 * millimetres. Rulers are printed on it so that a printer that stretches gives itself away.
 *
 * @throws GeometryError `out-of-range` where the face is too wide for the paper, the type is too small or too large,
 * or the paper or the theme is unknown
 *
 * @example
 * ```ts
 * import { mm, planBrows } from "brow-geometry";
 * import { drawSheet } from "brow-geometry/drawing";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: [mm([sign * 15, 20]), mm([sign * 38, 27]), mm([sign * 57, 18])] },
 * });
 * const plan = planBrows({ right: side(-1), left: side(1), midline: {} });
 * const html = drawSheet(plan, { paper: "letter", fields: [{ name: "Client", value: "(invented)" }] });
 * html.startsWith("<!DOCTYPE html>"); // → true
 * html.includes("@page{size:letter"); // → true
 * ```
 */
export function drawSheet(plan: BrowPlan, options: SheetDrawing = {}): string {
  return refusingAs("drawSheet", () => {
    requirePlan(plan);
    const print = printOf(options, ["rulerZero", "fields", "overlap", "check"]);
    const { words, brush } = print;
    const { title = label(words, "title-plan"), overlap = false, rulerZero = length(0) } = options;
    const { fields = fieldsIn(words, ["client", "date", "artist"]), check } = options;
    const cautions = cautionsToSay(plan).filter(({ at }) => at === undefined);
    const ofThis = cautions.filter(({ code }) => !ALWAYS.includes(code));
    const always = cautions.filter(({ code }) => ALWAYS.includes(code));
    const hasMoves = movesToMake(plan).some(({ kind }) => kind !== "place");
    const entries = [
      ...planLegend({ ...plan, reasons: [], cautions: [] }, words, { overlap }),
      ...(hasMoves ? [{ text: label(words, "legend-move"), role: "move" } as const] : []),
    ];
    const heading = (text: string): SvgElement => element("h2", {}, [text]);
    const body = [
      headOf(title, fields),
      ofThis.length === 0
        ? undefined
        : element("section", { class: "cautions" }, [
            heading(label(words, "heading-cautions")),
            listOfNotes(ofThis, words),
          ]),
      element("figure", {}, [
        mapOf(plan, title, print, { overlap }),
        legendList(entries, brush, label(words, "sheet-true-size")),
      ]),
      keyedList([...pinEntries(plan, words), ...findingEntries(plan, words)]),
      heading(label(words, "heading-steps")),
      stepsTable(plan, rulerZero, words),
      heading(label(words, "heading-reasons")),
      listOfNotes(plan.reasons, words),
      ...(check === undefined
        ? []
        : [heading(label(words, "heading-check")), ...checkOf(plan, check, print)]),
      heading(label(words, "heading-readings")),
      element("p", {}, [label(words, "sheet-readings", { unit: words.lengths })]),
      readingsTable(plan, words),
    ];
    const foot = trueSizeFoot(
      brush,
      always.map((caution) => say(caution, words)),
    );
    return documentSource(title, body, foot, print);
  });
}

/** The face at true size, told for who does not see it; what stands beside it as text is not told again. */
function mapOf(
  plan: BrowPlan,
  title: string,
  { width, brush, words }: Print,
  shown: AlsoShown,
): SvgElement {
  const { frame, elements, unplaced } = trueSizeMap(plan, width, brush, (box, placed) => ({
    // Arrows of corrections and of moves would be taken for each other.
    layers: planLayers(plan, box, placed, shown, shown.check ? [] : [movesLayer(plan, placed)]),
    headings: planHeadings(plan, box, placed),
  }));
  const face = { ...plan, reasons: [], cautions: [] };
  const described = describePlan(face, unplaced, words, { overlap: shown.overlap ?? false });
  return pictureElement({ ...frame, class: "map" }, title, described, words, elements);
}

/** What was drawn: in a picture of its own, what to correct, and every figure. */
function checkOf(
  plan: BrowPlan,
  check: DrawnCheck,
  print: Print,
): readonly (SvgNode | undefined)[] {
  const { words, brush } = print;
  const dots = checkEntries(check, words).filter((entry) => !("key" in entry && entry.key !== "?"));
  return [
    element("figure", {}, [
      check.dots.length === 0
        ? undefined
        : mapOf(plan, label(words, "heading-check"), print, { check }),
      legendList(dots, brush),
    ]),
    keyedList(correctionEntries(check, words)),
    checkTable(plan, check, words),
  ];
}
