import type { Brow, Dot, FaceWith } from "../../landmarks/index.js";
import type {
  CaptureComparisonOptions,
  Displacement,
  Registration,
  SideComparison,
} from "../../symmetry/index.js";
import type { Decision, Length, Measured, Note, Side, Sides } from "../../units/index.js";
import type { TouchUpCode } from "./notes.js";

/** The weeks after the work from which each stage begins; trade practice, no source. */
export const STAGES = { fresh: 0, healing: 1, healed: 4, later: 8 } as const;

/** How far a result has come: the work just done, healing, healed, or beyond the first eight weeks. */
export type Stage = keyof typeof STAGES;

/** Brows as they were found some time after the work. */
export interface ResultCapture {
  readonly name: string;
  /** Weeks since the work, 0 or more. */
  readonly weeks: number;
  /** In its own face space, its brows bordered as they look now: pigment and hair together. */
  readonly face: FaceWith<"mm", "brow">;
}

/** How {@link compareResult} compares and decides. By default the tolerances are the plan's. */
export type ResultOptions = Omit<CaptureComparisonOptions, "dotU">;

/** The same with the tolerances settled. */
export type JudgedOptions = ResultOptions & Required<Pick<ResultOptions, "tolerances">>;

/** How a brow as found covers the planned one, in mm² of the frontal view. */
export interface ResultAreas {
  /** Area of the planned brow. */
  readonly planned: number;
  /** Of it, what is covered. */
  readonly shared: Measured;
  /** Of it, what is not: never taken, or faded. */
  readonly lost: Measured;
  /** What lies outside the plan. */
  readonly spread: Measured;
}

/** Thickness at one share of the way from start to tail end, sideways, of each brow's own length. */
export interface ThicknessChange {
  readonly share: number;
  readonly planned: Length<"mm">;
  readonly found: Measured;
  /** Found less planned. */
  readonly difference: Measured;
  /** Present where the tolerance set has something to say of thickness. */
  readonly decision?: Decision;
}

/** One brow as found against its plan. */
export interface BrowResult {
  /** Laid over the face of the plan. */
  readonly brow: Brow<"mm">;
  readonly start: Displacement;
  readonly tailEnd: Displacement;
  /** Absent, as thickness is, where the lower border was not found. */
  readonly areas?: ResultAreas;
  readonly thickness?: readonly ThicknessChange[];
}

/** Something of the plan that is no longer covered, and that a touch-up would fill. */
export interface TouchUp {
  readonly side: Side;
  /** The dots between which it lies. */
  readonly from: Dot;
  readonly to: Dot;
  /** Along which border of the plan; at an end, where the brow as found does not reach so far. */
  readonly along: "upper" | "lower" | "end";
  /** In mm². */
  readonly area: number;
  /** Greatest gap: upright along a border, sideways at an end. */
  readonly gap: Measured<Length<"mm">>;
  readonly decision: Decision;
  readonly note: Note<TouchUpCode>;
}

/** What was found at one time, against the plan. */
export interface StageResult {
  readonly name: string;
  readonly weeks: number;
  readonly stage: Stage;
  /** How the capture was laid over the face of the plan. */
  readonly registration: Registration;
  readonly brows: Sides<BrowResult>;
  /** How the sides differ in distance and height of start, arch and tail end. */
  readonly evenness: SideComparison;
  /**
   * Gaps proven to be greater than the tolerance, the largest area first; none before the skin has healed, at
   * four weeks.
   */
  readonly touchUps: readonly TouchUp[];
  readonly notes: readonly Note[];
}

/** A plan and what came of it. */
export interface ResultComparison {
  /** Evenness as it was planned, to be compared with that of each result. */
  readonly planned: SideComparison;
  readonly results: readonly StageResult[];
}
