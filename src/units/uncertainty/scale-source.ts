/** Where a scale's millimetres come from. */
export type ScaleSource = (typeof SCALE_SOURCES)[number];

/** All sources. */
export const SCALE_SOURCES = ["reference", "ruler", "marker", "iris", "combined", "given"] as const;
