import { type Dot, DOTS, type FaceMeasureName } from "../../landmarks/index.js";
import { STATIONS } from "../../proportions/internal.js";
import { placeOnSide, type Way } from "../../symmetry/index.js";
import { WAYS } from "../../symmetry/internal.js";
import { type Length, length, mm, otherSide, type Side } from "../../units/index.js";
import { fill, keysOf, requireFinite, SIDES } from "../../units/internal.js";
import { inHalves } from "../plan/moves.js";
import {
  ARCH_REASONS,
  LEVEL_REASONS,
  START_REASONS,
  TAIL_REASONS,
  THICKNESS_REASONS,
} from "../dots/words.js";
import type { BrowPlan } from "../plan/plan.js";
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
  return STAGES.flatMap((tasks) =>
    SIDES.flatMap((side) => tasks.flatMap((task) => stepsOf(task, plan, side, zero))),
  );
}

/** What a ruler reads, and from where to where it is laid. */
type Laid = readonly [measure: FaceMeasureName, from: keyof typeof RULED, to: keyof typeof RULED];

/** Something to do on one side: a dot to place, a border to join, a distance to read again. */
type Task =
  | {
      readonly stage: keyof typeof REASONS_OF;
      readonly does: keyof typeof AXES | "thickness";
      readonly dot: Dot;
      readonly laid: Laid;
    }
  | {
      readonly stage: WorkStage;
      readonly does: "upper-border" | "lower-border" | "again";
      readonly laid: Laid;
    };

const FRONT: Laid = ["front", "start", "arch"];
const TAIL: Laid = ["tail", "arch", "tail-end"];
const FROM_EYE: Laid = ["exocanthionToTailEnd", "outer-eye-corner", "tail-end"];
const BETWEEN_STARTS: Laid = ["startToStart", "other-start", "start"];
const ALONG_FRONT: Laid = ["frontAlong", "start-by-tape", "arch"];
const OVER_LID: Laid = ["lidToBrow", "lid", "lower-border"];

/** The tasks of each stage, done on the right and then on the left. */
const STAGES: readonly (readonly Task[])[] = [
  [
    { stage: "levels", does: "up", dot: "upperStart", laid: ["startHeight", "level", "start"] },
    { stage: "levels", does: "up", dot: "upperArch", laid: ["archHeight", "level", "arch"] },
  ],
  [{ stage: "starts", does: "outward", dot: "upperStart", laid: BETWEEN_STARTS }],
  [{ stage: "arches", does: "outward", dot: "upperArch", laid: FRONT }],
  [
    { stage: "tail-ends", does: "up", dot: "tailEnd", laid: FROM_EYE },
    { stage: "tail-ends", does: "outward", dot: "tailEnd", laid: TAIL },
  ],
  [{ stage: "upper-borders", does: "upper-border", laid: ALONG_FRONT }],
  keysOf(STATIONS).map((station) => ({
    stage: "thickness",
    does: "thickness",
    dot: STATIONS[station].lower,
    laid: [`${station}Thickness`, "upper", "lower"],
  })),
  [{ stage: "lower-borders", does: "lower-border", laid: OVER_LID }],
  [FRONT, TAIL, FROM_EYE].map((laid) => ({ stage: "check-upright", does: "again", laid })),
];

/** The step of a task; none where there is nothing to read again. */
function stepsOf(task: Task, plan: BrowPlan, side: Side, zero: Length<"mm">): readonly WorkStep[] {
  const check = checkOf(task, plan, side);
  if (task.does === "again" && check === undefined) return [];
  const step = { stage: task.stage, side, ...doneBy(task, plan, side, check) };
  if (check === undefined) return [step];
  return [{ ...step, check: { ...check, reading: length(check.reading + zero) } }];
}

function checkOf(task: Task, plan: BrowPlan, side: Side): RulerCheck | undefined {
  const [measure, from, to] = task.laid;
  const { startToStart, ...measures } = plan.measures;
  const planned = measure === "startToStart" ? startToStart : measures[side][measure];
  const station = "dot" in task ? DOTS[task.dot].station : "";
  const values = { side: otherSide(side), station };
  return (
    planned && {
      from: fill(RULED[from], values),
      to: fill(RULED[to], values),
      reading: length(planned.value),
      u: length(planned.u),
    }
  );
}

