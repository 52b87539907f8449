import type { Way } from "../../symmetry/index.js";
import type { Length, Side } from "../../units/index.js";

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
