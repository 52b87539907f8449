import { heightOver } from "../../geometry/internal.js";
import type { BrowDots, CompleteDots, Dot, FaceSide } from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import { deepPoint, flatPoint, hasDepth, length, type Point } from "../../units/index.js";
import { keysOf } from "../../units/internal.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import { fillFrom, type Row } from "./mean-slopes.js";

/** What planned readings follow from, on one side: its dots, the eye's outer corner, pupil and upper lid. */
export const AFTER_DOTS: number = 2 * DOT_NAMES.length;
/** The dots of the upper border stand first. */
export const AFTER_UPPER = 8;
export const PLACED: number = AFTER_DOTS + 4;

/**
 * Each dot stands in a row by how it lies from the middle of others: so that dots moved one by one still
 * make a brow.
 */
const LIES_FROM: { readonly [Name in Dot]: readonly Dot[] } = {
  upperStart: [],
  upperArch: [],
  tailEnd: [],
  upperBody: ["upperStart", "upperArch"],
  lowerStart: ["upperStart"],
  lowerBody: ["upperBody"],
  lowerArch: ["upperArch"],
};
const IN_ROW = keysOf(LIES_FROM);

export function fillDots(row: Row, start: number, dots: CompleteDots<"mm">): void {
  for (let index = 0; index < IN_ROW.length; index += 1) {
    const dot = IN_ROW[index] as Dot;
    const at = dots[dot];
    const from = middleOf(LIES_FROM[dot], dots);
    row[start + 2 * index] = at[0] - from[0];
    row[start + 2 * index + 1] = at[1] - from[1];
  }
}

export function dotsIn(row: Row): CompleteDots<"mm"> {
  const dots: { [Name in Dot]?: Point<"mm"> } = {};
  for (let index = 0; index < IN_ROW.length; index += 1) {
    const dot = IN_ROW[index] as Dot;
    const at = placeIn(row, 2 * index);
    const from = middleOf(LIES_FROM[dot], dots);
    dots[dot] = flatPoint(at[0] + from[0], at[1] + from[1]);
  }
  return dots as CompleteDots<"mm">;
}

function middleOf(names: readonly Dot[], dots: BrowDots<"mm">): Point<"mm"> {
  let x = 0;
  let y = 0;
  for (const name of names) {
    const place = dots[name] as Point<"mm">;
    x += place[0] / names.length;
    y += place[1] / names.length;
  }
  return flatPoint(x, y);
}

function placeIn(row: Row, index: number): Point<"mm"> {
  return flatPoint(row[index] as number, row[index + 1] as number);
}

/** The eye of a side with its corner and its lid elsewhere; the lid is level as far as it is read. */
export function eyeIn(placed: Row, { exocanthion }: PlannableFace["left"]): FaceSide<"mm"> {
  const [outer, height] = placeIn(placed, AFTER_DOTS);
  // How deep the corner lies is known apart from where it is seen.
  const corner = hasDepth(exocanthion)
    ? deepPoint<"mm">(outer, height, exocanthion[2])
    : flatPoint<"mm">(outer, height);
  const [x, lid] = placeIn(placed, AFTER_DOTS + 2);
  if (Number.isNaN(lid)) return { exocanthion: corner };
  const upperLid = [flatPoint<"mm">(x - 1, lid), flatPoint<"mm">(x + 1, lid)];
  return { exocanthion: corner, pupil: flatPoint(x, lid), upperLid };
}

/** Writes the eye of a side behind its dots. */
export function fillEye(row: Row, start: number, side: PlannableFace["left"]): void {
  fillFrom(row, start + AFTER_DOTS, eyeOf(side));
}

/** What planned readings follow from beside the dots. */
function eyeOf({ exocanthion, pupil, upperLid }: PlannableFace["left"]): Row {
  const lid = pupil && upperLid && heightOver(length<"mm">(pupil[0]), upperLid);
  const [x, y] =
    pupil === undefined || lid === undefined ? [Number.NaN, Number.NaN] : [pupil[0], lid];
  return [exocanthion[0], exocanthion[1], x, y];
}
