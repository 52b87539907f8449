import { readFileSync } from "node:fs";
import {
  type Brow,
  type BrowPlan,
  faceFrame,
  fromMarkup,
  mm,
  planBrows,
  type PlannableFace,
  planOnPhoto,
  type Polyline,
  px,
  requirePlannable,
  scaleFromIris,
  scaleFromReference,
} from "brow-geometry";
import { type MarkupPoints } from "brow-geometry/landmarks";
import { photograph } from "../support/photograph.js";
import { type SyntheticFace, syntheticFace } from "../support/synthetic-face.js";
import { syntheticPlan } from "../support/synthetic-plan.js";

/** Faces of the fixtures that look far enough ahead to be mapped, by photo and place in it. */
const REAL_FACES = [
  [2, 0],
  [3, 0],
  [3, 1],
  [5, 0],
  [6, 0],
  [6, 2],
  [6, 3],
] as const;

/** A plan of a face that a detector found on a photo, and that photo's size. */
export function realPlan(
  photo: number,
  face: number,
): { readonly plan: BrowPlan; readonly width: number; readonly height: number } {
  const file = new URL(`../fixtures/mesh-sample${photo}.json`, import.meta.url);
  const { faces, provenance } = JSON.parse(readFileSync(file, "utf8")) as {
    readonly faces: readonly { readonly landmarks: MarkupPoints }[];
    readonly provenance: { readonly photo: { readonly width: number; readonly height: number } };
  };
  const { width, height } = provenance.photo;
  const landmarks = requirePlannable(
    fromMarkup("mesh-478", faces[face]?.landmarks ?? [], {
      coordinates: "normalised",
      image: { width, height },
    }),
  );
  const plan = planOnPhoto(landmarks, faceFrame(landmarks, scaleFromIris(landmarks)));
  return { plan, width, height };
}

type Pairs = readonly (readonly [x: number, y: number])[];

/** The synthetic face with other brows, given for the left and mirrored. */
function withBrows(upper: Pairs, lower?: Pairs): SyntheticFace {
  const face = syntheticFace();
  const along = (sign: 1 | -1, points: Pairs): Polyline<"mm"> =>
    mm(points.map(([x, y]) => [sign * x, y] as const));
  const brow = (sign: 1 | -1): Brow<"mm"> =>
    lower === undefined
      ? { upper: along(sign, upper) }
      : { upper: along(sign, upper), lower: along(sign, lower) };
  return {
    ...face,
    right: { ...face.right, brow: brow(-1) },
    left: { ...face.left, brow: brow(1) },
  } as SyntheticFace;
}

function onPhoto(face: SyntheticFace, tilt: number): BrowPlan {
  const photo = photograph(face, { factor: 0.1, tilt, at: [1000, 900] });
  const scale = scaleFromReference(px([0, 0]), px([500, 0]), mm(50));
  return planOnPhoto(requirePlannable(photo), faceFrame(photo, scale));
}

function crookedNose(): PlannableFace {
  const face = syntheticFace();
  const bent = (x: number, y: number): [number, number] => [x + 0.13 * -y, y];
  return {
    ...face,
    right: { ...face.right, alare: mm(bent(-15.7, -38)) },
    left: { ...face.left, alare: mm(bent(15.7, -38)) },
    midline: { ...face.midline, pronasale: mm(bent(0, -34)), subnasale: mm(bent(0, -44)) },
  };
}

/** Faces on which a picture is hard to read, all invented. */
const AWKWARD_PLANS: Readonly<Record<string, BrowPlan>> = {
  "synthetic face": syntheticPlan,
  "tilt of 12°": onPhoto(syntheticFace(), 12),
  "tilt of −25°": onPhoto(syntheticFace(), -25),
  "crooked nose": planBrows(crookedNose()),
  "very short brow": planBrows(
    withBrows(
      [
        [26, 19],
        [31, 21.5],
        [37, 22.5],
        [41, 20],
      ],
      [
        [26, 14],
        [31, 16],
        [37, 17.5],
        [41, 18.5],
      ],
    ),
    { start: "endocanthion-vertical", arch: "lateral-limbus-vertical" },
  ),
  "hair touching": planBrows(
    withBrows(
      [
        [1.5, 19],
        [15, 20.5],
        [30, 24.6],
        [40, 26],
        [51, 22.4],
        [58, 17.6],
      ],
      [
        [0.5, 11],
        [15, 12],
        [30, 17.5],
        [40, 19.5],
        [51, 18.6],
        [57, 17],
      ],
    ),
  ),
  "high arch": planBrows(
    withBrows(
      [
        [14, 18],
        [22, 24],
        [30, 31],
        [37, 36],
        [43, 34],
        [50, 25],
        [58, 13],
      ],
      [
        [14, 11],
        [22, 17.5],
        [30, 24.8],
        [37, 30],
        [43, 29.4],
        [50, 22.5],
        [57, 13],
      ],
    ),
  ),
  "findings in one place": planBrows(syntheticFace(), {
    pins: [{ side: "left", dot: "tailEnd", at: mm([56, -4]) }],
    thickness: { start: mm(5), body: mm(7), arch: mm(8) },
  }),
  "no lower border": planBrows(
    withBrows([
      [14.5, 20],
      [22, 22.4],
      [30, 24.6],
      [38, 26],
      [44, 25.6],
      [51, 22.4],
      [58, 17.6],
    ]),
  ),
  "flat brow": planBrows(
    withBrows(
      [
        [15, 18],
        [30, 18.4],
        [45, 18.3],
        [58, 18],
      ],
      [
        [15, 12],
        [30, 12.4],
        [45, 13],
        [57, 15],
      ],
    ),
  ),
};

/** Every plan whose pictures are tested, by name: real faces and awkward ones, each made once. */
export const PICTURED_PLANS: readonly (readonly [name: string, plan: BrowPlan])[] = [
  ...Object.entries(AWKWARD_PLANS),
  ...REAL_FACES.map(
    ([photo, face]) => [`face ${face} of photo ${photo}`, realPlan(photo, face).plan] as const,
  ),
];
