import { heightOver } from "../../geometry/internal.js";
import {
  type BrowDots,
  type CompleteDots,
  type Dot,
  type FaceSide,
  landmarkUncertainty,
  lengthBetween,
  type Skin,
} from "../../landmarks/index.js";
import { DOT_NAMES } from "../../landmarks/internal.js";
import { naturalDots, type NaturalDots } from "../../proportions/index.js";
import { edgeOfDots, edgeOfHair, readSide, type SideReading } from "../../proportions/internal.js";
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
import type { Pin } from "../choices/choices.js";
import type { PlannableFace } from "../dots/plannable-face.js";
import type { PlannedDots } from "../dots/planned-dots.js";
import { grownThickness } from "../dots/settle-thickness.js";
import { solveDots } from "../dots/solve-dots.js";
import { edgeOfDrawn } from "./edge-of-drawn.js";
import { meanSlopes, rootOfSquares, type Row, slopesOf } from "./mean-slopes.js";
import { BETWEEN, fillSide, READ, readingsFrom, type SideReadings } from "./reading-rows.js";

// A plan is read in two stages: from the face to what grows and to the planned dots, and from those dots
// to what is read on them. Slopes of both stages multiply. The second has few inputs, however many points
// a border has, and it holds the costly part, the outlines. Numbers stand in rows, NaN is what does not
// exist.

/** A face as it may truly be, with its skin and the pins that were set on it. */
export interface Variation {
  readonly face: PlannableFace;
  readonly skin: Skin;
  readonly pins: readonly Pin[];
}

/** One independent cause of error: the face so many of its standard deviations away. */
export type Cause = (amount: number) => Variation;

/** What is read on the natural brows of a face and on those planned for it. */
export interface PlanReadings {
  readonly natural: SideReadings<Measured>;
  readonly planned: SideReadings<Measured>;
}

/**
 * Reads a plan with the uncertainty of everything on it, by mean slopes over ± one standard deviation of
 * every cause; `Infinity` where a reading has no slope, since what it is read on ceases to exist.
 *
 * @param causes what is uncertain; undefined where nobody asks how sure the readings are
 * @param grown whether the planned thickness is the hair's own, and as uncertain
 */
export function readPlan(
  plan: PlannedDots,
  causes: readonly Cause[] | undefined,
  grown: boolean,
): PlanReadings {
  const stateOf = stateReader(plan, grown);
  const readPlanned = plannedReader(plan);
  const centre = stateOf({ face: plan.face, skin: plan.skin, pins: plan.choices.pins });
  const placed = placedIn(centre);
  centre.set(readPlanned(placed, plan.skin), BY_SKIN);
  const readings = (natural: readonly Row[], planned: readonly Row[]): PlanReadings => ({
    natural: readingsFrom(centre, natural),
    planned: readingsFrom(centre.subarray(BY_SKIN), planned),
  });
  if (causes === undefined) {
    const unknown = [new Float64Array(READ).fill(Number.NaN)];
    return readings(unknown, unknown);
  }
  const effects = causes.map((cause) =>
    meanSlopes((amount) => {
      const variation = ifAny(() => cause(amount));
      const state = stateOf(variation);
      const skin = variation?.skin ?? plan.skin;
      const read = skin === plan.skin ? centre.subarray(BY_SKIN) : readPlanned(placed, skin);
      state.set(read, BY_SKIN);
      return state;
    }, centre),
  );
  const steps = rootOfSquares(effects.map(placedIn), placed.length);
  const columns = slopesOf((row) => readPlanned(row, plan.skin), placed, steps);
  const planned = effects.map((effect) =>
    throughPlaces(effect.slice(BY_SKIN), columns, placedIn(effect)),
  );
  return readings(
    effects.map((effect) => effect.subarray(0, READ)),
    planned,
  );
}

/** What planned readings follow from, on one side: its dots, the eye's outer corner, pupil and upper lid. */
const AFTER_DOTS: number = 2 * DOT_NAMES.length;
const PLACED: number = AFTER_DOTS + 4;

/** A row of the first stage: what grows, what planned readings follow from, and what the skin makes of them. */
const BY_SKIN = READ + 2 * PLACED;
const STATE = BY_SKIN + READ;

function placedIn(state: Row): Row {
  return state.subarray(READ, BY_SKIN);
}

