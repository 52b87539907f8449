import { EigenvalueDecomposition, Matrix } from "ml-matrix";
import type { Face } from "brow-geometry";
import { distance, pointAlong, polylineLength } from "brow-geometry/geometry";
import { type MidlineLandmark, type SideLandmark } from "brow-geometry/landmarks";
import {
  eachSide,
  flatPoint,
  length,
  type Length,
  type Point,
  type Polyline,
  type Side,
  type Sides,
} from "brow-geometry/units";
import { type EyeAxes, eyeAxes } from "../../src/landmarks/errors/eye-axes.js";
import {
  type ErrorPlace,
  type ErrorRow,
  type MarkupErrors,
  type PlaceErrors,
} from "../../src/landmarks/errors/markup-errors.js";
import {
  foundFace,
  type LondonFace,
  type MeasuredMarkup,
} from "../../tests/support/london-faces.js";

/** What is fitted of a markup's errors. */
interface ModelShape {
  /** Where the mean error is taken out. */
  readonly shifted: readonly ErrorPlace[];
  /** Patterns that are alike on both sides, and those that are not. */
  readonly alike: PatternShape;
  readonly unlike: PatternShape;
}

interface PatternShape {
  readonly count: number;
  /** Where they move points, the borders of the brow first: elsewhere they explain a tenth or less. */
  readonly moved: readonly ErrorPlace[];
}

/** With fewer patterns, intervals of unseen people hold the truth less often: see docs/accuracy.md. */
const SHAPES: { readonly [Name in MeasuredMarkup]: ModelShape } = {
  "mesh-478": {
    shifted: ["upper", "lower", "alare"],
    alike: { count: 8, moved: ["upper", "lower"] },
    unlike: { count: 9, moved: ["upper", "lower"] },
  },
  "points-68": {
    shifted: ["upper", "endocanthion", "exocanthion", "upperLid", "lowerLid", "alare"],
    alike: { count: 4, moved: ["upper"] },
    unlike: { count: 5, moved: ["upper", "endocanthion", "exocanthion"] },
  },
};

/** Landmarks of guides, which err by themselves too, not as much sideways as upwards. */
const OWN: readonly ErrorPlace[] = ["endocanthion", "exocanthion", "alare"];

/**
 * Fits what a detector gets wrong to faces that a hand has drawn too: the mean error, then the patterns
 * in which what is left goes together, from the largest down (principal components). Both sides of a
 * face are mirror images of each other, so patterns are those of the sides' mean and of their half
 * difference.
 */
export function fitErrors(
  faces: readonly LondonFace[],
  markup: MeasuredMarkup,
  shape: ModelShape = SHAPES[markup],
): MarkupErrors {
  const names = [...new Set([...shape.unlike.moved, ...shape.shifted, ...OWN])];
  const found = faces.map((face) => foundFace(face, markup, false));
  const errors = faces.map((face, index) => errorsOf(face, found[index] as Face<"px">, names));
  const mean = means(errors.flatMap(({ right, left }) => [right, left]));
  const alike = errors.map(({ right, left }) =>
    mean.map((value, at) => ((right[at] ?? 0) + (left[at] ?? 0)) / 2 - value),
  );
  const unlike = errors.map(({ right, left }) =>
    mean.map((_, at) => ((left[at] ?? 0) - (right[at] ?? 0)) / 2),
  );
  const patterns = {
    alike: patternsOf(alike, shape.alike),
    unlike: patternsOf(unlike, shape.unlike),
  };
  const unit = means(faces.map((face, index) => [millimetres(face, found[index])]))[0] ?? 0;
  let end = 0;
  const places = names.map((place) => {
    const start = end;
    end += 2 * stationsOf(place);
    const own = (row: readonly number[]): readonly number[] => row.slice(start, end);
    const kinds = (["alike", "unlike"] as const).filter((kind) =>
      shape[kind].moved.includes(place),
    );
    const shift = shape.shifted.includes(place) ? own(mean).map(rounded) : undefined;
    const each = errors.flatMap(({ right, left }) => [own(right), own(left)]);
    const shared = kinds.flatMap((kind) => patterns[kind].map(own));
    const rest = scatterBeside(each, shift, shared).map((value) => tenths(unit * value));
    const known: PlaceErrors = {
      ...(shift && { shift }),
      ...Object.fromEntries(
        kinds.map((kind) => [kind, patterns[kind].map((row): ErrorRow => own(row).map(rounded))]),
      ),
      ...(OWN.includes(place) ? { rest: rest as [number, number] } : {}),
    };
    return [place, known] as const;
  });
  return { places: Object.fromEntries(places), ...scalarsOf(faces, markup, shape) };
}

/** How far each coordinate scatters about its shift, beside what patterns explain of it. */
function scatterBeside(
  errors: readonly (readonly number[])[],
  shift: ErrorRow | undefined,
  shared: readonly (readonly number[])[],
): readonly number[] {
  const off = means(errors.map((row) => row.map((value, at) => (value - (shift?.[at] ?? 0)) ** 2)));
  return off.map((square, at) => {
    const explained = shared.reduce((sum, row) => sum + (row[at] ?? 0) ** 2, 0);
    return ofNextPerson(errors.length / 2) * Math.sqrt(Math.max(0, square - explained));
  });
}

