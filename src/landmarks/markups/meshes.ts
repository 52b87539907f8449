import { length, type Sides } from "../../units/index.js";
import { type IndexTable, leftOf, type MarkupSide } from "./index-table.js";

/**
 * Points of the canonical face model that lie on its plane of symmetry.
 *
 * Derived from the model that the npm package @mediapipe/face_mesh 0.4.1657299874 (Apache-2.0)
 * ships: every vertex (x, y, z) has an exact partner at (−x, y, z), and the partners stand in the
 * same order on both sides: of the numbers 0–247 those not on the middle belong to the right,
 * 248–467 to the left.
 */
const MIDDLE: readonly number[] = [
  0, 1, 2, 4, 5, 6, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 94, 151, 152, 164, 168, 175, 195,
  197, 199, 200,
];
const FIRST_LEFT = 248;

function mirrorPairs(): readonly Sides<number>[] {
  return Array.from({ length: FIRST_LEFT }, (_, index) => index)
    .filter((index) => !MIDDLE.includes(index))
    .map((index, rank) => ({ right: index, left: FIRST_LEFT + rank }));
}

const right: MarkupSide = {
  points: { endocanthion: 133, exocanthion: 33, cheilion: 61 },
  upperLid: [133, 173, 157, 158, 159, 160, 161, 246, 33],
  lowerLid: [133, 155, 154, 153, 145, 144, 163, 7, 33],
  browUpper: [107, 66, 105, 63, 70],
  browLower: [55, 65, 52, 53, 46],
};

const standIns = [
  { landmark: "subnasale", instead: "septum-point" },
  { landmark: "menton", instead: "chin-point" },
  { landmark: "brow", instead: "brow-template" },
] as const;

type Mesh = IndexTable<
  "wing-crease" | "wing-back" | "wing-side" | "wing-lower" | "wing-base",
  (typeof standIns)[number]["instead"]
>;

/** 468 points. Uncertainty: measured by us on 102 faces drawn by hand, 1.2–1.5 mm at the canthi. */
export const MESH_468: Mesh = /* @__PURE__ */ meshOf468();

function meshOf468(): Mesh {
  const pairs = mirrorPairs();
  return {
    right,
    left: leftOf(right, pairs),
    midline: {
      glabella: 9,
      sellion: 168,
      pronasale: 4,
      subnasale: 2,
      labialeSuperius: 0,
      stomion: [13, 14],
      stomionSuperius: 13,
      stomionInferius: 14,
      menton: 152,
    },
    alare: {
      "wing-crease": { right: 129, left: 358 },
      "wing-back": { right: 102, left: 331 },
      "wing-side": { right: 48, left: 278 },
      "wing-lower": { right: 64, left: 294 },
      "wing-base": { right: 98, left: 327 },
    },
    pairs,
    middle: MIDDLE,
    standIns,
    uncertainty: { default: length(1.3) },
    ringFactor: { value: 1, u: 0 },
    depth: "estimated",
  };
}

/**
 * The mesh with ten points of the irises behind it. Measured by us on 102 frontal faces: the ring is
 * 39.6 px wide, the circle drawn by hand 35.7, ring factor 1.11; by the ring's own height, 35.1, it is
 * 1.13, whence u. Iris centre: 0.5 mm; the rim is taken to be no worse.
 */
export const MESH_478: Mesh = /* @__PURE__ */ withIrises();

function withIrises(): Mesh {
  return {
    ...MESH_468,
    irises: {
      right: { centre: 468, rim: [469, 470, 471, 472] },
      left: { centre: 473, rim: [474, 475, 476, 477] },
    },
    uncertainty: {
      default: length(1.3),
      landmarks: { pupil: length(0.5), limbusMedial: length(0.5), limbusLateral: length(0.5) },
    },
    ringFactor: { value: 1.11, u: 0.02 },
  };
}
