import { deepPoint } from "brow-geometry/units";
import { type Face, type LandmarkName, type Point, type Side } from "brow-geometry";
import { mapFace } from "brow-geometry/landmarks";
import { photograph } from "../support/photograph.js";
import { syntheticFace } from "../support/synthetic-face.js";

/**
 * How far landmarks lie ahead of the inner eye corners, in millimetres, after the canonical face
 * mesh (vertices 33, 129, 61, 9, 168, 4, 2, 0, 152; Apache-2.0) brought to the width of this face.
 * The mouth corners follow from its angle: 11.11 mm ahead of the outer eye corners over 69.91.
 */
const AHEAD: { readonly [Name in LandmarkName]?: number } = {
  exocanthion: -5.8,
  alare: 10.8,
  cheilion: -5.8 + 66 * (11.11 / 69.91),
  glabella: 16.1,
  sellion: 14.6,
  pronasale: 37.8,
  subnasale: 22.7,
  labialeSuperius: 21.9,
  stomion: 15,
  stomionSuperius: 15,
  stomionInferius: 15,
  menton: 5,
};

/** The synthetic face with depth; brows fall back by x³/L² from 15 mm ahead. */
export function deepFace(): Face<"mm"> {
  return mapFace(syntheticFace(), (point, landmark) => {
    const [x, y] = point;
    const ahead =
      landmark === "brow"
        ? 15 - Math.abs(x) ** 3 / 87.8 ** 2
        : ((landmark && AHEAD[landmark]) ?? 0);
    return deepPoint(x, y, ahead);
  });
}

/** How a head is held, in degrees: chin raised, then turned to the client's left. */
export interface Held {
  readonly pitch?: number;
  readonly yaw?: number;
}

export function held(face: Face<"mm">, { pitch = 0, yaw = 0 }: Held): Face<"mm"> {
  const [p, t] = [(pitch * Math.PI) / 180, (yaw * Math.PI) / 180];
  return mapFace(face, (point) => {
    const [x, y, z = 0] = point as readonly [number, number, number?];
    // Raising the chin brings what lies below the eyes towards the viewer.
    const up = y * Math.cos(p) + z * Math.sin(p);
    const ahead = z * Math.cos(p) - y * Math.sin(p);
    // Turning to the left brings what lies ahead to the left.
    return deepPoint(
      x * Math.cos(t) + ahead * Math.sin(t),
      up,
      ahead * Math.cos(t) - x * Math.sin(t),
    );
  });
}

/** A picture of 0.05 mm a pixel. */
export function pictured(face: Face<"mm">, tilt = 0): Face<"px"> {
  return photograph(face, { factor: 0.05, tilt, at: [2000, 1500] });
}

/** The same landmarks without their depth. */
export function flat(face: Face<"px">): Face<"px"> {
  return mapFace(face, (point) => point.slice(0, 2) as unknown as Point<"px">);
}

/** A face some of whose landmarks lie elsewhere, by millimetres to the client's left and up. */
export function moved(
  face: Face<"mm">,
  landmarks: readonly LandmarkName[],
  by: readonly [x: number, y: number],
  only?: Side,
): Face<"mm"> {
  const shifted = mapFace(face, (point, landmark) => {
    const [x, y, z = 0] = point as readonly [number, number, number?];
    return landmark !== undefined && landmarks.includes(landmark)
      ? deepPoint<"mm">(x + by[0], y + by[1], z)
      : point;
  });
  return only === undefined ? shifted : { ...face, [only]: shifted[only] };
}