/** How many pairs of a row belong to a place. */
function stationsOf(place: ErrorPlace): number {
  if (place === "upper" || place === "lower") return 5;
  return place === "upperLid" || place === "lowerLid" ? 3 : 1;
}

/**
 * How far landmarks lie off, once the mean error is taken out where it is: the lid above the pupil, and of a brow the inner part of its upper border, across it. Where eye corners are corrected,
 * others are surer than the markup says, which counts the corners' mean error.
 */
function scalarsOf(
  faces: readonly LondonFace[],
  markup: MeasuredMarkup,
  { shifted }: ModelShape,
): Pick<MarkupErrors, "landmarks" | "others"> {
  const found = faces.map((face) => foundFace(face, markup, false));
  const offOf = (place: ErrorPlace): readonly (readonly number[])[] => {
    const rows = faces.flatMap((face, index) => {
      const { right, left } = errorsOf(face, found[index] as Face<"px">, [place]);
      return [right, left].map((row) => row.map((off) => off * millimetres(face, found[index])));
    });
    const mean = shifted.includes(place) ? means(rows) : [];
    return rows.map((row) => row.map((value, at) => value - (mean[at] ?? 0)));
  };
  const heights = (place: ErrorPlace): readonly number[] =>
    offOf(place).flatMap((row) =>
      row.filter((_, at) => at % 2 === 1 && at > 1 && at + 2 < row.length),
    );
  const u = (off: readonly number[]): Length<"mm"> => length<"mm">(tenths(rootMeanSquare(off)));
  const others = [
    ...PAIRED.flatMap(offOf),
    ...MIDDLE.flatMap((name) => midlineErrors(faces, found, name)),
  ].flat();
  return {
    landmarks: { upperLid: u(heights("upperLid")), brow: u(heights("upper")) },
    ...(shifted.includes("endocanthion") ? { others: tenths(rootMeanSquare(others)) } : {}),
  };
}

/** What hand and detectors both have, and midlines are fitted to. */
const PAIRED = ["endocanthion", "exocanthion", "pupil", "cheilion"] as const;
const MIDDLE = ["sellion", "subnasale", "labialeSuperius", "stomion"] as const;

/** Errors of a landmark on the middle of the face, in millimetres. */
function midlineErrors(
  faces: readonly LondonFace[],
  found: readonly Face<"px">[],
  name: MidlineLandmark,
): readonly (readonly number[])[] {
  return faces.flatMap((face, index) => {
    const [truth, seen] = [face.hand.midline[name], found[index]?.midline[name]];
    if (truth === undefined || seen === undefined) return [];
    return [[truth[0] - seen[0], truth[1] - seen[1]].map((value) => value * face.millimetres)];
  });
}

/** Millimetres in a five-hundredth of the distance of the outer eye corners. */
function millimetres(face: LondonFace, found: Face<"px"> | undefined): number {
  const { leftwards } = (found && eyeAxes(found, -1)) as EyeAxes;
  return Math.hypot(...leftwards) * face.millimetres;
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.hypot(...values) / Math.sqrt(values.length);
}

function tenths(value: number): number {
  return Math.round(10 * value) / 10;
}

function rounded(value: number): number {
  return Math.round(value) + 0;
}

function means(rows: readonly (readonly number[])[]): readonly number[] {
  return (rows[0] ?? []).map(
    (_, index) => rows.reduce((sum, row) => sum + (row[index] ?? 0), 0) / rows.length,
  );
}

/** Truth less what was found, side by side, as the rows of a table hold it. */
function errorsOf(
  { hand }: LondonFace,
  found: Face<"px">,
  places: readonly ErrorPlace[],
): Sides<readonly number[]> {
  const axes = eyeAxes(found, -1);
  if (axes === undefined) throw new Error("a face without eye corners");
  return eachSide((side) => {
    const row = (face: Face<"px">): readonly number[] =>
      places
        .flatMap((place) => stationsAt(face, place, side, { hand, found }))
        .flatMap((point) => alongAxes(point, axes, side));
    const seen = row(found);
    return row(hand).map((value, index) => value - (seen[index] ?? 0));
  });
}

/**
 * The points of one place: of a border the points of the markup, and on the one drawn by hand those that
 * mean the same; of a lid its ends and its middle.
 */
function stationsAt(
  face: Face<"px">,
  place: ErrorPlace,
  side: Side,
  { hand, found }: Compared,
): readonly Point<"px">[] {
  const { brow, upperLid, lowerLid, ...points } = face[side];
  if (place === "upper" || place === "lower") {
    const [own = [], drawn = []] = [found, hand].map((of) => of[side].brow?.[place]);
    return face === found ? own : alike(own, drawn, place === "upper");
  }
  const known =
    place === "upperLid" || place === "lowerLid"
      ? ends((place === "upperLid" ? upperLid : lowerLid) ?? [], hand[side].pupil)
      : [points[place as SideLandmark]];
  return known.map((point) => {
    if (point === undefined) throw new Error(`a face without ${place}`);
    return point;
  });
}

