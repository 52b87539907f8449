import type { SpaceVector } from "../lines/space-vector.js";

/** A symmetric 3×3 matrix: its diagonal and what lies above it. */
export interface SymmetricMatrix {
  readonly xx: number;
  readonly yy: number;
  readonly zz: number;
  readonly xy: number;
  readonly xz: number;
  readonly yz: number;
}

/** A direction that a matrix only stretches, and by how much. */
export interface EigenPair {
  readonly value: number;
  /** Of length 1; its sign means nothing. */
  readonly vector: SpaceVector;
}

/** Sweeps of Jacobi's method end here: convergence is quadratic and takes five or six. */
const MOST_SWEEPS = 50;

/**
 * Eigenvalues of a symmetric matrix with their directions, smallest first.
 *
 * Jacobi's method: each turn of a plane makes one element beside the diagonal vanish.
 */
export function eigenPairs(
  matrix: SymmetricMatrix,
): readonly [least: EigenPair, middle: EigenPair, greatest: EigenPair] {
  const a: Square = [
    [matrix.xx, matrix.xy, matrix.xz],
    [matrix.xy, matrix.yy, matrix.yz],
    [matrix.xz, matrix.yz, matrix.zz],
  ];
  const vectors: Square = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep += 1) {
    if (a[0][1] === 0 && a[0][2] === 0 && a[1][2] === 0) break;
    turnPlane(a, vectors, 0, 1, 2);
    turnPlane(a, vectors, 0, 2, 1);
    turnPlane(a, vectors, 1, 2, 0);
  }
  const pairOf = (axis: Axis): EigenPair => ({
    value: a[axis][axis],
    vector: [vectors[0][axis], vectors[1][axis], vectors[2][axis]],
  });
  const pairs = [pairOf(0), pairOf(1), pairOf(2)] as const;
  const [least, middle, greatest] = [...pairs].sort((one, other) => one.value - other.value);
  return [least ?? pairs[0], middle ?? pairs[1], greatest ?? pairs[2]];
}

type Axis = 0 | 1 | 2;
type Row = [number, number, number];
type Square = [Row, Row, Row];

/** Turns the plane of two axes so that the element between them vanishes. */
function turnPlane(a: Square, vectors: Square, one: Axis, other: Axis, third: Axis): void {
  const between = a[one][other];
  if (between === 0) return;
  const spread = (a[other][other] - a[one][one]) / (2 * between);
  const tangent = (spread < 0 ? -1 : 1) / (Math.abs(spread) + Math.hypot(spread, 1));
  const cosine = 1 / Math.hypot(tangent, 1);
  const sine = tangent * cosine;
  a[one][one] -= tangent * between;
  a[other][other] += tangent * between;
  a[one][other] = a[other][one] = 0;
  const toOne = a[third][one];
  const toOther = a[third][other];
  a[third][one] = a[one][third] = cosine * toOne - sine * toOther;
  a[third][other] = a[other][third] = sine * toOne + cosine * toOther;
  for (const row of vectors) {
    const [atOne, atOther] = [row[one], row[other]];
    row[one] = cosine * atOne - sine * atOther;
    row[other] = sine * atOne + cosine * atOther;
  }
}
