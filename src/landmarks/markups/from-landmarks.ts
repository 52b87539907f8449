import { eachSide, type Sides } from "../../units/index.js";
import { refuse, requireObject, refusingAs } from "../../units/internal.js";
import { BY_HAND, type Face, type StandIn } from "../face/face.js";
import {
  MIDLINE_LANDMARKS,
  type MidlineLandmark,
  SIDE_PARTS,
  type SideLandmark,
} from "../face/landmarks.js";
import type { IndexTable, MarkupSide, Place } from "./index-table.js";
import type { SourceOptions } from "./markup-options.js";
import type { MarkupPoint } from "./markups.js";
import { faceFromPoints } from "./face-from-points.js";

/** Points by the names, or the numbers, that another program gave them; `null` where one is missing. */
export type NamedPoints =
  | Readonly<Record<string, MarkupPoint | null | undefined>>
  | readonly (MarkupPoint | null | undefined)[];

/** Another program's name of a point. */
export type PointName = string | number;

/** Another program's names of the landmarks of one side; of several points the mean is taken. */
export type SideNames = { readonly [Name in SideLandmark]?: PointName | readonly PointName[] } & {
  /** From endocanthion to exocanthion. */
  readonly upperLid?: readonly PointName[];
  /** From endocanthion to exocanthion. */
  readonly lowerLid?: readonly PointName[];
  /** Each border from the start to the tail. */
  readonly brow?: { readonly upper: readonly PointName[]; readonly lower?: readonly PointName[] };
};

/** Another program's names of the landmarks of a face. */
export interface LandmarkNames extends Sides<SideNames> {
  readonly midline?: { readonly [Name in MidlineLandmark]?: PointName | readonly PointName[] };
  /** Landmarks that these points only approximate. */
  readonly standIns?: readonly StandIn[];
}

/**
 * A face from points that another program named, or numbered, in its own way: `names` says which of
 * them each landmark is.
 *
 * The source is taken to be a careful hand: see `landmarkUncertainty`. Depth, where points carry z,
 * counts as measured.
 *
 * @throws GeometryError `out-of-range` where `names` asks for a point that is not there; `not-finite`,
 * `image-size-needed`, `inconsistent`, `sides-swapped`
 *
 * @example
 * ```ts
 * import { fromLandmarks } from "brow-geometry";
 * const face = fromLandmarks(
 *   { innerR: [460, 500], outerR: [380, 498], innerL: [560, 501], outerL: [641, 499] },
 *   {
 *     right: { endocanthion: "innerR", exocanthion: "outerR" },
 *     left: { endocanthion: "innerL", exocanthion: "outerL" },
 *   },
 *   { coordinates: "pixels" },
 * );
 * face.left.endocanthion; // → [560, 501]
 * ```
 */
export function fromLandmarks(
  points: NamedPoints,
  names: LandmarkNames,
  options: SourceOptions,
): Face<"px"> {
  return refusingAs("fromLandmarks", () => {
    requireObject("points", points, "points by their names, or a list of points");
    requireObject("names", names, "an object with the names of right and left");
    eachSide((side) =>
      requireObject(`names.${side}`, names[side], "an object with names of points, or {}"),
    );
    const labels: string[] = [];
    const indexOf = (name: PointName, field: string): number => {
      const label = String(name);
      const known = labels.indexOf(label);
      if (known >= 0) return known;
      if (!Object.hasOwn(points, label)) {
        const need = "the name of a point; where a point is missing, give null for it";
        refuse("out-of-range", field, name, need);
      }
      return labels.push(label) - 1;
    };
    const sides = eachSide((side) => sideTable(names[side], `names.${side}`, indexOf));
    const midline = placesOf(names.midline ?? {}, MIDLINE_LANDMARKS, "names.midline", indexOf);
    const table: IndexTable = {
      ...sides,
      midline,
      labels,
      alare: {},
      pairs: [],
      middle: [],
      standIns: names.standIns ?? [],
      uncertainty: { default: BY_HAND },
      ringFactor: { value: 1, u: 0 },
      depth: "measured",
    };
    const ordered = labels.map((label) => (points as Record<string, MarkupPoint | null>)[label]);
    return faceFromPoints("by-hand", table, ordered, options);
  });
}

type IndexOf = (name: PointName, field: string) => number;

function sideTable(names: SideNames, field: string, indexOf: IndexOf): MarkupSide {
  const { upperLid, lowerLid, brow, ...points } = names;
  const lines: Record<string, readonly number[]> = {};
  const readLine = (line: keyof MarkupSide, part: string, of?: readonly PointName[]): void => {
    if (of === undefined) return;
    lines[line] = of.map((name, index) => indexOf(name, `${field}.${part}[${index}]`));
  };
  readLine("upperLid", "upperLid", upperLid);
  readLine("lowerLid", "lowerLid", lowerLid);
  readLine("browUpper", "brow.upper", brow?.upper);
  readLine("browLower", "brow.lower", brow?.lower);
  return { points: placesOf(points, SIDE_PARTS, field, indexOf), ...lines };
}

function placesOf(
  names: Readonly<Record<string, PointName | readonly PointName[] | undefined>>,
  known: readonly string[],
  field: string,
  indexOf: IndexOf,
): Readonly<Record<string, Place>> {
  const places: Record<string, Place> = {};
  for (const [landmark, name] of Object.entries(names)) {
    const path = `${field}.${landmark}`;
    if (!known.includes(landmark)) {
      const need = `to be left out, or one of ${known.join(", ")} instead`;
      refuse("out-of-range", path, name, need);
    }
    if (name === undefined) continue;
    places[landmark] =
      typeof name === "object"
        ? name.map((one, index) => indexOf(one, `${path}[${index}]`))
        : indexOf(name, path);
  }
  return places;
}