interface Compared {
  readonly hand: Face<"px">;
  readonly found: Face<"px">;
}

/** Places of a drawn border at the shares of a found one, its arch where the other has it. */
function alike(
  found: Polyline<"px">,
  drawn: Polyline<"px">,
  arched: boolean,
): readonly Point<"px">[] {
  const [whole, arch, other] = [polylineLength(drawn), archShare(drawn), archShare(found)];
  return sharesOf(found).map((share) => {
    const like =
      share < other ? (share / other) * arch : 1 - ((1 - share) / (1 - other)) * (1 - arch);
    return pointAlong(drawn, length<"px">((arched ? like : share) * whole)).at;
  });
}

function sharesOf(line: Polyline<"px">): readonly number[] {
  let sum = 0;
  const before = line.map((point, index) => (sum += distance(line[index - 1] ?? point, point)));
  return before.map((way) => way / sum);
}

/** Share of a line's length before the point that is farthest from its chord. */
function archShare(line: Polyline<"px">): number {
  const [start, end] = [line[0], line[line.length - 1]] as [Point<"px">, Point<"px">];
  const [x, y] = [end[0] - start[0], end[1] - start[1]];
  const off = line.map((point) => Math.abs(x * (point[1] - start[1]) - y * (point[0] - start[0])));
  return sharesOf(line)[off.indexOf(Math.max(...off))] ?? 0;
}

/** The ends of a lid, and between them where it passes above or below the pupil. */
function ends(
  lid: Polyline<"px">,
  pupil: Point<"px"> | undefined,
): readonly (Point<"px"> | undefined)[] {
  return [lid[0], atPupil(lid, pupil), lid[lid.length - 1]];
}

/** Photos of the set are upright: above is above in the picture. */
function atPupil(lid: Polyline<"px">, pupil: Point<"px"> | undefined): Point<"px"> | undefined {
  const x = pupil?.[0] ?? 0;
  return lid.flatMap((to, index) => {
    const from = lid[index - 1];
    if (from === undefined || (from[0] - x) * (to[0] - x) > 0) return [];
    return [flatPoint<"px">(x, from[1] + ((x - from[0]) / (to[0] - from[0])) * (to[1] - from[1]))];
  })[0];
}

/** A point in five-hundredths of the distance of the outer eye corners, outwards and upwards. */
function alongAxes(
  [x, y]: Point<"px">,
  { leftwards, upwards }: EyeAxes,
  side: Side,
): readonly number[] {
  const square = leftwards[0] ** 2 + leftwards[1] ** 2;
  const left = (x * leftwards[0] + y * leftwards[1]) / square;
  return [side === "left" ? left : -left, (x * upwards[0] + y * upwards[1]) / square];
}

/**
 * The patterns in which the brow's errors vary most, each as long as one standard deviation of it, with
 * what goes together with them elsewhere. Patterns left out make the others so much longer that each
 * coordinate of the brow keeps its own deviation.
 */
function patternsOf(
  rows: readonly (readonly number[])[],
  { moved, count }: PatternShape,
): readonly (readonly number[])[] {
  const all = new Matrix(rows.map((row) => [...row]));
  const ofBrow = 2 * stationsOf("upper") * (moved.includes("lower") ? 2 : 1);
  const brow = all.subMatrix(0, rows.length - 1, 0, ofBrow - 1);
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(
    brow.transpose().mmul(brow),
    { assumeSymmetric: true },
  );
  const size = ofNextPerson(rows.length) / Math.sqrt(rows.length - 1);
  const largest = realEigenvalues.map((_, index) => index).reverse();
  const found = largest.slice(0, count).map((index) => {
    const scores = brow.mmul(eigenvectorMatrix.getColumnVector(index));
    const row = all.transpose().mmul(scores.div(scores.norm())).to1DArray();
    // A pattern is the same with the other sign: the one that raises the tail end stands for both.
    const sign = Math.sign(row[2 * stationsOf("upper") - 1] ?? 1);
    return row.map((value) => sign * size * value);
  });
  return found.map((row) =>
    row.map((value, at) => {
      if (at >= ofBrow) return value;
      const kept = Math.hypot(...found.map((other) => other[at] ?? 0));
      return (value / kept) * size * all.getColumnVector(at).norm();
    }),
  );
}

/**
 * How much farther off than one standard deviation of so many people the next one is taken to be: their
 * mean and their deviation are uncertain too (Student's t over the normal at 95 %, to first order).
 */
function ofNextPerson(people: number): number {
  return Math.sqrt(1 + 1 / people) * (1 + (1.96 ** 2 + 1) / (4 * (people - 1)));
}
