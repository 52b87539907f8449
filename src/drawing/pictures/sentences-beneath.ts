import { besidePhoto } from "../canvas/brush.js";
import { linesAt } from "../canvas/label-layer.js";
import { type Block, inwards, type Room } from "../canvas/block.js";
import { element } from "../canvas/svg.js";
import { lineOf, wrapped } from "../canvas/text-size.js";
import { typeSize } from "../canvas/view.js";

/** Room around the sentences, in steps, as a legend has it. */
const PADDING = 3;

/** What there is to say of a picture, one sentence below the other, over its whole width. */
export function sentencesBeneath(sentences: readonly string[], within: Room): Block {
  const { width, brush } = within;
  const { size } = brush.view;
  const look = { size: typeSize("legend", brush.view), colour: brush.palette.ink };
  const room = PADDING * size;
  const lines = sentences.flatMap((one) => wrapped(one, look.size, width - 2 * room));
  return {
    height: lines.length === 0 ? 0 : lines.length * lineOf(look.size) + room,
    drawnAt: (left, top) => [
      element(
        "g",
        { class: "notes" },
        linesAt(
          lines,
          { x: inwards(left, within)(room), side: "start" },
          top,
          look,
          besidePhoto(brush),
        ),
      ),
    ],
  };
}
