import { type Dot, DOTS, type MeasureName } from "../../landmarks/index.js";
import { placeOnSide } from "../../symmetry/index.js";
import { type Length, length, type Measured, mm, otherSide, type Side } from "../../units/index.js";
import { fill, requireFinite } from "../../units/internal.js";
import { inHalves } from "../choices/half-millimetres.js";
import {
  ARCH_REASONS,
  LEVEL_REASONS,
  START_REASONS,
  TAIL_REASONS,
  THICKNESS_REASONS,
} from "../dots/words.js";
import type { BrowPlan } from "../plan/plan.js";
import { WAYS } from "../plan/words.js";
import type { RulerCheck, WorkStage, WorkStep } from "./step.js";
import { RULED, STEPS, WHY } from "./words.js";

/** Options of {@link workSteps}. */
export interface WorkOptions {
  /**
   * What the ruler shows at the point it is laid to first: 0 where its scale begins at its very end,
   * 2 mm, say, where the end is blank. Default 0.
   */
  readonly rulerZero?: Length<"mm">;
}

/**
 * A plan as a list of things to do, in the order in which an artist works: levels, starts, arches,
 * tail ends, upper borders, thickness, lower borders, and every distance once more, upright. Each
 * says how far and which way, why, and which reading of a ruler checks it.
 *
 * @throws GeometryError `not-finite` for the ruler's zero
 *
 * @example
 * ```ts
 * import { mm, planBrows, type PlannableFace, workSteps } from "brow-geometry";
 * const side = (sign: 1 | -1, up: number) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: [mm([sign * 15, 20 + up]), mm([sign * 38, 27 + up]), mm([sign * 57, 18 + up])] },
 * });
 * const face: PlannableFace = { right: side(-1, 0), left: side(1, 3), midline: {} };
 * const [first] = workSteps(planBrows(face, { lead: "left" }), { rulerZero: mm(2) });
 * first?.text; // → "right start: up 3.5 mm"
 * first?.check; // → { from: "level of the inner eye corners, square to the midline", to: "start", reading: 25.6 }
 * ```
 */
export function workSteps(plan: BrowPlan, options: WorkOptions = {}): readonly WorkStep[] {
  const zero = options.rulerZero ?? mm(0);
  requireFinite("workSteps", "rulerZero", zero);
  const steps = STAGES.flatMap((stepsOn) => SIDES.flatMap((side) => stepsOn(plan, side)));
  return steps.map(({ check, ...step }) =>
    check === undefined
      ? step
      : { ...step, check: { ...check, reading: length(check.reading + zero) } },
  );
}

const SIDES = ["right", "left"] as const;

/** Distances that are read once more at the end, by the names of what they lie between. */
const FINAL_READINGS = [
  ["front", RULED.start, RULED.arch],
  ["tail", RULED.arch, RULED["tail-end"]],
  ["exocanthionToTailEnd", RULED["outer-eye-corner"], RULED["tail-end"]],
] as const;

type StageSteps = (plan: BrowPlan, side: Side) => readonly WorkStep[];

const STAGES: readonly StageSteps[] = [
  (plan, side) => [
    upDown(
      "levels",
      plan,
      side,
      "upperStart",
      check(plan, side, "startHeight", RULED.level, RULED.start),
    ),
    upDown(
      "levels",
      plan,
      side,
      "upperArch",
      check(plan, side, "archHeight", RULED.level, RULED.arch),
    ),
  ],
  (plan, side) => [across("starts", plan, side, "upperStart", betweenStarts(plan, side))],
  (plan, side) => [
    across("arches", plan, side, "upperArch", check(plan, side, "front", RULED.start, RULED.arch)),
  ],
  (plan, side) => [
    upDown(
      "tail-ends",
      plan,
      side,
      "tailEnd",
      check(plan, side, "exocanthionToTailEnd", RULED["outer-eye-corner"], RULED["tail-end"]),
    ),
    across(
      "tail-ends",
      plan,
      side,
      "tailEnd",
      check(plan, side, "tail", RULED.arch, RULED["tail-end"]),
    ),
  ],
  (plan, side) => [
    still(
      "upper-borders",
      side,
      fill(STEPS["upper-border"], { side }),
      WHY.joined,
      check(plan, side, "frontAlong", RULED["start-by-tape"], RULED.arch),
    ),
  ],
  (plan, side) => [
    thick(plan, side, "startThickness", "lowerStart", "start"),
    thick(plan, side, "bodyThickness", "lowerBody", "body"),
    thick(plan, side, "archThickness", "lowerArch", "arch"),
  ],
  (plan, side) => [
    still(
      "lower-borders",
      side,
      fill(STEPS["lower-border"], { side }),
      WHY.joined,
      check(plan, side, "lidToBrow", RULED.lid, RULED["lower-border"]),
    ),
  ],
  (plan, side) =>
    FINAL_READINGS.flatMap(([measure, from, to]) => {
      const read = check(plan, side, measure, from, to);
      if (read === undefined) return [];
      const text = fill(STEPS.again, { side, from, to });
      return [still("check-upright", side, text, WHY.checked, read)];
    }),
];

