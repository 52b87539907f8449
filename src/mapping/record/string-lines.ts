import { distanceFromLine } from "../../geometry/index.js";
import type { Dot, SideLandmark } from "../../landmarks/index.js";
import { GUIDES } from "../../landmarks/index.js";
import { flatPoint, type FlatPoint, type Note, type Side } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { stepNote, type StringCode } from "./notes.js";

/** A point to mark on the skin; `say` names it. */
export interface StringPoint extends Note<StringCode> {
  /** In the face space. */
  readonly at: FlatPoint<"mm">;
}

/** A line along which a thread is laid, from one point to another; `say` tells it in words. */
export interface StringLine extends Note<StringCode> {
  /** Which of the points it is laid through, by their place in the list. */
  readonly through: readonly [from: number, to: number];
}

/** What to mark, in order, and then what a thread is laid along. */
export interface StringLines {
  readonly points: readonly StringPoint[];
  readonly lines: readonly StringLine[];
}

/**
 * A plan for work with a thread: which points to mark, in order, and which lines the thread is laid along
 * through them. The midline comes first, then what lies across both brows, then guides and borders side by side.
 *
 * The order is trade practice, no source. A thread lies straight as seen from the front; borders bend between
 * their dots.
 *
 * @example
 * ```ts
 * import { mm, planDots, type PlannableFace, say } from "brow-geometry";
 * import { stringLines } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 17, 20], [sign * 38, 27], [sign * 57, 18]]) },
 * });
 * const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
 * const { points, lines } = stringLines(planDots(face));
 * lines.slice(0, 2).map((line) => say(line)); // → ["along the midline", "across both brows at the start"]
 * const [from = 0] = lines[1]?.through ?? [];
 * const first = points[from];
 * first && say(first); // → "right start"
 * ```
 */
export function stringLines({ face, guides, dots }: PlannedDots): StringLines {
  const points: StringPoint[] = [];
  const numberOf = (point: StringPoint): number => {
    const known = points.findIndex(
      ({ code, at }) => code === point.code && at[0] === point.at[0] && at[1] === point.at[1],
    );
    return known < 0 ? points.push(point) - 1 : known;
  };
  const onMidline = (height: number): number =>
    numberOf({ ...stepNote("mark-midline"), at: flatPoint(0, height) });
  const atLandmark = (side: Side, landmark: SideLandmark, at: FlatPoint<"mm">): number =>
    numberOf({ ...stepNote("mark-landmark", { side, landmark }), at });
  const atDot = (side: Side, dot: Dot): number => {
    const [x, y] = dots[side][dot];
    return numberOf({ ...stepNote("mark-dot", { side, dot }), at: flatPoint(x, y) });
  };
  const highest = Math.max(dots.right.upperArch[1], dots.left.upperArch[1]);
  const lines: StringLine[] = [
    { ...stepNote("thread-midline"), through: [onMidline(highest), onMidline(0)] },
    ...ACROSS.map((dot): StringLine => {
      return {
        ...stepNote("thread-across", { dot }),
        through: [atDot("right", dot), atDot("left", dot)],
      };
    }),
  ];
  for (const side of SIDES) {
    for (const { mark, convention: rule, line } of guides[side]) {
      const [landmark] = GUIDES[rule].through;
      const at = face[side][landmark];
      const dot = DOT_OF[mark];
      // A dot that yields to its hair lies off its guide.
      if (at === undefined || Math.abs(distanceFromLine(dots[side][dot], line)) > OFF) continue;
      const from = atLandmark(side, landmark, flatPoint(at[0], at[1]));
      const to = atDot(side, dot);
      lines.push({ ...stepNote("thread-guide", { side, mark, rule }), through: [from, to] });
    }
    for (const [from, to] of BORDERS) {
      const through = [atDot(side, from), atDot(side, to)] as const;
      lines.push({ ...stepNote("thread-border", { side, from, to }), through });
    }
  }
  return { points, lines };
}

/** Which dot each guide aims at. */
const DOT_OF = { start: "upperStart", arch: "upperArch", tail: "tailEnd" } as const;

/** How far off its guide a dot may lie, in mm: as fine as a pencil draws. */
const OFF = 0.5;

/** Dots of both brows that a thread is laid across, in the order of work. */
const ACROSS: readonly Dot[] = ["upperStart", "lowerStart", "upperArch", "tailEnd"];

/** Stretches of a border between two dots. */
const BORDERS: readonly (readonly [from: Dot, to: Dot])[] = [
  ["upperStart", "upperArch"],
  ["upperArch", "tailEnd"],
  ["lowerStart", "lowerArch"],
  ["lowerArch", "tailEnd"],
];
