import type { PlannableFace, WeighedChoices } from "../../mapping/index.js";
import { GeometryError } from "../../units/index.js";
import { type Block, gap, paginated, together } from "../sheet/block.js";
import type { Brush } from "../canvas/brush.js";
import { choiceBlocks, weighingOf } from "../sheet/choice-block.js";
import { textAt } from "../canvas/label-layer.js";
import { legendBlock, type LegendEntry } from "./legend.js";
import { type Look, requireLook } from "../canvas/look.js";
import { pageSource } from "../sheet/page.js";
import { PALETTES } from "../canvas/palette.js";
import { type Paper, PAPER_MARGIN, PAPERS, requirePaper } from "../sheet/paper.js";
import { requireShort } from "../sheet/require-short.js";
import { lineOf, list, PAPER_TYPE, title } from "../sheet/text-blocks.js";
import { uprightView } from "../canvas/view.js";
import { LEGEND } from "./words.js";

/** How {@link drawChoices} draws. */
export interface ChoicesDrawing extends Look {
  /** Default `"A4"`. */
  readonly paper?: Paper;
}

const FOOT_HEIGHT = 6;

const ENTRIES: readonly LegendEntry[] = [
  { text: LEGEND.natural, role: "natural" },
  { text: LEGEND.planned, role: "planned" },
  { text: LEGEND.midline, role: "midline" },
];

/**
 * Weighed choices as pages to show to a client or to print: a row for each, in their order, with
 * both brows as they grow and as this choice plans them, and what it does: mean and greatest move,
 * hair to remove, skin to fill, in what the sides still differ, room over the lid, front share.
 * What was ruled out or has no solution says why.
 *
 * One SVG for each page. Pictures are scaled to their row, all alike; they are not at true size.
 *
 * @throws GeometryError `wrong-count` where nothing was weighed, `out-of-range` where the title is
 * too long for the first page, or the paper or the theme is unknown
 *
 * @example
 * ```ts
 * import { drawChoices, mm, type PlannableFace, weighChoices } from "brow-geometry";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 17, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
 * const [page] = drawChoices(face, weighChoices(face, [{ lead: "right" }, { lead: "left" }]));
 * page?.includes("1. right leads"); // → true
 * ```
 */
export function drawChoices(
  face: PlannableFace,
  { rows, notes }: WeighedChoices,
  options: ChoicesDrawing = {},
): readonly string[] {
  requireLook("drawChoices", options);
  requirePaper("drawChoices", options.paper);
  if (rows.length === 0) throw nothingWeighed(rows);
  const { paper = "A4", theme = "light", title: name = "Choices weighed" } = options;
  const { width: paperWidth, height: paperHeight } = PAPERS[paper];
  const width = paperWidth - 2 * PAPER_MARGIN;
  const room = paperHeight - 2 * PAPER_MARGIN - FOOT_HEIGHT;
  const brush: Brush = { view: uprightView([0, 0]), palette: PALETTES[theme], onPhoto: false };
  const named = title(name, width, brush);
  requireShort("drawChoices", "title", [named], options.title);
  const weighing = weighingOf(face, rows);
  const blocks: readonly Block[] = [
    named,
    gap(1),
    ...list(
      notes.map(({ text }) => ({ mark: "•", text })),
      width,
      brush,
    ),
    legendBlock(ENTRIES, width, brush),
    ...rows.flatMap((row, index) =>
      together(choiceBlocks(weighing, row, index + 1, width, brush), room),
    ),
  ];
  const pages = paginated(blocks, room);
  return pages.map((page, index) => {
    const number = `${index + 1} / ${pages.length}`;
    const look = { size: PAPER_TYPE.small, colour: brush.palette.quiet };
    const right = { x: PAPER_MARGIN + width, side: "end" } as const;
    const top = paperHeight - PAPER_MARGIN - lineOf(PAPER_TYPE.small);
    return pageSource(
      {
        paper,
        title: `${name}, page ${index + 1} of ${pages.length}`,
        description: rows
          .map(({ reasons }, row) => `${row + 1}: ${reasons.map(({ text }) => text).join(" ")}`)
          .join(" "),
        blocks: page,
        foot: [textAt(number, right, top, look, brush)],
      },
      brush,
    );
  });
}

function nothingWeighed(value: unknown): GeometryError {
  const need = "at least one choice";
  return new GeometryError("wrong-count", {
    where: "drawChoices",
    field: "weighed.rows",
    value,
    need,
  });
}
