import { distance, distanceAlongLine } from "../../geometry/index.js";
import { lineBetween } from "../../geometry/internal.js";
import { eachSide, type Point, type Sides } from "../../units/index.js";
import type { FaceSide } from "../face/face.js";
import type { MarkupIris } from "./index-table.js";

/** What a mesh knows of one iris. */
export type IrisPoints = Pick<FaceSide<"px">, "pupil" | "limbusMedial" | "limbusLateral">;

/** Corners of one eye, each where it is known. */
export interface EyeCorners {
  readonly endocanthion: Point<"px"> | undefined;
  readonly exocanthion: Point<"px"> | undefined;
}

/** Irises given to the eye between whose corners they lie: detectors append them in either order. */
export function irisesOf(
  points: readonly (Point<"px"> | undefined)[],
  irises: Sides<MarkupIris>,
  corners: Sides<EyeCorners>,
): { readonly irises: Sides<IrisPoints>; readonly swapped: boolean } {
  const exchanged = { right: irises.left, left: irises.right };
  const swapped = misfit(points, exchanged, corners) < misfit(points, irises, corners);
  const ordered = swapped ? exchanged : irises;
  return { irises: eachSide((side) => irisOf(points, ordered[side], corners[side])), swapped };
}

/** How far the centres lie from the middles of the eyes, in eye widths, both together. */
function misfit(
  points: readonly (Point<"px"> | undefined)[],
  irises: Sides<MarkupIris>,
  corners: Sides<EyeCorners>,
): number {
  const { right, left } = eachSide((side) => {
    const place = placeInEye(points[irises[side].centre], corners[side]);
    return place === undefined ? 0 : Math.abs(place - 0.5);
  });
  return right + left;
}

function irisOf(
  points: readonly (Point<"px"> | undefined)[],
  { centre, rim }: MarkupIris,
  corners: EyeCorners,
): IrisPoints {
  const pupil = points[centre];
  const place = placeInEye(pupil, corners);
  if (pupil === undefined || place === undefined || place < 0 || place > 1) return {};
  const [one, two, three, four] = rim.map((index) => points[index]);
  const across = [endsAlong(one, three, corners), endsAlong(two, four, corners)]
    .filter((ends) => ends !== undefined)
    .sort((first, second) => second.width - first.width)[0];
  return across === undefined
    ? { pupil }
    : { pupil, limbusMedial: across.medial, limbusLateral: across.lateral };
}

interface RimEnds {
  readonly medial: Point<"px">;
  readonly lateral: Point<"px">;
  /** Apart along the eye, as a share of its width. */
  readonly width: number;
}

/** Two opposite points of the rim, the one nearer the endocanthion first. */
function endsAlong(
  one: Point<"px"> | undefined,
  other: Point<"px"> | undefined,
  corners: EyeCorners,
): RimEnds | undefined {
  const from = placeInEye(one, corners);
  const to = placeInEye(other, corners);
  if (one === undefined || other === undefined || from === undefined || to === undefined) {
    return undefined;
  }
  return from < to
    ? { medial: one, lateral: other, width: to - from }
    : { medial: other, lateral: one, width: from - to };
}

/** Where a point lies along an eye: 0 at the endocanthion, 1 at the exocanthion. */
function placeInEye(
  point: Point<"px"> | undefined,
  { endocanthion, exocanthion }: EyeCorners,
): number | undefined {
  if (point === undefined || endocanthion === undefined || exocanthion === undefined) {
    return undefined;
  }
  const eye = lineBetween(endocanthion, exocanthion);
  return distanceAlongLine(point, eye) / distance(endocanthion, exocanthion);
}
