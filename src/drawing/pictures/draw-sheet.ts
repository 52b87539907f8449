import type { BrowPlan, DrawnCheck, Move } from "../../mapping/index.js";
import { type Length, mm, type Note } from "../../units/index.js";
import { type Block, gap, paginated, together } from "../sheet/block.js";
import type { Brush } from "../canvas/brush.js";
import { correctionEntries } from "../layers/check-layer.js";
import { checkTable } from "../sheet/check-table.js";
import { describePlan } from "./describe-plan.js";
import { textAt } from "../canvas/label-layer.js";
import { legendBlock, type LegendEntry } from "./legend.js";
import { mapBlock } from "../sheet/map-block.js";
import { type Look, requireLook } from "../canvas/look.js";
import { pageSource } from "../sheet/page.js";
import { PALETTES } from "../canvas/palette.js";
import { type Paper, PAPER_MARGIN, PAPERS, requirePaper } from "../sheet/paper.js";
import { pinEntries } from "../layers/pins-layer.js";
import type { AlsoShown } from "../layers/plan-layers.js";
import { checkEntries, planLegend } from "./plan-legend.js";
import { readingsTable } from "../sheet/readings-table.js";
import { stepsTable } from "../sheet/steps-table.js";
import type { SvgElement } from "../canvas/svg.js";
import {
  fieldsRow,
  heading,
  list,
  type ListItem,
  listRow,
  PAPER_TYPE,
  paragraph,
  type SheetField,
  title,
} from "../sheet/text-blocks.js";
import { LINE_HEIGHT, wrapped } from "../canvas/text-size.js";
import { requireShort } from "../sheet/require-short.js";
import { RULER_DEPTH, trueSizeRuler } from "../sheet/true-size-ruler.js";
import { uprightView } from "../canvas/view.js";
import { HEADINGS, LEGEND, ON_THE_SHEET } from "./words.js";

/** How {@link drawSheet} draws. */
export interface SheetDrawing extends Look, AlsoShown {
  /** Default `"A4"`. */
  readonly paper?: Paper;
  /** What the artist's ruler shows at the point it is laid to first, see `workSteps`. Default 0. */
  readonly rulerZero?: Length<"mm">;
  /** Written at the head; those without a value get a line to write on. Default: client, date, artist. */
  readonly fields?: readonly SheetField[];
}

/** Fields side by side at the head. */
const FIELD_COLUMNS = 3;
const DEFAULT_FIELDS: readonly SheetField[] = [
  { name: "Client" },
  { name: "Date" },
  { name: "Artist" },
];

/** Length of the ruler at the foot of every page, in millimetres. */
const RULER_LENGTH = 100;
const FOOT_HEIGHT = RULER_DEPTH + 3;

