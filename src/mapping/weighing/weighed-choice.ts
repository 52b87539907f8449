import type { CompleteDots, Dot } from "../../landmarks/index.js";
import type { SideComparison } from "../../symmetry/index.js";
import type { Decision, Length, Note, Side, Sides } from "../../units/index.js";
import type { Choices } from "../choices/choices.js";
import type { ShapeCode } from "../shape/notes.js";
import type { ShapeFinding } from "../shape/shape-findings.js";
import type { ReasonCode } from "../dots/notes.js";
import type { WeighingCode } from "./notes.js";

/** Options of {@link weighChoices}. */
export interface WeighOptions {
  /**
   * Demands that the space between upper lid and brow closes by no more than this, as for mature
   * lids; a negative limit demands that it opens.
   */
  readonly lidRoom?: { readonly most: Length<"mm"> };
}

/** Choices weighed, in their order, and what holds for all of them. */
export interface WeighedChoices {
  readonly rows: readonly WeighedChoice[];
  readonly notes: readonly Note<WeighingCode>[];
}

/** What one choice would do to a face, or why it cannot be planned. */
export type WeighedChoice = PlannedChoice | UnplannedChoice;

/** What one choice would do to a face. */
export interface PlannedChoice {
  /** `"ruled-out"` where it breaks a demand. */
  readonly kind: "usable" | "ruled-out";
  readonly choices: Choices;
  /** In words, what else is in this row. */
  readonly reasons: readonly Note<WeighingCode | ShapeCode | ReasonCode>[];
  readonly dots: Sides<CompleteDots<"mm">>;
  /** What in its shape asks for a second look. */
  readonly findings: readonly ShapeFinding[];
  /** From the borders of the brows, be they hair or a detector's guess at it. */
  readonly greatestMove: { readonly side: Side; readonly dot: Dot; readonly by: Length<"mm"> };
  /** Over the dots that the natural brows have too. */
  readonly meanMove: Length<"mm">;
  /** Of both brows, in mm² of the frontal view; absent where a border of the hair is not known. */
  readonly areas?: { readonly hairToRemove: number; readonly skinToFill: number };
  /** How the planned sides differ, decided by the values only under the tolerances of the choice. */
  readonly comparison: SideComparison;
  /** By how much the space between upper lid and brow opens; negative where it closes. */
  readonly lidRoom: { readonly [Name in Side]?: Length<"mm"> };
  /**
   * Decided like `comparison`, against the share that was asked for, two thirds where none was: `reasons` speak of
   * that only where a share was chosen, or places the arch.
   */
  readonly frontShare: Sides<{ readonly value: number; readonly decision?: Decision }>;
}

/** A choice that cannot be planned on this face. */
export interface UnplannedChoice {
  readonly kind: "no-solution";
  readonly choices: Choices;
  /** Why not. */
  readonly reasons: readonly Note<WeighingCode>[];
}
