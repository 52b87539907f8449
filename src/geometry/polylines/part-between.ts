import { flatPoint, type Point, type Polyline, type Unit } from "../../units/index.js";
import { between } from "../lines/vector.js";

/**
 * The part of a polyline between its places nearest to two points, the one that comes first on it first;
 * before its first point and after its last one it goes on as its end legs run. Moves evenly with both
 * points, as long as no other place comes as near. Points are taken as finite.
 */
export function partBetween<U extends Unit>(
  polyline: Polyline<U>,
  one: Point<U>,
  other: Point<U>,
): Polyline<U> {
  const [from, to] = [footOn(polyline, one), footOn(polyline, other)];
  const isTurned = (to.index - from.index || to.share - from.share) < 0;
  const [first, last] = isTurned ? [to, from] : [from, to];
  const at = ({ index, share }: Foot): Point<U> => {
    const [from, to] = [polyline[index - 1] as Point<U>, polyline[index] as Point<U>];
    // Its own points, where it has them there.
    if (share === 0 || share === 1) return share === 0 ? from : to;
    const [x, y] = between(from, to, share);
    return flatPoint(x, y);
  };
  return [at(first), ...polyline.slice(first.index, last.index), at(last)];
}

/** A place on a leg, which is named by the index of its last point. */
interface Foot {
  readonly index: number;
  readonly share: number;
}

function footOn<U extends Unit>(polyline: Polyline<U>, point: Point<U>): Foot {
  let nearest: Foot = { index: 1, share: 0 };
  let least = Number.POSITIVE_INFINITY;
  let from = polyline[0] as Point<U>;
  let isFirst = true;
  let past = 0;
  for (let index = 1; index < polyline.length; index += 1) {
    const to = polyline[index] as Point<U>;
    const legX = to[0] - from[0];
    const legY = to[1] - from[1];
    const offX = point[0] - from[0];
    const offY = point[1] - from[1];
    from = to;
    const square = legX * legX + legY * legY;
    if (square === 0) continue;
    const share = (offX * legX + offY * legY) / square;
    const onLeg = Math.min(Math.max(share, 0), 1);
    const apart = (offX - onLeg * legX) ** 2 + (offY - onLeg * legY) ** 2;
    // What lies past the end of the nearest leg counts where no other leg follows.
    past = 0;
    if (apart >= least) continue;
    least = apart;
    past = Math.max(share - 1, 0);
    nearest = { index, share: isFirst ? Math.min(share, 1) : onLeg };
    isFirst = false;
  }
  return { ...nearest, share: nearest.share + past };
}
