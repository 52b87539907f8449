import { type BrowPlan, cautionsToSay, type DrawnCheck } from "../../mapping/index.js";
import { movesToMake, requirePlan } from "../../mapping/internal.js";
import { type Length, mm } from "../../units/index.js";
import { refusingAs } from "../../units/internal.js";
import type { Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { type Block, gap, together, togetherIfFree } from "../sheet/block.js";
import { correctionEntries } from "../layers/check-layer.js";
import { checkTable, readingsTable, stepsTable } from "../sheet/plan-tables.js";
import { describePlan } from "./describe-plan.js";
import { textAt } from "../canvas/label-layer.js";
import { checkEntries, legend, planLegend } from "./legend.js";
import { mapBlock } from "../sheet/map-block.js";
import type { Look } from "../canvas/look.js";
import { pagesOf, type Paper, PAPER_MARGIN, requireShort, roomOn, sheetOn } from "../sheet/page.js";
import { findingEntries } from "../layers/findings-layer.js";
import { pinEntries } from "../layers/pins-layer.js";
import type { AlsoShown } from "../layers/plan-layers.js";
import type { SvgElement } from "../canvas/svg.js";
import {
  bullets,
  fieldRows,
  heading,
  inwards,
  list,
  listRows,
  PAPER_TYPE,
  paragraph,
  type Sheet,
  type SheetField,
  title,
} from "../sheet/text-blocks.js";
import { LINE_HEIGHT, wrapped } from "../canvas/text-size.js";
import { RULER_DEPTH, trueSizeRuler } from "../sheet/true-size-ruler.js";

/** How {@link drawSheet} draws. */
export interface SheetDrawing extends Look, AlsoShown {
  /** Default `"A4"`. */
  readonly paper?: Paper;
  /** What the artist's ruler shows at the point it is laid to first, see `workSteps`. Default 0. */
  readonly rulerZero?: Length<"mm">;
  /** Written at the head; those without a value get a line to write on. Default: client, date, artist. */
  readonly fields?: readonly SheetField[];
}

/** Length of the ruler at the foot of every page, in millimetres. */
const RULER_LENGTH = 100;
const FOOT_HEIGHT = RULER_DEPTH + 3;

/**
 * A plan as a sheet to print at true size: the face with outlines, dots, lengths and moves, then pinned
 * dots where there are any, the cautions, the reasons, the work step by step, numbered as the moves in the
 * picture, with the ruler's readings that check it, the check of what was drawn where it is given, and
 * everything that is read on the brows with decisions. What the plan holds by itself has no uncertainty there,
 * and no decision.
 *
 * One SVG for each page, its size in millimetres on paper. The face is drawn as it is seen from the
 * front. Rulers are printed on it so that a printer that stretches gives itself away.
 *
 * @throws GeometryError `out-of-range` where the face is too wide for the paper, the title or the
 * fields are too long for it, or the paper or the theme is unknown
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
 * const pages = drawSheet(plan, { paper: "letter", fields: [{ name: "Client", value: "(invented)" }] });
 * pages[0]?.includes('width="215.9mm"'); // → true
 * ```
 */
export function drawSheet(plan: BrowPlan, options: SheetDrawing = {}): readonly string[] {
  return refusingAs("drawSheet", () => {
    requirePlan(plan);
    const { paper, sheet } = sheetOn(options);
    const { words } = sheet.brush;
    const { title: name = label(words, "title-plan"), overlap = false } = options;
    const { fields = fieldsIn(words), rulerZero = mm(0), check } = options;
    const map = mapBlock(plan, sheet, { overlap });
    const room = roomOn(paper, FOOT_HEIGHT);
    const named = title(name, sheet);
    const head = fieldRows(fields, sheet);
    requireShort("title", [named], options.title);
    requireShort("fields", head, options.fields);
    const blocks: readonly Block[] = [
      named,
      gap(1),
      ...head,
      map,
      legend(
        [
          ...planLegend({ ...plan, reasons: [], cautions: [] }, words, { overlap }),
          ...(movesToMake(plan).every(({ kind }) => kind === "place")
            ? []
            : [{ text: label(words, "legend-move"), role: "move" } as const]),
        ],
        sheet,
      ),
      paragraph(label(words, "sheet-true-size"), sheet),
      ...(plan.choices.pins.length === 0
        ? []
        : [heading(label(words, "heading-pins"), sheet), ...list(pinEntries(plan, words), sheet)]),
      heading(label(words, "heading-cautions"), sheet),
      ...list(findingEntries(plan, words), sheet),
      ...bullets(
        cautionsToSay(plan).filter(({ at }) => at === undefined),
        sheet,
      ),
      heading(label(words, "heading-reasons"), sheet),
      ...bullets(plan.reasons, sheet),
      heading(label(words, "heading-steps"), sheet),
      ...togetherIfFree(stepsTable(plan, rulerZero, sheet), room),
      ...(check === undefined ? [] : checkBlocks(plan, check, room, sheet)),
      heading(label(words, "heading-readings"), sheet),
      { ...paragraph(label(words, "sheet-readings", { unit: words.lengths }), sheet), leads: true },
      { ...gap(1), leads: true },
      ...readingsTable(plan, sheet),
    ];
    const description = describePlan(plan, map.unplaced, words, options);
    const foot = (top: number): readonly SvgElement[] => footOf(top, sheet);
    return pagesOf(
      { paper, title: name, description, blocks, footHeight: FOOT_HEIGHT, foot, numberDown: 1 },
      sheet,
    );
  });
}

function fieldsIn(words: Words): readonly SheetField[] {
  return (["client", "date", "artist"] as const).map((field) => ({
    name: label(words, `field-${field}`),
  }));
}

/** What was drawn: in a picture of its own, what to correct, and every figure. */
function checkBlocks(
  plan: BrowPlan,
  check: DrawnCheck,
  room: number,
  sheet: Sheet,
): readonly Block[] {
  const { words } = sheet.brush;
  const dots = checkEntries(check, words).filter((entry) => !("key" in entry && entry.key !== "?"));
  const shown = [
    heading(label(words, "heading-check"), sheet),
    ...(check.dots.length === 0 ? [] : [mapBlock(plan, sheet, { check })]),
    legend(dots, sheet),
    ...listRows(correctionEntries(check, words), 2, sheet),
  ];
  return [...together(shown, room), gap(2), ...checkTable(plan, check, sheet)];
}

function footOf(top: number, sheet: Sheet): readonly SvgElement[] {
  const { width, brush } = sheet;
  const at = inwards(PAPER_MARGIN, sheet);
  const size = PAPER_TYPE.small;
  const look = { size, colour: brush.palette.quiet };
  const beside = { x: at(RULER_LENGTH + 8), side: "start" } as const;
  const lines = wrapped(label(brush.words, "sheet-print"), size, width - RULER_LENGTH - 18);
  const from = [at(1, RULER_LENGTH), top + 3] as const;
  return [
    trueSizeRuler({ from, length: RULER_LENGTH, direction: "across" }, brush),
    ...lines.map((line, index) =>
      textAt(line, beside, top + 1 + index * LINE_HEIGHT * size, look, brush),
    ),
  ];
}
