import type { BrowDots, Dot, FaceMeasures, SideMeasures } from "../../landmarks/index.js";
import { DOT_NAMES, MEASURES_ON_BORDERS, PLACED_DOTS } from "../../landmarks/internal.js";
import { measureFace, type OutlineDots } from "../../proportions/index.js";
import {
  eachSide,
  flatPoint,
  type Length,
  type Measured,
  type MeasuredPoint,
  type Point,
  propagate,
  type Side,
  type Sides,
} from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import {
  outlineIfAny,
  rowOf,
  type SideReadings,
  withDifferences,
  withUncertainties,
} from "../plan/plan-readings.js";
import type { BrowPlan } from "../plan/plan.js";

/** The name of one dot of one side among the inputs of an uncertainty calculation. */
type DotInput = `${Side} ${Dot}`;

/** Reads drawn dots, only their places uncertain: the face is the plan's, and its errors fall out of differences. */
export function readDrawn(
  dots: Sides<BrowDots<"mm">>,
  u: Length<"mm">,
  { face, skin, choices }: BrowPlan,
): SideReadings<Measured> {
  const read = (of: Sides<BrowDots<"mm">>): SideReadings<number> => {
    const drawn = eachSide((side) =>
      isWhole(of[side]) ? outlineIfAny(of[side], choices.shape) : undefined,
    );
    const measures = measureFace(of, face, skin, drawn);
    return withDifferences({
      ...measures,
      ...eachSide((side) =>
        drawn[side] === undefined ? withoutOutline(measures[side]) : measures[side],
      ),
    });
  };
  const inputs: Partial<Record<DotInput, MeasuredPoint<"mm">>> = {};
  for (const side of SIDES) {
    for (const dot of DOT_NAMES) {
      const at = dots[side][dot];
      if (at !== undefined) inputs[`${side} ${dot}`] = { value: flatPoint(at[0], at[1]), u };
    }
  }
  const { u: uncertainties } = propagate(
    (places: { readonly [Name in DotInput]?: Point<"mm"> }) =>
      rowOf({ drawn: read(eachSide((side) => dotsOf(side, places))) }),
    inputs as Record<DotInput, MeasuredPoint<"mm">>,
    { linearity: "assumed" },
  );
  return withUncertainties({ drawn: read(dots) }, uncertainties).drawn;
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

function dotsOf(side: Side, places: { readonly [Name in DotInput]?: Point<"mm"> }): BrowDots<"mm"> {
  const dots: { [Name in Dot]?: Point<"mm"> } = {};
  for (const dot of DOT_NAMES) {
    const at = places[`${side} ${dot}`];
    if (at !== undefined) dots[dot] = at;
  }
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
