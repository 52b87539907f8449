import type { Spot, Stretch } from "./box.js";

/** How a surface is hatched. */
export interface Hatching {
  /** Along the strokes, of length 1. */
  readonly direction: Spot;
  /** From stroke to stroke, in picture units. */
  readonly apart: number;
}

/** Strokes inside one closed outline and outside of another; all surfaces share the same lines. */
export function hatch(
  inside: readonly Spot[],
  outside: readonly Spot[],
  { direction: [x, y], apart }: Hatching,
): readonly Stretch[] {
  // Turned so that strokes run along the first axis.
  const turned = (spots: readonly Spot[]): readonly Spot[] =>
    spots.map(([right, down]) => [right * x + down * y, down * x - right * y]);
  const [within, without] = [turned(inside), turned(outside)];
  const across = within.map(([, level]) => level);
  const first = Math.ceil(Math.min(...across) / apart);
  const last = Math.floor(Math.max(...across) / apart);
  const levels = Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);
  return levels.flatMap((level) => {
    const at = level * apart;
    const back = (along: number): Spot => [along * x - at * y, along * y + at * x];
    return less(passages(within, at), passages(without, at))
      .filter(([from, to]) => to - from > SPECK * apart)
      .map(([from, to]) => ({ from: back(from), to: back(to) }));
  });
}

/** Shorter strokes would be specks; in distances between strokes. */
const SPECK = 0.15;

type Passage = readonly [from: number, to: number];

/** Where a level line runs inside a closed outline, in order. */
export function passages(
  outline: readonly (readonly [x: number, y: number, ...unknown[]])[],
  level: number,
): readonly Passage[] {
  const crossings = outline
    .flatMap((to, index) => {
      const from = outline.at(index - 1) ?? to;
      if (from[1] > level === to[1] > level) return [];
      return [from[0] + ((level - from[1]) / (to[1] - from[1])) * (to[0] - from[0])];
    })
    .sort((one, other) => one - other);
  return Array.from({ length: Math.floor(crossings.length / 2) }, (_, index) => [
    crossings[2 * index] as number,
    crossings[2 * index + 1] as number,
  ]);
}

/** What is left of passages where others are taken away. */
function less(passages: readonly Passage[], taken: readonly Passage[]): readonly Passage[] {
  return taken.reduce<readonly Passage[]>(
    (left, [from, to]) =>
      left.flatMap(([start, end]): readonly Passage[] => {
        if (to <= start || from >= end) return [[start, end]];
        const parts: readonly Passage[] = [
          [start, from],
          [to, end],
        ];
        return parts.filter(([before, after]) => after > before);
      }),
    passages,
  );
}
