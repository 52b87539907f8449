/** Terms made orthogonal and of length 1: column k of the terms = Σᵢ columns[i] · triangle[i][k]. */
export interface Basis {
  readonly columns: readonly Float64Array[];
  readonly triangle: readonly (readonly number[])[];
}

/** A term of which less than this share is new says what the terms before it said. */
export const DEPENDENT = 1e-9;

/** Orthogonalises terms that come as columns; undefined where one repeats those before it. */
export function orthonormalBasis(terms: readonly Float64Array[]): Basis | undefined {
  const columns: Float64Array[] = [];
  const triangle = terms.map(() => zeros(terms.length));
  for (let term = 0; term < terms.length; term += 1) {
    const column = (terms[term] as Float64Array).slice();
    const before = Math.sqrt(dot(column, column));
    for (let index = 0; index < term; index += 1) {
      const earlier = columns[index] as Float64Array;
      const share = dot(column, earlier);
      addTo(column, earlier, -share);
      (triangle[index] as number[])[term] = share;
    }
    const own = Math.sqrt(dot(column, column));
    if (!(own > DEPENDENT * before)) return undefined;
    (triangle[term] as number[])[term] = own;
    for (let row = 0; row < column.length; row += 1) column[row] = (column[row] as number) / own;
    columns.push(column);
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
export function dot(one: ArrayLike<number>, other: ArrayLike<number>): number {
  let sum = 0;
  for (let row = 0; row < one.length; row += 1) {
    sum += (one[row] as number) * (other[row] as number);
  }
  return sum;
}

/** Adds a multiple of a list to another of the same length. */
export function addTo<Sum extends number[] | Float64Array>(
  sum: Sum,
  other: Sum,
  factor: number,
): void {
  for (let row = 0; row < sum.length; row += 1) {
    sum[row] = (sum[row] as number) + factor * (other[row] as number);
  }
}

export function zeros(count: number): number[] {
  return new Array<number>(count).fill(0);
}

/** The factors with which the terms of a basis run closest to values. */
export function closestFactors(
  { columns, triangle }: Basis,
  values: ArrayLike<number>,
): readonly number[] {
  return solveTriangle(
    triangle,
    columns.map((column) => dot(column, values)),
  );
}

/** Rows as columns. */
export function columnsOf(rows: readonly (readonly number[])[]): readonly Float64Array[] {
  return (rows[0] ?? []).map(
    (_, column) => new Float64Array(rows.map((row) => row[column] as number)),
  );
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
  const basis = orthonormalBasis(columnsOf(terms));
  return basis && closestFactors(basis, values);
}
