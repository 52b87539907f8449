import type { Face, FaceWith } from "../../landmarks/index.js";
import { type Unit } from "../../units/index.js";
import { refuse, SIDES } from "../../units/internal.js";

/** A face whose landmarks suffice for a plan; some conventions ask for more. */
export type PlannableFace<U extends Unit = "mm"> = FaceWith<
  U,
  "endocanthion" | "exocanthion" | "alare" | "brow"
>;

/**
 * Narrows a face from outside to one that can be planned.
 *
 * @throws GeometryError `missing-landmark`, naming what is missing
 *
 * @example
 * ```ts
 * import { mm, requirePlannable } from "brow-geometry";
 * const side = { endocanthion: mm([16, 0]), exocanthion: mm([44, 0]) };
 * requirePlannable({ right: side, left: side, midline: {} });
 * // throws GeometryError: right.alare, right.brow, left.alare, left.brow is missing
 * ```
 */
export function requirePlannable<U extends Unit>(face: Face<U>): PlannableFace<U> {
  const missing = SIDES.flatMap((side) =>
    NEEDED.filter((name) => face[side][name] === undefined).map((name) => `${side}.${name}`),
  );
  if (missing.length > 0) {
    const need = "these landmarks on both sides";
    refuse("missing-landmark", "requirePlannable", missing.join(", "), undefined, need);
  }
  return face as PlannableFace<U>;
}

const NEEDED = ["endocanthion", "exocanthion", "alare", "brow"] as const;
