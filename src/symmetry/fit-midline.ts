import {
  distanceAlongLine,
  distanceFromLine,
  type Line,
  midpoint,
  pointOnLine,
} from "../geometry/index.js";
import type { Face } from "../landmarks/index.js";
import {
  GeometryError,
  type Length,
  length,
  type Point,
  requireFinitePoint,
  toRadians,
  type Unit,
} from "../units/index.js";
import type { Midline, MidlineMethod, MirroredLandmark, OtherMidline } from "./midline.js";
import { type FittedLine, type GivenPoints, lineByMethod } from "./midline-methods.js";
import {
  type FaceSense,
  leftIsPositive,
  MIDLINE_LANDMARKS,
  PAIRED_LANDMARKS,
  senseOf,
  tiltOf,
} from "./sense-of-face.js";

/** How {@link fitMidline} works. */
export interface MidlineOptions<U extends Unit> {
  /** Default `"mirror"`, or `"given"` where points are given. */
  readonly method?: MidlineMethod;
  /** Two points that the artist marked on the middle of the face, the upper one first. */
  readonly given?: GivenPoints<U>;
}

/**
 * The midline of a face.
 *
 * By default the best mirror line of its landmarks, brows excluded, which neither a bent nose nor
 * any one misplaced landmark leads astray: exact least trimmed squares over all subsets that drop
 * two of them, then bisquare steps to convergence, in which each counts by its own uncertainty, at
 * least 1 % of the biocular width. With fewer than seven pairs and midline landmarks nothing is
 * trimmed, and `robust` says so. Where nose and upper lip are shifted together, nothing can tell.
 *
 * @throws GeometryError `missing-landmark` without both inner eye corners (unless points are given),
 * or where nothing tells up from down; `wrong-count` without the points for `"given"`
 * @throws GeometryError `not-finite`, `coincident-points`, `sides-swapped` for pairs that are none
 * @throws GeometryError `ill-conditioned`, `inconsistent` where the landmarks suit no line
 *
 * @example
 * ```ts
 * import { fitMidline, px } from "brow-geometry";
 * const midline = fitMidline({
 *   right: { endocanthion: px([460, 510]), cheilion: px([470, 690]) },
 *   left: { endocanthion: px([560, 500]), cheilion: px([588, 679]) },
 *   midline: { sellion: px([511, 506]) },
 * });
 * midline.tilt; // → 5.8
 * midline.robust; // → false
 * ```
 */
export function fitMidline<U extends Unit>(
  face: Face<U>,
  options: MidlineOptions<U> = {},
): Midline<U> {
  const method = options.method ?? (options.given === undefined ? "mirror" : "given");
  const sense = senseOf(face);
  requireLandmarksInOrder(face, sense);
  const fitted = lineByMethod(face, method, options.given);
  if (method !== "given") requireUpwards(face, sense);
  const level = eyeLevel(face) ?? fitted.line.through;
  const placed = placeOnFace(fitted.line, level, sense);
  return {
    line: placed.line,
    tilt: placed.tilt,
    tiltU: fitted.angleU,
    throughU: length(Math.hypot(fitted.throughU, toRadians(fitted.angleU) * placed.fromCentre)),
    method,
    offsets: offsetsFrom(placed, face),
    weights: weightsByName(fitted),
    trimmed: fitted.names.filter((_, index) => fitted.weights[index] === 0),
    robust: fitted.robust,
    others: othersThan(method, placed, face, level, sense),
  };
}

function weightsByName<U extends Unit>({ names, weights }: FittedLine<U>): Midline<U>["weights"] {
  const byName: { [Name in MirroredLandmark]?: number } = {};
  names.forEach((name, index) => {
    byName[name] = weights[index] as number;
  });
  return byName;
}

/** A line that knows where the face's forehead and left side are. */
interface PlacedLine<U extends Unit> {
  readonly line: Line<U>;
  readonly tilt: number;
  /** Whether positive distances from the line lie towards the client's left, as in the photo. */
  readonly leftIsPositive: boolean;
  /** From the fitted line's centre to the foot, along the line. */
  readonly fromCentre: Length<U>;
}

function placeOnFace<U extends Unit>(
  fitted: Line<U>,
  level: Point<U>,
  sense: FaceSense,
): PlacedLine<U> {
  const { upwards } = sense;
  const [x, y] = fitted.direction;
  const direction: Line<U>["direction"] =
    upwards !== undefined && x * upwards[0] + y * upwards[1] < 0 ? [-x, -y] : [x, y];
  const fromCentre = distanceAlongLine(level, { through: fitted.through, direction });
  const line = { through: pointOnLine({ ...fitted, direction }, fromCentre), direction };
  const downwards = leftIsPositive(direction, sense);
  const tilt = tiltOf(direction, sense);
  if (!downwards && Math.abs(tilt) > 90) throw mirroredPhoto(direction);
  return { line, tilt, leftIsPositive: downwards, fromCentre };
}

