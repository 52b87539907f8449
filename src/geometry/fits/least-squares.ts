/** Terms made orthogonal and of length 1: column k of the terms = Σᵢ columns[i] · triangle[i][k]. */
export interface Basis {
  readonly columns: readonly (readonly number[])[];
  readonly triangle: readonly (readonly number[])[];
}

/** A term of which less than this share is new says what the terms before it said. */
export const DEPENDENT = 1e-9;

/**
 * Orthogonalises the columns of terms that come as rows, one row for each value to be fitted;
 * undefined where a term repeats the others.
 */
export function orthonormalBasis(
  terms: readonly (readonly number[])[],
  size: number,
): Basis | undefined {
  const columns: number[][] = [];
  const triangle = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (let term = 0; term < size; term += 1) {
    const column = terms.map((row) => row[term] as number);
    const before = Math.sqrt(dot(column, column));
    columns.forEach((earlier, index) => {
      const share = dot(column, earlier);
      for (let row = 0; row < column.length; row += 1) {
        column[row] = (column[row] as number) - share * (earlier[row] as number);
      }
      (triangle[index] as number[])[term] = share;
    });
    const own = Math.sqrt(dot(column, column));
    if (!(own > DEPENDENT * before)) return undefined;
    (triangle[term] as number[])[term] = own;
    columns.push(column.map((entry) => entry / own));
  }
  return { columns, triangle };
}

/** Solves upper · x = targets, from the last row up. */
export function solveTriangle(
  upper: readonly (readonly number[])[],
  targets: readonly number[],
): readonly number[] {
  const solution = targets.slice();
  for (let row = upper.length - 1; row >= 0; row -= 1) {
    const entries = upper[row] as readonly number[];
    let rest = targets[row] as number;
    for (let k = row + 1; k < upper.length; k += 1) {
      rest -= (entries[k] as number) * (solution[k] as number);
    }
    solution[row] = rest / (entries[row] as number);
  }
  return solution;
}

/** Sum of the products of two lists of one length. */
export function dot(one: readonly number[], other: readonly number[]): number {
  let sum = 0;
  for (let row = 0; row < one.length; row += 1) {
    sum += (one[row] as number) * (other[row] as number);
  }
  return sum;
}

/**
 * The factors with which a sum of terms runs closest to values: least squares. Undefined where the
 * values leave a factor open.
 *
 * `terms` has one row for each value: what each factor is multiplied by.
 */
export function leastSquares(
  terms: readonly (readonly number[])[],
  values: readonly number[],
): readonly number[] | undefined {
  const basis = orthonormalBasis(terms, terms[0]?.length ?? 0);
  if (basis === undefined) return undefined;
  return solveTriangle(
    basis.triangle,
    basis.columns.map((column) => dot(column, values)),
  );
}
