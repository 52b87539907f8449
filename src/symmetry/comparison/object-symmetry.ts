import {
  distance,
  distanceAlongLine,
  type Line,
  midpoint,
  pointOnLine,
} from "../../geometry/index.js";
import {
  type Face,
  type FaceSide,
  type PointLandmark,
  type SideLandmark,
  type MidlineLandmarks,
} from "../../landmarks/index.js";
import { MIDLINE_LANDMARKS, SIDE_LANDMARKS } from "../../landmarks/internal.js";
import { type Length, length, type Point, type Unit } from "../../units/index.js";
import { refusingAs } from "../../units/internal.js";
import { fitMidline } from "../midline/fit-midline.js";
import { SIDES } from "../../units/internal.js";
import { mirror } from "../mirroring/mirror.js";

/** A face taken apart into what is symmetric about a line and what is not. */
export interface ObjectSymmetry<U extends Unit> {
  readonly line: Line<U>;
  /** The pairs and midline landmarks half-way between the face and its mirror image. */
  readonly symmetric: Pick<Face<U>, "right" | "left" | "midline">;
  /** How far each landmark lies from its symmetric place; the partners of a pair lie equally far. */
  readonly asymmetric: { readonly [Name in PointLandmark]?: Length<U> };
  /** Sums of squares about the centroid's foot on the line: the parts add up to the total. */
  readonly squares: {
    readonly total: number;
    readonly symmetric: number;
    readonly asymmetric: number;
  };
}

/**
 * The symmetric and the asymmetric part of a face: landmarks as they are, less half-way to where the
 * mirror image has them. Pairs and midline landmarks count, all alike; depth is ignored in the sums.
 *
 * Source: Klingenberg, Barluenga & Meyer, Evolution 2002;56:1909–1920.
 *
 * @throws GeometryError as {@link fitMidline}, where no line is given
 *
 * @example
 * ```ts
 * import { FACE_MIDLINE, mm } from "brow-geometry";
 * import { objectSymmetry } from "brow-geometry/symmetry";
 * const { symmetric, asymmetric, squares } = objectSymmetry(
 *   {
 *     right: { endocanthion: mm([-16, 0]) },
 *     left: { endocanthion: mm([16, 2]) },
 *     midline: { stomion: mm([3, -66]) },
 *   },
 *   FACE_MIDLINE,
 * );
 * symmetric.left; // → { endocanthion: [16, 1] }
 * asymmetric; // → { endocanthion: 1, stomion: 3 }
 * squares.asymmetric; // → 11
 * ```
 */
export function objectSymmetry<U extends Unit>(
  face: Face<U>,
  line: Line<U> = refusingAs("objectSymmetry", () => fitMidline(face).line),
): ObjectSymmetry<U> {
  const image = mirror(face, line);
  const halves: readonly LandmarkParts<U>[] = [
    ...SIDE_LANDMARKS.flatMap((name) => partsOfPair(name, face, image)),
    ...MIDLINE_LANDMARKS.flatMap((name) =>
      partsOf(name, "midline", face.midline[name], image.midline[name]),
    ),
  ];
  const centre = footOfCentroid(halves, line);
  const sumOf = (read: (parts: LandmarkParts<U>) => number): number =>
    halves.reduce((sum, parts) => sum + read(parts) ** 2, 0);
  return {
    line,
    symmetric: {
      right: placesOf(halves, "right"),
      left: placesOf(halves, "left"),
      midline: placesOf(halves, "midline"),
    },
    asymmetric: Object.fromEntries(halves.map(({ name, off }) => [name, off])),
    squares: {
      total: sumOf(({ point }) => distance(point, centre)),
      symmetric: sumOf(({ symmetric }) => distance(symmetric, centre)),
      asymmetric: sumOf(({ off }) => off),
    },
  };
}

type FacePart = "right" | "left" | "midline";

/** One landmark, its symmetric place, and how far apart they are. */
interface LandmarkParts<U extends Unit> {
  readonly name: PointLandmark;
  readonly part: FacePart;
  readonly point: Point<U>;
  readonly symmetric: Point<U>;
  readonly off: Length<U>;
}

function partsOf<U extends Unit>(
  name: PointLandmark,
  part: FacePart,
  point: Point<U> | undefined,
  image: Point<U> | undefined,
): readonly LandmarkParts<U>[] {
  if (point === undefined || image === undefined) return [];
  const symmetric = midpoint(point, image);
  return [{ name, part, point, symmetric, off: distance(point, symmetric) }];
}

/** Both partners, or neither where one is missing. */
function partsOfPair<U extends Unit>(
  name: SideLandmark,
  face: Face<U>,
  image: Face<U>,
): readonly LandmarkParts<U>[] {
  return SIDES.flatMap((side) => partsOf(name, side, face[side][name], image[side][name]));
}

function placesOf<U extends Unit>(
  halves: readonly LandmarkParts<U>[],
  of: FacePart,
): FaceSide<U> & MidlineLandmarks<U> {
  return Object.fromEntries(
    halves.filter(({ part }) => part === of).map(({ name, symmetric }) => [name, symmetric]),
  );
}

function footOfCentroid<U extends Unit>(
  halves: readonly LandmarkParts<U>[],
  line: Line<U>,
): Point<U> {
  const along = halves.reduce((sum, { point }) => sum + distanceAlongLine(point, line), 0);
  return pointOnLine(line, length(along / halves.length));
}
