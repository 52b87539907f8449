import { type Skin } from "../../landmarks/index.js";
import { byRuler, numbersOf, POWERS } from "../../landmarks/internal.js";
import { intoSpace } from "../../symmetry/internal.js";
import { eachSide, type Measured, type Sides } from "../../units/index.js";
import { SIDES } from "../../units/internal.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { answersOf, dotsFor } from "./answers.js";
import { type GrownSide, readAnew, readGrown } from "./grown-side.js";
import {
  addEffects,
  fillFrom,
  ifAny,
  meanSlopes,
  rootOfSquares,
  type Row,
  slopesOf,
  zeros,
} from "./mean-slopes.js";
import { fillDots, fillEye, PLACED } from "./placed-row.js";
import { plannedReader } from "./read-placed.js";
import { fillMoves, type Move, MOVED, movesFrom } from "./moves.js";
import { BETWEEN, fillSide, READ, readingsFrom, type SideReadings } from "./reading-rows.js";
import { seenBy, type Variation } from "./variation.js";

// A plan is read in stages: from the face to what grows and to what it answers when dots are solved, from
// answers to dots, and from dots and the numbers of the skin to what is read on them. Slopes of all stages
// multiply. Only the first one has many inputs, one for each error of each point; the later ones hold the
// costly parts, solving and outlines. Numbers stand in rows, NaN is what does not exist.

/** One independent cause of error. */
export interface Cause {
  /** The face so many of its standard deviations away; absent where only the face space moves. */
  readonly faceAt?: (amount: number) => Variation;
  /** How far the face space moves besides: sideways and up, in mm, and by leaning, in radians. */
  readonly space?: Row;
}

/** What is read on the natural brows of a face and on those planned for it. */
export interface PlanReadings {
  readonly natural: SideReadings<Measured>;
  readonly planned: SideReadings<Measured>;
  /** What leads from one to the other. */
  readonly moves: readonly Move[];
}

/**
 * Reads a plan with the uncertainty of everything on it, by mean slopes over ± one standard deviation of
 * every cause; `Infinity` where a reading has no slope, since what it is read on ceases to exist.
 *
 * @param truth the face of the plan, with what is read on it only
 * @param causes what is uncertain; undefined where nobody asks how sure the readings are
 * @param grown whether the planned thickness is the hair's own, and as uncertain
 */
