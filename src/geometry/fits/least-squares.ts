import { dot, orthonormalBasis, solveTriangle } from "./orthonormal-basis.js";

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
