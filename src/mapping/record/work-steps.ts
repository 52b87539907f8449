import type { Dot, MeasureName } from "../../landmarks/index.js";
import { STATIONS } from "../../proportions/internal.js";
import { type Length, length, type Note, otherSide, type Side } from "../../units/index.js";
import { keysOf, refusingAs, requireFinite, requireNames, SIDES } from "../../units/internal.js";
import { type ReasonCode, REASONS_FOR } from "../dots/notes.js";
import type { MoveNotes } from "../plan/move-notes.js";
import { inHalves, type Move, movesToMake, noteOfMove } from "../plan/moves.js";
import type { BrowPlan } from "../plan/plan.js";
import { requirePlan } from "../plan/require-plan.js";
import { eyeToDot } from "./eye-to-dot.js";
import { type LaidCode, type RulerPlaceCode, type StepCode, stepNote } from "./notes.js";
import type { StepReasonNotes } from "./notes.js";

/** Options of {@link workSteps}. */
export interface WorkOptions {
  /**
   * What the ruler shows at the point it is laid to first: 0 where its scale begins at its very end,
   * 2 mm, say, where the end is blank. Default 0.
   */
  readonly rulerZero?: Length<"mm">;
}

/**
 * A plan as a list of things to do, in the order in which an artist works: starts, arches, tail ends,
 * lower dots; then the borders of each side are joined and every distance is read once more, upright. What
 * stays is no step. Each says how far and which way, why, and how rulers on the skin check it, evenness first.
 *
 * At most 14: six dots a side, and its borders.
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
 * first?.checks.map(({ laid }) => say(laid)).slice(1);
 * // → ["left start → start", "inner eye corner → start"]
 * ```
 */
export function workSteps(plan: BrowPlan, options: WorkOptions = {}): readonly WorkStep[] {
  return refusingAs("workSteps", () => {
    requirePlan(plan);
    requireNames("options", options, ["rulerZero"]);
    const zero = options.rulerZero ?? length(0);
    requireFinite("rulerZero", zero);
    const moves = movesToMake(plan);
    const dots = moves.map((move, index): WorkStep => {
      const { side, dot } = move;
      const stage = STAGE_OF[dot];
      const isLast = moves[index + 1]?.dot !== dot;
      const across = isLast ? evenAcross(plan, dot, side, zero) : [];
      const checks = [...across, ...CHECKED[dot].flatMap((laid) => laidOn(plan, side, laid, zero))];
      return { ...stepOf(plan, move), stage, side, why: whyOf(plan, side, dot, stage), checks };
    });
    return [...dots, ...SIDES.map((side) => closing(plan, side, zero))];
  });
}

/** The stages in which an artist draws a map, in their order. */
export type WorkStage = DotStage | "borders";

type DotStage = "starts" | "arches" | "tail-ends" | "thickness";

/** The reasons of a plan that speak of a stage. */
const REASONS_BY_STAGE: { readonly [Stage in DotStage]: readonly ReasonCode[] } = {
  starts: [...REASONS_FOR.start, ...REASONS_FOR.levels],
  arches: [...REASONS_FOR.arch, ...REASONS_FOR.levels],
  "tail-ends": REASONS_FOR.tail,
  thickness: REASONS_FOR.thickness,
};

const STAGE_OF: { readonly [Name in Dot]: DotStage } = {
  upperStart: "starts",
  upperBody: "arches",
  upperArch: "arches",
  tailEnd: "tail-ends",
  lowerStart: "thickness",
  lowerBody: "thickness",
  lowerArch: "thickness",
};

/** What a ruler reads, and from where to where it is laid. */
type Laid = readonly [measure: MeasureName | "eyeToStart" | "eyeToArch", from: Place, to: Place];

type Place = RulerPlaceCode extends `at-${infer Name}` ? Name : never;

const EYE_TO_START: Laid = ["eyeToStart", "inner-eye-corner", "start"];
const EYE_TO_ARCH: Laid = ["eyeToArch", "inner-eye-corner", "arch"];
const FRONT: Laid = ["front", "start", "arch"];
const TAIL: Laid = ["tail", "arch", "tail-end"];
const EYE_TO_TAIL: Laid = ["exocanthionToTailEnd", "outer-eye-corner", "tail-end"];
const THICKNESS = {
  start: ["startThickness", "start", "lower-start"],
  body: ["bodyThickness", "body", "lower-body"],
  arch: ["archThickness", "arch", "lower-arch"],
} as const satisfies Record<keyof typeof STATIONS, Laid>;

/** What checks each dot on the skin. */
const CHECKED: { readonly [Name in Dot]: readonly Laid[] } = {
  upperStart: [EYE_TO_START],
  upperBody: [],
  upperArch: [EYE_TO_ARCH, FRONT],
  tailEnd: [EYE_TO_TAIL, TAIL],
  lowerStart: [THICKNESS.start],
  lowerBody: [THICKNESS.body],
  lowerArch: [THICKNESS.arch],
};

