import type { Face } from "brow-geometry";
import { pointAlong, polylineLength } from "brow-geometry/geometry";
import type { SideLandmark } from "brow-geometry/landmarks";
import {
  eachSide,
  flatPoint,
  length,
  type Point,
  type Polyline,
  type Side,
  type Sides,
} from "brow-geometry/units";
import { type EyeAxes, eyeAxes } from "../../src/landmarks/errors/eye-axes.js";
import type { ErrorPlace, MarkupErrors } from "../../src/landmarks/errors/markup-errors.js";
import {
  foundFace,
  type LondonFace,
  type MeasuredMarkup,
} from "../../tests/support/london-faces.js";

/** Where each markup's detector was measured. */
const PLACES: { readonly [Name in MeasuredMarkup]: readonly ErrorPlace[] } = {
  "mesh-478": ["upper", "lower", "alare"],
  "points-68": ["upper", "endocanthion", "exocanthion", "upperLid", "lowerLid", "alare"],
};

/** What a detector gets wrong in the mean, both sides taken together as mirror images. */
export function fitErrors(faces: readonly LondonFace[], markup: MeasuredMarkup): MarkupErrors {
  const places = PLACES[markup];
  const errors = faces.map((face) => errorsOf(face, foundFace(face, markup, false), places));
  const shift = means(errors.flatMap(({ right, left }) => [right, left])).map(rounded);
  let end = 0;
  const rows = places.map((place) => {
    const start = end;
    end += 2 * stationsOf(place);
    return [place, shift.slice(start, end)] as const;
  });
  return Object.fromEntries(rows);
}

/** How many pairs of a row belong to a place. */
function stationsOf(place: ErrorPlace): number {
  if (place === "upper" || place === "lower") return 5;
  return place === "upperLid" || place === "lowerLid" ? 3 : 1;
}

function rounded(value: number): number {
  return Math.round(value) + 0;
}

function means(rows: readonly (readonly number[])[]): readonly number[] {
  return (rows[0] ?? []).map(
    (_, index) => rows.reduce((sum, row) => sum + (row[index] ?? 0), 0) / rows.length,
  );
}

/** Truth less what was found, side by side, as the rows of a table hold it. */
function errorsOf(
  { hand }: LondonFace,
  found: Face<"px">,
  places: readonly ErrorPlace[],
): Sides<readonly number[]> {
  const axes = eyeAxes(found);
  if (axes === undefined) throw new Error("a face without eye corners");
  return eachSide((side) => {
    const row = (face: Face<"px">): readonly number[] =>
      places
        .flatMap((place) => stationsAt(face, place, side, hand))
        .flatMap((point) => alongAxes(point, axes, side));
    const seen = row(found);
    return row(hand).map((value, index) => value - (seen[index] ?? 0));
  });
}

/** The points of one place: a border at even shares of its length, a lid at its ends and its middle. */
function stationsAt(
  face: Face<"px">,
  place: ErrorPlace,
  side: Side,
  hand: Face<"px">,
): readonly Point<"px">[] {
  const { brow, upperLid, lowerLid, ...points } = face[side];
  if (place === "upper" || place === "lower") {
    const border = brow?.[place] ?? [];
    const whole = polylineLength(border);
    const last = stationsOf(place) - 1;
    return Array.from({ length: last + 1 }, (_, station) => {
      return pointAlong(border, length<"px">((station / last) * whole)).at;
    });
  }
  const known =
    place === "upperLid" || place === "lowerLid"
      ? ends((place === "upperLid" ? upperLid : lowerLid) ?? [], hand[side].pupil)
      : [points[place as SideLandmark]];
  return known.map((point) => {
    if (point === undefined) throw new Error(`a face without ${place}`);
    return point;
  });
}

/** The ends of a lid, and between them where it passes above or below the pupil. */
function ends(
  lid: Polyline<"px">,
  pupil: Point<"px"> | undefined,
): readonly (Point<"px"> | undefined)[] {
  return [lid[0], atPupil(lid, pupil), lid[lid.length - 1]];
}

/** Photos of the set are upright: above is above in the picture. */
function atPupil(lid: Polyline<"px">, pupil: Point<"px"> | undefined): Point<"px"> | undefined {
  const x = pupil?.[0] ?? 0;
  return lid.flatMap((to, index) => {
    const from = lid[index - 1];
    if (from === undefined || (from[0] - x) * (to[0] - x) > 0) return [];
    return [flatPoint<"px">(x, from[1] + ((x - from[0]) / (to[0] - from[0])) * (to[1] - from[1]))];
  })[0];
}

/** A point in five-hundredths of the distance of the outer eye corners, outwards and upwards. */
function alongAxes(
  [x, y]: Point<"px">,
  { leftwards, upwards }: EyeAxes,
  side: Side,
): readonly number[] {
  const square = leftwards[0] ** 2 + leftwards[1] ** 2;
  const left = (x * leftwards[0] + y * leftwards[1]) / square;
  return [side === "left" ? left : -left, (x * upwards[0] + y * upwards[1]) / square];
}