/** The first stage: what grows, and what planned readings follow from, of a face as it may truly be. */
function stateReader(plan: PlannedDots, grown: boolean): (variation?: Variation) => Row {
  const own = eachSide((side) => readGrown(plan.face, side, plan.skin, plan.natural[side]));
  return (variation) => {
    const state = new Float64Array(STATE).fill(Number.NaN);
    if (variation === undefined) return state;
    const { face, skin } = variation;
    const hair = eachSide((side) => {
      const isOwn = face[side] === plan.face[side] && skin === plan.skin;
      return isOwn ? own[side] : readGrown(face, side, skin);
    });
    for (const side of SIDES) fillSide(state, side, hair[side].reading);
    const natural = eachSide((side) => hair[side].natural);
    state[BETWEEN] = lengthBetween(
      natural.right.dots.upperStart,
      natural.left.dots.upperStart,
      skin,
    );
    const dots = ifAny(() => solvedDots(plan, variation, natural, grown));
    if (dots === undefined) return state;
    SIDES.forEach((side, index) => {
      const from = READ + index * PLACED;
      fillDots(state.subarray(from), dots[side]);
      const { exocanthion, pupil, upperLid } = face[side];
      const lid = pupil && upperLid && heightOver(length<"mm">(pupil[0]), upperLid);
      state.set([exocanthion[0], exocanthion[1]], from + AFTER_DOTS);
      if (lid !== undefined) state.set([pupil?.[0] ?? 0, lid], from + AFTER_DOTS + 2);
    });
    return state;
  };
}

interface GrownSide {
  readonly natural: NaturalDots;
  readonly reading: SideReading;
}

function readGrown(face: PlannableFace, side: Side, skin: Skin, known?: NaturalDots): GrownSide {
  const { brow } = face[side];
  const natural = known ?? naturalDots(brow, { u: landmarkUncertainty(face, "brow") });
  const toRead = { side, landmarks: face[side], skin, edge: edgeOfHair(brow, skin) };
  return { natural, reading: readSide(natural.dots, toRead) };
}

/** The dots of a face as it may truly be, by the choices that the plan has settled. */
function solvedDots(
  { choices }: PlannedDots,
  { face, skin, pins }: Variation,
  natural: Sides<NaturalDots>,
  grown: boolean,
): PlannedDots["dots"] {
  const { lead, frontShare } = choices;
  const thickness = {
    ...choices.thickness,
    ...(grown ? grownThickness(face, natural, skin, lead, frontShare) : {}),
  };
  return solveDots(face, natural, skin, { ...choices, thickness, pins }).dots;
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
function plannedReader({ face, choices }: PlannedDots): (placed: Row, skin: Skin) => Row {
  return (placed, skin) => {
    const row = new Float64Array(READ);
    const starts = eachSide((side) => {
      const at = placed.subarray(side === "right" ? 0 : PLACED);
      const dots = dotsIn(at);
      const edge = edgeOfDrawn(dots, choices.shape, skin) ?? edgeOfDots(dots, skin);
      fillSide(row, side, readSide(dots, { side, landmarks: eyeIn(at, face[side]), skin, edge }));
      return dots.upperStart;
    });
    row[BETWEEN] = lengthBetween(starts.right, starts.left, skin);
    return row;
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

function fillDots(row: Row, dots: CompleteDots<"mm">): void {
  IN_ROW.forEach((dot, index) => {
    const [x, y] = dots[dot];
    const [fromX, fromY] = middleOf(LIES_FROM[dot], dots);
    row[2 * index] = x - fromX;
    row[2 * index + 1] = y - fromY;
  });
}

function dotsIn(row: Row): CompleteDots<"mm"> {
  const dots: { [Name in Dot]?: Point<"mm"> } = {};
  IN_ROW.forEach((dot, index) => {
    const [x, y] = placeIn(row, 2 * index);
    const [fromX, fromY] = middleOf(LIES_FROM[dot], dots);
    dots[dot] = flatPoint(x + fromX, y + fromY);
  });
  return dots as CompleteDots<"mm">;
}

function middleOf(names: readonly Dot[], dots: BrowDots<"mm">): Point<"mm"> {
  const places = names.map((name) => dots[name] as Point<"mm">);
  const mean = (axis: 0 | 1): number =>
    places.reduce((sum, place) => sum + place[axis] / places.length, 0);
  return flatPoint(mean(0), mean(1));
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

/** Adds to a row what a cause does to the planned readings through the places of the dots. */
function throughPlaces(row: Row, columns: readonly (Row | undefined)[], placed: Row): Row {
  columns.forEach((column, index) => {
    const by = placed[index] as number;
    if (column === undefined || by === 0) return;
    column.forEach((slope, at) => {
      // What does not depend on a place does not mind that nothing is known of it.
      if (slope !== 0) row[at] = (row[at] as number) + slope * by;
    });
  });
  return row;
}