/**
 * A plan as a sheet to print at true size: the face with outlines, dots, lengths and numbered
 * moves, then pinned dots where there are any, the cautions, the work step by step with the ruler's
 * readings that check it, the reasons, the check of what was drawn where it is given, and
 * everything that is read on the brows with decisions.
 *
 * One SVG for each page, its size in millimetres on paper. The face is drawn as it is seen from the
 * front. Rulers are printed on it so that a printer that stretches gives itself away.
 *
 * @throws GeometryError `out-of-range` where the face is too wide for the paper, the title or the
 * fields are too long for it, or the paper or the theme is unknown
 *
 * @example
 * ```ts
 * import { drawSheet, mm, planBrows } from "brow-geometry";
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
  requireLook("drawSheet", options);
  requirePaper("drawSheet", options.paper);
  const { paper = "A4", theme = "light" } = options;
  const size = PAPERS[paper];
  const width = size.width - 2 * PAPER_MARGIN;
  const brush: Brush = { view: uprightView([0, 0]), palette: PALETTES[theme], onPhoto: false };
  const overlap = options.overlap ?? false;
  const map = mapBlock(plan, width, brush.palette, { overlap });
  const room = size.height - 2 * PAPER_MARGIN - FOOT_HEIGHT;
  const named = title(options.title ?? "Brow map", width, brush);
  const fields = rowsOf(options.fields ?? DEFAULT_FIELDS, FIELD_COLUMNS).map((inRow) =>
    fieldsRow(inRow, FIELD_COLUMNS, width, brush),
  );
  requireShort("drawSheet", "title", [named], options.title);
  requireShort("drawSheet", "fields", fields, options.fields);
  const bullets = (notes: readonly Note[]): readonly Block[] =>
    list(
      notes.map(({ text }) => ({ mark: "•", text })),
      width,
      brush,
    );
  const blocks: readonly Block[] = [
    named,
    gap(1),
    ...fields,
    map,
    legendBlock([...planLegend({ ...plan, reasons: [] }, { overlap }), MOVE_ENTRY], width, brush),
    paragraph(ON_THE_SHEET["true-size"], width, brush),
    heading(HEADINGS.moves, width, brush),
    ...rowsOf(numbered(plan.moves), 2).map((items) => listRow(items, 2, width, brush)),
    ...(plan.choices.pins.length === 0
      ? []
      : [
          heading(HEADINGS.pins, width, brush),
          ...list(
            pinEntries(plan).map(({ key, text }) => ({ mark: key, text })),
            width,
            brush,
          ),
        ]),
    heading(HEADINGS.cautions, width, brush),
    ...bullets(plan.cautions),
    heading(HEADINGS.steps, width, brush),
    ...together(stepsTable(plan, options.rulerZero ?? mm(0), width, brush), room),
    heading(HEADINGS.reasons, width, brush),
    ...bullets(plan.reasons),
    ...(options.check === undefined ? [] : checkBlocks(plan, options.check, width, room, brush)),
    heading(HEADINGS.readings, width, brush),
    { ...paragraph(ON_THE_SHEET.readings, width, brush), leads: true },
    { ...gap(1), leads: true },
    ...readingsTable(plan, width, brush),
  ];
  const pages = paginated(blocks, room);
  return pages.map((page, index) =>
    pageSource(
      {
        paper,
        title: `${options.title ?? "Brow map"}, page ${index + 1} of ${pages.length}`,
        description: describePlan(plan, map.unplaced, options),
        blocks: page,
        foot: foot(`${index + 1} / ${pages.length}`, PAPER_MARGIN + room, width, brush),
      },
      brush,
    ),
  );
}

const MOVE_ENTRY: LegendEntry = { text: LEGEND.move, role: "move" };

/** What was drawn: in a picture of its own, what to correct, and every figure. */
function checkBlocks(
  plan: BrowPlan,
  check: DrawnCheck,
  width: number,
  room: number,
  brush: Brush,
): readonly Block[] {
  const dots = checkEntries(check).filter((entry) => !("key" in entry && entry.key !== "?"));
  const corrections = correctionEntries(check).map(({ key, text }) => ({ mark: key, text }));
  return [
    ...together(
      [
        heading(HEADINGS.check, width, brush),
        ...(check.dots.length === 0 ? [] : [mapBlock(plan, width, brush.palette, { check })]),
        legendBlock(dots, width, brush),
        ...rowsOf(corrections, 2).map((items) => listRow(items, 2, width, brush)),
      ],
      room,
    ),
    gap(2),
    ...checkTable(plan, check, width, brush),
  ];
}

function foot(page: string, top: number, width: number, brush: Brush): readonly SvgElement[] {
  const size = PAPER_TYPE.small;
  const look = { size, colour: brush.palette.quiet };
  const beside = PAPER_MARGIN + RULER_LENGTH + 8;
  const lines = wrapped(ON_THE_SHEET.print, size, width - RULER_LENGTH - 18);
  return [
    trueSizeRuler(
      { from: [PAPER_MARGIN + 1, top + 3], length: RULER_LENGTH, direction: "across" },
      brush,
    ),
    ...lines.map((line, index) =>
      textAt(line, { x: beside, side: "start" }, top + 1 + index * LINE_HEIGHT * size, look, brush),
    ),
    textAt(page, { x: PAPER_MARGIN + width, side: "end" }, top + 1, look, brush),
  ];
}

function numbered(moves: readonly Move[]): readonly ListItem[] {
  return moves.map(({ text }, index) => ({ mark: `${index + 1}.`, text }));
}

function rowsOf<Item>(items: readonly Item[], columns: number): readonly (readonly Item[])[] {
  return Array.from({ length: Math.ceil(items.length / columns) }, (_, row) =>
    items.slice(row * columns, (row + 1) * columns),
  );
}