export function readPlan(
  plan: PlannedDots,
  truth: Variation,
  causes: readonly Cause[] | undefined,
  grown: boolean,
): PlanReadings {
  const own = eachSide((side) => readGrown(plan, side, truth, plan.natural[side]));
  const centre = zeros(ANSWERED);
  SIDES.forEach((side, index) => {
    fillSide(centre, side, own[side].reading);
    fillEye(centre, AT_PLACES + index * PLACED, truth.face[side]);
  });
  fillApart(centre, own, truth.skin);
  fillPlaced(centre, AT_PLACES, plan.dots);
  const readPlanned = plannedReader(plan);
  const placed = centre.slice(AT_PLACES, BY_PLACES);
  fillFrom(centre, BY_PLACES, readPlanned(placed));
  const readings = (effects: readonly Row[]): PlanReadings => ({
    natural: readingsFrom(centre, effects),
    planned: readingsFrom(centre, effects, BY_PLACES),
    moves: movesFrom(plan, centre.slice(MOVES), rootOfSquares(effects, 2 * MOVED, MOVES)),
  });
  if (causes === undefined) return readings([centre.map(() => Number.NaN)]);

  const answers = answersOf(plan, own, grown);
  for (const side of SIDES) answers.fill(centre, ANSWERED, own[side]);
  const answered = centre.slice(ANSWERED);
  const stateAt = (variation: Variation | undefined): Row => {
    if (variation === undefined) return centre.map(() => Number.NaN);
    const { face, skin, pins } = variation;
    const state = centre.slice();
    const hair = eachSide((side) => readAnew(plan, own[side], variation));
    // Where both sides move at once, answers one by one would leave no brow.
    const isSolved = SIDES.every((side) => hair[side].asks !== own[side].asks);
    SIDES.forEach((side, index) => {
      if (hair[side] === own[side]) return;
      fillSide(state, side, hair[side].reading);
      fillEye(state, AT_PLACES + index * PLACED, face[side]);
      const { brow } = face[side];
      if (brow !== truth.face[side].brow) {
        fillMoves(state, MOVES + index * MOVED, plan.dots[side], hair[side].natural.dots, brow);
      }
      const isAsked = hair[side].asks !== own[side].asks;
      if (isAsked && !isSolved) answers.fill(state, ANSWERED, hair[side]);
    });
    fillApart(state, hair, skin);
    if (isSolved) {
      fillPlaced(
        state,
        AT_PLACES,
        ifAny(() => dotsFor(plan, hair, skin, pins, grown)),
      );
    }
    return state;
  };
  const spaces = causes.map(({ space = IN_PLACE }) => space);
  const bySpace = slopesOf(
    ([x = 0, y = 0, lean = 0]) => stateAt(seenBy(intoSpace({ x, y, lean }), truth)),
    IN_PLACE,
    rootOfSquares(spaces, IN_PLACE.length),
    centre,
  );
  const effects = causes.map(({ faceAt }) =>
    faceAt === undefined
      ? zeros(centre.length)
      : meanSlopes((amount) => stateAt(ifAny(() => faceAt(amount))), centre),
  );
  addEffects(effects, 0, bySpace, spaces, 0);
  const placedBy = (answered: Row): Row => {
    const row = zeros(placed.length);
    fillPlaced(
      row,
      0,
      ifAny(() => answers.dotsBy(answered)),
    );
    return row;
  };
  const follow = (
    read: (row: Row) => Row,
    row: Row,
    from: number,
    to: number,
    atSkin = row.length,
  ): void => {
    // Numbers of a skin err together: by so much one by one they would bend it as no skin is bent.
    const steps = rootOfSquares(effects, row.length, from).map((step, index) =>
      index < atSkin ? step : step * SKIN_STEP,
    );
    addEffects(effects, to, slopesOf(read, row, steps), effects, from);
  };
  follow(placedBy, answered, ANSWERED, AT_PLACES);
  follow(readPlanned, placed, AT_PLACES, BY_PLACES, AT_SKIN - AT_PLACES);
  return readings(effects);
}

/** Of their standard deviation, by how much the numbers of a skin are moved; ours. */
const SKIN_STEP = 0.125;

/** A face space that lies where it was laid. */
const IN_PLACE: Row = [0, 0, 0];

// A row of the first stage: what is read on what grows; where dots and eyes lie, as far as that does not follow
// from what stands behind it, and how deep the skin; what is read there; how far planned borders lie from the
// hair's, likewise; and what the hair answers.
const AT_PLACES = READ;
const AT_SKIN = AT_PLACES + 2 * PLACED;
const BY_PLACES = AT_SKIN + POWERS.length;
const MOVES = BY_PLACES + READ;
const ANSWERED = MOVES + 2 * MOVED;

/** Writes what neither side has by itself: how far starts are apart, and how deep the skin lies. */
function fillApart(row: Row, { right, left }: Sides<GrownSide>, skin: Skin): void {
  const [from, to] = [right.natural.dots.upperStart, left.natural.dots.upperStart];
  row[BETWEEN] = byRuler(from, to, skin);
  fillFrom(row, AT_SKIN, numbersOf(skin));
}

/** Writes the dots of both sides into a row; they may not exist. */
function fillPlaced(row: Row, from: number, dots: PlannedDots["dots"] | undefined): void {
  SIDES.forEach((side, index) => {
    const start = from + index * PLACED;
    if (dots === undefined) row.fill(Number.NaN, start, start + PLACED);
    else fillDots(row, start, dots[side]);
  });
}
