import { type BrowPlan, type Face, mm, outline, type Side, toPhoto } from "brow-geometry";
import { outlineBorders } from "brow-geometry/proportions";
import { flatPoint } from "brow-geometry/units";
import type { Spot } from "./box.js";

/** Where a point of the face is drawn: on the photo, or in millimetres with y down. */
export type Place = (point: { readonly 0: number; readonly 1: number }) => Spot;

export const AS_IT_IS: Place = ({ 0: x, 1: y }) => [x, y];
export const ON_PAPER: Place = ({ 0: x, 1: y }) => [x, -y];

/** As the library's own drawings of a plan place it. */
export function placeOf({ frame }: Pick<BrowPlan, "frame">): Place {
  if (frame === undefined) return ON_PAPER;
  return ({ 0: x, 1: y }) => AS_IT_IS(toPhoto(flatPoint<"mm">(x, y), frame));
}

/** How far a drawn outline may stray from the planned one: less than a pencil is thick. */
const ERROR = mm(0.05);

/** The outline of a planned brow. */
export function plannedPath(
  { dots, choices }: Pick<BrowPlan, "dots" | "choices">,
  side: Side,
  place: Place,
): string {
  const { upper, lower } = outlineBorders(outline(dots[side], choices.shape), ERROR);
  return pathOf([...upper, ...[...lower].reverse()].map(place), true);
}

/** The borders of a brow as it grows. */
export function hairPath({ face }: Pick<BrowPlan, "face">, side: Side, place: Place): string {
  const { upper, lower } = face[side].brow;
  const border = [...upper, ...[...(lower ?? [])].reverse()].map((point) => place(point));
  return pathOf(border, lower !== undefined);
}

export function pathOf(spots: readonly Spot[], isClosed = false): string {
  const points = spots.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`);
  return `M${points.join("L")}${isClosed ? "Z" : ""}`;
}

/** What of a face a stage has to show: eyes, nose and brows. */
export function spotsOf(face: Face<"mm"> | Face<"px">, place: Place): readonly Spot[] {
  return [face.right, face.left].flatMap(({ endocanthion, exocanthion, alare, brow }) =>
    [endocanthion, exocanthion, alare, ...(brow?.upper ?? [])].flatMap((point) =>
      point === undefined ? [] : [place(point)],
    ),
  );
}
