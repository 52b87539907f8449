/** A knot of a curve y(x): its place, and the slope on either side, equal where the curve is smooth. */
export interface HermiteKnot {
  readonly x: number;
  readonly y: number;
  readonly before: number;
  readonly after: number;
}

/**
 * A curve y(x) in cubic pieces: between neighbouring knots the cubic that has their places and
 * slopes, beyond the first and the last the straight line along the slope there. The x of the knots
 * increase strictly.
 */
export type HermiteCurve = readonly HermiteKnot[];

/**
 * Place and slope of a curve at one x; at a knot, the slope towards smaller and towards larger x.
 */
export function hermiteKnotAt(curve: HermiteCurve, x: number): HermiteKnot {
  const next = curve.findIndex((knot) => knot.x >= x);
  const to = curve[next];
  if (to?.x === x) return to;
  const from = next < 0 ? curve[curve.length - 1] : curve[next - 1];
  if (from === undefined || to === undefined) {
    const [end, slope] = from === undefined ? [to, to?.before ?? 0] : [from, from.after];
    return { x, y: (end?.y ?? 0) + slope * (x - (end?.x ?? 0)), before: slope, after: slope };
  }
  const width = to.x - from.x;
  const part = (x - from.x) / width;
  const chord = (to.y - from.y) / width;
  // y = from + width · part · (m₀ + part · (c₂ + part · c₃)), from the slopes at both ends.
  const second = 3 * chord - 2 * from.after - to.before;
  const third = from.after + to.before - 2 * chord;
  const y = from.y + width * part * (from.after + part * (second + part * third));
  const slope = from.after + part * (2 * second + part * 3 * third);
  return { x, y, before: slope, after: slope };
}

/** The y of a curve at an x. */
export function hermiteAt(curve: HermiteCurve, x: number): number {
  return hermiteKnotAt(curve, x).y;
}

/**
 * One curve less another, over the other's knots: again in cubic pieces, with a knot wherever either
 * has one, so that nothing is lost.
 */
export function hermiteDifference(of: HermiteCurve, less: HermiteCurve): HermiteCurve {
  const first = less[0]?.x ?? 0;
  const last = less[less.length - 1]?.x ?? 0;
  const places = [...of, ...less].map(({ x }) => x).filter((x) => x >= first && x <= last);
  return [...new Set(places)]
    .sort((one, other) => one - other)
    .map((x) => {
      const [one, other] = [hermiteKnotAt(of, x), hermiteKnotAt(less, x)];
      return {
        x,
        y: one.y - other.y,
        before: one.before - other.before,
        after: one.after - other.after,
      };
    });
}
