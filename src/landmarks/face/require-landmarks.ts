import type { FaceSide, MidlineLandmarks } from "./face.js";
import { refusingAs, refuse } from "../../units/internal.js";

/**
 * Narrows one side (or the midline) of a face to one that has the named landmarks. It does not know
 * which side it is given, and so names none.
 *
 * @throws GeometryError `missing-landmark`, naming every landmark that is missing
 *
 * @example
 * ```ts
 * import { type FaceSide, px, requireLandmarks } from "brow-geometry";
 * const right: FaceSide<"px"> = { endocanthion: px([460, 500]) };
 * requireLandmarks(right, "endocanthion").endocanthion; // → [460, 500]
 * requireLandmarks(right, "endocanthion", "exocanthion"); // throws GeometryError: exocanthion is missing
 * ```
 */
export function requireLandmarks<
  Part extends FaceSide<"px"> | FaceSide<"mm"> | MidlineLandmarks<"px"> | MidlineLandmarks<"mm">,
  Name extends keyof Part,
>(part: Part, ...names: readonly Name[]): Part & Required<Pick<Part, Name>> {
  return refusingAs("requireLandmarks", () => {
    const missing = names.filter((name) => part[name] === undefined);
    if (missing.length > 0) {
      refuse("missing-landmark", missing.join(", "), undefined, "to be placed");
    }
    return part as Part & Required<Pick<Part, Name>>;
  });
}
