import type { IndexTable } from "./index-table.js";
import type { AlareChoice } from "./markups.js";
import { POINTS_68 } from "./points-68.js";

/** The face among COCO-WholeBody's 133 keypoints: the 68 points in their order. */
export const COCO_FACE: IndexTable<AlareChoice<"coco-wholebody-face">> = POINTS_68;
