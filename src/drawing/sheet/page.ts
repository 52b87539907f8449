import { type Block, drawnBlocks } from "./block.js";
import type { Brush } from "../canvas/brush.js";
import { type Paper, PAPER_MARGIN, PAPERS } from "./paper.js";
import { element, type SvgElement, svgSource } from "../canvas/svg.js";
import { FONT_FAMILY } from "../canvas/text-size.js";

/** A page of a printed document. */
export interface Page {
  readonly paper: Paper;
  readonly title: string;
  readonly description: string;
  readonly blocks: readonly Block[];
  /** At the foot of the page, beneath the room of the blocks. */
  readonly foot: readonly SvgElement[];
}

/** One page as an SVG of its paper's size, a unit of it a millimetre on paper. */
export function pageSource(
  { paper, title, description, blocks, foot }: Page,
  brush: Brush,
): string {
  const size = PAPERS[paper];
  return svgSource(
    element(
      "svg",
      {
        xmlns: "http://www.w3.org/2000/svg",
        width: `${size.width}mm`,
        height: `${size.height}mm`,
        viewBox: `0 0 ${size.width} ${size.height}`,
        role: "img",
        "font-family": FONT_FAMILY,
      },
      [
        element("title", {}, [title]),
        element("desc", {}, [description]),
        // Browsers otherwise add margins of their own, and shrink the sheet or cut it in two.
        element("style", {}, [`@page{size:${size.width}mm ${size.height}mm;margin:0}`]),
        element("rect", { ...size, fill: brush.palette.paper }),
        ...drawnBlocks(blocks, PAPER_MARGIN, PAPER_MARGIN),
        ...foot,
      ],
    ),
  );
}
