import type { BrowDots, Dot, FaceMeasureName, FaceMeasures } from "../../landmarks/index.js";
import type { SideComparison } from "../../symmetry/index.js";
import type {
  Decision,
  DecisionOptions,
  Length,
  Measured,
  Outcome,
  Side,
  Sides,
  ToleranceSet,
} from "../../units/index.js";

/** What was drawn, as far as anybody looked: dots, readings, or both. */
export interface DrawnMap {
  /**
   * Dots of the map on the skin, in the face space: as they were placed, or as `naturalDots` reads them
   * off the borders of a brow that was drawn and found again by landmarks.
   */
  readonly dots?: Sides<BrowDots<"mm">>;
  /**
   * Standard uncertainty of a dot's place, in each axis. Default 0.26 mm: one rater on photographs
   * (Reliability of Periocular Anthropometry, 2019, 46 adults).
   */
  readonly u?: Length<"mm">;
  /** What was read by hand; it replaces what is read from the dots. */
  readonly readings?: FaceMeasures<Measured>;
}

/** How a check of what was drawn decides. */
export interface DrawnOptions extends DecisionOptions {
  /**
   * Default: those of the plan. Where a sheet is held against a sheet, 1 mm in position, 0.5 mm in
   * thickness, 0.03 in front share. What a set leaves out is not decided.
   */
  readonly tolerances?: ToleranceSet;
}

/** How far something that was drawn is off its plan: drawn less planned. */
export interface Deviation {
  readonly difference: Measured;
  /** Present where the tolerance set has something to say about it. */
  readonly decision?: Decision;
}

/** One drawn dot against its plan. */
export interface DotDeviation {
  readonly side: Side;
  readonly dot: Dot;
  /** Positive where it was drawn too far from the midline. */
  readonly outward: Deviation;
  /** Positive where it was drawn too high. */
  readonly up: Deviation;
}

/** One measure of what was drawn against its plan. */
export interface MeasureDeviation extends Deviation {
  /** Left out for what is read between the sides. */
  readonly side?: Side;
  readonly measure: FaceMeasureName;
  readonly planned: number;
  readonly drawn: Measured;
}

/** What was drawn against its plan. */
export interface DrawnCheck {
  /** Outside where anything is, else undecided where anything is, else within. */
  readonly outcome: Outcome;
  readonly dots: readonly DotDeviation[];
  readonly measures: readonly MeasureDeviation[];
  /** How the drawn sides differ from each other. */
  readonly comparison: SideComparison;
  readonly tolerances: ToleranceSet;
}
