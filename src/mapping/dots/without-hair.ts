import { type Brow, type Face, type StandIn } from "../../landmarks/index.js";
import { FACE_MIDLINE, type FaceFrame, mirror, toFace, toPhoto } from "../../symmetry/index.js";
import { otherSide, type Side, type Unit } from "../../units/index.js";
import { refuse, refusingAs, requireWord, SIDES } from "../../units/internal.js";
import { averageBrow, BROW_HEIGHTS, type BrowHeights, HEIGHTS_U } from "./average-brow.js";
import { browsFrom } from "./brows-from.js";
import { standInOf } from "./is-hair.js";
import { type PlannableFace, requirePlannable } from "./plannable-face.js";

/** Which brow has no hair. */
export type Bare = Side | "both";

/** What stands in where nothing grows. */
export type BareCode = "mirrored-brow" | "average-heights";

/** Options of {@link withoutHair}. */
export interface BareOptions {
  /** Whose average heights, where no brow has hair. Default: the mean of both groups. */
  readonly heights?: BrowHeights;
}

/**
 * A face of which one brow or both have no hair, with something to plan from: a bare brow takes the shape of the
 * other one, mirrored across the midline of the face. Where both are bare, both stand at published average heights
 * above the eyes (`BROW_HEIGHTS`), which tell a height to 7 mm only: pins of the artist say more.
 *
 * What stands in for hair is marked as such: a plan places its dots, and removes, fills and moves nothing there.
 * Where one brow has hair it leads, unless another lead is chosen. On a photo, lines are drawn through `frame`.
 *
 * @throws GeometryError `missing-landmark` where the other brow or a landmark of a plan is missing,
 * `out-of-range` for a word that is no side, `no-solution` where the outer corner of an eye lies below the nose wing
 *
 * @example
 * ```ts
 * import { mm, planBrows, say } from "brow-geometry";
 * import { withoutHair } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 * });
 * const brow = { upper: mm([[15, 20], [38, 27], [50, 23], [57, 18]]) };
 * const face = { right: side(-1), left: { ...side(1), brow }, midline: {} };
 * const plan = planBrows(withoutHair(face, "right"));
 * plan.dots.right.upperStart; // → [-15, 20]
 * plan.reasons.filter(({ code }) => code === "hair-not-seen").map((reason) => say(reason));
 * // → ["In place of hair, the right brow has the other brow, mirrored. Guides and the ruler place its dots."]
 * plan.choices.lead; // → "left"
 * ```
 */
export function withoutHair(face: Face<"mm">, bare: Bare, options?: BareOptions): PlannableFace;
export function withoutHair(
  face: Face<"px">,
  bare: Bare,
  options: BareOptions & { readonly frame: FaceFrame },
): PlannableFace<"px">;
export function withoutHair<U extends Unit>(
  face: Face<U>,
  bare: Bare,
  { heights, frame }: BareOptions & { readonly frame?: FaceFrame } = {},
): PlannableFace<U> {
  return refusingAs("withoutHair", () => {
    requireWord("bare", bare, [...SIDES, "both"]);
    requireWord("heights", heights, Object.keys(BROW_HEIGHTS));
    // A face in pixels has a frame.
    const inFace = frame === undefined ? (face as Face<"mm">) : toFace(face as Face<"px">, frame);
    const placed = (brow: Brow<"mm">): Brow<U> =>
      (frame === undefined ? brow : toPhoto(brow, frame)) as Brow<U>;
    return bare === "both"
      ? atAverage(face, inFace, placed, heights)
      : mirrored(face, inFace, placed, bare);
  });
}

function mirrored<U extends Unit>(
  face: Face<U>,
  inFace: Face<"mm">,
  placed: (brow: Brow<"mm">) => Brow<U>,
  side: Side,
): PlannableFace<U> {
  const other = otherSide(side);
  const { brow } = inFace[other];
  if (brow === undefined) {
    const need = `a brow to mirror, or "both" where neither has hair`;
    refuse("missing-landmark", `${other}.brow`, brow, need);
  }
  const known = standInOf(face, other);
  return requirePlannable({
    ...face,
    [side]: { ...face[side], brow: placed(mirror(brow, FACE_MIDLINE)) },
    standIns: [
      ...notOfBrows(face),
      ...(known === undefined ? [] : [{ ...known, side: other }]),
      standIn("mirrored-brow", side),
    ],
  });
}

function atAverage<U extends Unit>(
  face: Face<U>,
  inFace: Face<"mm">,
  placed: (brow: Brow<"mm">) => Brow<U>,
  heights: BrowHeights | undefined,
): PlannableFace<U> {
  // What a plan needs beside brows is asked for before any of it is read.
  const blank = { upper: [] };
  const { right, left } = requirePlannable({
    ...inFace,
    right: { ...inFace.right, brow: blank },
    left: { ...inFace.left, brow: blank },
  });
  const brows = {
    right: { ...face.right, brow: placed(averageBrow(right, heights)) },
    left: { ...face.left, brow: placed(averageBrow(left, heights)) },
  };
  return requirePlannable(
    browsFrom({ ...face, ...brows }, HEIGHTS_U, [standIn("average-heights")]),
  );
}

function standIn(instead: BareCode, side?: Side): StandIn {
  return { landmark: "brow", instead, ...(side === undefined ? {} : { side }) };
}

function notOfBrows<U extends Unit>({ standIns = [] }: Face<U>): readonly StandIn[] {
  return standIns.filter(({ landmark }) => landmark !== "brow");
}
