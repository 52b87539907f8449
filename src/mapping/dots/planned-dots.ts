import type {
  ArchConvention,
  CompleteDots,
  Dot,
  Skin,
  StartConvention,
  TailConvention,
} from "../../landmarks/index.js";
import type {
  Guide,
  NaturalDots,
  OutlineOptions,
  StationThickness,
} from "../../proportions/index.js";
import type { Length, Note, Sides } from "../../units/index.js";
import type { Carry, Lead, TailHeight } from "../choices/choice-tables.js";
import type { Pin } from "../choices/choices.js";
import type { PlannableFace } from "./plannable-face.js";
import type { ReasonCode } from "./notes.js";

/** Choices after every default is settled: the plan follows from these and the face only. */
export interface SettledChoices {
  readonly lead: Lead;
  readonly carry: Carry;
  readonly levels: Lead;
  /** Absent where evening may go as far as it takes. */
  readonly levelLimit?: Length<"mm">;
  readonly start: StartConvention;
  readonly arch: ArchConvention;
  readonly tail: TailConvention;
  /** Absent in plans that were kept before there was a choice. */
  readonly keepHair?: Length<"mm">;
  readonly eyeWidthShare: number;
  readonly frontShare: number;
  readonly tailHeight: TailHeight;
  readonly thickness: StationThickness;
  readonly shape: OutlineOptions;
  readonly pins: readonly Pin[];
}

/** One settled choice with the reasons for it. */
export interface Settled<Value> {
  readonly value: Value;
  readonly reasons: readonly Note<ReasonCode>[];
}

/** All answers to who put a dot where it is. */
export const ORIGINS = ["own", "mirrored", "measured", "both", "pinned"] as const;

/** Who put a dot where it is. */
export interface DotOrigin {
  /**
   * `"own"`: this side's landmarks only; `"mirrored"`: the other side's; `"measured"`: the other
   * side's ruler lengths from this side's start; `"both"`: their middle.
   */
  readonly from: (typeof ORIGINS)[number];
  /** Present where the artist fixed the dot. */
  readonly pin?: Pin;
}

/** The dots of both brows, solved, with everything that explains them. All in the face space. */
export interface PlannedDots {
  readonly face: PlannableFace;
  readonly skin: Skin;
  readonly choices: SettledChoices;
  readonly reasons: readonly Note<ReasonCode>[];
  /** The brows as they grow, or as a detector guesses them to. */
  readonly natural: Sides<NaturalDots>;
  readonly guides: Sides<readonly Guide[]>;
  readonly dots: Sides<CompleteDots<"mm">>;
  readonly origins: Sides<{ readonly [Name in Dot]: DotOrigin }>;
}

/** A face with what is read on it before anything is chosen. */
export type FaceRead = Pick<PlannedDots, "face" | "natural" | "skin">;
