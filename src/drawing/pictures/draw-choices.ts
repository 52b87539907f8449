import type { PlannableFace, WeighedChoices } from "../../mapping/index.js";
import { refuse, refusingAs } from "../../units/internal.js";
import type { Words } from "../../words/index.js";
import { label } from "../../words/internal.js";
import { element } from "../canvas/svg.js";
import { choiceSection, weighingOf } from "../sheet/choice-section.js";
import { documentSource } from "../sheet/document.js";
import { listOfNotes } from "../sheet/lists.js";
import { type PaperDrawing, printOf } from "../sheet/paper.js";
import { grownEntries, type LegendEntry } from "./legend.js";
import { legendList } from "./legend-list.js";

/**
 * Weighed choices to show to a client or to print, an HTML document of one file: a row for each, in their order, with
 * both brows as they grow and as this choice plans them, and what it does: mean and greatest move,
 * hair to remove, skin to fill, in what the sides still differ, room over the lid, front share.
 * What was ruled out or has no solution says why.
 *
 * Browsers lay it out and break it into pages. Pictures are scaled to their row, all alike; they are not at true size.
 *
 * @throws GeometryError `wrong-count` where nothing was weighed, `out-of-range` where the type is too small or too large,
 * or the paper or the theme is unknown
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
 * const html = drawChoices(face, weighChoices(face, [{ lead: "right" }, { lead: "left" }]));
 * html.includes("1. right leads"); // → true
 * ```
 */
export function drawChoices(
  face: PlannableFace,
  { rows, notes }: WeighedChoices,
  options: PaperDrawing = {},
): string {
  return refusingAs("drawChoices", () => {
    const print = printOf(options);
    if (rows.length === 0) {
      refuse("wrong-count", "weighed.rows", rows, "at least one choice");
    }
    const { words, brush } = print;
    const { title = label(words, "title-choices") } = options;
    const weighing = weighingOf(face, rows);
    const body = [
      element("h1", {}, [title]),
      listOfNotes(notes, words),
      legendList(entriesFor(face, words), brush),
      ...rows.map((row, index) => choiceSection(weighing, row, index + 1, print)),
    ];
    return documentSource(title, body, [], print);
  });
}

function entriesFor(face: PlannableFace, words: Words): readonly LegendEntry[] {
  return [
    ...grownEntries(face, words),
    { text: label(words, "legend-planned"), role: "planned" },
    { text: label(words, "line-midline"), role: "midline" },
  ];
}
