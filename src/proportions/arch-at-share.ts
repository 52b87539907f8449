import { distance, type PolylinePlace } from "../geometry/index.js";
import { rootBetween } from "../geometry/internal.js";
import { type Skin } from "../landmarks/index.js";
import { byRuler } from "../landmarks/internal.js";
import { flatPoint, length, type Point, type Polyline } from "../units/index.js";
import {
  refuse,
  requireFinite,
  requirePolyline,
  shownValue,
  refusingAs,
} from "../units/internal.js";
import { shareOf } from "./front-share.js";

/**
 * `"brow-length-share"`: the place on a border where the front, from the start to it, takes the given
 * share of front and tail together, both straight on the skin, by ruler.
 *
 * Two thirds for the front is trade practice, without a source; Pham, Wilhelmi & Mowlavi, Aesthet
 * Surg J 2010;30:297–300, find the arch near the junction of medial two thirds and lateral third. It
 * is another rule than any vertical: on 244 frontal faces it falls about 1.03 eye widths from
 * endocanthion (measured by us), lateral of the outer corner of the eye.
 *
 * @throws GeometryError `wrong-count`, `not-finite`; `out-of-range` where the share is not between 0
 * and 1; `no-solution` where no place of the border divides the brow so
 *
 * @example
 * ```ts
 * import { archAtShare } from "brow-geometry/proportions";
 * import { mm } from "brow-geometry";
 * const [start, tailEnd] = [mm([15, 20]), mm([60, 20])];
 * const border = [start, tailEnd];
 * archAtShare(border, start, tailEnd, { kind: "flat" }, 2 / 3).at; // → [45.0000, 20.0000]
 * ```
 */
export function archAtShare(
  border: Polyline<"mm">,
  start: Point<"mm">,
  tailEnd: Point<"mm">,
  skin: Skin,
  share: number,
): PolylinePlace<"mm"> {
  return refusingAs("archAtShare", () => {
    requireQuestion(border, share);
    return placeAtShare(border, start, tailEnd, skin, share);
  });
}

/** As {@link archAtShare}, on a border and for a share that were looked at before. */
export function placeAtShare(
  border: Polyline<"mm">,
  start: Point<"mm">,
  tailEnd: Point<"mm">,
  skin: Skin,
  share: number,
): PolylinePlace<"mm"> {
  const excessAt = (at: Point<"mm">): number =>
    shareOf(byRuler(start, at, skin), byRuler(at, tailEnd, skin)) - share;
  let way = 0;
  let from = border[0] as Point<"mm">;
  let excess = excessAt(from);
  for (const to of border.slice(1)) {
    const size = distance(from, to);
    const excessAtEnd = excessAt(to);
    if (excess <= 0 && excessAtEnd >= 0 && size > 0) {
      const [begin, end] = [from, to];
      const placeAt = (part: number): Point<"mm"> =>
        flatPoint(begin[0] + part * (end[0] - begin[0]), begin[1] + part * (end[1] - begin[1]));
      const part = rootBetween(0, 1, (at) => excessAt(placeAt(at))) ?? 0;
      const [x, y] = placeAt(part);
      return { at: flatPoint(x, y), along: length(way + part * size), extended: false };
    }
    way += size;
    [from, excess] = [to, excessAtEnd];
  }
  const need = `a place that gives the front ${shownValue(share)} of the whole`;
  refuse("no-solution", "border", border, need);
}

function requireQuestion(border: Polyline<"mm">, share: number): void {
  requirePolyline("border", border, 2);
  requireFinite("share", share);
  if (share <= 0 || share >= 1) {
    refuse("out-of-range", "share", share, "a share between 0 and 1");
  }
}
