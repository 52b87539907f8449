import { polygonArea } from "../../geometry/index.js";
import type { Face, FaceSide, FaceWith } from "../../landmarks/index.js";
import type { Side, Unit } from "../../units/index.js";
import { refusingAs, refuse, requireObject, SIDES } from "../../units/internal.js";

/** A face whose landmarks suffice for a plan; some conventions ask for more. */
export type PlannableFace<U extends Unit = "mm"> = FaceWith<
  U,
  "endocanthion" | "exocanthion" | "alare" | "brow"
>;

/**
 * Narrows a face from outside to one that can be planned.
 *
 * @throws GeometryError `missing-landmark`, naming what is missing; `inconsistent` where the borders of a
 * brow are exchanged
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
  return refusingAs("requirePlannable", () => {
    requireObject("face", face, "a face");
    const missing = SIDES.flatMap((side) =>
      NEEDED.filter((name) => (face[side] as FaceSide<U> | undefined)?.[name] === undefined).map(
        (name) => `${side}.${name}`,
      ),
    );
    if (missing.length > 0) {
      refuse("missing-landmark", missing.join(", "), undefined, "to be placed");
    }
    const plannable = face as PlannableFace<U>;
    for (const side of SIDES) requireUpperAbove(plannable, side);
    return plannable;
  });
}

/** Refuses a brow whose borders are exchanged, by the turn in which they enclose it. */
function requireUpperAbove<U extends Unit>(face: PlannableFace<U>, side: Side): void {
  const { endocanthion, exocanthion, alare, brow } = face[side];
  if (brow.lower === undefined) return;
  const [outX, outY] = [exocanthion[0] - endocanthion[0], exocanthion[1] - endocanthion[1]];
  const [upX, upY] = [endocanthion[0] - alare[0], endocanthion[1] - alare[1]];
  const enclosed = polygonArea([...brow.upper, ...brow.lower.slice().reverse()]);
  const beside = outX * upY - outY * upX;
  if (enclosed * beside <= ROUNDING * beside * beside) return;
  const need = "an upper border above the lower one: they look exchanged";
  refuse("inconsistent", `${side}.brow`, brow, need);
}

/** What rounding may make of the area of a brow without any, in that of eye and nose. */
const ROUNDING = 1e-9;

const NEEDED = ["endocanthion", "exocanthion", "alare", "brow"] as const;
