import { heightOver, hermiteAt } from "../../geometry/internal.js";
import type { CompleteDots } from "../../landmarks/index.js";
import { PLACED_DOTS } from "../../landmarks/internal.js";
import { BORDER_END, browCurves, outwardsOf, STATIONS } from "../../proportions/internal.js";
import {
  flatPoint,
  type FlatPoint,
  length,
  type Note,
  type NoteValues,
  type Point,
  type Side,
} from "../../units/index.js";
import {
  keysOf,
  refusingAs,
  requireFinite,
  requireNames,
  SIDES,
  toDegrees,
} from "../../units/internal.js";
import { isHair } from "../dots/is-hair.js";
import { borderMove } from "../dots/border-move.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { PlannedDots, SettledChoices } from "../dots/planned-dots.js";
import { SHAPE_LIMITS, type ShapeLimits } from "./shape-limits.js";
import { type Beyond, type ShapeCode, type ShapeNotes } from "./notes.js";

/** Something in the shape of a plan that no artist passes over: its `value` exceeds its `limit`. */
export interface ShapeFinding extends Note<ShapeCode> {
  /** Where it lies, in the face space. */
  readonly at: FlatPoint<"mm">;
}

/**
 * What in the shape of a plan asks for a second look: a tail that falls steeply or ends too high or too
 * low, a steep front, a brow that thickens towards the arch, a lid space that closes, dots far from where
 * they grow. Empty for a plan that may be drawn as it is.
 *
 * @param limits those of {@link SHAPE_LIMITS} that are to be others
 * @throws GeometryError `out-of-range` for a limit of another name; `not-finite`
 *
 * @example
 * ```ts
 * import { mm, planDots, type PlannableFace, shapeFindings } from "brow-geometry";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: [mm([sign * 15, 20]), mm([sign * 38, 27]), mm([sign * 50, 23]), mm([sign * 57, 18])] },
 * });
 * const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
 * shapeFindings(planDots(face)); // → []
 * const thickness = { start: mm(5), body: mm(7), arch: mm(7) };
 * shapeFindings(planDots(face, { thickness }))[0]?.code; // → "thickens-outward"
 * ```
 */
export function shapeFindings(
  plan: PlannedDots,
  limits: Partial<ShapeLimits> = {},
): readonly ShapeFinding[] {
  return refusingAs("shapeFindings", () => findingsOf(plan, limits));
}

/** {@link shapeFindings}, asked for by another function. */
export function findingsOf(
  plan: PlannedDots,
  limits: Partial<ShapeLimits> = {},
): readonly ShapeFinding[] {
  requireLimits(limits);
  const most = { ...SHAPE_LIMITS, ...limits };
  return SIDES.flatMap((side) =>
    looksAt(plan, side).flatMap(({ code, value, at: [x, y], said }): readonly ShapeFinding[] => {
      const limit = most[code];
      if (!(value > limit)) return [];
      return [{ code, values: { side, value, limit, ...said }, at: flatPoint(x, y) }];
    }),
  );
}

function requireLimits(limits: Partial<ShapeLimits>): void {
  requireNames("limits", limits, keysOf(SHAPE_LIMITS));
  for (const [code, limit] of Object.entries(limits)) {
    requireFinite(`limits.${code}`, limit);
  }
}

/** What is looked at in one place of a brow. */
interface Look {
  readonly code: ShapeCode;
  readonly value: number;
  readonly at: Point<"mm">;
  readonly said: NoteValues;
}

function look<Code extends ShapeCode>(
  code: Code,
  value: number,
  at: Point<"mm">,
  said: Omit<ShapeNotes[Code], keyof Beyond> & NoteValues,
): Look {
  return { code, value, at, said };
}

/** Everything that is looked at on one brow, with its value. */
function looksAt({ dots, natural, face, choices }: PlannedDots, side: Side): readonly Look[] {
  const planned = dots[side];
  const { upperStart, upperArch, tailEnd, lowerStart, lowerArch } = planned;
  const outwards = outwardsOf(planned);
  const rise = (from: Point<"mm">, to: Point<"mm">): number =>
    toDegrees(Math.atan2(to[1] - from[1], outwards * (to[0] - from[0])));
  const stations = keysOf(STATIONS).map((station) => {
    const { upper, lower } = STATIONS[station];
    return { station, at: planned[lower], thickness: planned[upper][1] - planned[lower][1] };
  });
  return [
    look("tail-steep", -rise(upperArch, tailEnd), tailEnd, {}),
    look("front-steep", rise(upperStart, upperArch), upperStart, {}),
    look("tail-above-arch", tailEnd[1] - (upperArch[1] + lowerArch[1]) / 2, tailEnd, {}),
    look("tail-below-start", lowerStart[1] - tailEnd[1], tailEnd, {}),
    ...stations.map(({ station, at, thickness }, index) => {
      const before = stations[index - 1]?.thickness ?? thickness;
      return look("thickens-outward", thickness - before, at, { station });
    }),
    ...(isHair(face, side) ? lidSpaceCloses(face[side], planned, choices) : []),
    ...PLACED_DOTS.map((dot) => {
      const [up, outward] = borderMove(dot, planned, natural[side].dots, face[side].brow);
      const at = planned[dot];
      const added = outwards * (at[0] - face[side].endocanthion[0]) - TAIL_FREE;
      // Not a number where no hair is beside a tail's end.
      const off = Math.hypot(up, outward || 0) || Math.min(outward, added);
      return look("dot-far-off", off, at, { dot });
    }),
  ];
}

/**
 * A tail that is added where hair is missing is no fault up to where tails end: so far from the inner corner of the
 * eye, in mm, and the limit of what is far off. Ours: of 102 faces drawn by hand 98 of 100 tails end within both.
 */
const TAIL_FREE = 39;

/** By how much the lower border above the pupil is planned lower than it grows. */
function lidSpaceCloses(
  { pupil, brow }: PlannableFace["left"],
  planned: CompleteDots<"mm">,
  { shape }: SettledChoices,
): readonly Look[] {
  if (pupil === undefined || brow.lower === undefined) return [];
  const grown = heightOver(length<"mm">(pupil[0]), brow.lower, BORDER_END);
  if (grown === undefined) return [];
  const { outwards, lower } = browCurves(planned, shape);
  const height = hermiteAt(lower, outwards * pupil[0]);
  return [look("lid-space-closes", grown - height, flatPoint(pupil[0], height), {})];
}
