import type { Dot, FaceMeasureName } from "../../landmarks/index.js";
import type { Station } from "../../proportions/index.js";
import { STATIONS } from "../../proportions/internal.js";
import { placeOnSide, type Way } from "../../symmetry/index.js";
import { type Length, length, mm, type Note, otherSide, type Side } from "../../units/index.js";
import { keysOf, requireFinite, SIDES } from "../../units/internal.js";
import { type ReasonCode, REASONS_FOR } from "../dots/notes.js";
import { moveNote } from "../plan/move-notes.js";
import { inHalves } from "../plan/moves.js";
import type { BrowPlan } from "../plan/plan.js";
import { type RulerPlaceCode, type StepCode, stepNote, type StepReasonNotes } from "./notes.js";

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
 * import { mm, planBrows, type PlannableFace, say, workSteps } from "brow-geometry";
 * const side = (sign: 1 | -1, up: number) => ({
 *   endocanthion: mm([sign * 16, 0]),
 *   exocanthion: mm([sign * 44, 0]),
 *   alare: mm([sign * 17, -38]),
 *   brow: { upper: [mm([sign * 15, 20 + up]), mm([sign * 38, 27 + up]), mm([sign * 57, 18 + up])] },
 * });
 * const face: PlannableFace = { right: side(-1, 0), left: side(1, 3), midline: {} };
 * const [first] = workSteps(planBrows(face, { lead: "left" }), { rulerZero: mm(2) });
 * first && say(first); // → "right start: up 3 mm"
 * first?.check; // → { from: { code: "at-level" }, to: { code: "at-start" }, reading: 25 }
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
type Laid = readonly [measure: FaceMeasureName, from: RulerPlace, to: RulerPlace];

type RulerPlace = RulerPlaceCode extends `at-${infer Place}` ? Place : never;

/** Something to do on one side: a dot to place, a border to join, a distance to read again. */
type Task =
  | {
      readonly stage: keyof typeof REASONS_BY_STAGE;
      readonly does: keyof typeof AXES;
      readonly dot: Dot;
      readonly laid: Laid;
    }
  | {
      readonly stage: "thickness";
      readonly does: "thickness";
      readonly station: Station;
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
    station,
    laid: [`${station}Thickness`, "upper-dot", "lower-dot"],
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
  const [measure] = task.laid;
  const { startToStart, ...measures } = plan.measures;
  const planned = measure === "startToStart" ? startToStart : measures[side][measure];
  if (planned === undefined) return undefined;
  return {
    ...placesOf(task, side),
    reading: length(planned.value),
    u: length(planned.u),
  };
}

function placesOf(task: Task, side: Side): Pick<RulerCheck, "from" | "to"> {
  const [, from, to] = task.laid;
  return { from: placeNote(from, task, side), to: placeNote(to, task, side) };
}

function placeNote(at: RulerPlace, task: Task, side: Side): Note<RulerPlaceCode> {
  if (at === "other-start") return stepNote("at-other-start", { side: otherSide(side) });
  if (at !== "upper-dot" && at !== "lower-dot") return stepNote(`at-${at}`);
  return stepNote(`at-${at}`, { station: "station" in task ? task.station : "start" });
}

type Done = Omit<WorkStep, "stage" | "side" | "check">;

function doneBy(task: Task, plan: BrowPlan, side: Side, check: RulerCheck | undefined): Done {
  switch (task.does) {
    case "up":
    case "outward":
      return moved(task.does, plan, side, task.dot, whyOf(plan, side, task.dot, task.stage));
    case "thickness": {
      const { station } = task;
      const where = { side, station };
      const step =
        check === undefined
          ? stepNote("step-thickness-unknown", where)
          : stepNote("step-thickness", { ...where, thickness: inHalves(check.reading) });
      return still(step, whyOf(plan, side, STATIONS[station].lower, task.stage));
    }
    case "again":
      return still(stepNote("step-again", { side, ...placesOf(task, side) }), [
        stepNote("checked-upright"),
      ]);
    case "upper-border":
    case "lower-border":
      return still(stepNote(`step-${task.does}`, { side }), [stepNote("border-joined")]);
  }
}

function still(step: Note<StepCode>, why: WorkStep["why"]): Done {
  return { ...step, amount: mm(0), direction: "none", why };
}

/** Both ways along an axis. */
const AXES = {
  up: ["up", "down"],
  outward: ["outward", "inward"],
} as const;

function moved(
  axis: keyof typeof AXES,
  plan: BrowPlan,
  side: Side,
  dot: Dot,
  why: WorkStep["why"],
): Done {
  const [one, other] = AXES[axis];
  const move = plan.moves.find((one) => one.side === side && one.dot === dot);
  if (move?.kind !== "move" && move?.kind !== "stay") {
    const { distance, height } = placeOnSide(plan.dots[side][dot], side);
    const placed =
      axis === "up"
        ? stepNote("step-place-up", { side, dot, height: inHalves(height) })
        : stepNote("step-place-across", { side, dot, distance: inHalves(distance) });
    return still(placed, why);
  }
  const by = move[axis];
  const amount = inHalves(Math.abs(by));
  if (amount === 0) return still(stepNote("step-stay", { side, dot, one, other }), why);
  const direction = by > 0 ? one : other;
  const way = moveNote(`way-${direction}`, { by: amount });
  return { ...stepNote("step-move", { side, dot, way }), amount: mm(amount), direction, why };
}

/** Why a dot is where it is: its pin, or the one that it follows, else the plan's reasons for the stage. */
function whyOf(
  plan: BrowPlan,
  side: Side,
  dot: Dot,
  stage: keyof typeof REASONS_BY_STAGE,
): readonly Note<ReasonCode>[] {
  const follows = plan.origins[side][dot].from === "own" ? side : otherSide(side);
  const pinned = [side, follows].flatMap((of) =>
    plan.reasons.filter(
      ({ code, values }) => code === "pinned" && values.side === of && values.dot === dot,
    ),
  );
  if (pinned.length > 0) return pinned.slice(0, 1);
  const ofStage: readonly ReasonCode[] = REASONS_BY_STAGE[stage];
  return plan.reasons.filter(({ code }) => ofStage.includes(code));
}

/** The reasons that speak of a stage. */
const REASONS_BY_STAGE = {
  levels: REASONS_FOR.levels,
  starts: REASONS_FOR.start,
  arches: REASONS_FOR.arch,
  "tail-ends": REASONS_FOR.tail,
  thickness: REASONS_FOR.thickness,
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
  readonly from: Note<RulerPlaceCode>;
  readonly to: Note<RulerPlaceCode>;
  /** What the ruler shows at `to`, its zero's offset included. */
  readonly reading: Length<"mm">;
  /** Standard uncertainty of the planned length itself. */
  readonly u: Length<"mm">;
}

/** One thing to do, in the order of work: `say` tells it in words. */
export interface WorkStep extends Note<StepCode> {
  readonly stage: WorkStage;
  readonly side: Side;
  /** How far; 0 with `"none"`. */
  readonly amount: Length<"mm">;
  readonly direction: WorkDirection;
  readonly why: readonly Note<ReasonCode | keyof StepReasonNotes>[];
  readonly check?: RulerCheck;
}
