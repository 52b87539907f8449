import { densify, distance, distanceFromPolyline } from "../../geometry/index.js";
import { areaAround, flatten, isWithinPolygon } from "../../geometry/internal.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import { outline, outlinePath } from "../../proportions/index.js";
import {
  type FlatPoint,
  flatPoint,
  length,
  type Length,
  type Point,
  type Polyline,
  type Side,
} from "../../units/index.js";
import {
  refuse,
  refusingAs,
  requireFinitePoint,
  requireWithin,
  requireWord,
} from "../../units/internal.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { areaNote } from "./notes.js";
import { AREA_AIMS, type AreaCheck, type SkinArea } from "./skin-area.js";

/** A plan as far as areas of skin are held against it. */
export type PlannedShape = Pick<PlannedDots, "dots" | "choices">;

/**
 * What a plan does to areas of skin: how much of old pigment or of a scar that is to be covered sticks out of the
 * planned brows, and how much they overlap of what they are to stay off, each with its margin; how far at most, and
 * where. Areas are those of the frontal view.
 *
 * An edge that was drawn by hand is known to 0.26 mm (standard uncertainty of a landmark placed by hand): a margin of
 * half a millimetre covers that.
 *
 * @throws GeometryError `wrong-count` for an edge of fewer than three points; `not-finite`; `out-of-range` for a
 * margin outside of 0…10 mm or an aim that is none; as `outline`
 *
 * @example
 * ```ts
 * import { mm, planDots, type PlannableFace, say } from "brow-geometry";
 * import { checkAreas } from "brow-geometry/mapping";
 * const side = (sign: 1 | -1) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: mm([[sign * 17, 20], [sign * 38, 20], [sign * 57, 18]]) },
 * });
 * const face: PlannableFace = { right: side(-1), left: side(1), midline: {} };
 * const edge = mm([[20, 18], [30, 18], [30, 22], [20, 22]]);
 * const [check] = checkAreas(planDots(face), [{ name: "old pigment", aim: "cover", edge }]);
 * check?.size; // → 40.0
 * check?.distance; // → 2.0
 * check && say(check.note).startsWith("old pigment: 20 mm² stick out of the planned brows"); // → true
 * ```
 */
export function checkAreas(plan: PlannedShape, areas: readonly SkinArea[]): readonly AreaCheck[] {
  return refusingAs("checkAreas", () => {
    areas.forEach(requireArea);
    return areas.map((area) => checkArea(plan, area));
  });
}

/** Planned outlines are read as polygons that stray from them by so much, edges of areas at points so far apart. */
const STRAYS = length(0.002);
const STEP = length(0.1);

/** Margins of more would be another area; ours, in mm. */
const MOST_MARGIN = 10;

/** What is smaller, in mm and mm², is beyond by rounding alone. */
const LEAST = 0.01;

function requireArea({ name, aim, edge, margin = length(0) }: SkinArea, index: number): void {
  const field = `areas[${index}]`;
  requireWord(`${field}.aim`, aim, AREA_AIMS);
  requireWithin(`${field}.margin`, margin, 0, MOST_MARGIN);
  edge.forEach((point, at) => {
    requireFinitePoint(`${field}.edge[${at}]`, point);
  });
  if (edge.length < 3) {
    refuse("wrong-count", `${field}.edge`, edge, `three points or more of ${name}`);
  }
}

function checkArea({ dots, choices }: PlannedShape, area: SkinArea): AreaCheck {
  const { name, aim, edge, margin = length(0) } = area;
  const side: Side = edge.reduce((sum, [x]) => sum + x, 0) < 0 ? "right" : "left";
  const brow = flatten(outlinePath(outline(dots[side], choices.shape)), STRAYS);
  const size = areaAround(edge, margin);
  const shared = areaAround(edge, margin, brow);
  const isToCover = aim === "cover";
  const beyond = isToCover ? size - shared : shared;
  const reached = isToCover ? farthestOut(edge, brow) : deepestIn(edge, brow);
  const far = reached.by + margin;
  const dot = nearestDot(reached.at, dots[side]);
  const known = { area, size, side, dot };
  if (beyond < LEAST || far < LEAST) {
    const note = areaNote(isToCover ? "area-covered" : "area-clear", { name });
    return { ...known, beyond: 0, distance: length(0), note };
  }
  const values = { name, area: beyond, distance: far, side, dot };
  const note = areaNote(isToCover ? "area-sticks-out" : "area-overlapped", values);
  return { ...known, beyond, distance: length(far), at: reached.at, note };
}

/** A place, and how far it lies beyond an edge; negative before it. */
interface Reached {
  readonly by: number;
  readonly at: FlatPoint<"mm">;
}

/** The point of an area's edge farthest out of a brow, or least deep in it. */
function farthestOut(edge: Polyline<"mm">, brow: Polyline<"mm">): Reached {
  return farthest(alongEdge(edge), (point) => outOf(point, brow));
}

/** The point of an area's edge deepest in a brow, or of the brow's deepest in the area. */
function deepestIn(edge: Polyline<"mm">, brow: Polyline<"mm">): Reached {
  const [ofArea, ofBrow] = [
    farthest(alongEdge(edge), (point) => -outOf(point, brow)),
    farthest(alongEdge(brow), (point) => -outOf(point, edge)),
  ];
  return ofBrow.by > ofArea.by ? ofBrow : ofArea;
}

/** How far a point lies outside a polygon; negative inside. */
export function outOf(point: Point<"mm">, polygon: Polyline<"mm">): number {
  const away = distanceFromPolyline(point, closed(polygon));
  return isWithinPolygon(point, polygon) ? -away : away;
}

/** Points of a closed edge. */
export function alongEdge(edge: Polyline<"mm">): Polyline<"mm"> {
  return densify(closed(edge), STEP);
}

function closed(polygon: Polyline<"mm">): Polyline<"mm"> {
  const [first] = polygon;
  const last = polygon[polygon.length - 1];
  const isClosed = first === undefined || (first[0] === last?.[0] && first[1] === last[1]);
  return isClosed ? polygon : [...polygon, first];
}

function farthest(points: Polyline<"mm">, by: (point: Point<"mm">) => number): Reached {
  return points.reduce<Reached>(
    (most, point) => {
      const away = by(point);
      return away > most.by ? { by: away, at: flatPoint(point[0], point[1]) } : most;
    },
    { by: -Infinity, at: flatPoint(0, 0) },
  );
}

function nearestDot(at: Point<"mm">, dots: PlannedDots["dots"]["left"]): AreaCheck["dot"] {
  const away = (dot: AreaCheck["dot"]): Length<"mm"> => distance(dots[dot], at);
  return DOT_NAMES.reduce((nearest, dot) => (away(dot) < away(nearest) ? dot : nearest));
}
