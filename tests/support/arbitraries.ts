import {
  type Brow,
  type Choices,
  type FlatPoint,
  mm,
  type OutlineOptions,
  type Polyline,
  type StationThickness,
  type Unit,
} from "brow-geometry";
import { type DeepPoint, flatPoint, deepPoint } from "brow-geometry/units";
import { lineAlong, type Line } from "brow-geometry/geometry";
import { mapFace } from "brow-geometry/landmarks";
import { type UpperDots } from "brow-geometry/proportions";
import { parseChoices } from "brow-geometry/schema";
import fc from "fast-check";
import type { Pose } from "./photograph.js";
import { type SyntheticFace, syntheticFace } from "./synthetic-face.js";

/**
 * A number from a range, evenly spread with a leaning to its ends and its middle. `fc.double` is even
 * over the doubles, nearly all of which lie next to 0 wherever a range holds it.
 */
export function anyBetween(min: number, max: number): fc.Arbitrary<number> {
  const half = 2 ** 30;
  const middle = (min + max) / 2;
  return fc
    .integer({ min: -half, max: half })
    .map((part) => middle + (part / half) * ((max - min) / 2));
}

/** A number of at most a given size, of either sign. */
export function anyNumber(size: number): fc.Arbitrary<number> {
  return anyBetween(-size, size);
}

/** A point within a square of half-width `size` about the origin: 4000 is a large photo. */
export function anyFlatPoint<U extends Unit>(size = 4000): fc.Arbitrary<FlatPoint<U>> {
  return fc.tuple(anyNumber(size), anyNumber(size)).map(([x, y]) => flatPoint<U>(x, y));
}

/** A point with depth within a cube of half-width `size` about the origin. */
export function anyDeepPoint<U extends Unit>(size = 4000): fc.Arbitrary<DeepPoint<U>> {
  return fc
    .tuple(anyNumber(size), anyNumber(size), anyNumber(size))
    .map(([x, y, depth]) => deepPoint<U>(x, y, depth));
}

/** An angle in degrees, all the way round. */
export function anyAngle(): fc.Arbitrary<number> {
  return anyBetween(-180, 180);
}

/** A line through any point in any direction. */
export function anyLine<U extends Unit>(size = 4000): fc.Arbitrary<Line<U>> {
  return fc.tuple(anyFlatPoint<U>(size), anyAngle()).map(([through, angle]) => {
    const radians = (angle * Math.PI) / 180;
    return lineAlong(through, [Math.cos(radians), Math.sin(radians)]);
  });
}

/** A polyline of 2 to 12 points, some of them drawn twice, at least two of them apart. */
export function anyPolyline<U extends Unit>(size = 4000): fc.Arbitrary<Polyline<U>> {
  return fc
    .array(fc.tuple(anyFlatPoint<U>(size), fc.boolean()), { minLength: 2, maxLength: 12 })
    .map((points) => points.flatMap(([point, twice]) => (twice ? [point, point] : [point])))
    .filter((points) => {
      const first = points[0];
      return points.some(
        (point) => first !== undefined && Math.hypot(point[0] - first[0], point[1] - first[1]) > 1,
      );
    });
}

/** Somebody's face: the synthetic one with every landmark up to `spread` millimetres elsewhere. */
export function anyFace(spread = 2): fc.Arbitrary<SyntheticFace> {
  return fc.infiniteStream(anyNumber(spread)).map((stream) => {
    const next = (): number => (stream.next().value as number | undefined) ?? 0;
    return mapFace(syntheticFace(), (point) =>
      flatPoint(point[0] + next(), point[1] + next()),
    ) as SyntheticFace;
  });
}

/** What an artist may choose, thickness, shape and pins aside; a face may refuse some of it. */
export function anyChoices(): fc.Arbitrary<Choices> {
  return fc
    .record(
      {
        lead: fc.constantFrom("right", "left", "middle"),
        levels: fc.constantFrom("right", "left", "middle", "higher"),
        levelLimit: fc.constantFrom(0.5, 3),
        start: fc.constantFrom("alare-vertical", "endocanthion-vertical"),
        arch: fc.constantFrom("natural", "lateral-limbus-vertical", "brow-length-share"),
        tailHeight: fc.constantFrom("natural", "level-with-lower-start"),
        noseBent: fc.boolean(),
        declared: fc.constant({ upright: true }),
      },
      { requiredKeys: [] },
    )
    .map((choices) => parseChoices(choices));
}