/** Every distance, once all is drawn. */
const ALL: readonly Laid[] = [
  ...Object.values(CHECKED).flat(),
  ["frontAlong", "start-by-tape", "arch"],
  ["lidToBrow", "lid", "lower-border"],
];

/** Dots of both brows that one ruler is laid across. */
const ACROSS: readonly Dot[] = ["upperStart", "upperArch", "tailEnd"];

function stepOf(plan: BrowPlan, move: Move): Note<StepCode | keyof MoveNotes> {
  const station = keysOf(STATIONS).find((one) => STATIONS[one].lower === move.dot);
  const thickness = station && plan.measures[move.side][`${station}Thickness`];
  if (move.kind !== "place" || station === undefined || thickness === undefined) {
    return noteOfMove(move);
  }
  const { value } = thickness;
  return stepNote("step-thickness", { side: move.side, station, thickness: inHalves(value) });
}

function closing(plan: BrowPlan, side: Side, zero: Length<"mm">): WorkStep {
  const across = side === "right" ? ACROSS.flatMap((dot) => evenAcross(plan, dot, side, zero)) : [];
  const checks = [...across, ...ALL.flatMap((laid) => laidOn(plan, side, laid, zero))];
  const why = [stepNote("checked-upright")];
  return { ...stepNote("step-borders", { side }), stage: "borders", side, why, checks };
}

/** One ruler across both brows at a dot, and what it reads between them where that is a measure. */
function evenAcross(
  { dots, measures: { startToStart } }: BrowPlan,
  dot: Dot,
  side: Side,
  zero: Length<"mm">,
): readonly RulerCheck[] {
  if (!ACROSS.includes(dot)) return [];
  const by = dots.left[dot][1] - dots.right[dot][1];
  const higher = by > 0 ? "left" : "right";
  const laid =
    inHalves(by) === 0
      ? stepNote("laid-level", { dot })
      : stepNote("laid-slanting", { dot, side: higher, by: inHalves(Math.abs(by)) });
  if (dot !== "upperStart" || startToStart === undefined) return [{ laid }];
  const from = stepNote("at-other-start", { side: otherSide(side) });
  const between = stepNote("laid-between", { from, to: stepNote("at-start") });
  return [{ laid }, { laid: between, ...readingOf(startToStart.value, startToStart.u, zero) }];
}

function laidOn(
  plan: BrowPlan,
  side: Side,
  [measure, from, to]: Laid,
  zero: Length<"mm">,
): readonly RulerCheck[] {
  const planned =
    measure === "eyeToStart" || measure === "eyeToArch"
      ? eyeToDot(plan, side, measure === "eyeToStart" ? "Start" : "Arch")
      : plan.measures[side][measure];
  if (planned === undefined) return [];
  const ends = { from: stepNote(`at-${from}`), to: stepNote(`at-${to}`) };
  return [{ laid: stepNote("laid-between", ends), ...readingOf(planned.value, planned.u, zero) }];
}

function readingOf(
  value: number,
  u: number,
  zero: Length<"mm">,
): Pick<RulerCheck, "reading" | "u"> {
  return { reading: length(value + zero), u: length(u) };
}

/** Why a dot is where it is: its pin, or the one that it follows, else the plan's reasons for the stage. */
function whyOf(plan: BrowPlan, side: Side, dot: Dot, stage: DotStage): readonly Note<ReasonCode>[] {
  const follows = plan.origins[side][dot].from === "own" ? side : otherSide(side);
  const pinned = [side, follows].flatMap((of) =>
    plan.reasons.filter(
      ({ code, values }) => code === "pinned" && values.side === of && values.dot === dot,
    ),
  );
  if (pinned.length > 0) return pinned.slice(0, 1);
  return REASONS_BY_STAGE[stage].flatMap((one) => plan.reasons.filter(({ code }) => code === one));
}

/** How a ruler checks what was drawn. */
export interface RulerCheck {
  /** From where to where it is laid, or across both brows; `say` tells it in words. */
  readonly laid: Note<LaidCode>;
  /** What the ruler shows at the far end, its zero's offset included; absent where it shows a level. */
  readonly reading?: Length<"mm">;
  /** Standard uncertainty of the planned length itself. */
  readonly u?: Length<"mm">;
}

/** One thing to do, in the order of work: `say` tells it in words. */
export interface WorkStep extends Note<StepCode | keyof MoveNotes> {
  readonly stage: WorkStage;
  readonly side: Side;
  readonly why: readonly Note<ReasonCode | keyof StepReasonNotes>[];
  readonly checks: readonly RulerCheck[];
}
