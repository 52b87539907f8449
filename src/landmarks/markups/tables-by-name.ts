import { COCO_FACE } from "./coco-wholebody-face.js";
import type { IndexTable } from "./index-table.js";
import type { AlareChoice, MarkupName } from "./markups.js";
import { MESH_468 } from "./mesh-468.js";
import { MESH_478 } from "./mesh-478.js";
import { POINTS_68 } from "./points-68.js";
import { POINTS_98 } from "./points-98.js";

/** Where the landmarks stand in each markup. */
export const INDEX_TABLES: { readonly [Name in MarkupName]: IndexTable<AlareChoice<Name>> } = {
  "mesh-478": MESH_478,
  "mesh-468": MESH_468,
  "points-68": POINTS_68,
  "points-98": POINTS_98,
  "coco-wholebody-face": COCO_FACE,
};
