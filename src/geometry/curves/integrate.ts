/**
 * Abscissas and weights of the sixteen-point Gauss–Legendre rule on −1…1, one of each mirrored pair:
 * zeros of the Legendre polynomial P₁₆ and 2 / ((1 − x²) P₁₆′(x)²), computed once when first used.
 */
const POINTS = 16;

interface Node {
  readonly at: number;
  readonly weight: number;
}

const nodes: readonly Node[] = /* @__PURE__ */ legendreNodes();

function legendreNodes(): readonly Node[] {
  return Array.from({ length: POINTS / 2 }, (_, index) => {
    let at = Math.cos((Math.PI * (index + 0.75)) / (POINTS + 0.5));
    let slope = 1;
    // Newton's steps from Chebyshev's guess; five reach the last digit of a double.
    for (let step = 0; step < 5; step += 1) {
      let [before, value] = [1, at];
      for (let order = 2; order <= POINTS; order += 1) {
        [before, value] = [value, ((2 * order - 1) * at * value - (order - 1) * before) / order];
      }
      slope = (POINTS * (at * value - before)) / (at * at - 1);
      at -= value / slope;
    }
    return { at, weight: 2 / ((1 - at * at) * slope * slope) };
  });
}

/** Two estimates of a stretch that agree to this share of the whole integral are settled. */
const AGREEMENT = 1e-12;
/** A stretch is halved at most so often: a kink is closed in to 1e-12 of the whole. */
const MOST_HALVINGS = 40;

/**
 * Integral of a function of one number: sixteen-point Gauss–Legendre on halves, compared with the
 * whole, halved further where they differ by more than 1e-12 of it.
 */
export function integrate(from: number, to: number, of: (at: number) => number): number {
  // Measured without signs: where parts cancel, or a stretch holds next to nothing, rounding alone
  // would never settle.
  let size = 0;
  const whole = rule(from, to, (at) => {
    const value = of(at);
    size += Math.abs(value);
    return value;
  });
  const enough = AGREEMENT * Math.abs(to - from) * (size / POINTS);
  return settled(from, to, of, whole, enough, MOST_HALVINGS);
}

function settled(
  from: number,
  to: number,
  of: (at: number) => number,
  whole: number,
  enough: number,
  halvings: number,
): number {
  const middle = (from + to) / 2;
  const first = rule(from, middle, of);
  const second = rule(middle, to, of);
  const sum = first + second;
  if (halvings === 0 || !(Math.abs(sum - whole) > enough)) return sum;
  return (
    settled(from, middle, of, first, enough, halvings - 1) +
    settled(middle, to, of, second, enough, halvings - 1)
  );
}

function rule(from: number, to: number, of: (at: number) => number): number {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  let sum = 0;
  for (const { at, weight } of nodes)
    sum += weight * (of(middle - half * at) + of(middle + half * at));
  return half * sum;
}
