import { rootBetween } from "../../geometry/internal.js";
import { depthAt, type LandmarkName } from "../../landmarks/index.js";
import { type DeepPoint, deepPoint, flatPoint, hasDepth, type Point } from "../../units/index.js";
import { refuse } from "../../units/internal.js";
import { type Camera, enlargement, prominenceOf } from "./camera.js";
import { turnAside, turnForward, type Turning } from "./turning.js";

/** What lies between a face, seen from its own front and from far away, and its picture. */
export interface Sight {
  readonly turning?: Turning;
  readonly camera?: Camera;
}

/**
 * A place of the upright picture, in mm, seen from the face's own front and from far away. A point without
 * depth lies on the skin of the brows; where only the camera counts, other landmarks lie as deep as the
 * inner eye corners.
 */
export function fromPicture(
  point: Point<"mm">,
  sight: Sight,
  landmark?: LandmarkName,
): Point<"mm"> {
  if (isSeenAsIs(point, sight, landmark)) return point;
  if (hasDepth(point)) {
    const seen = farAway(point, point[2], sight);
    return sight.turning === undefined ? seen : turnForward(seen, sight.turning);
  }
  const x = xOnSkin(point, sight);
  return flatPoint(x, yOnSkin(x, point, sight));
}

/** The way back: a point without depth is lifted onto the skin of the brows first. */
export function intoPicture(
  point: Point<"mm">,
  sight: Sight,
  landmark?: LandmarkName,
): Point<"mm"> {
  if (isSeenAsIs(point, sight, landmark)) return point;
  if (hasDepth(point)) return pictured(point, sight);
  const [x, y] = pictured(onSkinOf(sight, point[0], point[1]), sight);
  return flatPoint(x, y);
}

function isSeenAsIs(
  point: Point<"mm">,
  { turning, camera }: Sight,
  landmark: LandmarkName | undefined,
): boolean {
  if (turning !== undefined) return false;
  if (camera === undefined) return true;
  return !hasDepth(point) && landmark !== undefined && landmark !== "brow";
}

/** Millimetres by which a turn of a few degrees, or a near camera, moves no point of the skin. */
const REACH = 25;

/** Distance from the midline, seen from the front, of the place of the skin that a picture shows. */
function xOnSkin(seen: Point<"mm">, sight: Sight): number {
  const [seenX, seenY] = seen;
  const x = rootBetween(
    seenX - REACH,
    seenX + REACH,
    (front) => pictured(onSkinOf(sight, front, yOnSkin(front, seen, sight)), sight)[0] - seenX,
  );
  if (x !== undefined) return x;
  const need = "a place on the face";
  refuse("no-solution", "point", [seenX, seenY], need);
}

/** Height, at a distance from the midline, of the place of the skin that a picture shows. */
function yOnSkin(x: number, [seenX, seenY]: Point<"mm">, sight: Sight): number {
  // How far a height of the skin lies above what is seen: linear in it.
  const above = (y: number): number => {
    const [, up, depth] = aside(onSkinOf(sight, x, y), sight);
    return up - farAway(deepPoint(seenX, seenY, 0), depth, sight)[1];
  };
  const level = above(0);
  return level / (level - above(1));
}

function aside(front: DeepPoint<"mm">, { turning }: Sight): DeepPoint<"mm"> {
  return turning === undefined ? front : turnAside(front, turning);
}

function pictured(front: DeepPoint<"mm">, sight: Sight): DeepPoint<"mm"> {
  const { camera } = sight;
  const turned = aside(front, sight);
  return camera === undefined
    ? turned
    : scaledAbout(camera, turned, enlargement(turned[2], camera));
}

/** A place of the picture as a camera infinitely far away would show it, at a depth. */
function farAway(seen: DeepPoint<"mm">, depth: number, { camera }: Sight): DeepPoint<"mm"> {
  return camera === undefined ? seen : scaledAbout(camera, seen, 1 / enlargement(depth, camera));
}

function scaledAbout(
  { axis }: Camera,
  [x, y, depth]: DeepPoint<"mm">,
  times: number,
): DeepPoint<"mm"> {
  return deepPoint(axis[0] + times * (x - axis[0]), axis[1] + times * (y - axis[1]), depth);
}

function onSkinOf({ turning, camera }: Sight, x: number, y: number): DeepPoint<"mm"> {
  const skin = turning?.skin ?? camera?.skin;
  const behind = skin === undefined ? 0 : depthAt(flatPoint<"mm">(x, y), skin);
  const prominence = camera?.prominence ?? (skin === undefined ? 0 : prominenceOf(skin));
  return deepPoint(x, y, behind + prominence);
}
