import { refuse } from "../quantities/geometry-error.js";
import type { Coordinate } from "./measured-inputs.js";

/** How two of the inputs' numbers vary together: a coefficient of −1…1. */
export interface Correlation<Name extends string = string> {
  readonly between: readonly [Name, Name];
  readonly coefficient: number;
}

/**
 * Lower triangular factor of the matrix of correlations: independent deviations, multiplied by it,
 * vary together as asked. Undefined where nothing varies together.
 */
export function correlationFactor(
  coordinates: readonly Coordinate[],
  correlations: readonly Correlation[],
): readonly (readonly number[])[] | undefined {
  if (correlations.length === 0) return undefined;
  const matrix = coordinates.map((_, row) => coordinates.map((__, column) => +(row === column)));
  correlations.forEach(({ between, coefficient }, index) => {
    const [row, column] = between.map((name) =>
      indexOf(coordinates, `correlations[${index}].between`, name),
    ) as [number, number];
    if (row === column || !(Math.abs(coefficient) <= 1)) {
      const need = "two different inputs and a coefficient of −1 to 1";
      refuse("out-of-range", `correlations[${index}]`, { between, coefficient }, need);
    }
    (matrix[row] as number[])[column] = coefficient;
    (matrix[column] as number[])[row] = coefficient;
  });
  return choleskyFactor(matrix);
}

function indexOf(coordinates: readonly Coordinate[], field: string, name: string): number {
  const index = coordinates.findIndex((coordinate) => coordinate.name === name);
  if (index === -1) {
    const need = `one of ${coordinates.map((coordinate) => coordinate.name).join(", ")}`;
    refuse("out-of-range", field, name, need);
  }
  return index;
}

/** A pivot this close to 0 is 0: numbers that vary together completely are allowed. */
const ROUNDING = 1e-9;

function choleskyFactor(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const factor: number[][] = [];
  for (const [row, entries] of matrix.entries()) {
    const own: number[] = [];
    for (let column = 0; column < row; column += 1) {
      const other = factor[column] as number[];
      const rest = (entries[column] as number) - product(own, other);
      const pivot = other[column] as number;
      if (pivot === 0 && Math.abs(rest) > ROUNDING) refuseContradiction();
      own.push(pivot === 0 ? 0 : rest / pivot);
    }
    const rest = (entries[row] as number) - product(own, own);
    if (rest < -ROUNDING) refuseContradiction();
    own.push(rest < ROUNDING ? 0 : Math.sqrt(rest));
    factor.push(own);
  }
  return factor;
}

/** Sum of the products of two lists, as far as the shorter of them goes. */
export function product(one: readonly number[], other: readonly number[]): number {
  let sum = 0;
  for (let index = 0; index < Math.min(one.length, other.length); index += 1) {
    sum += (one[index] as number) * (other[index] as number);
  }
  return sum;
}

function refuseContradiction(): never {
  const need = "coefficients that can occur together";
  refuse("inconsistent", "correlations", "a contradiction", need);
}
