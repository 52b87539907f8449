import type { Face } from "../../landmarks/index.js";
import { leftIsPositive, senseOf } from "../../landmarks/internal.js";
import type { Length, Unit } from "../../units/index.js";
import { refusingAs, unlessRefused } from "../../units/internal.js";
import { eyeLevel } from "./fit-midline.js";
import { type Midline, type MidlineMethod, MIDLINE_METHODS } from "./midline.js";
import { lineByMethod } from "./midline-methods.js";
import { leftwardsFrom, placeOnFace } from "./placed-line.js";

/** What another method says of the same face. */
export interface OtherMidline<U extends Unit> {
  readonly method: MidlineMethod;
  /** Its tilt, in degrees. */
  readonly tilt: number;
  /** How far it lies from the midline at the level of the inner eye corners, towards the client's left. */
  readonly offset: Length<U>;
}

/**
 * What the methods that need no points by hand say of a face beside its midline, those that have an
 * answer for it.
 *
 * @throws GeometryError `sides-swapped` for a mirrored photo
 *
 * @example
 * ```ts
 * import { type Face, fitMidline, px } from "brow-geometry";
 * import { otherMidlines } from "brow-geometry/symmetry";
 * const face: Face<"px"> = {
 *   right: { endocanthion: px([460, 510]), cheilion: px([470, 690]) },
 *   left: { endocanthion: px([560, 500]), cheilion: px([588, 679]) },
 *   midline: { sellion: px([511, 506]) },
 * };
 * const [endocanthia] = otherMidlines(face, fitMidline(face));
 * endocanthia?.method; // → "endocanthia"
 * endocanthia?.tilt; // → 5.7
 * ```
 */
export function otherMidlines<U extends Unit>(
  face: Face<U>,
  midline: Pick<Midline<U>, "line" | "method">,
): readonly OtherMidline<U>[] {
  return refusingAs("otherMidlines", () => {
    const sense = senseOf(face);
    const { line } = midline;
    const level = eyeLevel(face) ?? line.through;
    const chosen = { line, leftIsPositive: leftIsPositive(line.direction, sense) };
    return MIDLINE_METHODS.flatMap((method): readonly OtherMidline<U>[] => {
      if (method === midline.method || method === "given") return [];
      // Another method may have nothing to say of the face.
      const fitted = unlessRefused(
        () => lineByMethod(face, method),
        () => true,
      );
      if (fitted === undefined) return [];
      const other = placeOnFace(fitted.line, level, sense);
      const offset = leftwardsFrom(other.line.through, chosen);
      return [{ method, tilt: other.tilt, offset }];
    });
  });
}
