import type { FaceMeasures } from "../../landmarks/index.js";
import type { FaceFrame, SideComparison } from "../../symmetry/index.js";
import type { Decision, Measured, Sides } from "../../units/index.js";
import type { Caution } from "./cautions.js";
import type { MAP_VERSION } from "./map-version.js";
import type { Move } from "./moves.js";
import type { PlannedDots } from "../dots/planned-dots.js";

/** A map of both brows: the dots, what is read on them, how sure that is, and what to do. */
export interface BrowPlan extends PlannedDots {
  readonly version: typeof MAP_VERSION;
  /** Present where the plan was made on a photo. */
  readonly frame?: FaceFrame;
  /** What is read on the planned brows. */
  readonly measures: FaceMeasures<Measured>;
  /** How the planned sides still differ, with decisions. */
  readonly comparison: SideComparison;
  /**
   * Whether each planned front takes its share by ruler: two thirds ± 0.03 unless chosen otherwise.
   * Absent where the tolerances that were chosen say nothing of front shares.
   */
  readonly shareDecisions?: Sides<Decision>;
  /** What is read on the natural brows, or on what a source has for them. */
  readonly naturalMeasures: FaceMeasures<Measured>;
  /** How the natural sides differ, with decisions. */
  readonly naturalComparison: SideComparison;
  /** From the natural brows to the planned ones, in the order of work. */
  readonly moves: readonly Move[];
  readonly cautions: readonly Caution[];
}
