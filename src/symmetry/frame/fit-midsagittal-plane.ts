import {
  bestMirrorPlane,
  type DeepMirrorPair,
  type Plane,
  type SpaceVector,
  type SymmetricMatrix,
} from "../../geometry/index.js";
import type { Face, SymmetricPoints } from "../../landmarks/index.js";
import { senseOf, tiltOf } from "../../landmarks/internal.js";
import { type DeepPoint, hasDepth, type Length, length, type Unit } from "../../units/index.js";
import { refuse, toDegrees, refusingAs } from "../../units/internal.js";
import { biocularWidth, LEAST_SPREAD, TYPICAL_WIDTH } from "../midline/mirror-pairs.js";

/** The plane across which a head comes closest to its own mirror image. */
export interface MidsagittalPlane<U extends Unit> extends Plane<U> {
  /** A point of the plane: the weighted centroid of the head's points. */
  readonly through: DeepPoint<U>;
  /** Of length 1, towards the client's left. */
  readonly normal: SpaceVector;
  /** Degrees by which the head is turned towards the client's left. */
  readonly yaw: number;
  /** Degrees, as that of a midline: positive where the chin end lies towards the client's left. */
  readonly tilt: number;
  /** Standard uncertainty of the yaw, in degrees, if depth is scaled rightly. */
  readonly yawU: number;
  /**
   * Standard uncertainty of the tilt, in degrees: that of the plane, and by how much the pairs' own
   * directions in the picture, which no error of depth touches, disagree with it.
   */
  readonly tiltU: number;
  /** Standard uncertainty of the plane's place, across itself, at `through`. */
  readonly throughU: Length<U>;
  /** Points that the plane was fitted to. */
  readonly points: number;
  /** Points without a say: they lie too far off. */
  readonly trimmed: number;
}

/** Fewer points would not tell a turned head from a crooked nose. */
const LEAST_POINTS = 30;

/**
 * Neighbouring points of a mesh share their errors: as many as these independent ones, they lie as far
 * from the midline drawn by hand as they do on 102 faces (measured by us).
 */
const INDEPENDENT_POINTS = 9;

/**
 * The mirror plane of a head, from at least thirty points with depth and partners: its
 * `symmetricPoints`.
 *
 * Robust: a quarter of the points may be misplaced. Neighbouring points of a mesh share their errors,
 * so any number of points counts for no more than nine: tilt and place at brow height then hold the
 * midline drawn by hand as often as they say (102 faces).
 *
 * @throws GeometryError `missing-landmark` without `symmetricPoints`, or without an inner eye
 * corner; `wrong-count` under thirty points with depth; and what {@link bestMirrorPlane} throws
 *
 * @example
 * ```ts
 * import { type Face, mm } from "brow-geometry";
 * import { fitMidsagittalPlane } from "brow-geometry/symmetry";
 * const turned = (x: number, y: number, z: number) =>
 *   mm([0.995 * x + 0.1 * z, y, 0.995 * z - 0.1 * x]); // by 5.7° to the left
 * const rows = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14];
 * const face: Face<"mm"> = {
 *   right: { endocanthion: turned(-16, 0, 0), cheilion: turned(-25, -66, 5) },
 *   left: { endocanthion: turned(16, 0, 0), cheilion: turned(25, -66, 5) },
 *   midline: {},
 *   symmetricPoints: {
 *     pairs: rows.map((row) => ({
 *       right: turned(-20 - 2 * row, 40 - 7 * row, -row),
 *       left: turned(20 + 2 * row, 40 - 7 * row, -row),
 *     })),
 *     middle: [turned(0, 0, 12), turned(0, -40, 30)],
 *   },
 * };
 * fitMidsagittalPlane(face).yaw; // → 5.7
 * ```
 */
