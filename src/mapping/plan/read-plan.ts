import { GUIDES, lengthBetween, type SideLandmark } from "../../landmarks/index.js";
import type { NaturalDots } from "../../proportions/index.js";
import {
  dotsAnew,
  edgeOfHair,
  readFromEye,
  readSide,
  type SideReading,
  type SideToRead,
} from "../../proportions/internal.js";
import { intoSpace } from "../../symmetry/internal.js";
import { eachSide, type Measured, type Side, type Sides } from "../../units/index.js";
import { keysOf, SIDES, unlessRefused } from "../../units/internal.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { grownThickness, plannedThickness } from "../dots/settle-thickness.js";
import { asksOf, type SideAsks, solveDots } from "../dots/solve-dots.js";
import { fillFrom, meanSlopes, rootOfSquares, type Row, slopesOf, zeros } from "./mean-slopes.js";
import { fillDots, fillEye, PLACED } from "./placed-row.js";
import { plannedReader } from "./read-placed.js";
import { BETWEEN, fillSide, READ, readingsFrom, type SideReadings } from "./reading-rows.js";
import { seenBy, type Variation } from "./variation.js";

// A plan is read in two stages: from the face to what grows and to the planned dots, and from those dots
// to what is read on them. Slopes of both stages multiply. The second has few inputs, however many points
// a border has, and it holds the costly part, the outlines. Numbers stand in rows, NaN is what does not
// exist.

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
  const stateOf = stateReader(plan, truth, grown);
  const readPlanned = plannedReader(plan);
  const centre = stateOf(truth, new Array<number>(STATE).fill(Number.NaN));
  const placed = placedIn(centre);
  fillFrom(centre, BY_SKIN, readPlanned(placed, plan.skin));
  const readings = (natural: readonly Row[], planned: readonly Row[]): PlanReadings => ({
    natural: readingsFrom(centre, natural),
    planned: readingsFrom(centre.slice(BY_SKIN), planned),
  });
  if (causes === undefined) {
    const unknown = [new Array<number>(READ).fill(Number.NaN)];
    return readings(unknown, unknown);
  }
  const stateAt = (variation: Variation | undefined): Row => {
    if (variation === undefined) return centre.map(() => Number.NaN);
    const state = stateOf(variation, centre.slice());
    const { skin } = variation;
    if (skin !== plan.skin) fillFrom(state, BY_SKIN, readPlanned(placed, skin));
    return state;
  };
  const spaces = causes.map(({ space = IN_PLACE }) => space);
  const bySpace = slopesOf(
    ([x = 0, y = 0, lean = 0]) => stateAt(seenBy(intoSpace({ x, y, lean }), truth)),
    IN_PLACE,
    rootOfSquares(spaces, IN_PLACE.length),
  );
  const effects = causes.map(({ faceAt, space = IN_PLACE }) => {
    const effect =
      faceAt === undefined
        ? zeros(STATE)
        : meanSlopes((amount) => stateAt(ifAny(() => faceAt(amount))), centre);
    return addEffects(effect, bySpace, space);
  });
  const steps = rootOfSquares(effects.map(placedIn), placed.length);
  const byPlaces = slopesOf((row) => readPlanned(row, plan.skin), placed, steps);
  const planned = effects.map((effect) =>
    addEffects(effect.slice(BY_SKIN), byPlaces, placedIn(effect)),
  );
  return readings(
    effects.map((effect) => effect.slice(0, READ)),
    planned,
  );
}

/** A face space that lies where it was laid. */
const IN_PLACE: Row = [0, 0, 0];

/** A row of the first stage: what grows, what planned readings follow from, and what the skin makes of them. */
const BY_SKIN = READ + 2 * PLACED;
const STATE = BY_SKIN + READ;

function placedIn(state: Row): Row {
  return state.slice(READ, BY_SKIN);
}

/**
 * The first stage: what grows, and what planned readings follow from, of a face as it may truly be. What is
 * the same as on the plan's face is not read again.
 */
