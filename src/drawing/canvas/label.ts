import type { Box, Spot, Stretch } from "./box.js";

/** A word or a reading that belongs to one place of the picture. */
export interface Label {
  readonly text: string;
  readonly at: Spot;
  /** Other places of the same thing, nearly as good to stand at. */
  readonly orAt?: readonly Spot[];
  /** Directions in which it may stand, the best first; x to the right, y down. */
  readonly towards: readonly Spot[];
  readonly size: number;
  readonly weight?: "normal" | "bold";
  /** Free space between the place and the nearest edge of the text. */
  readonly gap: number;
  /** Whether it never covers a stroke; it then stands farther away instead. */
  readonly clear?: boolean;
  /** What may be done where it finds no place within reach: left out, or written beneath the picture with a key here. */
  readonly yields?: "out" | "key" | undefined;
}

export interface PlacedLabel<Kind extends Label = Label> {
  readonly label: Kind;
  readonly box: Box;
  /** Present where the label had to move away from what it names. */
  readonly leader?: Stretch;
}

export interface Surroundings {
  readonly bounds: Box;
  /** Never covered: the eyes, the dots, words already there. */
  readonly closed: readonly Box[];
  /** Never touched: lines that are read together with their figure. */
  readonly barred: readonly Stretch[];
  /** Covered where nothing better is left. */
  readonly strokes: readonly Stretch[];
  /** Strokes among them that only what finds no other place is written over, or led across: the borders of brows. */
  readonly borders?: readonly Stretch[];
  /** How far what may yield is led at most, in type sizes, and through no border. Default: as far as it takes. */
  readonly reach?: number;
}