/** Upright by its landmarks, upside down by its sides: the labels belong to the other person's view. */
function mirroredPhoto(direction: Line<"px">["direction"]): GeometryError {
  return new GeometryError("sides-swapped", {
    where: "fitMidline",
    field: "right, left",
    value: direction,
    need: "the client's own right and left; the photo is mirrored, or the sides are swapped",
  });
}

function offsetsFrom<U extends Unit>(placed: PlacedLine<U>, face: Face<U>): Midline<U>["offsets"] {
  const offsets: { [Name in MirroredLandmark]?: Length<U> } = {};
  for (const name of PAIRED_LANDMARKS) {
    const right = face.right[name];
    const left = face.left[name];
    if (right === undefined || left === undefined) continue;
    offsets[name] = leftwardsFrom(midpoint(right, left), placed);
  }
  for (const name of MIDLINE_LANDMARKS) {
    const point = face.midline[name];
    if (point !== undefined) offsets[name] = leftwardsFrom(point, placed);
  }
  return offsets;
}

/** Signed distance from the line, positive towards the client's left. */
function leftwardsFrom<U extends Unit>(
  point: Point<U>,
  { line, leftIsPositive }: PlacedLine<U>,
): Length<U> {
  const apart = distanceFromLine(point, line);
  return leftIsPositive ? apart : length(0 - apart);
}

const UNAIDED_METHODS: readonly MidlineMethod[] = ["mirror", "endocanthia", "midpoints"];

function othersThan<U extends Unit>(
  method: MidlineMethod,
  chosen: PlacedLine<U>,
  face: Face<U>,
  level: Point<U>,
  sense: FaceSense,
): readonly OtherMidline<U>[] {
  const others: OtherMidline<U>[] = [];
  for (const other of UNAIDED_METHODS) {
    const fitted = other === method ? undefined : lineIfAny(face, other);
    if (fitted === undefined) continue;
    const { line, tilt } = placeOnFace(fitted.line, level, sense);
    others.push({ method: other, tilt, offset: leftwardsFrom(line.through, chosen) });
  }
  return others;
}

/** The chosen method answers for the face; the others may have nothing to say. */
function lineIfAny<U extends Unit>(
  face: Face<U>,
  method: MidlineMethod,
): FittedLine<U> | undefined {
  try {
    return lineByMethod(face, method, undefined);
  } catch (error) {
    if (error instanceof GeometryError) return undefined;
    throw error;
  }
}

function requireUpwards<U extends Unit>({ midline }: Face<U>, { upwards }: FaceSense): void {
  if (upwards !== undefined) return;
  throw new GeometryError("missing-landmark", {
    where: "fitMidline",
    field: "midline",
    value: midline,
    need: "a landmark above or below the eyes, to tell the forehead from the chin",
  });
}

function eyeLevel<U extends Unit>({ right, left }: Face<U>): Point<U> | undefined {
  if (right.endocanthion === undefined || left.endocanthion === undefined) return undefined;
  return midpoint(right.endocanthion, left.endocanthion);
}

/** A pair is two points, the right one on the right of the left one as most pairs have it. */
function requireLandmarksInOrder<U extends Unit>(face: Face<U>, { leftwards }: FaceSense): void {
  for (const name of PAIRED_LANDMARKS) {
    const right = face.right[name];
    const left = face.left[name];
    if (right !== undefined) requireFinitePoint("fitMidline", `right.${name}`, right);
    if (left !== undefined) requireFinitePoint("fitMidline", `left.${name}`, left);
    if (right === undefined || left === undefined) continue;
    const x = left[0] - right[0];
    const y = left[1] - right[1];
    if (x === 0 && y === 0) {
      throw new GeometryError("coincident-points", {
        where: "fitMidline",
        field: `left.${name}`,
        value: left,
        need: `a point that differs from right.${name}`,
      });
    }
    if (leftwards !== undefined && x * leftwards[0] + y * leftwards[1] < 0) {
      throw new GeometryError("sides-swapped", {
        where: "fitMidline",
        field: `right.${name}`,
        value: right,
        need: "a point on the client's own right, as the other pairs have it",
      });
    }
  }
  for (const name of MIDLINE_LANDMARKS) {
    const point = face.midline[name];
    if (point !== undefined) requireFinitePoint("fitMidline", `midline.${name}`, point);
  }
}
