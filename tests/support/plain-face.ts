import { type Brow, type Choices, mm, type PlannableFace, type Polyline } from "brow-geometry";

type Pairs = readonly (readonly [x: number, y: number])[];

/**
 * An invented face of round figures: inner eye corners 32 mm apart, outer ones 88, nose wings 34 wide and 38 below;
 * brows as given for the left, mirrored.
 */
export function plainFace(upper: Pairs, lower?: Pairs): PlannableFace {
  const side = (sign: 1 | -1): PlannableFace["left"] => {
    const along = (pairs: Pairs): Polyline<"mm"> =>
      mm(pairs.map(([x, y]) => [sign * x, y] as const));
    const brow: Brow<"mm"> = { upper: along(upper), ...(lower && { lower: along(lower) }) };
    return {
      endocanthion: mm([sign * 16, 0]),
      exocanthion: mm([sign * 44, 0]),
      alare: mm([sign * 17, -38]),
      brow,
    };
  };
  return { right: side(-1), left: side(1), midline: {} };
}

/** From 17 to 44 mm out, its brows lie between the heights 12 and 20 where {@link LEVEL_CHOICES} are chosen. */
export const levelFace: PlannableFace = plainFace([
  [17, 20],
  [44, 20],
  [57, 14],
]);

export const LEVEL_CHOICES: Choices = {
  arch: "exocanthion-vertical",
  thickness: { start: mm(8), body: mm(8), arch: mm(8) },
};

/** A rectangle from x to x and from height to height. */
export function rectangle(from: number, to: number, low: number, high: number): Polyline<"mm"> {
  return mm([
    [from, low],
    [to, low],
    [to, high],
    [from, high],
  ]);
}
