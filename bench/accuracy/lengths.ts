import {
  type Brow,
  type Face,
  type Guide,
  lengthBetween,
  type FlatPoint,
  type Point,
  requireLandmarks,
  guideLine,
} from "brow-geometry";
import { distance, spaceDistance } from "brow-geometry/geometry";
import { type LengthOptions } from "brow-geometry/landmarks";
import { meetGuide, thickness } from "brow-geometry/proportions";
import { atEyeCorner, onSkin, type SkinWithSetBack } from "../../src/landmarks/internal.js";

/** The lengths of the study, each with what it is. */
export const LENGTHS = {
  innerCanthi: "inner eye corners apart",
  outerCanthi: "outer eye corners apart",
  noseWidth: "nose wings apart",
  front: "front, by ruler",
  tail: "tail, by ruler",
  frontAlong: "front, by tape",
  tailAlong: "tail, by tape",
  frontOnPhoto: "front, on the photo",
  tailOnPhoto: "tail, on the photo",
  exocanthionToTailEnd: "outer eye corner to tail end",
  startHeight: "height of the start",
  archHeight: "height of the arch",
  tailHeight: "height of the tail end",
  archThickness: "thickness at the arch",
} as const;

export type LengthName = keyof typeof LENGTHS;

/** The lengths that a face has; one whose guide meets no brow is undefined. */
export type Lengths = { readonly [Name in LengthName]: number | undefined };

/** Lengths between landmarks, and between dots that guides place on the left brow. */
export function lengthsOn(face: Face<"mm">, skin: SkinWithSetBack): Lengths {
  const names = ["endocanthion", "exocanthion", "alare", "limbusLateral"] as const;
  const right = requireLandmarks(face.right, ...names);
  const left = requireLandmarks(face.left, ...names, "brow");
  const guided = { ...face, right, left };
  const brow = left.brow as Required<Brow<"mm">>;
  const met = (guide: Guide): FlatPoint<"mm"> | undefined => meetGuide(guide, brow)?.at;
  const start = met(guideLine(guided, "left", "endocanthion-vertical"));
  const arch = met(guideLine(guided, "left", "lateral-limbus-vertical"));
  const tailEnd = met(guideLine(guided, "left", "alare-through-exocanthion"));
  const between = (
    from: Point<"mm"> | undefined,
    to: Point<"mm"> | undefined,
    options: LengthOptions = {},
  ): number | undefined =>
    from === undefined || to === undefined ? undefined : lengthBetween(from, to, skin, options);
  return {
    innerCanthi: distance(right.endocanthion, left.endocanthion),
    outerCanthi: distance(right.exocanthion, left.exocanthion),
    noseWidth: distance(right.alare, left.alare),
    front: between(start, arch),
    tail: between(arch, tailEnd),
    frontAlong: between(start, arch, { path: "along" }),
    tailAlong: between(arch, tailEnd, { path: "along" }),
    frontOnPhoto: between(start, arch, { on: "photo" }),
    tailOnPhoto: between(arch, tailEnd, { on: "photo" }),
    exocanthionToTailEnd:
      tailEnd && spaceDistance(atEyeCorner(left.exocanthion, skin), onSkin(tailEnd, skin)),
    startHeight: start?.[1],
    archHeight: arch?.[1],
    tailHeight: tailEnd?.[1],
    archThickness: arch === undefined ? undefined : thickness(arch, brow)?.value,
  };
}
