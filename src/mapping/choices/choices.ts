import type {
  ArchConvention,
  Declared,
  Dot,
  StartConvention,
  TailConvention,
} from "../../landmarks/index.js";
import type { OutlineOptions, StationThickness } from "../../proportions/index.js";
import type { DecisionRule, Point, Length, Side, ToleranceSet } from "../../units/index.js";
import type { Carry, Lead, Levels, TailHeight } from "./choice-tables.js";

/** A dot that the artist has fixed; the rest of the plan is solved around it. */
export interface Pin {
  readonly side: Side;
  readonly dot: Dot;
  /** Where it stays, in the face space; depth does not matter. */
  readonly at: Point<"mm">;
  /** Who fixed it; left out: the artist. */
  readonly by?: string;
  /** Why, in the artist's words. */
  readonly reason?: string;
}

/** Everything an artist may choose; what is left out follows the stated default. */
export interface Choices {
  /** Default `"middle"`, and the only brow with hair where the other one has none. */
  readonly lead?: Lead;
  /** Default `"mirror"`; `"measure"` needs a brow that leads. */
  readonly carry?: Carry;
  /** Whose heights both brows take; `"higher"`: those of the higher brow. Default: as `lead`. */
  readonly levels?: Levels;
  /**
   * How far evening may take start, arch and a tail end at its natural height up or down from the border
   * of its own side in the same place, in millimetres; the plan's reasons say what then stays uneven.
   * Default: as far as needed. Pinned dots and those that mirror them are not limited, nor is a tail end
   * farther than 5 mm past its hair, and a brow carried by measure cannot be.
   */
  readonly levelLimit?: Length<"mm">;
  /**
   * Default: through alare where the nose can be trusted, else through endocanthion. `"natural"`: where the
   * hair starts.
   */
  readonly start?: StartConvention;
  /** Default `"natural"`, and `"brow-length-share"` where a brow has no natural arch. */
  readonly arch?: ArchConvention;
  /** Default `"alare-through-exocanthion"`. `"natural"`: where the hair ends. */
  readonly tail?: TailConvention;
  /**
   * How far past a guide of start or tail healthy hair is kept, sideways, in millimetres. Hair that reaches
   * no farther stays as it grows. Of hair that reaches farther a guide takes away 2.5 mm at most and stops
   * there, and the reasons say so. 0 lets guides have their way; enlarging it never takes away more hair.
   * Each side's hair counts before the sides are evened; a detector's brow that is no hair does not.
   * Default 2.5; both trade practice, no source.
   */
  readonly keepHair?: Length<"mm">;
  /** Place of the arch in eye widths from endocanthion, for `"eye-width-share"`. Default 0.953. */
  readonly eyeWidthShare?: number;
  /** Front over front and tail, for `"brow-length-share"`, 0.4…0.9. Default two thirds. */
  readonly frontShare?: number;
  /** Default `"natural"`. */
  readonly tailHeight?: TailHeight;
  /** Default: the natural thickness; 8, 7 and 6 mm where no lower border is known. */
  readonly thickness?: StationThickness;
  /** How the borders run between their dots. Default: as `outline` draws them. */
  readonly shape?: OutlineOptions;
  /**
   * Whether the artist sees that the nose is bent: alare is then not used for the start. Left out, the
   * nose is measured, where sellion and subnasale are known.
   */
  readonly noseBent?: boolean;
  readonly pins?: readonly Pin[];
  /** How differences are decided: `"guarded"` (default) asks for proof, `"simple"` takes the value only. */
  readonly rule?: DecisionRule;
  /**
   * What the sides may differ by, and a front share from the one asked for: in the plan, where choices are
   * weighed, and where what was drawn is checked or graded against the plan. Nothing is decided about what
   * a set leaves out. Default `WORKING_TOLERANCES`.
   */
  readonly tolerances?: ToleranceSet;
  /** What only somebody in the room knows. */
  readonly declared?: Declared;
}
