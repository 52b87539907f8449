import { distance, spaceDistance } from "../geometry/index.js";
import { heightOver } from "../geometry/internal.js";
import { type BrowDots, type FaceSide, type MeasureName, type Skin } from "../landmarks/index.js";
import { byRuler, atEyeCorner, onSkin } from "../landmarks/internal.js";
import { length, type Length, type Point, type Side } from "../units/index.js";
import { toDegrees } from "../units/internal.js";
import type { BrowEdge } from "./brow-edge.js";
import { shareOf } from "./front-share.js";

/** Every measure of one brow; undefined where something it needs is missing. */
export type SideReading = { readonly [Name in MeasureName]: number | undefined };

/** What a brow's dots are read against, with the edge of the brow. */
export interface SideToRead {
  readonly side: Side;
  readonly landmarks: FaceSide<"mm">;
  readonly skin: Skin;
  readonly edge: BrowEdge;
}

/** What {@link measureSide} reads, with a place for every measure. */
export function readSide(
  dots: BrowDots<"mm">,
  { side, landmarks, skin, edge }: SideToRead,
  along: AlongBorder = readAlong(dots, edge),
): SideReading {
  const { upperStart: start, upperBody: body, upperArch: arch, tailEnd: tail } = dots;
  const outwards = side === "left" ? 1 : -1;
  const ruler = (from?: Point<"mm">, to?: Point<"mm">): Length<"mm"> | undefined =>
    from && to && byRuler(from, to, skin);
  const sight = (from?: Point<"mm">, to?: Point<"mm">): Length<"mm"> | undefined =>
    from && to && distance(from, to);
  const inclination = (from?: Point<"mm">, to?: Point<"mm">): number | undefined =>
    from && to && toDegrees(Math.atan2(to[1] - from[1], outwards * (to[0] - from[0])));
  const thickness = (dot?: Point<"mm">): number | undefined => {
    const y = dot && edge.lowerAt(dot[0]);
    return dot && y !== undefined ? dot[1] - y : undefined;
  };
  const { exocanthionToTailEnd, lidToBrow } = readFromEye(dots, { side, landmarks, skin, edge });
  const front = ruler(start, arch);
  const tailLength = ruler(arch, tail);
  return {
    front,
    tail: tailLength,
    frontAlong: along.frontAlong,
    tailAlong: along.tailAlong,
    frontOnPhoto: sight(start, arch),
    tailOnPhoto: sight(arch, tail),
    frontShare:
      front === undefined || tailLength === undefined ? undefined : shareOf(front, tailLength),
    startDistance: start && outwards * start[0],
    archDistance: arch && outwards * arch[0],
    tailDistance: tail && outwards * tail[0],
    startHeight: start?.[1],
    archHeight: arch?.[1],
    tailHeight: tail?.[1],
    startThickness: thickness(start),
    bodyThickness: thickness(body),
    archThickness: thickness(arch),
    frontInclination: inclination(start, arch),
    browInclination: inclination(start, tail),
    area: edge.area,
    exocanthionToTailEnd,
    lidToBrow,
  };
}

type AlongBorder = Pick<SideReading, "frontAlong" | "tailAlong">;

/** What is read by tape, along the upper border. */
function readAlong(
  { upperStart: start, upperArch: arch, tailEnd: tail }: BrowDots<"mm">,
  edge: BrowEdge,
): AlongBorder {
  return {
    frontAlong: start && arch && edge.along(start, arch),
    tailAlong: arch && tail && edge.along(arch, tail),
  };
}

/** What is read from the eye to the brow. */
export function readFromEye(
  { tailEnd: tail }: BrowDots<"mm">,
  { landmarks, skin, edge }: SideToRead,
): Pick<SideReading, "exocanthionToTailEnd" | "lidToBrow"> {
  const { exocanthion } = landmarks;
  return {
    exocanthionToTailEnd:
      exocanthion && tail && spaceDistance(atEyeCorner(exocanthion, skin), onSkin(tail, skin)),
    lidToBrow: lidToBrow(landmarks, edge),
  };
}

function lidToBrow({ pupil, upperLid }: FaceSide<"mm">, edge: BrowEdge): number | undefined {
  if (pupil === undefined || upperLid === undefined) return undefined;
  const brow = edge.lowerAt(pupil[0]);
  const lid = heightOver(length(pupil[0]), upperLid);
  return brow === undefined || lid === undefined ? undefined : brow - lid;
}