/** A picture's pose: 0.05 to 1 mm a pixel, tilted by up to 30°, anywhere in a large photo. */
export function anyPose(): fc.Arbitrary<Pose> {
  return fc.record({
    factor: fc.double({ min: 0.05, max: 1, noNaN: true }),
    tilt: fc.double({ min: -30, max: 30, noNaN: true }),
    at: fc.tuple(
      fc.double({ min: 0, max: 4000, noNaN: true }),
      fc.double({ min: 0, max: 4000, noNaN: true }),
    ),
  });
}

/** The left brow of somebody with an arch that rises 3 to 8 mm over the chord, as 4 to 25 points. */
export function anyBrow(): fc.Arbitrary<Required<Brow<"mm">>> {
  return fc
    .record({
      count: fc.integer({ min: 4, max: 25 }),
      start: fc.tuple(anyBetween(10, 20), anyBetween(15, 26)),
      size: anyBetween(36, 52),
      slope: anyBetween(-0.25, 0.1),
      arch: anyBetween(0.5, 0.72),
      rise: anyBetween(3, 8),
      thickness: anyBetween(4, 9),
    })
    .map(({ count, start, size, slope, arch, rise, thickness }) => {
      const shares = Array.from({ length: count }, (_, index) => index / (count - 1));
      const height = (share: number): number => {
        const off = share < arch ? (arch - share) / arch : (share - arch) / (1 - arch);
        return slope * size * share + rise * (1 - off * off);
      };
      const along = (drop: (share: number) => number): Polyline<"mm"> =>
        shares.map((share) =>
          flatPoint(start[0] + size * share, start[1] + height(share) - drop(share)),
        );
      return { upper: along(() => 0), lower: along((share) => thickness * (1 - 0.9 * share)) };
    });
}

/** How an outline may be shaped. */
export function anyOutlineShape(): fc.Arbitrary<OutlineOptions> {
  return fc.record(
    {
      angularity: anyBetween(0, 1),
      startSlope: anyBetween(0, 3),
      tailSlope: anyBetween(0, 3),
      frontRoundness: anyBetween(0, 1),
      softFront: anyBetween(0, 6).map((back) => mm(back)),
    },
    { requiredKeys: [] },
  );
}

/** The same with a square front, whose borders begin at the dots. */
export function squareFront(shape: OutlineOptions): OutlineOptions {
  return { ...shape, frontRoundness: 0, softFront: mm(0) };
}

/** What a left brow is drawn from. */
export interface DrawnBrow {
  readonly upper: UpperDots;
  readonly stations: StationThickness;
  /** How far the lower start lies outward of the upper one, in mm. */
  readonly slant: number;
}

/** Dots of a left brow: arched or flat, thin or thick, with a start line that may slant a little. */
export function anyDrawnBrow(): fc.Arbitrary<DrawnBrow> {
  return fc
    .record({
      start: fc.tuple(anyBetween(8, 20), anyBetween(12, 26)),
      front: fc.tuple(anyBetween(18, 36), anyBetween(-3, 12)),
      tail: fc.tuple(anyBetween(8, 24), anyBetween(-14, 6)),
      thickness: fc.record({
        start: anyBetween(2, 10),
        body: anyBetween(2, 10),
        arch: anyBetween(2, 10),
      }),
      slant: anyBetween(-1.5, 1.5),
    })
    .map(({ start: [x, y], front, tail, thickness: read, slant }) => {
      const upperArch = flatPoint<"mm">(x + front[0], y + front[1]);
      const tailEnd = flatPoint<"mm">(upperArch[0] + tail[0], upperArch[1] + tail[1]);
      const stations = read as StationThickness;
      return { upper: { upperStart: flatPoint(x, y), upperArch, tailEnd }, stations, slant };
    });
}
