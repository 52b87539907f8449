import { heightOver } from "../../geometry/internal.js";
import {
  type BrowDots,
  type CompleteDots,
  type Dot,
  type FaceSide,
  GUIDES,
  lengthBetween,
  type SideLandmark,
  type Skin,
} from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import type { NaturalDots } from "../../proportions/index.js";
import {
  dotsAnew,
  edgeOfDots,
  edgeOfHair,
  readFromEye,
  readSide,
  type SideReading,
  type SideToRead,
} from "../../proportions/internal.js";
import {
  deepPoint,
  eachSide,
  flatPoint,
  GeometryError,
  hasDepth,
  length,
  type Measured,
  type Point,
  type Side,
  type Sides,
} from "../../units/index.js";
import { keysOf, SIDES } from "../../units/internal.js";
import { intoSpace } from "../../symmetry/internal.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { grownThickness, plannedThickness } from "../dots/settle-thickness.js";
import { asksOf, type SideAsks, solveDots } from "../dots/solve-dots.js";
import { edgeOfDrawn } from "./edge-of-drawn.js";
import { meanSlopes, rootOfSquares, type Row, slopesOf, zeros } from "./mean-slopes.js";
import { seenBy, type Variation } from "./variation.js";
import { BETWEEN, fillSide, READ, readingsFrom, type SideReadings } from "./reading-rows.js";

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

/** What planned readings follow from, on one side: its dots, the eye's outer corner, pupil and upper lid. */
const AFTER_DOTS: number = 2 * DOT_NAMES.length;
const PLACED: number = AFTER_DOTS + 4;

/** A row of the first stage: what grows, what planned readings follow from, and what the skin makes of them. */
const BY_SKIN = READ + 2 * PLACED;
const STATE = BY_SKIN + READ;

function fillFrom(row: Row, start: number, part: Row): void {
  for (let index = 0; index < part.length; index += 1) row[start + index] = part[index] as number;
}

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
      if (isAnew(side)) fillFrom(state, start + AFTER_DOTS, eyeOf(face[side]));
    });
    return state;
  };
}

/** What planned readings follow from beside the dots. */
function eyeOf({ exocanthion, pupil, upperLid }: PlannableFace["left"]): Row {
  const lid = pupil && upperLid && heightOver(length<"mm">(pupil[0]), upperLid);
  const [x, y] =
    pupil === undefined || lid === undefined ? [Number.NaN, Number.NaN] : [pupil[0], lid];
  return [exocanthion[0], exocanthion[1], x, y];
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

/** What a question answers; nothing where geometry has no answer for a face that is a little different. */
function ifAny<Answer>(question: () => Answer): Answer | undefined {
  try {
    return question();
  } catch (error) {
    // What is missing is missing whichever way the face varies.
    if (error instanceof GeometryError && error.code !== "missing-landmark") return undefined;
    throw error;
  }
}

/** The second stage: what is read on planned dots, the eyes beside them being where the row has them. */
function plannedReader(plan: PlannedDots): (placed: Row, skin: Skin) => Row {
  const readers = eachSide((side) => plannedSideReader(plan, side));
  return (placed, skin) => {
    const row = zeros(READ);
    const [right, left] = [
      readers.right(placed.slice(0, PLACED), skin),
      readers.left(placed.slice(PLACED), skin),
    ];
    fillSide(row, "right", right.reading);
    fillSide(row, "left", left.reading);
    row[BETWEEN] = lengthBetween(right.start, left.start, skin);
    return row;
  };
}

interface PlannedSide {
  readonly start: Point<"mm">;
  readonly reading: SideReading;
}

/** Reads one side, once for the same dots in a row: of two sides one moves at a time. */
function plannedSideReader(
  { face, choices }: PlannedDots,
  side: Side,
): (at: Row, skin: Skin) => PlannedSide {
  let last: (PlannedSide & { readonly at: Row; readonly skin: Skin }) | undefined;
  return (at, skin) => {
    const isSame =
      last?.skin === skin && at.every((value, index) => Object.is(value, last?.at[index]));
    if (last !== undefined && isSame) return last;
    const dots = dotsIn(at);
    const edge = edgeOfDrawn(dots, choices.shape, skin) ?? edgeOfDots(dots, skin);
    const reading = readSide(dots, { side, landmarks: eyeIn(at, face[side]), skin, edge });
    last = { at, skin, start: dots.upperStart, reading };
    return last;
  };
}

/**
 * Each dot stands in a row by how it lies from the middle of others: so that dots moved one by one still
 * make a brow.
 */
const LIES_FROM: { readonly [Name in Dot]: readonly Dot[] } = {
  upperStart: [],
  upperArch: [],
  tailEnd: [],
  upperBody: ["upperStart", "upperArch"],
  lowerStart: ["upperStart"],
  lowerBody: ["upperBody"],
  lowerArch: ["upperArch"],
};
const IN_ROW = keysOf(LIES_FROM);

function fillDots(row: Row, start: number, dots: CompleteDots<"mm">): void {
  for (let index = 0; index < IN_ROW.length; index += 1) {
    const dot = IN_ROW[index] as Dot;
    const [x, y] = dots[dot];
    const [fromX, fromY] = middleOf(LIES_FROM[dot], dots);
    row[start + 2 * index] = x - fromX;
    row[start + 2 * index + 1] = y - fromY;
  }
}

function dotsIn(row: Row): CompleteDots<"mm"> {
  const dots: { [Name in Dot]?: Point<"mm"> } = {};
  for (let index = 0; index < IN_ROW.length; index += 1) {
    const dot = IN_ROW[index] as Dot;
    const [x, y] = placeIn(row, 2 * index);
    const [fromX, fromY] = middleOf(LIES_FROM[dot], dots);
    dots[dot] = flatPoint(x + fromX, y + fromY);
  }
  return dots as CompleteDots<"mm">;
}

function middleOf(names: readonly Dot[], dots: BrowDots<"mm">): Point<"mm"> {
  let [x, y] = [0, 0];
  for (const name of names) {
    const place = dots[name] as Point<"mm">;
    x += place[0] / names.length;
    y += place[1] / names.length;
  }
  return flatPoint(x, y);
}

function placeIn(row: Row, index: number): Point<"mm"> {
  return flatPoint(row[index] as number, row[index + 1] as number);
}

/** The eye of a side with its corner and its lid elsewhere; the lid is level as far as it is read. */
function eyeIn(placed: Row, { exocanthion }: PlannableFace["left"]): FaceSide<"mm"> {
  const [outer, height] = placeIn(placed, AFTER_DOTS);
  // How deep the corner lies is known apart from where it is seen.
  const corner = hasDepth(exocanthion)
    ? deepPoint<"mm">(outer, height, exocanthion[2])
    : flatPoint<"mm">(outer, height);
  const [x, lid] = placeIn(placed, AFTER_DOTS + 2);
  if (Number.isNaN(lid)) return { exocanthion: corner };
  const upperLid = [flatPoint<"mm">(x - 1, lid), flatPoint<"mm">(x + 1, lid)];
  return { exocanthion: corner, pupil: flatPoint(x, lid), upperLid };
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
