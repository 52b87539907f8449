import type { Box, Stretch } from "./box.js";
import type { Label } from "./label.js";
import type { SvgElement } from "./svg.js";

export interface ColouredLabel extends Label {
  readonly colour: string;
}

/** One part of a picture: what is drawn, what is to be written, and what writing has to respect. */
export interface Layer {
  readonly elements: readonly SvgElement[];
  readonly labels?: readonly ColouredLabel[];
  /** Never covered by a label. */
  readonly closed?: readonly Box[];
  /** Never touched by a label. */
  readonly barred?: readonly Stretch[];
  /** Covered by a label only where nothing better is left. */
  readonly strokes?: readonly Stretch[];
  /** The borders of a brow: strokes that only what finds no other place is written over, or led across. */
  readonly borders?: readonly Stretch[];
}

export function stacked(layers: readonly Layer[]): Required<Layer> {
  return {
    elements: layers.flatMap(({ elements }) => elements),
    labels: layers.flatMap(({ labels }) => labels ?? []),
    closed: layers.flatMap(({ closed }) => closed ?? []),
    barred: layers.flatMap(({ barred }) => barred ?? []),
    strokes: layers.flatMap(({ strokes = [], borders = [] }) => [...strokes, ...borders]),
    borders: layers.flatMap(({ borders }) => borders ?? []),
  };
}
