import { densify, pointAlong, polylineLength, transform } from "../../geometry/index.js";
import { inverseOf, shareAlong } from "../../geometry/internal.js";
import {
  type Brow,
  type Dot,
  DOTS,
  type Face,
  landmarkUncertainty,
} from "../../landmarks/index.js";
import { DOT_NAMES, mapBrow } from "../../landmarks/internal.js";
import { naturalDots, outline, outlineBorders } from "../../proportions/index.js";
import {
  compareCaptures,
  type CaptureComparisonOptions,
  placeOnSide,
  type Registration,
} from "../../symmetry/index.js";
import { registrationU } from "../../symmetry/internal.js";
import {
  eachSide,
  flatPoint,
  type FlatPoint,
  length,
  type Length,
  type Measured,
  type Note,
  type Point,
  type Polyline,
  type Side,
  type Sides,
} from "../../units/index.js";
import { refusingAs, SIDES } from "../../units/internal.js";
import { isHair } from "../dots/is-hair.js";
import type { BrowPlan } from "../plan/plan.js";
import { moveNote, type WayCode } from "../plan/move-notes.js";
import { type CarryCode, visitNote } from "./notes.js";

/** Where one dot of a plan is in another capture. */
export interface CarriedDot {
  /** In the face space of the capture. */
  readonly at: FlatPoint<"mm">;
  /**
   * How far its skin moved against the stable landmarks, in the axes of the plan's face: positive towards the
   * forehead. Its uncertainty is that of the dot's place, too; `Infinity` where the brow is not seen.
   */
  readonly up: Measured<Length<"mm">>;
  /** The same across, positive away from the midline. */
  readonly outward: Measured<Length<"mm">>;
  /** Where it would be had its skin not moved, in the face space of the capture. */
  readonly unmoved: FlatPoint<"mm">;
}

/** Where one planned brow is in another capture. */
export interface CarriedBrow {
  readonly dots: { readonly [Name in Dot]: CarriedDot };
  /** The borders of the planned brow, in the face space of the capture. */
  readonly borders: Required<Brow<"mm">>;
}

/** A plan as it appears in another capture of the same client. */
export interface CarriedMap {
  /** How the capture was laid over the face of the plan. */
  readonly registration: Registration;
  readonly brows: Sides<CarriedBrow>;
  readonly notes: readonly Note[];
}

/** How {@link carryInto} lays the capture over the plan's face. */
export type CarryIntoOptions = Omit<
  CaptureComparisonOptions,
  "dotU" | "tolerances" | "confidence" | "rule"
>;

/**
 * Where the dots of a plan are in another capture of the client: lying down, with the skin drawn by a
 * finger, at another time.
 *
 * The capture is laid over the face of the plan by landmarks that do not move. What the brow's own hair
 * has moved against them since, at the same share of its length along the same border, its skin has moved,
 * and with it the dots; past the ends of the hair as at the end. Where the capture has no brow on a side,
 * its dots stand where the stable landmarks put them, and their uncertainty is `Infinity`; so they do where the
 * brow of either face is a detector's guess, not hair.
 *
 * @throws GeometryError as `compareCaptures`, `naturalDots` and `outline`
 *
 * @example
 * ```ts
 * import { mm, planBrows, say } from "brow-geometry";
 * import { carryInto } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1, up: number) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 15, 20 + up], [sign * 38, 27 + up], [sign * 57, 18 + 2 * up]]) },
 * });
 * const plan = planBrows({ right: side(-1, 0), left: side(1, 0), midline: {} });
 * const lying = { right: side(-1, 1.5), left: side(1, 0), midline: {} };
 * const { brows, notes } = carryInto(plan, lying);
 * brows.right.dots.tailEnd.up.value; // → 3.0
 * brows.left.dots.tailEnd.up.value; // → 0.0
 * notes.slice(0, 3).map((note) => say(note));
 * // → [
 * //   "right start: its skin has moved up 1.5 mm against eye corners and nose.",
 * //   "right arch: its skin has moved up 1.4 mm against eye corners and nose.",
 * //   "right tail end: its skin has moved up 3 mm against eye corners and nose.",
 * // ]
 * ```
 */