type Done = Pick<WorkStep, "amount" | "direction" | "text" | "why">;

function doneBy(task: Task, plan: BrowPlan, side: Side, check: RulerCheck | undefined): Done {
  switch (task.does) {
    case "up":
    case "outward":
      return moved(task.does, plan, side, task.dot, whyOf(plan, side, task.dot, task.stage));
    case "thickness": {
      const where = { side, station: DOTS[task.dot].station };
      const text =
        check === undefined
          ? fill(STEPS["thickness-unknown"], where)
          : fill(STEPS.thickness, { ...where, thickness: inHalves(check.reading) });
      return still(text, whyOf(plan, side, task.dot, task.stage));
    }
    case "again": {
      const { from = "", to = "" } = check ?? {};
      return still(fill(STEPS.again, { side, from, to }), WHY.checked);
    }
    case "upper-border":
    case "lower-border":
      return still(fill(STEPS[task.does], { side }), WHY.joined);
  }
}

function still(text: string, why: string): Done {
  return { amount: mm(0), direction: "none", text, why };
}

/** Both ways along an axis, and what is said of a dot that is placed there. */
const AXES = {
  up: { ways: ["up", "down"], place: "place-up" },
  outward: { ways: ["outward", "inward"], place: "place-across" },
} as const;

function moved(axis: keyof typeof AXES, plan: BrowPlan, side: Side, dot: Dot, why: string): Done {
  const { ways, place } = AXES[axis];
  const move = plan.moves.find((one) => one.side === side && one.dot === dot);
  const name = { side, dot: DOTS[dot].words };
  if (move?.kind !== "move" && move?.kind !== "stay") {
    const { distance, height } = placeOnSide(plan.dots[side][dot], side);
    const at = { distance: inHalves(distance), height: inHalves(height) };
    return still(fill(STEPS[place], { ...name, ...at }), why);
  }
  const by = move[axis];
  const amount = inHalves(Math.abs(by));
  if (amount === 0) return still(fill(STEPS.stay, { ...name, one: ways[0], other: ways[1] }), why);
  const direction = ways[by > 0 ? 0 : 1];
  const text = fill(STEPS.move, { ...name, way: fill(WAYS[direction], { by: `${amount} mm` }) });
  return { amount: mm(amount), direction, text, why };
}

/** Why a dot is where it is: its pin, or the one that it follows, else the plan's reasons for the stage. */
function whyOf(plan: BrowPlan, side: Side, dot: Dot, stage: keyof typeof REASONS_OF): string {
  const follows = plan.origins[side][dot].from === "own" ? side : otherSide(side);
  const [pinned] = [side, follows].flatMap((of) =>
    plan.reasons.filter(
      ({ code, values }) => code === "pinned" && values.side === of && values.dot === dot,
    ),
  );
  const reasons = plan.reasons.filter(({ code }) => Object.hasOwn(REASONS_OF[stage], code));
  return pinned?.text ?? reasons.map(({ text }) => text).join(" ");
}

/** The reasons that speak of a stage. */
const REASONS_OF = {
  levels: LEVEL_REASONS,
  starts: START_REASONS,
  arches: ARCH_REASONS,
  "tail-ends": TAIL_REASONS,
  thickness: THICKNESS_REASONS,
} as const;

/** The stages in which an artist draws a map, in their order. */
export type WorkStage =
  | "levels"
  | "starts"
  | "arches"
  | "tail-ends"
  | "upper-borders"
  | "thickness"
  | "lower-borders"
  | "check-upright";

/** Which way a dot goes; `"none"` where it stays or where nothing is moved. */
export type WorkDirection = Way | "none";

/** How a ruler checks what was drawn: laid from one point to another, it must read so much. */
export interface RulerCheck {
  readonly from: string;
  readonly to: string;
  /** What the ruler shows at `to`, its zero's offset included. */
  readonly reading: Length<"mm">;
  /** Standard uncertainty of the planned length itself. */
  readonly u: Length<"mm">;
}

/** One thing to do, in the order of work. */
export interface WorkStep {
  readonly stage: WorkStage;
  readonly side: Side;
  /** How far; 0 with `"none"`. */
  readonly amount: Length<"mm">;
  readonly direction: WorkDirection;
  /** In English. */
  readonly text: string;
  readonly why: string;
  readonly check?: RulerCheck;
}
