import { refuse } from "../../units/internal.js";
import type { IndexTable } from "./index-table.js";
import { MESH_468, MESH_478 } from "./meshes.js";
import { POINTS_68 } from "./points-68.js";
import { POINTS_98 } from "./points-98.js";

/**
 * Every markup that the library reads: how many points it has, the form in which they come,
 * and what may stand for alare.
 *
 * Forms: `"points"`, a list of points; `"keypoints"`, a flat list of x, y, visibility as COCO-WholeBody
 * has it, of the face or of the whole person.
 *
 * @example
 * ```ts
 * import { MARKUPS } from "brow-geometry/landmarks";
 * MARKUPS["points-98"].size; // → 98
 * ```
 */
export const MARKUPS = {
  "mesh-478": {
    size: 478,
    form: "points",
    alare: ["wing-crease", "wing-back", "wing-side", "wing-lower", "wing-base"],
  },
  "mesh-468": {
    size: 468,
    form: "points",
    alare: ["wing-crease", "wing-back", "wing-side", "wing-lower", "wing-base"],
  },
  "points-68": {
    size: 68,
    form: "points",
    alare: ["nostril-outer", "nostril-inner"],
  },
  "points-98": {
    size: 98,
    form: "points",
    alare: ["base-outer", "base-inner"],
  },
  "coco-wholebody-face": {
    size: 68,
    form: "keypoints",
    alare: ["nostril-outer", "nostril-inner"],
  },
} as const;

/** Name of a markup that the library reads. */
export type MarkupName = keyof typeof MARKUPS;

/** Names of all markups that the library reads. */
export const MARKUP_NAMES: readonly MarkupName[] = /* @__PURE__ */ Object.keys(
  MARKUPS,
) as MarkupName[];

/** What may stand for alare in a markup. */
export type AlareChoice<Name extends MarkupName> = (typeof MARKUPS)[Name]["alare"][number];

/** What is read instead of a landmark in some markup: the catalogue has words for each. */
export type StandInCode =
  | AlareChoice<MarkupName>
  | InsteadIn<typeof MESH_478>
  | InsteadIn<typeof POINTS_68>
  | InsteadIn<typeof POINTS_98>;

type InsteadIn<Table extends IndexTable> = Table["standIns"][number]["instead"];

/** Where the landmarks stand in each markup; the face of COCO-WholeBody is the 68 points in their order. */
export const INDEX_TABLES: {
  readonly [Name in MarkupName]: IndexTable<AlareChoice<Name>, StandInCode>;
} = {
  "mesh-478": MESH_478,
  "mesh-468": MESH_468,
  "points-68": POINTS_68,
  "points-98": POINTS_98,
  "coco-wholebody-face": POINTS_68,
};

/** A point as detectors hand it out: `[x, y]`, `[x, y, z]` or an object with these names. */
export type MarkupPoint =
  | readonly number[]
  | {
      readonly x: number;
      readonly y: number;
      readonly z?: number | undefined;
      readonly visibility?: number | undefined;
    };

/** Points of one face in the order of their markup; `null` where one is missing. */
export type MarkupPoints = readonly (MarkupPoint | null | undefined)[];

/** What landmarks are in each of the forms. */
export interface LandmarkForms {
  readonly points: MarkupPoints;
  readonly keypoints: readonly number[];
}

/** Landmarks in the form of a markup. */
export type MarkupLandmarks<Name extends MarkupName> =
  LandmarkForms[(typeof MARKUPS)[Name]["form"]];

/** Refuses the name of no markup: programs without types ask too. */
export function requireMarkup(name: string): void {
  if (Object.hasOwn(MARKUPS, name)) return;
  refuse("out-of-range", "name", name, `one of ${MARKUP_NAMES.join(", ")}`);
}
