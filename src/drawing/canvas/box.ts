/** A pair of picture coordinates: x to the right, y down. */
export type Spot = readonly [x: number, y: number];

/** An upright rectangle of the picture, from its top left corner. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A straight stroke from one place of the picture to another. */
export interface Stretch {
  readonly from: Spot;
  readonly to: Spot;
}

/** How far it is from one spot to another, and which way: of length 1, or not a number where they meet. */
export function wayBetween(
  from: Spot,
  to: Spot,
): { readonly length: number; readonly along: Spot } {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(x, y);
  return { length, along: [x / length, y / length] };
}

export function boxAround(spots: readonly Spot[]): Box {
  const xs = spots.map(([x]) => x);
  const ys = spots.map(([, y]) => y);
  const x = Math.min(...xs);
  const y = Math.min(...ys);
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

export function grown(box: Box, margin: number): Box {
  return withMargin(box, { top: 1, right: 1, bottom: 1, left: 1 }, margin);
}

/** A box with more room on each side, which is given in steps of a size. */
export function withMargin(
  { x, y, width, height }: Box,
  { top, right, bottom, left }: Readonly<Record<"top" | "right" | "bottom" | "left", number>>,
  size: number,
): Box {
  return {
    x: x - left * size,
    y: y - top * size,
    width: width + (left + right) * size,
    height: height + (top + bottom) * size,
  };
}

export function overlap(one: Box, other: Box): boolean {
  return (
    one.x < other.x + other.width &&
    other.x < one.x + one.width &&
    one.y < other.y + other.height &&
    other.y < one.y + one.height
  );
}

export function isWithin(inner: Box, outer: Box): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

export function clippedTo(box: Box, { from, to }: Stretch): Stretch | undefined {
  const [left, top] = from;
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  // Most stretches of a picture lie beyond one edge: they are told without a division.
  if (left < box.x ? to[0] < box.x : left > right && to[0] > right) return undefined;
  if (top < box.y ? to[1] < box.y : top > bottom && to[1] > bottom) return undefined;
  const [x, y] = [to[0] - left, to[1] - top];
  const [first, last] = passage(box.x - left, right - left, x);
  const [above, below] = passage(box.y - top, bottom - top, y);
  const [enters, leaves] = [Math.max(0, first, above), Math.min(1, last, below)];
  if (enters > leaves) return undefined;
  return {
    from: [left + enters * x, top + enters * y],
    to: [left + leaves * x, top + leaves * y],
  };
}

/** Between which shares of a way it lies between two edges; a way along them does so all the time. */
function passage(low: number, high: number, way: number): readonly [number, number] {
  if (way === 0) return [0, 1];
  return way > 0 ? [low / way, high / way] : [high / way, low / way];
}
