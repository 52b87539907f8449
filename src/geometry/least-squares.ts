import { dot, orthonormalBasis, solveTriangle } from "./orthonormal-basis.js";

/**
 * The factors with which a sum of terms runs closest to values: least squares.
 *
 * `terms` has one row for each value: what each factor is multiplied by.
 */
export function leastSquares(
  where: string,
  terms: readonly (readonly number[])[],
  values: readonly number[],
): readonly number[] {
  const { columns, triangle } = orthonormalBasis(where, terms, terms[0]?.length ?? 0);
  return solveTriangle(
    triangle,
    columns.map((column) => dot(column, values)),
  );
}
