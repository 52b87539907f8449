import { type BrowDots, type Dot, type FaceMeasures } from "../../landmarks/index.js";
import { byRuler, DOT_NAMES, MEASURES_ON_BORDERS, PLACED_DOTS } from "../../landmarks/internal.js";
import type { OutlineDots } from "../../proportions/index.js";
import { edgeOfDots, readSide, type SideReading } from "../../proportions/internal.js";
import {
  eachSide,
  flatPoint,
  type Length,
  type Measured,
  type Point,
  type Side,
  type Sides,
} from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import { edgeOfDrawn } from "../plan/edge-of-drawn.js";
import { isAlike, type Row, slopesOf, zeros } from "../plan/mean-slopes.js";
import type { BrowPlan } from "../plan/plan.js";
import { BETWEEN, fillSide, READ, readingsFrom, type SideReadings } from "../plan/reading-rows.js";

/** Reads drawn dots, only their places uncertain: the face is the plan's, and its errors fall out of differences. */
export function readDrawn(
  dots: Sides<BrowDots<"mm">>,
  u: Length<"mm">,
  plan: BrowPlan,
): SideReadings<Measured> {
  const readers = eachSide((side) => drawnReader(plan, side));
  const read = (places: Row): Row => {
    const row = zeros(READ);
    const right = readers.right(places.slice(0, PLACES));
    const left = readers.left(places.slice(PLACES));
    fillSide(row, "right", right.reading);
    fillSide(row, "left", left.reading);
    row[BETWEEN] =
      right.start && left.start ? byRuler(right.start, left.start, plan.skin) : Number.NaN;
    return row;
  };
  const places = rowOfDots(dots);
  const steps = places.map(() => u * AT_CENTRE);
  const columns = slopesOf(read, places, steps);
  const effects = columns.flatMap((column) => (column ? [column.map((slope) => slope * u)] : []));
  return readingsFrom(read(places), effects);
}

/** What is read on one side, and where its brow starts. */
interface DrawnReading {
  readonly at: Row;
  readonly start: Point<"mm"> | undefined;
  readonly reading: SideReading;
}

/** Reads one side, once for the same dots in a row: of two sides one moves at a time. */
function drawnReader({ face, skin, choices }: BrowPlan, side: Side): (at: Row) => DrawnReading {
  let last: DrawnReading | undefined;
  return (at) => {
    if (last !== undefined && isAlike(at, last.at, PLACES)) return last;
    const dots = dotsIn(at);
    const drawn = isWhole(dots) ? edgeOfDrawn(dots, choices.shape, skin) : undefined;
    const edge = drawn ?? edgeOfDots(dots, skin);
    const reading = readSide(dots, { side, landmarks: face[side], skin, edge });
    const told = drawn === undefined ? withoutOutline(reading) : reading;
    last = { at, start: dots.upperStart, reading: told };
    return last;
  };
}

/** A step for slopes at the centre: small against the bends of an outline, large against rounding. */
const AT_CENTRE = 2 ** -10;

/** How many numbers the dots of one side are. */
const PLACES: number = 2 * DOT_NAMES.length;

/** Where the dots of both brows lie, in the order of their names; NaN for a dot that was not drawn. */
function rowOfDots(dots: Sides<BrowDots<"mm">>): Row {
  return SIDES.flatMap((side) =>
    DOT_NAMES.flatMap((dot) => dots[side][dot]?.slice(0, 2) ?? [Number.NaN, Number.NaN]),
  );
}

/** Whether every dot is known that an outline needs. */
function isWhole(dots: BrowDots<"mm">): dots is OutlineDots {
  return PLACED_DOTS.every((dot) => dots[dot] !== undefined);
}

/** Leaves out what a plan reads on its outline, where what was drawn has none to compare. */
function withoutOutline(reading: SideReading): SideReading {
  const onDots: { -readonly [Name in keyof SideReading]: SideReading[Name] } = { ...reading };
  for (const name of MEASURES_ON_BORDERS) onDots[name] = undefined;
  return onDots;
}

function dotsIn(at: Row): BrowDots<"mm"> {
  const dots: { [Name in Dot]?: Point<"mm"> } = {};
  DOT_NAMES.forEach((dot, index) => {
    const [x, y] = [at[2 * index] as number, at[2 * index + 1] as number];
    if (!Number.isNaN(x)) dots[dot] = flatPoint(x, y);
  });
  return dots;
}

/** Readings by hand beside those of the dots: where both are known, the hand's count. */
export function readingsOver(
  hand: FaceMeasures<Measured>,
  dots: FaceMeasures<Measured>,
): FaceMeasures<Measured> {
  return {
    ...dots,
    ...hand,
    right: { ...dots.right, ...hand.right },
    left: { ...dots.left, ...hand.left },
  };
}
