/** How numbers and lengths are written. */
export interface FigureStyle {
  /** What stands before the decimals: a point or a comma. */
  readonly decimalSign: string;
  /** In what lengths are written; areas in its square. */
  readonly lengths: LengthUnit;
}

/**
 * What rulers are divided in: how many millimetres one has, its sign, and how it writes a figure that is worth so
 * many decimals in millimetres: in decimals of its own, or in fractions of which a ruler has so many marks.
 */
export const LENGTH_UNITS = {
  mm: { size: 1, sign: "mm", more: 0 },
  cm: { size: 10, sign: "cm", more: 1 },
  inch: { size: 25.4, sign: "in", marks: [16, 64] },
} as const;

/** In what lengths are written: millimetres, centimetres, or inches with fractions as rulers have them. */
export type LengthUnit = keyof typeof LENGTH_UNITS;