function stateReader(
  plan: PlannedDots,
  truth: Variation,
  grown: boolean,
): (variation: Variation, state: Row) => Row {
  const own = eachSide((side) => readGrown(plan, side, truth, plan.natural[side]));
  return (variation, state) => {
    const { face, skin, pins } = variation;
    const hair = eachSide((side) => {
      const [known, landmarks] = [own[side], face[side]];
      if (skin !== truth.skin || landmarks.brow !== truth.face[side].brow) {
        return readGrown(plan, side, variation, dotsAnew(landmarks.brow, plan.natural[side]));
      }
      return landmarks === known.toRead.landmarks ? known : readAgain(plan, known, variation);
    });
    const isAnew = (side: Side): boolean => hair[side] !== own[side] || variation === truth;
    for (const side of SIDES) if (isAnew(side)) fillSide(state, side, hair[side].reading);
    const [from, to] = [hair.right.natural.dots.upperStart, hair.left.natural.dots.upperStart];
    state[BETWEEN] = lengthBetween(from, to, skin);
    const isOwn = pins === truth.pins && SIDES.every((side) => hair[side].asks === own[side].asks);
    const dots = isOwn ? plan.dots : ifAny(() => solvedDots(plan, variation, hair, grown));
    SIDES.forEach((side, index) => {
      const start = READ + index * PLACED;
      if (dots === undefined) {
        state.fill(Number.NaN, start, start + PLACED);
        return;
      }
      if (!isOwn || variation === truth) fillDots(state, start, dots[side]);
      if (isAnew(side)) fillEye(state, start, face[side]);
    });
    return state;
  };
}

/** What grows on one side, and what it asks for. */
interface GrownSide {
  readonly natural: NaturalDots;
  readonly toRead: SideToRead & { readonly landmarks: PlannableFace["left"] };
  readonly reading: SideReading;
  readonly asks: SideAsks;
}

function readGrown(
  { choices }: PlannedDots,
  side: Side,
  { face, skin }: Variation,
  natural: NaturalDots,
): GrownSide {
  const landmarks = face[side];
  const toRead = { side, landmarks, skin, edge: edgeOfHair(landmarks.brow, skin) };
  const asks = asksOf(face, side, natural, choices);
  return { natural, toRead, reading: readSide(natural.dots, toRead), asks };
}

/** Reads a side again whose hair is the same, and some of whose other landmarks are not. */
function readAgain(
  { choices }: PlannedDots,
  { natural, toRead: known, reading, asks }: GrownSide,
  { face }: Variation,
): GrownSide {
  const { side } = known;
  const landmarks = face[side];
  const toRead = { ...known, landmarks };
  const isGuided = GUIDING.some((name) => landmarks[name] !== known.landmarks[name]);
  return {
    natural,
    toRead,
    reading: { ...reading, ...readFromEye(natural.dots, toRead) },
    asks: isGuided ? asksOf(face, side, natural, choices) : asks,
  };
}

/** Landmarks that guides run through. */
const GUIDING: readonly SideLandmark[] = /* @__PURE__ */ (() =>
  keysOf(GUIDES).flatMap((guide): readonly SideLandmark[] => GUIDES[guide].through))();

/** The dots of a face as it may truly be, by the choices that the plan has settled. */
function solvedDots(
  { choices }: PlannedDots,
  { face, skin, pins }: Variation,
  hair: Sides<GrownSide>,
  grown: boolean,
): PlannedDots["dots"] {
  const { lead, frontShare } = choices;
  const [natural, asks] = [
    eachSide((side) => hair[side].natural),
    eachSide((side) => hair[side].asks),
  ];
  const thickness = grown
    ? plannedThickness(face, grownThickness(face, natural, skin, lead, frontShare))
    : choices.thickness;
  return solveDots(asks, skin, { ...choices, thickness, pins }).dots;
}

/** Adds to a row what comes of moving by so much each of what it follows from. */
function addEffects(row: Row, columns: readonly (Row | undefined)[], moves: Row): Row {
  columns.forEach((column, index) => {
    const by = moves[index] as number;
    if (column === undefined || by === 0) return;
    for (let at = 0; at < row.length; at += 1) {
      const slope = column[at] as number;
      // What does not depend on a place does not mind that nothing is known of it.
      if (slope !== 0) row[at] = (row[at] as number) + slope * by;
    }
  });
  return row;
}

/** What a question answers; nothing where geometry has no answer for a face that is a little different. */
function ifAny<Answer>(question: () => Answer): Answer | undefined {
  // What is missing is missing whichever way the face varies.
  return unlessRefused(question, (code) => code !== "missing-landmark");
}
