import type { IndexTable } from "./index-table.js";
import type { AlareChoice, MarkupName } from "./markups.js";
import { MESH_468, MESH_478 } from "./meshes.js";
import { POINTS_68 } from "./points-68.js";
import { POINTS_98 } from "./points-98.js";

/** The face among COCO-WholeBody's 133 keypoints: the 68 points in their order. */
export const COCO_FACE: IndexTable<AlareChoice<"coco-wholebody-face">> = POINTS_68;

/** Where the landmarks stand in each markup. */
export const INDEX_TABLES: { readonly [Name in MarkupName]: IndexTable<AlareChoice<Name>> } = {
  "mesh-478": MESH_478,
  "mesh-468": MESH_468,
  "points-68": POINTS_68,
  "points-98": POINTS_98,
  "coco-wholebody-face": COCO_FACE,
};