export function fitMidsagittalPlane<U extends Unit>(face: Face<U>): MidsagittalPlane<U> {
  return refusingAs("fitMidsagittalPlane", () => {
    const pairs = mirrorPairs(face);
    const plane = bestMirrorPlane(pairs);
    const sense = senseOf(face);
    const { leftwards, upwards } = sense;
    if (leftwards === undefined || upwards === undefined) {
      const eyes = [face.right.endocanthion, face.left.endocanthion];
      const need = "a pair of landmarks, and one above or below the eyes";
      refuse("missing-landmark", "face", eyes, need);
    }
    const [x, y, z] = plane.normal;
    const sign = x * leftwards[0] + y * leftwards[1] < 0 ? -1 : 1;
    const normal: SpaceVector = [sign * x, sign * y, sign * z];
    const across = Math.hypot(x, y);
    const left = [normal[0] / across, normal[1] / across] as const;
    const up =
      left[1] * upwards[0] - left[0] * upwards[1] > 0
        ? ([left[1], -left[0]] as const)
        : ([-left[1], left[0]] as const);
    const shared = Math.sqrt(Math.max(1, countPoints(pairs) / INDEPENDENT_POINTS));
    const turning: SpaceVector = [normal[2] * left[0], normal[2] * left[1], -across];
    const tilting: SpaceVector = [up[0], up[1], 0];
    const tiltU = (shared * toDegrees(spreadAlong(plane.normalCovariance, tilting))) / across;
    return {
      through: plane.through,
      normal,
      yaw: toDegrees(Math.atan2(-normal[2], across)),
      tilt: tiltOf(up, sense),
      yawU: shared * toDegrees(spreadAlong(plane.normalCovariance, turning)),
      tiltU: Math.hypot(tiltU, angleToPairs(pairs, plane.weights, left)),
      throughU: length(shared * plane.throughU),
      points: countPoints(pairs),
      trimmed: countPoints(pairs.filter((_, index) => plane.weights[index] === 0)),
    };
  });
}

function mirrorPairs<U extends Unit>(face: Face<U>): readonly DeepMirrorPair<U>[] {
  const width = biocularWidth(face);
  if (face.symmetricPoints === undefined || width === undefined) {
    const field = width === undefined ? "right.endocanthion, left.endocanthion" : "symmetricPoints";
    const need =
      width === undefined ? "to be placed" : "points with depth and their mirror partners";
    refuse("missing-landmark", field, undefined, need);
  }
  const spread = spreadOfPoints(face, width);
  const pairs = pairsWithDepth(face.symmetricPoints, spread);
  if (countPoints(pairs) < LEAST_POINTS) {
    const field = "symmetricPoints";
    const need = `at least ${LEAST_POINTS}`;
    refuse("wrong-count", field, `${countPoints(pairs)} points with depth`, need);
  }
  return pairs;
}

function pairsWithDepth<U extends Unit>(
  { pairs, middle }: SymmetricPoints<U>,
  spread: Length<U>,
): readonly DeepMirrorPair<U>[] {
  const deep: DeepMirrorPair<U>[] = [];
  for (const { right, left } of pairs) {
    if (hasDepth(right) && hasDepth(left)) {
      deep.push({ one: right, other: left, weight: 1, spread });
    }
  }
  for (const point of middle) {
    if (hasDepth(point)) deep.push({ one: point, weight: 1, spread });
  }
  return deep;
}

/** As a landmark's: what the source says of all its points, at least 1 % of the biocular width. */
function spreadOfPoints<U extends Unit>(face: Face<U>, width: Length<U>): Length<U> {
  const share = (face.source?.uncertainty.default ?? 0) / TYPICAL_WIDTH;
  return length(width * Math.max(share, LEAST_SPREAD));
}

/**
 * Degrees between a direction across the picture and that of all pairs together: with depth scaled
 * wrongly, yaw and pitch together tilt the plane.
 */
function angleToPairs<U extends Unit>(
  pairs: readonly DeepMirrorPair<U>[],
  weights: readonly number[],
  [leftX, leftY]: readonly [number, number],
): number {
  let [along, aside] = [0, 0];
  pairs.forEach(({ one, other = one }, index) => {
    const weight = weights[index] as number;
    const [x, y] = [other[0] - one[0], other[1] - one[1]];
    along += weight * (x * leftX + y * leftY);
    aside += weight * (y * leftX - x * leftY);
  });
  return toDegrees(Math.atan(aside / along));
}

function countPoints<U extends Unit>(pairs: readonly DeepMirrorPair<U>[]): number {
  return pairs.reduce((sum, { other }) => sum + (other === undefined ? 1 : 2), 0);
}

/** Standard deviation of a vector along a direction, from its covariance. */
function spreadAlong(covariance: SymmetricMatrix, [x, y, z]: SpaceVector): number {
  const { xx, yy, zz, xy, xz, yz } = covariance;
  return Math.sqrt(
    xx * x * x + yy * y * y + zz * z * z + 2 * (xy * x * y + xz * x * z + yz * y * z),
  );
}
