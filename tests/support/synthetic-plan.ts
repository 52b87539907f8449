import { type BrowPlan, planBrows } from "brow-geometry";
import { syntheticFace } from "./synthetic-face.js";

/** The plan of the synthetic face without any choice, made once for all tests that only look at it. */
export const syntheticPlan: BrowPlan = planBrows(syntheticFace());
