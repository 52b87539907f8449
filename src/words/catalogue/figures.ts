/** How numbers and lengths are written. */
export interface FigureStyle {
  /** What stands before the decimals: a point or a comma. */
  readonly decimalSign: string;
  /** The ten digits, from nought on; left out: 0123456789. */
  readonly digits?: string;
  /** In what lengths are written; areas in its square. */
  readonly lengths: LengthUnit;
  /**
   * Into how many parts the reader's ruler divides an inch: lengths are rounded to its nearest mark, whole
   * millimetres to a sixteenth where it has that. Left out: 64.
   */
  readonly inchMarks?: InchMarks;
}

/** What rulers are divided in, in millimetres. */
export const LENGTH_UNITS = { mm: 1, cm: 10, inch: 25.4 } as const;

/** In what lengths are written: millimetres, centimetres, or inches with fractions as rulers have them. */
export type LengthUnit = keyof typeof LENGTH_UNITS;

/** Into how many parts rulers divide an inch. */
export type InchMarks = 8 | 16 | 32 | 64;
