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
export interface FindingNoteParts extends UncertaintyNotes {
  /** Where no limit stands above. */
  readonly unlimited: NoValues;
  /** Said between finding and advice where the finding is not proven. */
  readonly "not-proven": { readonly u: Note<keyof UncertaintyNotes> };
}

/** A standard uncertainty, in the unit in which a finding tells its value. */
interface UncertaintyNotes {
  readonly "u-in-degrees": Numbers<"u">;
  readonly "u-as-length": Numbers<"u">;
  readonly "u-in-pixels": Numbers<"u">;
  readonly "u-in-irises": Numbers<"u">;
  readonly "u-in-percent": Numbers<"percent">;
  readonly "u-as-share": Numbers<"u">;
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

/** In what findings tell their value; left out, as a share of something. */
const TOLD_IN: { readonly [Code in FindingCode]?: Exclude<keyof UncertaintyNotes, "u-as-share"> } =
  {
    "head-tilted": "u-in-degrees",
    "head-turned": "u-in-degrees",
    "turned-or-asymmetric": "u-in-degrees",
    "chin-raised": "u-in-degrees",
    "chin-lowered": "u-in-degrees",
    "brow-raised": "u-as-length",
    "brow-lowered": "u-as-length",
    "too-few-pixels": "u-in-pixels",
    "camera-too-near": "u-as-length",
    "eyes-narrow-for-irises": "u-in-irises",
    "eyes-wide-for-irises": "u-in-irises",
    "irises-unequal": "u-in-percent",
    "pupil-distance-implausible": "u-as-length",
    "iris-width-implausible": "u-as-length",
  };

/** That a finding is not proven, its uncertainty in the unit of its value. */
export function notProven(code: FindingCode, u: number): Note<"not-proven"> {
  const unit = TOLD_IN[code] ?? "u-as-share";
  const inUnit =
    unit === "u-in-percent" ? findingPart(unit, { percent: 100 * u }) : findingPart(unit, { u });
  return findingPart("not-proven", { u: inUnit });
}
