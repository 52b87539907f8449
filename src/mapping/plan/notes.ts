import type { FaceNotes } from "../../landmarks/internal.js";
import type { Note, Side } from "../../units/index.js";
import { type CodeOf, type NoteMaker, noteMaker } from "../../units/internal.js";
import type { NoValues, Numbers } from "../../units/internal.js";

export const CAUTION_CODES = [
  "local-law",
  "hygiene",
  "planning-aid",
  "scale-uncertain",
  "scale-from-population-average",
  "stand-in",
  "brow-not-seen",
  "head-may-be-turned",
  "head-may-be-raised",
  "head-was-turned",
  "eyes-slant",
  "size-implausible",
  "capture-finding",
  "expression-differs",
  "pose-differs",
  "posture-not-kept",
  "posture-not-declared",
] as const;

/** Codes of the cautions that travel with a plan. */
export type CautionCode = CodeOf<typeof CAUTION_CODES, CautionNotes>;

interface OfSide {
  readonly side: Side;
}

/** Another note, to be said within this one. */
interface Carried {
  readonly finding: Note;
}

/** What speaks against a capture, and whether another picture is asked for. */
interface CarriedWarning extends Carried {
  readonly severity: string;
}

/** What whoever uses a plan must know before pigment goes into skin, each with its values. */
export interface CautionNotes extends Pick<FaceNotes, "stand-in"> {
  readonly "local-law": NoValues;
  readonly hygiene: NoValues;
  readonly "planning-aid": NoValues;
  readonly "scale-uncertain": Numbers<"percent" | "off">;
  readonly "scale-from-population-average": NoValues;
  /** What a plan has instead of hair. */
  readonly "brow-not-seen": { readonly instead: string };
  readonly "head-may-be-turned": Carried;
  readonly "head-was-turned": OfSide &
    Numbers<"yaw" | "u" | "pitch"> & { readonly where: "higher" | "lower" };
  readonly "head-may-be-raised": Numbers<"u">;
  readonly "eyes-slant": OfSide & Numbers<"angle" | "u" | "limit">;
  readonly "size-implausible": Numbers<"distance" | "least" | "most">;
  readonly "capture-finding": CarriedWarning;
  readonly "expression-differs": CarriedWarning;
  readonly "pose-differs": CarriedWarning;
  readonly "posture-not-kept": NoValues;
  readonly "posture-not-declared": NoValues;
}

export const caution: NoteMaker<CautionNotes> = /* @__PURE__ */ noteMaker();

/** Code of what another capture says against a plan, besides what the comparison notes itself. */
export type ComparisonFindingCode = keyof ComparisonFindingNotes;

/** What another capture says against a plan. */
export interface ComparisonFindingNotes {
  readonly "brow-displaced": OfSide &
    Numbers<"size" | "limit"> & { readonly where: "higher" | "lower" };
}

export const comparisonFinding: NoteMaker<ComparisonFindingNotes> = /* @__PURE__ */ noteMaker();
