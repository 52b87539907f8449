import type { CompleteMarks, Dot, FaceMeasures, Skin } from "../landmarks/index.js";
import type {
  ArchConvention,
  Guide,
  NaturalMarks,
  OutlineOptions,
  StartConvention,
  StationThickness,
} from "../proportions/index.js";
import type { FaceFrame, SideComparison } from "../symmetry/index.js";
import type { Decision, Length, Measured, Note, Sides } from "../units/index.js";
import type { CautionCode } from "./cautions.js";
import type { Carry, Lead, Pin, TailHeight } from "./choices.js";
import type { Move } from "./moves.js";
import type { PlannableFace } from "./plannable-face.js";
import type { ReasonCode } from "./reasons.js";

/** Choices after every default is settled: the plan follows from these and the face alone. */
export interface SettledChoices {
  readonly lead: Lead;
  readonly carry: Carry;
  readonly levels: Lead;
  /** Absent where evening may go as far as it takes. */
  readonly levelLimit?: Length<"mm">;
  readonly start: StartConvention;
  readonly arch: ArchConvention;
  readonly eyeWidthShare: number;
  readonly frontShare: number;
  readonly tailHeight: TailHeight;
  readonly thickness: StationThickness;
  readonly shape: OutlineOptions;
  readonly pins: readonly Pin[];
}

/** Who put a dot where it is. */
export interface DotOrigin {
  /**
   * `"own"`: this side's landmarks alone; `"mirrored"`: the other side's; `"measured"`: the other
   * side's ruler lengths from this side's start; `"both"`: their middle.
   */
  readonly from: "own" | "mirrored" | "measured" | "both" | "pinned";
  /** Present where the artist fixed the dot. */
  readonly pin?: Pin;
}

/** The dots of both brows, solved, with everything that explains them. All in the face space. */
export interface MarkPlan {
  readonly face: PlannableFace;
  readonly skin: Skin;
  readonly choices: SettledChoices;
  readonly reasons: readonly Note<ReasonCode>[];
  /** The brows as they grow. */
  readonly natural: Sides<NaturalMarks>;
  readonly guides: Sides<readonly Guide[]>;
  readonly marks: Sides<CompleteMarks<"mm">>;
  readonly origins: Sides<{ readonly [Name in Dot]: DotOrigin }>;
}

/** A map of both brows: the dots, what is read on them, how sure that is, and what to do. */
export interface BrowPlan extends MarkPlan {
  /** Present where the plan was made on a photo. */
  readonly frame?: FaceFrame;
  /** What is read on the planned brows. */
  readonly measures: FaceMeasures<Measured>;
  /** How the planned sides still differ, with decisions. */
  readonly comparison: SideComparison;
  /** Whether each planned front takes its share by ruler: two thirds ± 0.03 unless chosen otherwise. */
  readonly shareDecisions: Sides<Decision>;
  /** What is read on the natural brows. */
  readonly naturalMeasures: FaceMeasures<Measured>;
  /** How the natural sides differ, with decisions. */
  readonly naturalComparison: SideComparison;
  /** From the natural brows to the planned ones, in the order of work. */
  readonly moves: readonly Move[];
  readonly cautions: readonly Note<CautionCode>[];
}
