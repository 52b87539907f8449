import { type Dot, DOTS, type MeasureName } from "../../landmarks/index.js";
import { placeOnSide } from "../../symmetry/index.js";
import {
  type Length,
  length,
  type Measured,
  mm,
  otherSide,
  requireFinite,
  type Side,
} from "../../units/index.js";
import { inHalves } from "../choices/half-millimetres.js";
import type { DotMove } from "../plan/moves.js";
import type { BrowPlan } from "../plan/plan.js";
import type { RulerCheck, WorkDirection, WorkStage, WorkStep } from "./step.js";

/** How {@link workSteps} counts. */
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
  ["front", "start", "arch"],
  ["tail", "arch", "tail end"],
  ["exocanthionToTailEnd", "outer eye corner", "tail end"],
] as const;

const CANTHAL_LEVEL = "level of the inner eye corners, square to the midline";

type StageSteps = (plan: BrowPlan, side: Side) => readonly WorkStep[];

const STAGES: readonly StageSteps[] = [
  (plan, side) => [
    upDown(
      "levels",
      plan,
      side,
      "upperStart",
      check(plan, side, "startHeight", CANTHAL_LEVEL, "start"),
    ),
    upDown(
      "levels",
      plan,
      side,
      "upperArch",
      check(plan, side, "archHeight", CANTHAL_LEVEL, "arch"),
    ),
  ],
  (plan, side) => [across("starts", plan, side, "upperStart", betweenStarts(plan, side))],
  (plan, side) => [
    across("arches", plan, side, "upperArch", check(plan, side, "front", "start", "arch")),
  ],
  (plan, side) => [
    upDown(
      "tail-ends",
      plan,
      side,
      "tailEnd",
      check(plan, side, "exocanthionToTailEnd", "outer eye corner", "tail end"),
    ),
    across("tail-ends", plan, side, "tailEnd", check(plan, side, "tail", "arch", "tail end")),
  ],
  (plan, side) => [
    still(
      "upper-borders",
      side,
      `${side} upper border: join start, arch and tail end`,
      WHY.joined,
      check(plan, side, "frontAlong", "start, with a tape along the border", "arch"),
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
      `${side} lower border: join lower start, body, arch and tail end`,
      WHY.joined,
      check(plan, side, "lidToBrow", "edge of the upper lid above the pupil", "lower border"),
    ),
  ],
  (plan, side) =>
    FINAL_READINGS.flatMap(([measure, from, to]) => {
      const read = check(plan, side, measure, from, to);
      if (read === undefined) return [];
      const text = `${side}: ${from} to ${to} again, upright and relaxed`;
      return [still("check-upright", side, text, WHY.checked, read)];
    }),
];

const WHY = {
  joined: "The border runs through its dots.",
  checked: "Brows move when the client lies down or raises them; what follows is permanent.",
} as const;

/** The step that moves a dot up or down. */
function upDown(
  stage: WorkStage,
  plan: BrowPlan,
  side: Side,
  dot: Dot,
  read: RulerCheck | undefined,
): WorkStep {
  return moved(stage, plan, side, dot, read, (move) => move.up, ["up", "down"]);
}

/** The step that moves a dot away from the midline or towards it. */
function across(
  stage: WorkStage,
  plan: BrowPlan,
  side: Side,
  dot: Dot,
  read: RulerCheck | undefined,
): WorkStep {
  return moved(stage, plan, side, dot, read, (move) => move.outward, ["outward", "inward"]);
}

function moved(
  stage: WorkStage,
  plan: BrowPlan,
  side: Side,
  dot: Dot,
  read: RulerCheck | undefined,
  part: (move: DotMove) => number,
  [positive, negative]: readonly [WorkDirection, WorkDirection],
): WorkStep {
  const move = plan.moves.find((one) => one.side === side && one.dot === dot);
  const why = whyOf(plan, side, dot, stage);
  const name = `${side} ${DOTS[dot].words}`;
  if (move?.kind !== "move" && move?.kind !== "stay") {
    const { distance, height } = placeOnSide(plan.dots[side][dot], side);
    const place =
      positive === "up"
        ? `${inHalves(height)} mm above the inner eye corners`
        : `${inHalves(distance)} mm from the midline`;
    return still(stage, side, `${name}: place it ${place}`, why, read);
  }
  const by = part(move);
  const amount = inHalves(Math.abs(by));
  if (amount === 0) {
    return still(stage, side, `${name}: stays, neither ${positive} nor ${negative}`, why, read);
  }
  const direction = by > 0 ? positive : negative;
  const text = `${name}: ${direction} ${amount} mm`;
  return withCheck({ stage, side, amount: mm(amount), direction, text, why }, read);
}

function thick(
  plan: BrowPlan,
  side: Side,
  measure: MeasureName,
  lower: Dot,
  station: string,
): WorkStep {
  const read = check(plan, side, measure, `upper ${station}`, `lower ${station}`);
  const amount = read === undefined ? "" : `${inHalves(read.reading)} mm thick, `;
  const text = `${side} ${station}: ${amount}straight down`;
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
  return readingBetween(`${otherSide(side)} start`, "start", plan.measures.startToStart);
}

function readingBetween(
  from: string,
  to: string,
  planned: Measured | undefined,
): RulerCheck | undefined {
  return planned && { from, to, reading: length(planned.value), u: length(planned.u) };
}

/** Why a dot is where it is: its pin, or the one that it follows, else the plan's reason for the stage. */
function whyOf(plan: BrowPlan, side: Side, dot: Dot, stage: WorkStage): string {
  const follows = plan.origins[side][dot].from === "own" ? side : otherSide(side);
  const pins = [side, follows].map((of) =>
    plan.reasons.find(
      ({ code, values }) => code === "pinned" && values.side === of && values.dot === dot,
    ),
  );
  const [pinned] = pins.filter((pin) => pin !== undefined);
  return pinned?.text ?? reasonOf(plan, REASON_OF[stage] ?? "lead-");
}

const REASON_OF: { readonly [Stage in WorkStage]?: string } = {
  levels: "levels-",
  starts: "start-",
  arches: "arch-",
  "tail-ends": "tail-",
  thickness: "thickness-",
};

function reasonOf(plan: BrowPlan, prefix: string): string {
  return plan.reasons
    .filter(({ code }) => code.startsWith(prefix))
    .map(({ text }) => text)
    .join(" ");
}
