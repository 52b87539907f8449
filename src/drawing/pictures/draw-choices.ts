import type { PlannableFace, WeighedChoices } from "../../mapping/index.js";
import { refuse, refusingAs } from "../../units/internal.js";
import { say, type Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { type Block, gap, together } from "../sheet/block.js";
import { choiceBlocks, weighingOf } from "../sheet/choice-block.js";
import { grownEntries, legend, type LegendEntry } from "./legend.js";
import type { Look } from "../canvas/look.js";
import { pagesOf, requireShort, roomOn, sheetOn } from "../sheet/page.js";
import type { Paper } from "../sheet/paper.js";
import { bullets, PAPER_TYPE, title } from "../sheet/text-blocks.js";
import { lineOf } from "../canvas/text-size.js";

/** How {@link drawChoices} draws. */
export interface ChoicesDrawing extends Look {
  /** Default `"A4"`. */
  readonly paper?: Paper;
}

const FOOT_HEIGHT = 6;

function entriesFor(face: PlannableFace, words: Words): readonly LegendEntry[] {
  return [
    ...grownEntries(face, words),
    { text: label(words, "legend-planned"), role: "planned" },
    { text: label(words, "line-midline"), role: "midline" },
  ];
}

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
 * import { mm, type PlannableFace } from "brow-geometry";
 * import { drawChoices } from "brow-geometry/drawing";
 * import { weighChoices } from "brow-geometry/mapping";
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
  return refusingAs("drawChoices", () => {
    const { paper, sheet } = sheetOn(options);
    if (rows.length === 0) {
      refuse("wrong-count", "weighed.rows", rows, "at least one choice");
    }
    const { words } = sheet.brush;
    const { title: name = label(words, "title-choices") } = options;
    const named = title(name, sheet);
    requireShort("title", [named], options.title);
    const weighing = weighingOf(face, rows);
    const room = roomOn(paper, FOOT_HEIGHT);
    const blocks: readonly Block[] = [
      named,
      gap(1),
      ...bullets(notes, sheet),
      legend(entriesFor(face, words), sheet),
      ...rows.flatMap((row, index) =>
        together(choiceBlocks(weighing, row, index + 1, sheet), room),
      ),
    ];
    const description = rows
      .map(
        ({ reasons }, row) =>
          `${row + 1}: ${reasons.map((reason) => say(reason, words)).join(" ")}`,
      )
      .join(" ");
    const numberDown = FOOT_HEIGHT - lineOf(PAPER_TYPE.small);
    return pagesOf(
      { paper, title: name, description, blocks, footHeight: FOOT_HEIGHT, numberDown },
      sheet,
    );
  });
}
