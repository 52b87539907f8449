import type { Brush } from "./brush.js";
import type { SvgElement } from "./svg.js";

/** A part of a picture beneath its face, as wide as the picture. */
export interface Block {
  readonly height: number;
  readonly drawnAt: (left: number, top: number) => readonly SvgElement[];
}

export function gap(height: number): Block {
  return { height, drawnAt: () => [] };
}

/** What a block is drawn in. */
export interface Room {
  readonly width: number;
  readonly brush: Brush;
}

/** Where something as wide as is said lies, so far from the edge of a room where reading starts. */
export function inwards(
  left: number,
  { width, brush }: Room,
): (way: number, wide?: number) => number {
  return brush.words.direction === "rtl"
    ? (way, wide = 0) => left + width - way - wide
    : (way) => left + way;
}
