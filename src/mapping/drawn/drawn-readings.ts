import type { BrowDots, Dot, FaceMeasures, SideMeasures } from "../../landmarks/index.js";
import { DOT_NAMES, MEASURES_ON_BORDERS, PLACED_DOTS } from "../../landmarks/internal.js";
import { measureFace, type OutlineDots } from "../../proportions/index.js";
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
import type { BrowPlan } from "../plan/plan.js";
import {
  outlineIfAny,
  type SideReadings,
  withDifferences,
  withUncertainties,
} from "../plan/plan-readings.js";
import { type Row, rowOfMeasures, slopesOf, uncertainties } from "../plan/reading-rows.js";

/** Reads drawn dots, only their places uncertain: the face is the plan's, and its errors fall out of differences. */
export function readDrawn(
  dots: Sides<BrowDots<"mm">>,
  u: Length<"mm">,
  { face, skin, choices }: BrowPlan,
): SideReadings<Measured> {
  const read = (of: Sides<BrowDots<"mm">>): FaceMeasures<number> => {
    const drawn = eachSide((side) =>
      isWhole(of[side]) ? outlineIfAny(of[side], choices.shape) : undefined,
    );
    const measures = measureFace(of, face, skin, drawn);
    return {
      ...measures,
      ...eachSide((side) =>
        drawn[side] === undefined ? withoutOutline(measures[side]) : measures[side],
      ),
    };
  };
  const places = rowOfDots(dots);
  const columns = slopesOf(
    (row) => rowOfMeasures(read(eachSide((side) => dotsOf(side, row)))),
    places,
    places.map(() => u * AT_CENTRE),
  );
  const effects = columns.flatMap((column) => (column ? [column.map((slope) => slope * u)] : []));
  const readings = { drawn: withDifferences(read(dots)) };
  return withUncertainties(readings, uncertainties("drawn", effects)).drawn;
}

/** A step for slopes at the centre: small against the bends of an outline, large against rounding. */
const AT_CENTRE = 2 ** -10;

/** Where the dots of both brows lie, in the order of their names; NaN for a dot that was not drawn. */
function rowOfDots(dots: Sides<BrowDots<"mm">>): Row {
  return Float64Array.from(
    SIDES.flatMap((side) =>
      DOT_NAMES.flatMap((dot) => dots[side][dot]?.slice(0, 2) ?? [Number.NaN, Number.NaN]),
    ),
  );
}

/** Whether every dot is known that an outline needs. */
function isWhole(dots: BrowDots<"mm">): dots is OutlineDots {
  return PLACED_DOTS.every((dot) => dots[dot] !== undefined);
}

/** Leaves out what a plan reads on its outline, where what was drawn has none to compare. */
function withoutOutline(measures: SideMeasures<number>): SideMeasures<number> {
  const onDots = Object.entries(measures).filter(
    ([name]) => !MEASURES_ON_BORDERS.some((onBorders) => onBorders === name),
  );
  return Object.fromEntries(onDots);
}

function dotsOf(side: Side, places: Row): BrowDots<"mm"> {
  const dots: { [Name in Dot]?: Point<"mm"> } = {};
  const first = side === "right" ? 0 : 2 * DOT_NAMES.length;
  DOT_NAMES.forEach((dot, index) => {
    const [x, y] = places.subarray(first + 2 * index) as unknown as readonly [number, number];
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