type PlacingStage = keyof typeof REASONS_OF;

/** The step that moves a dot up or down. */
function upDown(
  stage: PlacingStage,
  plan: BrowPlan,
  side: Side,
  dot: Dot,
  read: RulerCheck | undefined,
): WorkStep {
  return moved(stage, plan, side, dot, read, "up");
}

/** The step that moves a dot away from the midline or towards it. */
function across(
  stage: PlacingStage,
  plan: BrowPlan,
  side: Side,
  dot: Dot,
  read: RulerCheck | undefined,
): WorkStep {
  return moved(stage, plan, side, dot, read, "outward");
}

/** Both ways along an axis, and what is said of a dot that stays or is placed there. */
const AXES = {
  up: { ways: ["up", "down"], place: "place-up" },
  outward: { ways: ["outward", "inward"], place: "place-across" },
} as const;

function moved(
  stage: PlacingStage,
  plan: BrowPlan,
  side: Side,
  dot: Dot,
  read: RulerCheck | undefined,
  axis: keyof typeof AXES,
): WorkStep {
  const {
    ways: [positive, negative],
    place,
  } = AXES[axis];
  const move = plan.moves.find((one) => one.side === side && one.dot === dot);
  const why = whyOf(plan, side, dot, stage);
  const name = { side, dot: DOTS[dot].words };
  if (move?.kind !== "move" && move?.kind !== "stay") {
    const { distance, height } = placeOnSide(plan.dots[side][dot], side);
    const at = { distance: inHalves(distance), height: inHalves(height) };
    return still(stage, side, fill(STEPS[place], { ...name, ...at }), why, read);
  }
  const by = move[axis];
  const amount = inHalves(Math.abs(by));
  if (amount === 0) {
    const stays = fill(STEPS.stay, { ...name, one: positive, other: negative });
    return still(stage, side, stays, why, read);
  }
  const direction = by > 0 ? positive : negative;
  const text = fill(STEPS.move, { ...name, way: fill(WAYS[direction], { by: amount }) });
  return withCheck({ stage, side, amount: mm(amount), direction, text, why }, read);
}

function thick(
  plan: BrowPlan,
  side: Side,
  measure: MeasureName,
  lower: Dot,
  station: string,
): WorkStep {
  const from = fill(RULED.upper, { station });
  const read = check(plan, side, measure, from, fill(RULED.lower, { station }));
  const text =
    read === undefined
      ? fill(STEPS["thickness-unknown"], { side, station })
      : fill(STEPS.thickness, { side, station, thickness: inHalves(read.reading) });
  return still("thickness", side, text, whyOf(plan, side, lower, "thickness"), read);
}

function still(
  stage: WorkStage,
  side: Side,
  text: string,
  why: string,
  read: RulerCheck | undefined,
): WorkStep {
  return withCheck({ stage, side, amount: mm(0), direction: "none", text, why }, read);
}

function withCheck(step: Omit<WorkStep, "check">, read: RulerCheck | undefined): WorkStep {
  return read === undefined ? step : { ...step, check: read };
}

function check(
  plan: BrowPlan,
  side: Side,
  measure: MeasureName,
  from: string,
  to: string,
): RulerCheck | undefined {
  return readingBetween(from, to, plan.measures[side][measure]);
}

function betweenStarts(plan: BrowPlan, side: Side): RulerCheck | undefined {
  const from = fill(RULED["other-start"], { side: otherSide(side) });
  return readingBetween(from, RULED.start, plan.measures.startToStart);
}

function readingBetween(
  from: string,
  to: string,
  planned: Measured | undefined,
): RulerCheck | undefined {
  return planned && { from, to, reading: length(planned.value), u: length(planned.u) };
}

/** Why a dot is where it is: its pin, or the one that it follows, else the plan's reasons for the stage. */
function whyOf(plan: BrowPlan, side: Side, dot: Dot, stage: PlacingStage): string {
  const follows = plan.origins[side][dot].from === "own" ? side : otherSide(side);
  const pins = [side, follows].map((of) =>
    plan.reasons.find(
      ({ code, values }) => code === "pinned" && values.side === of && values.dot === dot,
    ),
  );
  const [pinned] = pins.filter((pin) => pin !== undefined);
  if (pinned !== undefined) return pinned.text;
  return plan.reasons
    .filter(({ code }) => Object.hasOwn(REASONS_OF[stage], code))
    .map(({ text }) => text)
    .join(" ");
}

/** The reasons that speak of a stage. */
const REASONS_OF = {
  levels: LEVEL_REASONS,
  starts: START_REASONS,
  arches: ARCH_REASONS,
  "tail-ends": TAIL_REASONS,
  thickness: THICKNESS_REASONS,
} as const;
