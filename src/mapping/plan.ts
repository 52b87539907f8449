import type { CompleteMarks, Dot, Face, FaceMeasures, Skin } from "../landmarks/index.js";
import type { ArchConvention, Guide, NaturalMarks, StartConvention } from "../proportions/index.js";
import type { FaceFrame, SideComparison } from "../symmetry/index.js";
import type { Measured, Note, Sides } from "../units/index.js";
import type { CautionCode } from "./cautions.js";
import type { Lead, Pin, TailHeight, Thickness } from "./choices.js";
import type { Move } from "./moves.js";

/** Choices after every default is settled: the plan follows from these and the face alone. */
export interface SettledChoices {
  readonly lead: Lead;
  readonly levels: Lead;
  readonly start: StartConvention;
  readonly arch: Sides<ArchConvention>;
  readonly eyeWidthShare: number;
  readonly frontShare: number;
  readonly tailHeight: TailHeight;
  readonly thickness: Thickness;
  readonly pins: readonly Pin[];
}

/** Codes of the reasons that a plan gives. */
export type ReasonCode =
  | "lead"
  | "levels"
  | "start-at-alare"
  | "start-at-endocanthion"
  | "start-chosen"
  | "arch-natural"
  | "arch-moved-to-limbus"
  | "arch-moved-to-exocanthion"
  | "arch-flat"
  | "arch-undetermined"
  | "arch-chosen"
  | "tail-at-guide"
  | "thickness-natural"
  | "thickness-assumed"
  | "thickness-chosen"
  | "border-extended"
  | "guide-missed"
  | "pinned";

/** Who put a dot where it is. */
export interface DotOrigin {
  /** `"own"`: this side's landmarks alone; `"mirrored"`: the other side's; `"both"`: their middle. */
  readonly from: "own" | "mirrored" | "both" | "pinned";
  /** Present where the artist fixed the dot. */
  readonly pin?: Pin;
}

/** A map of both brows, with everything that explains it. All in the face space. */
export interface BrowPlan {
  readonly face: Face<"mm">;
  /** Present where the plan was made from a photo. */
  readonly frame?: FaceFrame;
  readonly skin: Skin;
  readonly choices: SettledChoices;
  readonly reasons: readonly Note<ReasonCode>[];
  /** The brows as they grow. */
  readonly natural: Sides<NaturalMarks>;
  readonly guides: Sides<readonly Guide[]>;
  readonly marks: Sides<CompleteMarks<"mm">>;
  readonly origins: Sides<{ readonly [Name in Dot]: DotOrigin }>;
  /** What is read on the planned brows. */
  readonly measures: FaceMeasures<Measured>;
  /** How the planned sides still differ, with decisions. */
  readonly comparison: SideComparison;
  /** What is read on the natural brows. */
  readonly naturalMeasures: FaceMeasures<Measured>;
  /** How the natural sides differ, with decisions. */
  readonly naturalComparison: SideComparison;
  /** From the natural brows to the planned ones, in the order of work. */
  readonly moves: readonly Move[];
  readonly cautions: readonly Note<CautionCode>[];
}

