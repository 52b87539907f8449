/** Abscissa and weight of one mirrored pair of a Gauss–Legendre rule on −1…1. */
interface Node {
  readonly at: number;
  readonly weight: number;
}

/** Rules of eight and sixteen points: where both agree, the finer one is far better than that. */
const COARSE: readonly Node[] = /* @__PURE__ */ legendreNodes(8);
const FINE: readonly Node[] = /* @__PURE__ */ legendreNodes(16);

/** Zeros of the Legendre polynomial Pₙ, n even, and the weights 2 / ((1 − x²) Pₙ′(x)²). */
function legendreNodes(points: number): readonly Node[] {
  return Array.from({ length: points / 2 }, (_, index) => {
    let at = Math.cos((Math.PI * (index + 0.75)) / (points + 0.5));
    let slope = 1;
    // Newton's steps from Chebyshev's guess; five reach the last digit of a double.
    for (let step = 0; step < 5; step += 1) {
      let [before, value] = [1, at];
      for (let order = 2; order <= points; order += 1) {
        [before, value] = [value, ((2 * order - 1) * at * value - (order - 1) * before) / order];
      }
      slope = (points * (at * value - before)) / (at * at - 1);
      at -= value / slope;
    }
    return { at, weight: 2 / ((1 - at * at) * slope * slope) };
  });
}

/** Two estimates of a stretch that agree to this share of the whole integral are settled. */
const AGREEMENT = 1e-12;
/** A stretch is halved at most so often: a kink is closed in to 1e-12 of the whole. */
const MOST_HALVINGS = 40;

/** Puts the values of a function in the stead of the first so many places of a row. */
type FunctionOfRow = (row: Float64Array, size: number) => void;

/** Where values are written: nobody integrates within an integral. */
const ROW = /* @__PURE__ */ new Float64Array(2 * FINE.length);

/** Integral of a function of one number, as {@link integrateRow}. */
export function integrate(from: number, to: number, of: (at: number) => number): number {
  return integrateRow(from, to, (row, size) => {
    for (let index = 0; index < size; index += 1) row[index] = of(row[index] as number);
  });
}

/**
 * Integral of a function of many numbers at once: Gauss–Legendre with sixteen points, compared with eight, halved
 * where they differ by more than 1e-12 of the whole.
 */
export function integrateRow(from: number, to: number, of: FunctionOfRow): number {
  const coarse = rule(COARSE, from, to, of);
  // Measured without signs: where parts cancel, or a stretch holds next to nothing, rounding alone
  // would never settle.
  let size = 0;
  for (let index = 0; index < 2 * COARSE.length; index += 1) size += Math.abs(ROW[index] as number);
  const enough = AGREEMENT * Math.abs(to - from) * (size / (2 * COARSE.length));
  return settled(from, to, of, coarse, enough, MOST_HALVINGS);
}

function settled(
  from: number,
  to: number,
  of: FunctionOfRow,
  coarse: number,
  enough: number,
  halvings: number,
): number {
  const fine = rule(FINE, from, to, of);
  if (halvings === 0 || !(Math.abs(fine - coarse) > enough)) return fine;
  const middle = (from + to) / 2;
  const half = (start: number, end: number): number =>
    settled(start, end, of, rule(COARSE, start, end, of), enough, halvings - 1);
  return half(from, middle) + half(middle, to);
}

function rule(nodes: readonly Node[], from: number, to: number, of: FunctionOfRow): number {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  for (let index = 0; index < nodes.length; index += 1) {
    const { at } = nodes[index] as Node;
    ROW[2 * index] = middle - half * at;
    ROW[2 * index + 1] = middle + half * at;
  }
  of(ROW, 2 * nodes.length);
  let sum = 0;
  for (let index = 0; index < nodes.length; index += 1) {
    const { weight } = nodes[index] as Node;
    sum += weight * ((ROW[2 * index] as number) + (ROW[2 * index + 1] as number));
  }
  return half * sum;
}
