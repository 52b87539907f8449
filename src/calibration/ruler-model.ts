import { chiSquareQuantile } from "../units/internal.js";
import { fitPolynomial, polynomialAt, type PolynomialFit } from "../geometry/internal.js";

/** A reading and where its mark lies along the edge. */
export interface Place {
  readonly reading: number;
  readonly along: number;
}

/** How place along the edge follows from the reading. */
export interface RulerModel {
  readonly curve: PolynomialFit;
  /** The reading in the middle of the marks used. */
  readonly middle: number;
  /** How many times the placement's uncertainty its marks really scatter, at least 1. */
  readonly widening: number;
  readonly rejected?: number;
}

/** With fewer marks than this, one that is off cannot be told from the others. */
const ENOUGH_TO_JUDGE = 4;

/**
 * The simplest account of the marks that their placement allows: evenly spaced, or all but one of them, or
 * crowding towards one end as the ruler recedes. Where none fits: evenly spaced, with the scatter they show.
 */
export function simplestModel(places: readonly Place[], placement: number): RulerModel {
  const even = modelOf(places, 1);
  if (explains(even, places, placement)) return even;
  if (places.length >= ENOUGH_TO_JUDGE) {
    const others = [modelOf(places, 2), ...places.map((_, left) => modelOf(places, 1, left))].sort(
      (one, other) => squares(one, places) - squares(other, places),
    );
    const best = others[0] as RulerModel;
    if (explains(best, places, placement)) return best;
  }
  const scatter = Math.sqrt(squares(even, places) / freedomOf(even)) / placement;
  return { ...even, widening: Math.max(1, scatter) };
}

function modelOf(places: readonly Place[], degree: 1 | 2, rejected?: number): RulerModel {
  const used = places.filter((_, index) => index !== rejected);
  const readings = used.map(({ reading }) => reading);
  const curve = fitPolynomial(
    readings,
    used.map(({ along }) => along),
    degree,
  );
  const middle = (Math.min(...readings) + Math.max(...readings)) / 2;
  return { curve, middle, widening: 1, ...(rejected === undefined ? {} : { rejected }) };
}

/** Probability with which marks that a model accounts for are taken to be accounted for. */
const ACCEPTANCE = 0.99;

function explains(model: RulerModel, places: readonly Place[], placement: number): boolean {
  const freedom = freedomOf(model);
  if (freedom === 0) return true;
  return squares(model, places) <= placement ** 2 * chiSquareQuantile(ACCEPTANCE, freedom);
}

function freedomOf({ curve }: RulerModel): number {
  return curve.nodes.length - curve.powers.length;
}

function squares({ curve, rejected }: RulerModel, places: readonly Place[]): number {
  return places.reduce(
    (sum, { reading, along }, index) =>
      index === rejected ? sum : sum + (along - polynomialAt(curve, reading)) ** 2,
    0,
  );
}

/** How much too high a reading is for the place of its mark. */
export function readingExcess({ reading, along }: Place, curve: PolynomialFit): number {
  return (polynomialAt(curve, reading) - along) / polynomialAt(curve, reading, 1);
}

/** Pixels a millimetre by the median of all pairs: one wrong reading does not carry it away. */
export function usualSlope(places: readonly Place[]): number {
  const slopes = places
    .flatMap((one, index) =>
      places
        .slice(index + 1)
        .map((other) => (other.along - one.along) / (other.reading - one.reading)),
    )
    .sort((one, other) => one - other);
  return slopes[Math.floor(slopes.length / 2)] as number;
}

/** Pixels a millimetre at the first and the last of the marks, in order of their readings. */
export function endSlopes({ curve }: RulerModel): readonly [first: number, last: number] {
  return [
    polynomialAt(curve, Math.min(...curve.nodes), 1),
    polynomialAt(curve, Math.max(...curve.nodes), 1),
  ];
}
