import { distanceAlongLine, distanceFromLine, pointOnLine } from "../../geometry/index.js";
import { depthAt, type FaceSide, type Skin } from "../../landmarks/index.js";
import type { Guide } from "../../proportions/index.js";
import { deepPoint, hasDepth, length, type Point, type Polyline } from "../../units/index.js";

/** A landmark lies on a guide that was drawn through it, whatever rounding makes of it; in mm. */
const ON_GUIDE = 1e-6;

/** A place on a guide whose depth is known. */
interface Bend {
  readonly along: number;
  readonly depth: number;
}

/**
 * The way of a guide on the face, between two distances along its line: from its landmarks, as deep
 * as these are, to its dot on the skin. It is straight from the front; where a turned head is drawn
 * back onto its photo, it bends at each of them.
 */
export function guidePath(
  guide: Guide,
  landmarks: FaceSide<"mm">,
  dot: Point<"mm">,
  skin: Skin,
): (stretch: readonly [from: number, to: number]) => Polyline<"mm"> {
  const bends = bendsOf(guide, landmarks, dot, skin);
  const pointAt = (along: number): Point<"mm"> => {
    const flat = pointOnLine(guide.line, length(along));
    const depth = depthBetween(bends, along);
    return depth === undefined ? flat : deepPoint(flat[0], flat[1], depth);
  };
  return ([from, to]) => {
    const within = bends.map(({ along }) => along).filter((along) => along > from && along < to);
    return [from, ...within, to].map(pointAt);
  };
}

function bendsOf(
  { line, from }: Guide,
  landmarks: FaceSide<"mm">,
  dot: Point<"mm">,
  skin: Skin,
): readonly Bend[] {
  const end = { along: distanceAlongLine(dot, line), depth: depthAt(dot, skin) };
  const bends = from.flatMap((name): readonly Bend[] => {
    const point = landmarks[name];
    if (point === undefined || !hasDepth(point)) return [];
    const along = distanceAlongLine(point, line);
    const onGuide = Math.abs(distanceFromLine(point, line)) < ON_GUIDE && along < end.along;
    return onGuide ? [{ along, depth: point[2] }] : [];
  });
  return bends.length === 0 ? [] : [...bends, end];
}

/** The depth at a place of the guide; none past its dot, from where it lies on the skin. */
function depthBetween(bends: readonly Bend[], along: number): number | undefined {
  const next = bends.findIndex((bend) => bend.along >= along);
  const [before, after] = [bends[next - 1], bends[next]];
  if (after === undefined || before === undefined) return after?.depth;
  const share = (along - before.along) / (after.along - before.along);
  return before.depth + share * (after.depth - before.depth);
}
