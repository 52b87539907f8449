import { readFileSync } from "node:fs";
import { type Face, fromMarkup, px } from "brow-geometry";
import type { FaceSide, MarkupPoints, MidlineLandmarks } from "brow-geometry/landmarks";
import { correctErrors } from "../../src/landmarks/errors/correct-errors.js";
import type { MarkupErrors } from "../../src/landmarks/errors/markup-errors.js";

/** A face of the London set: drawn by hand, and as two detectors found it on the same photo. */
export interface LondonFace {
  readonly hand: Face<"px">;
  /** Millimetres in a pixel, the iris drawn by hand taken as 11.71 mm wide. */
  readonly millimetres: number;
  readonly mesh478: MarkupPoints;
  readonly points68: MarkupPoints;
}

type Pair = readonly [number, number];

/** A line of the file; what is not read here is left out. */
interface Line {
  readonly hand: {
    readonly right: HandSide;
    readonly left: HandSide;
    readonly midline: Readonly<Record<string, Pair>>;
  };
  readonly mesh478: readonly (readonly number[])[];
  readonly points68: readonly (readonly number[])[];
}

interface HandSide {
  readonly endocanthion: Pair;
  readonly exocanthion: Pair;
  readonly pupil: Pair;
  readonly limbusMedial: Pair;
  readonly limbusLateral: Pair;
  readonly alare: Pair;
  readonly cheilion: Pair;
  readonly upperLid: readonly Pair[];
  readonly lowerLid: readonly Pair[];
  readonly browUpper: readonly Pair[];
  readonly browLower: readonly Pair[];
  readonly irisRadius: number;
}

const IRIS_MILLIMETRES = 11.71;

/** The 102 faces, in the order of the file: see tests/fixtures/README.md. */
export function londonFaces(): readonly LondonFace[] {
  const file = new URL("../fixtures/london-faces.ndjson", import.meta.url);
  return readFileSync(file, "utf8").trim().split("\n").map(readLine);
}

function readLine(text: string): LondonFace {
  const { hand, mesh478, points68 } = JSON.parse(text) as Line;
  const midline = Object.entries(hand.midline).map(([name, point]) => [name, px(point)]);
  return {
    hand: {
      right: sideOf(hand.right),
      left: sideOf(hand.left),
      midline: Object.fromEntries(midline) as MidlineLandmarks<"px">,
    },
    millimetres: IRIS_MILLIMETRES / (hand.right.irisRadius + hand.left.irisRadius),
    mesh478,
    points68,
  };
}

function sideOf(side: HandSide): FaceSide<"px"> {
  const { browUpper, browLower, upperLid, lowerLid } = side;
  return {
    endocanthion: px(side.endocanthion),
    exocanthion: px(side.exocanthion),
    pupil: px(side.pupil),
    limbusMedial: px(side.limbusMedial),
    limbusLateral: px(side.limbusLateral),
    alare: px(side.alare),
    cheilion: px(side.cheilion),
    upperLid: upperLid.map((point) => px(point)),
    lowerLid: lowerLid.map((point) => px(point)),
    brow: {
      upper: browUpper.map((point) => px(point)),
      lower: browLower.map((point) => px(point)),
    },
  };
}

/** The markups whose detectors the file holds. */
export type MeasuredMarkup = "mesh-478" | "points-68";

/** What a detector found: corrected as the library does, or as found. */
export function foundFace(
  { mesh478, points68 }: LondonFace,
  markup: MeasuredMarkup,
  correct = true,
): Face<"px"> {
  const options = { coordinates: "pixels", correct } as const;
  return markup === "mesh-478"
    ? fromMarkup(markup, mesh478, options)
    : fromMarkup(markup, points68, options);
}

/** What a detector found, corrected by a table that may have been fitted without this face. */
export function correctedFace(
  face: LondonFace,
  markup: MeasuredMarkup,
  errors: MarkupErrors,
): Face<"px"> {
  const found = foundFace(face, markup, false);
  return correctErrors(found, { correct: true }, true, { [markup]: errors });
}
