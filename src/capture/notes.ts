import type { Note, Side } from "../units/index.js";
import type { NoteMaker, NoValues, Numbers } from "../units/internal.js";
import { noteMaker } from "../units/internal.js";
import type { LimitedCheck } from "./limits.js";

/** Codes of what {@link checkCapture} may find. */
export type FindingCode = keyof FindingNotes;

/** A value, its size without a sign, its uncertainty, and the limit that it meets or breaks. */
type Judged<More extends string = never> = Numbers<"value" | "size" | "u" | "limit" | More>;

interface OfSide {
  readonly side: Side;
}

/** Which way of two, as the client's own. */
interface Towards {
  readonly towards: Side;
}

/** A span of what is usual; above it there may be no limit. */
type Usual = Numbers<"lower"> & { readonly upper: number | Note<"unlimited"> };

/** What was found, each with its values. */
export interface FindingNotes {
  readonly "head-tilted": Judged;
  readonly "head-turned": Judged & Towards;
  readonly "turned-or-asymmetric": Judged<"difference"> & { readonly narrow: Side };
  readonly "chin-raised": Judged;
  readonly "chin-lowered": Judged;
  readonly "eye-closed": Judged & OfSide;
  readonly "looking-aside": Judged & Towards;
  readonly "looking-up": Judged;
  readonly "looking-down": Judged;
  readonly "lips-apart": Judged;
  readonly "brow-raised": Judged & OfSide;
  readonly "brow-lowered": Judged & OfSide;
  readonly "too-few-pixels": Judged<"pixel" | "tolerance">;
  readonly "camera-too-near": Judged<"percent">;
  readonly "camera-distance-unknown": Numbers<"depth" | "percent" | "limit"> & {
    readonly from: DepthOrigin;
    readonly need: Need;
  };
  readonly "eyes-narrow-for-irises": Judged<"away">;
  readonly "eyes-wide-for-irises": Judged;
  readonly "irises-unequal": Judged<"percent"> & { readonly wide: Side };
  readonly "pupil-distance-implausible": Judged & Usual;
  readonly "iris-width-implausible": Judged & Usual;
  readonly "canthal-index-implausible": Judged & Usual;
  readonly "picture-stretched": Judged & Usual;
  readonly "sides-exchanged": NoValues;
  readonly "sides-unlike": NoValues;
  readonly "few-landmarks": Numbers<"all" | "open"> & { readonly what: readonly ToldByLandmarks[] };
  readonly "not-checked": { readonly what: Question; readonly need: Need };
  readonly declared: { readonly fact: DeclaredFact };
  readonly "not-declared": { readonly fact: DeclaredFact };
  readonly "declared-contrary": { readonly fact: DeclaredFact };
  readonly "declaration-questioned": { readonly fact: DeclaredFact } & OfSide &
    Numbers<"size"> & { readonly where: "higher" | "lower" };
}

/** What findings hold within them. */
export interface FindingNoteParts {
  /** Where no limit stands above. */
  readonly unlimited: NoValues;
  /** Said between finding and advice where the finding is not proven. */
  readonly "not-proven": Numbers<"u">;
}

/** What may be declared of a client. */
export type DeclaredFact = "upright" | "relaxed";

/** Where the depth of a brow is known from. */
export type DepthOrigin = "landmarks" | "usual";

/** What is looked at, where the answer is that it was not. */
export type Question =
  Exclude<LimitedCheck, "eyeOpening"> | `${"eyeOpening" | "browHeight"}-${Side}` | "sides";

/** What it takes to look at it. */
export type Need = LimitedCheck | "openEyes" | "baseline";

/** What landmarks alone tell. */
export type ToldByLandmarks =
  | "sides"
  | "roll"
  | "yaw"
  | "pitch"
  | "eyeOpening"
  | "gaze"
  | "mouthOpening"
  | "irises"
  | "canthalIndex";

export const findingPart: NoteMaker<FindingNoteParts> = /* @__PURE__ */ noteMaker();