export function carryInto(
  plan: BrowPlan,
  capture: Face<"mm">,
  options: CarryIntoOptions = {},
): CarriedMap {
  return refusingAs("carryInto", () => {
    const { face, dots, choices } = plan;
    const { registration } = compareCaptures(
      { face, dots: eachSide((side) => dotsOf(face[side].brow)) },
      { face: capture, dots: eachSide((side) => dotsOf(capture[side].brow)) },
      options,
    );
    const placementU = Math.hypot(
      landmarkUncertainty(face, "brow"),
      landmarkUncertainty(capture, "brow"),
    );
    const brows = eachSide((side): CarriedBrow => {
      const seen = capture[side].brow;
      const laid = seen && mapBrow(seen, (point) => transform(point, registration.similarity));
      const isSeen = isHair(face, side) && isHair(capture, side);
      const moved = isSeen ? movesOf(face[side].brow, laid) : undefined;
      const back = inverseOf(registration.similarity);
      const seenAt = (x: number, y: number): FlatPoint<"mm"> => {
        const seen = transform(flatPoint<"mm">(x, y), back);
        return flatPoint(seen[0], seen[1]);
      };
      const carried = (point: Point<"mm">, border: keyof Brow<"mm">): FlatPoint<"mm"> => {
        const [across, up] = moved?.(point, border) ?? [0, 0];
        return seenAt(point[0] + across, point[1] + up);
      };
      const dotOf = (dot: Dot): CarriedDot => {
        const from = dots[side][dot];
        const { border } = DOTS[dot];
        const [across, up] = moved?.(from, border) ?? [0, 0];
        const to = flatPoint<"mm">(from[0] + across, from[1] + up);
        const u = registrationU(to, registration);
        const known = (by: number): Length<"mm"> =>
          length(moved === undefined ? Number.POSITIVE_INFINITY : Math.hypot(placementU, by));
        const outward = placeOnSide(to, side).distance - placeOnSide(from, side).distance;
        return {
          at: seenAt(to[0], to[1]),
          up: { value: length(up), u: known(u.up) },
          outward: { value: length(outward), u: known(u.across) },
          unmoved: seenAt(from[0], from[1]),
        };
      };
      const borders = outlineBorders(outline(dots[side], choices.shape), STRAYS);
      const along = (border: keyof Brow<"mm">): Polyline<"mm"> =>
        densify(borders[border], STEP).map((point) => carried(point, border));
      return {
        dots: Object.fromEntries(DOT_NAMES.map((dot) => [dot, dotOf(dot)])) as CarriedBrow["dots"],
        borders: { upper: along("upper"), lower: along("lower") },
      };
    });
    return {
      registration,
      brows,
      notes: [
        ...SIDES.flatMap((side) =>
          capture[side].brow === undefined || (isHair(face, side) && isHair(capture, side))
            ? notesOf(side, brows[side])
            : visitNote("skin-guessed", { side }),
        ),
        ...(registration.note === undefined ? [] : [registration.note]),
        visitNote("carried-check-upright"),
      ],
    };
  });
}

/** How far carried borders may stray from the planned ones, and how far apart their points are. */
const STRAYS = length(0.01);
const STEP = length(1);

function dotsOf(brow: Brow<"mm"> | undefined): ReturnType<typeof naturalDots>["dots"] | object {
  return brow === undefined ? {} : naturalDots(brow).dots;
}

type Moved = (
  point: Point<"mm">,
  border: keyof Brow<"mm">,
) => readonly [across: number, up: number];

/** How far skin at a place has moved, told by the hair at the same share of the same border. */
function movesOf(before: Brow<"mm">, after: Brow<"mm"> | undefined): Moved | undefined {
  if (after === undefined) return undefined;
  return (point, border) => {
    const [from, to] = [before[border], after[border]];
    // A border that only one of both has tells nothing: skin between both goes with the upper one.
    const [hair, now] =
      from === undefined || to === undefined ? [before.upper, after.upper] : [from, to];
    const share = shareAlong(hair, point);
    const [was, is] = [placeAt(hair, share), placeAt(now, share)];
    return [is[0] - was[0], is[1] - was[1]];
  };
}

function placeAt(line: Polyline<"mm">, share: number): FlatPoint<"mm"> {
  return pointAlong(line, length(share * polylineLength(line))).at;
}

const MARKED: readonly Dot[] = ["upperStart", "upperArch", "tailEnd"];

/** Start, arch and tail end as far as they went more than twice their uncertainty; another dot where only that did. */
function notesOf(side: Side, { dots }: CarriedBrow): readonly Note<CarryCode>[] {
  if (dots.upperStart.up.u === Number.POSITIVE_INFINITY) {
    return [visitNote("skin-not-seen", { side })];
  }
  const moved = DOT_NAMES.flatMap((dot) => {
    const { up, outward } = dots[dot];
    const ways = [...waysOf(up, "up", "down"), ...waysOf(outward, "outward", "inward")];
    const by = Math.hypot(up.value, outward.value);
    return ways.length === 0
      ? []
      : [{ dot, by, note: visitNote("skin-moved", { side, dot, ways }) }];
  });
  const marked = moved.filter(({ dot }) => MARKED.includes(dot));
  const told =
    marked.length > 0 ? marked : moved.sort((one, other) => other.by - one.by).slice(0, 1);
  return told.length > 0 ? told.map(({ note }) => note) : [visitNote("skin-stayed", { side })];
}

function waysOf(
  { value, u }: Measured,
  positive: "up" | "outward",
  negative: "down" | "inward",
): readonly Note<WayCode>[] {
  if (Math.abs(value) <= 2 * u) return [];
  const by = Math.round(10 * Math.abs(value)) / 10;
  return [moveNote(`way-${value > 0 ? positive : negative}`, { by })];
}
