import { heightOver } from "../geometry/internal.js";
import { type Face, type FaceSide, landmarkUncertainty } from "../landmarks/index.js";
import {
  flatPoint,
  length,
  measured,
  type Point,
  type Polyline,
  type Side,
} from "../units/index.js";
import { SIDES } from "../units/internal.js";
import type { Capture } from "./capture.js";
import { pairDistance } from "./face-size.js";
import { type Finding, judged, type Reading } from "./finding.js";
import { distance } from "../geometry/index.js";

export function eyeFindings({ face, limits }: Capture): readonly Finding[] {
  const opening = SIDES.flatMap((side) => judged(openingReading(face, side), limits));
  const closed = opening.some(({ outcome }) => outcome === "outside");
  return [...opening, ...gazeReadings(face, closed).flatMap((one) => judged(one, limits))];
}

/**
 * Width of an eye that turns a landmark's uncertainty in millimetres into a share: 25.06 in women,
 * (88.39 − 38.27)/2 of the Hong Kong periocular norms, BioMed Res Int 2013:821428.
 */
const USUAL_EYE_WIDTH = 25;

/** Places in an eye: along its corners, 0 at the inner and 1 at the outer one, and above them. */
type PlaceInEye = (point: Point<"px">) => Point<"px">;

function eyeOf({ endocanthion, exocanthion }: FaceSide<"px">, side: Side): PlaceInEye | undefined {
  if (endocanthion === undefined || exocanthion === undefined) return undefined;
  const [fromX, fromY] = endocanthion;
  const along = [exocanthion[0] - fromX, exocanthion[1] - fromY] as const;
  const square = along[0] ** 2 + along[1] ** 2;
  // In the picture the client's right eye runs to the left, and y points down.
  const upwards = side === "left" ? -1 : 1;
  return (point) => {
    const [x, y] = [point[0] - fromX, point[1] - fromY];
    return flatPoint(
      (x * along[0] + y * along[1]) / square,
      (upwards * (along[0] * y - along[1] * x)) / square,
    );
  };
}

function openingReading(face: Face<"px">, side: Side): Reading {
  const { upperLid, lowerLid } = face[side];
  const placeInEye = eyeOf(face[side], side);
  const u = (Math.SQRT2 * landmarkUncertainty(face, "upperLid")) / USUAL_EYE_WIDTH;
  const known = placeInEye !== undefined && upperLid !== undefined && lowerLid !== undefined;
  const gap = known && greatestGap(upperLid.map(placeInEye), lowerLid.map(placeInEye));
  return { check: "eyeOpening", measured: gap === false ? undefined : measured(gap, u), side };
}

function greatestGap(upper: Polyline<"px">, lower: Polyline<"px">): number {
  const gaps = [
    ...upper.map(([x, y]) => y - (heightOver(length<"px">(x), lower) ?? y)),
    ...lower.map(([x, y]) => (heightOver(length<"px">(x), upper) ?? y) - y),
  ];
  return Math.max(0, ...gaps);
}

function gazeReadings(face: Face<"px">, closed: boolean): readonly Reading[] {
  const [right, left] = SIDES.map((side) => pupilIn(face, side));
  if (closed || right === undefined || left === undefined) {
    const unread = closed ? ({ need: "openEyes" } as const) : {};
    return [
      { check: "gazeAcross", measured: undefined, ...unread },
      { check: "gazeUp", measured: undefined, ...unread },
    ];
  }
  // Pupils rest a little lateral of the middle of each eye: taken together that cancels out.
  const across = (left[0] - right[0]) / 2;
  const up = (left[1] + right[1]) / 2;
  const cornerU = landmarkUncertainty(face, "endocanthion") / Math.SQRT2;
  const u = Math.hypot(landmarkUncertainty(face, "pupil"), cornerU) / Math.SQRT2 / USUAL_EYE_WIDTH;
  const towards = across > 0 ? "left" : "right";
  return [
    { check: "gazeAcross", measured: measured(across, u), values: { towards } },
    { check: "gazeUp", measured: measured(up, u) },
  ];
}

function pupilIn(face: Face<"px">, side: Side): Point<"px"> | undefined {
  const { pupil } = face[side];
  const placeInEye = eyeOf(face[side], side);
  const standIn = face.standIns?.some(({ landmark }) => landmark === "pupil") === true;
  return pupil === undefined || placeInEye === undefined || standIn ? undefined : placeInEye(pupil);
}

/** Turns a landmark's uncertainty in millimetres into a share of the mouth's width; ours. */
const USUAL_MOUTH_WIDTH = 50;

export function mouthReading(face: Face<"px">): Reading {
  const { stomionSuperius: upper, stomionInferius: lower } = face.midline;
  const width = pairDistance(face, "cheilion");
  const u = (Math.SQRT2 * landmarkUncertainty(face, "stomionInferius")) / USUAL_MOUTH_WIDTH;
  const gap = width ? upper && lower && distance(upper, lower) / width : undefined;
  return { check: "mouthOpening", measured: gap === undefined ? gap : measured(gap, u) };
}
