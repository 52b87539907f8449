/** Where the thickness of a brow is told, from the nose outward: from which dot to which. */
export const STATIONS = {
  start: { upper: "upperStart", lower: "lowerStart" },
  body: { upper: "upperBody", lower: "lowerBody" },
  arch: { upper: "upperArch", lower: "lowerArch" },
} as const;

/** A place where the thickness of a brow is told: start, body or arch. */
export type Station = keyof typeof STATIONS;
