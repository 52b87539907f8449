import { eachSide, measured, type Point, type Side } from "../../units/index.js";
import { refuse, refusingAs, SIDES } from "../../units/internal.js";
import { ENGLISH, type Words } from "../../words/index.js";
import { label, lengthSign } from "../../words/internal.js";
import { brushOf } from "../canvas/brush.js";
import { composeBeside, type Crowding } from "../canvas/compose.js";
import {
  capturePanel,
  COMPARED,
  extentAround,
  type LaidCapture,
  laidOver,
  type NamedCapture,
} from "./capture-panel.js";
import { eyeRoom, roomOutline } from "../layers/eye-room.js";
import { legend, type LegendEntry } from "./legend.js";
import { leastOn, requireLook, type ScreenDrawing } from "../canvas/look.js";
import { element, pictureSource } from "../canvas/svg.js";
import { uprightSize, uprightView } from "../canvas/view.js";
import { changeWithUncertainty, lengths, uncertainLength } from "../canvas/figures.js";

/**
 * Captures of one face one below the other, upright and at the same scale, each laid over the first
 * by landmarks that do not move: heights of start, arch and tail end in the first, and how far up
 * or down they lie in the others.
 *
 * Coordinates are millimetres on the first face. What moved sideways is seen, and read by
 * `compareCaptures`.
 *
 * @throws GeometryError `wrong-count` where there is no capture, `out-of-range` for an unknown option or theme, or a
 * screen whose width or type size is out of range, and what `naturalDots` and `compareCaptures` throw
 *
 * @example
 * ```ts
 * import { mm } from "brow-geometry";
 * import { drawCaptures } from "brow-geometry/drawing";
 * const side = (sign: 1 | -1, up: number) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   brow: { upper: [mm([sign * 15, 20 + up]), mm([sign * 38, 27 + up]), mm([sign * 57, 18 + up])] },
 * });
 * const upright = { right: side(-1, 0), left: side(1, 0), midline: {} };
 * const lying = { right: side(-1, 1), left: side(1, 1), midline: {} };
 * drawCaptures([{ name: "upright", face: upright }, { name: "lying", face: lying }]).includes("+1.0"); // → true
 * ```
 */
export function drawCaptures(captures: readonly NamedCapture[], look: ScreenDrawing = {}): string {
  return refusingAs("drawCaptures", () => {
    requireLook(look);
    const laid = laidOver(requireSome(captures));
    const { words = ENGLISH } = look;
    const { title = label(words, "title-captures") } = look;
    const [first] = laid;
    const size = uprightSize(first.face);
    const extent = extentAround(
      first.face,
      laid.flatMap(({ face }) => SIDES.flatMap((side) => pointsOf(face[side]))),
      size,
    );
    const brush = brushOf(uprightView([0, 0], size, leastOn(extent.width, look)), look);
    const rows = laid.map((capture, row) => (crowding: Crowding) => {
      const box = { ...extent, x: 0, y: row * extent.height };
      return capturePanel(capture, first, { box, extent, flat: brush, crowding });
    });
    const { elements, unplaced, keyed } = composeBeside(rows, look);
    const explained = legend([...entriesFor(laid, words), ...keyed], {
      width: extent.width,
      brush,
    });
    const rowsHeight = laid.length * extent.height;
    const height = rowsHeight + explained.height;
    return pictureSource(
      { viewBox: `0 0 ${extent.width.toFixed(3)} ${height.toFixed(3)}` },
      title,
      describe(laid, unplaced, words),
      words,
      [
        element("rect", { width: extent.width, height, fill: brush.palette.backdrop }),
        ...elements,
        ...explained.drawnAt(0, rowsHeight),
      ],
    );
  });
}

function pointsOf({
  endocanthion,
  exocanthion,
  brow,
}: NamedCapture["face"]["left"]): readonly Point<"mm">[] {
  const room = roomOutline(eyeRoom({ endocanthion, exocanthion }));
  return [...room, ...brow.upper, ...(brow.lower ?? [])];
}

function requireSome(
  captures: readonly NamedCapture[],
): readonly [NamedCapture, ...NamedCapture[]] {
  const [first, ...others] = captures;
  if (first !== undefined) return [first, ...others];
  refuse("wrong-count", "captures", captures, "at least one capture");
}

function entriesFor(
  [first, ...others]: readonly [LaidCapture, ...LaidCapture[]],
  words: Words,
): readonly LegendEntry[] {
  if (others.length === 0) {
    return [{ text: label(words, "legend-level"), role: "ruler" }];
  }
  return [
    { text: label(words, "legend-capture"), role: "capture" },
    { text: label(words, "legend-first-capture", { name: first.name }), role: "natural" },
    { text: label(words, "legend-first-level"), role: "ruler" },
    {
      text: label(words, "legend-change", { unit: lengthSign(words) }),
      role: "landmark",
      marker: "triangle",
    },
  ];
}

function describe(
  captures: readonly LaidCapture[],
  unplaced: readonly string[],
  words: Words,
): string {
  return [
    label(words, "described-captures"),
    ...captures.map((capture) => {
      const sides = eachSide((side) => describeSide(capture, side, words));
      return label(words, "described-capture", { name: capture.name, ...sides });
    }),
    ...(unplaced.length === 0
      ? []
      : [label(words, "described-unplaced", { labels: unplaced.join("; ") })]),
  ].join(" ");
}

function describeSide({ dots, heightU, change }: LaidCapture, side: Side, words: Words): string {
  return COMPARED.flatMap((dot) => {
    const at = dots[side][dot];
    const shift = change?.displacements[side][dot];
    if (change !== undefined) {
      return shift === undefined
        ? []
        : [`${words.terms.dots[dot]} ${changeWithUncertainty(shift.up, lengths(words), words)}`];
    }
    return at === undefined
      ? []
      : [`${words.terms.dots[dot]} ${uncertainLength(measured(at[1], heightU), words)}`];
  }).join(words.separator);
}
