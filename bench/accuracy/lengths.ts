import {
  archGuide,
  type Brow,
  distance,
  type Face,
  type Guide,
  lengthBetween,
  meetGuide,
  type FlatPoint,
  requireLandmarks,
  type Skin,
  startGuide,
  tailGuide,
  thickness,
} from "brow-geometry";

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
  eyeToTail: "outer eye corner to tail end",
  startHeight: "height of the start",
  archHeight: "height of the arch",
  tailHeight: "height of the tail end",
  archThickness: "thickness at the arch",
} as const;

export type LengthName = keyof typeof LENGTHS;

/** Lengths between landmarks, and between marks that guides place on the left brow. */
export function lengthsOn(face: Face<"mm">, skin: Skin): Readonly<Record<LengthName, number>> {
  const names = ["endocanthion", "exocanthion", "alare", "limbusLateral"] as const;
  const right = requireLandmarks(face.right, ...names);
  const left = requireLandmarks(face.left, ...names, "brow");
  const guided = { ...face, right, left };
  const brow = left.brow as Required<Brow<"mm">>;
  const start = met(startGuide(guided, "left", "endocanthion-vertical"), brow);
  const arch = met(archGuide(guided, "left", "lateral-limbus-vertical"), brow);
  const tailEnd = met(tailGuide(guided, "left", "alare-through-exocanthion"), brow);
  return {
    innerCanthi: distance(right.endocanthion, left.endocanthion),
    outerCanthi: distance(right.exocanthion, left.exocanthion),
    noseWidth: distance(right.alare, left.alare),
    front: lengthBetween(start, arch, skin),
    tail: lengthBetween(arch, tailEnd, skin),
    frontAlong: lengthBetween(start, arch, skin, { path: "along" }),
    tailAlong: lengthBetween(arch, tailEnd, skin, { path: "along" }),
    frontOnPhoto: distance(start, arch),
    tailOnPhoto: distance(arch, tailEnd),
    eyeToTail: lengthBetween(left.exocanthion, tailEnd, skin),
    startHeight: start[1],
    archHeight: arch[1],
    tailHeight: tailEnd[1],
    archThickness: thickness(arch, brow)?.value ?? 0,
  };
}

function met(guide: Guide, brow: Brow<"mm">): FlatPoint<"mm"> {
  const place = meetGuide(guide, brow);
  if (place === undefined) throw new Error(`${guide.convention} meets no brow`);
  return place.at;
}
