import type { Direction } from "../geometry/index.js";

/** The direction of a vertical: along the midline, from chin to forehead. */
export const UPWARDS: Direction = [0, 1];
