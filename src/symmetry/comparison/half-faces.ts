import { type FaceWith, landmarkUncertainty, type MidlineLandmark } from "../../landmarks/index.js";
import { eachSide, type Length, length, type Measured, type Note } from "../../units/index.js";
import { measuredAs, refuse, refusingAs, toDegrees } from "../../units/internal.js";
import { type HalfFacesNoteCode, halfFacesNote } from "./notes.js";

/** How wide the two halves of a face look, and what a difference may mean. */
export interface HalfFaces {
  /** From the root of the nose to the outer eye corner, across the face. */
  readonly right: Measured<Length<"mm">>;
  readonly left: Measured<Length<"mm">>;
  /** Left minus right. */
  readonly difference: Measured<Length<"mm">>;
  /**
   * Degrees towards the client's left by which a symmetric head would have to be turned to look so;
   * its u is that of the landmarks.
   */
  readonly yaw: Measured;
  /** Present where the halves differ by more than twice the uncertainty. */
  readonly note?: Note<HalfFacesNoteCode>;
}

/**
 * How far the root of the nose lies ahead of the outer eye corners, over their distance, on the canonical
 * face mesh, by us: glabella 53.9, sellion 52.4, corners 31.7 deep and 88.9 apart.
 */
const AHEAD: readonly (readonly [MidlineLandmark, number])[] = [
  ["glabella", 0.249],
  ["sellion", 0.233],
];

/**
 * What a photo without depth can say about a turned head: whether the two halves of the face look
 * equally wide, and by how much the head would have to be turned if the face itself were even. It
 * cannot say which of the two it is, so nothing is corrected.
 *
 * @throws GeometryError `missing-landmark` without glabella and without sellion
 *
 * @example
 * ```ts
 * import { halfFaces, mm } from "brow-geometry";
 * const { difference, yaw, note } = halfFaces({
 *   right: { exocanthion: mm([-43, 0]) },
 *   left: { exocanthion: mm([45, 0]) },
 *   midline: { sellion: mm([-0.5, 2]) },
 * });
 * difference.value; // → 3
 * yaw; // → { value: -4.2, u: 0.9 }
 * note?.code; // → "half-faces-differ"
 * ```
 */
export function halfFaces(face: FaceWith<"mm", "exocanthion">): HalfFaces {
  return refusingAs("halfFaces", () => halvesOf(face) ?? refuseWithoutNose());
}

/** {@link halfFaces}, asked for by another function; nothing of a face without glabella and sellion. */
export function halvesOf(face: FaceWith<"mm", "exocanthion">): HalfFaces | undefined {
  const middles = AHEAD.flatMap(([name, ahead]) => {
    const point = face.midline[name];
    return point === undefined ? [] : [[point[0], ahead, landmarkUncertainty(face, name)] as const];
  });
  if (middles.length === 0) return undefined;
  const meanOf = (values: readonly number[]): number =>
    values.reduce((sum, value) => sum + value, 0) / middles.length;
  const middle = meanOf(middles.map(([x]) => x));
  const middleU = Math.hypot(...middles.map(([, , u]) => u)) / middles.length;
  const cornerU = landmarkUncertainty(face, "exocanthion");
  const u = length<"mm">(Math.hypot(cornerU, middleU));
  const { right, left } = eachSide((side) =>
    measuredAs(length<"mm">(Math.abs(face[side].exocanthion[0] - middle)), u),
  );
  // The middle enters both widths, with opposite signs.
  const difference = measuredAs(
    length<"mm">(left.value - right.value),
    length<"mm">(Math.hypot(Math.SQRT2 * cornerU, 2 * middleU)),
  );
  const twiceAhead = 2 * meanOf(middles.map(([, ahead]) => ahead)) * (right.value + left.value);
  // A turn by φ moves the middle by ahead·sin φ, and narrows the whole by cos φ.
  const tangent = (right.value - left.value) / twiceAhead;
  const slope = 1 / (twiceAhead * (1 + tangent ** 2));
  const yaw = measuredAs(toDegrees(Math.atan(tangent)), toDegrees(slope * difference.u));
  const about = { difference: Math.abs(difference.value), yaw: Math.abs(yaw.value) };
  return {
    right,
    left,
    difference,
    yaw,
    ...(about.difference > 2 * difference.u
      ? { note: halfFacesNote("half-faces-differ", about) }
      : {}),
  };
}

function refuseWithoutNose(): never {
  const field = AHEAD.map(([name]) => `midline.${name}`).join(", ");
  refuse("missing-landmark", field, undefined, "to be placed");
}
