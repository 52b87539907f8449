import type { FlatPoint, Polyline } from "../units/index.js";
import { type Blend, blendOf, type Row, sinesAt, WAVES } from "./arch-templates.js";
import { type BorderOverChord, overChord, placeOverChord } from "./border-over-chord.js";

/** Where a border arches. */
export interface Crest {
  /** Share of the way along the border. */
  readonly share: number;
  /** Distance from the chord, in mm: negative where the border sags. */
  readonly height: number;
  /** By how few corners the border turns: 1 by a single one, towards 0 the more of them share it. */
  readonly coarseness: number;
  /** The sine waves there. */
  readonly sines: Row;
  /** Which point it is, where the border has no other corner. */
  readonly corner?: number;
  /** What the border's waves say of it; absent at a corner, and where the border has no crest. */
  readonly blend?: Blend | undefined;
}

/**
 * The place of the arch alone, without its uncertainty: the `at` of the natural arch, whatever its
 * kind. Undefined where a border is straight or sags.
 *
 * @param off how far towards the tail besides, in parts of what the method itself is off
 */
export function archPlace(border: Polyline<"mm">, off = 0): FlatPoint<"mm"> | undefined {
  const shape = overChord(border);
  const crest = crestOf(shape);
  return crest && placeOfCrest(shape, crest, off);
}

/** On the border as it is drawn: the curve that tells how far along it the crest lies passes above its legs. */
export function placeOfCrest(shape: BorderOverChord, crest: Crest, off = 0): FlatPoint<"mm"> {
  const { along, shares, heights } = shape;
  const way = (crest.share + off * placeOff(crest)) * (along[along.length - 1] as number);
  let next = 1;
  while (next < along.length - 1 && (along[next] as number) < way) next += 1;
  const [from, to] = [along[next - 1] as number, along[next] as number];
  const part = (way - from) / (to - from);
  const between = (of: readonly number[]): number =>
    (1 - part) * (of[next - 1] as number) + part * (of[next] as number);
  return placeOverChord(shape, between(shares), between(heights));
}

/** What the method is off by itself, in parts of the border's way; nothing at a corner, taken as drawn. */
export function placeOff({ coarseness, blend }: Crest): number {
  return blend === undefined ? 0 : Math.hypot(PLACE_OFF[0], PLACE_OFF[1] * coarseness);
}

/** Root mean square on the borders that it was fitted to: of any border, and of one with a single corner beside that. */
const PLACE_OFF = [0.02, 0.095] as const;

/**
 * Where a border is farthest from its chord, read from its heights as a sum of sine waves, which is
 * the border's own and not its points': points on a straight leg add nothing to it.
 */
export function crestOf({ along, heights }: BorderOverChord): Crest | undefined {
  const last = along.length - 1;
  const turns = turnsOf(along, heights);
  let sum = 0;
  let squares = 0;
  for (let index = 1; index < last; index += 1) {
    const turn = Math.abs(turns[index] as number);
    sum += turn;
    squares += turn * turn;
  }
  if (last < 2) return undefined;
  const way = along[last] as number;
  if (last === 2) {
    const share = (along[1] as number) / way;
    return { share, height: heights[1] as number, coarseness: 1, sines: sinesAt(share), corner: 1 };
  }
  const coarseness = squares / (sum * sum);
  const waves = wavesOf(along, turns);
  const blend = (waves[0] as number) > 0 ? blendOf(waves) : undefined;
  const share = Math.min(Math.max(blend?.mean ?? 0.5, 0), 1);
  const sines = sinesAt(share);
  let height = 0;
  for (let wave = 0; wave < WAVES; wave += 1) {
    height += (waves[wave] as number) * (sines[wave] as number);
  }
  return { share, height: sagFactor(coarseness) * height, coarseness, sines, blend };
}

/** By how much a polyline turns downwards at each of its points, in slopes; 0 at its ends. */
export function turnsOf(along: readonly number[], heights: readonly number[]): readonly number[] {
  const turns = [0];
  const last = along.length - 1;
  let before = 0;
  for (let index = 1; index <= last; index += 1) {
    const step = (along[index] as number) - (along[index - 1] as number);
    const slope = ((heights[index] as number) - (heights[index - 1] as number)) / step;
    if (index > 1) turns.push(before - slope);
    before = slope;
  }
  turns.push(0);
  return turns;
}

/**
 * Sine waves with 1, 2, … half periods on the border's way that add up to its heights, their amplitudes
 * in mm and each times its number: a polyline's are sums over its turns alone.
 */
function wavesOf(along: readonly number[], turns: readonly number[]): Row {
  const way = along[along.length - 1] as number;
  const waves = new Array<number>(WAVES).fill(0);
  for (let index = 1; index < turns.length - 1; index += 1) {
    const sines = sinesAt((along[index] as number) / way);
    const turn = amplitudeOfTurn(way) * (turns[index] as number);
    for (let wave = 0; wave < WAVES; wave += 1) {
      waves[wave] = (waves[wave] as number) + turn * (sines[wave] as number);
    }
  }
  return waves;
}

/** What a turn amounts to in a wave, where that wave is 1. */
export function amplitudeOfTurn(way: number): number {
  return (2 * way) / Math.PI ** 2;
}

/**
 * A curve drawn as a few equal legs reads lower than it is: its first wave by (π·leg)²/12, where a leg
 * is a share of the way. Three quarters of that come nearest to heights at the crest.
 */
export function sagFactor(coarseness: number): number {
  return 1 + 0.6 * (coarseness / (1 + coarseness)) ** 2;
}
