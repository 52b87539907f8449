import type {
  ArchConvention,
  Dot,
  FaceMeasureName,
  GuideConvention,
  PointLandmark,
} from "../../landmarks/index.js";
import type { TailHeight } from "../../mapping/index.js";
import type { Outcome, Side } from "../../units/index.js";
import type { NoValues } from "../../units/internal.js";
import type { LengthUnit } from "./figures.js";

/** Texts, each printed as it is. */
type Texts<Name extends string> = { readonly [Key in Name]: string };

/** What pictures and sheets are labelled with, each with its values; figures come printed. */
export interface Labels {
  readonly "corner-right": NoValues;
  readonly "corner-left": NoValues;
  readonly approximated: { readonly landmark: PointLandmark };
  readonly "dot-above": { readonly side: Side; readonly dot: Dot } & Texts<"distance" | "height">;
  readonly "dot-below": { readonly side: Side; readonly dot: Dot } & Texts<"distance" | "height">;
  readonly "dot-drawn": { readonly side: Side; readonly dot: Dot };
  readonly "line-midline": NoValues;
  readonly "line-start": NoValues;
  readonly "line-arch": NoValues;
  readonly "line-tail": NoValues;
  readonly "small-natural": NoValues;
  readonly "small-planned": NoValues;
  readonly "axis-outward": { readonly side: Side; readonly dot: Dot };
  readonly "axis-up": { readonly side: Side; readonly dot: Dot };
  readonly "chosen-limit": Texts<"limit">;
  readonly "chosen-bent": NoValues;
  readonly "chosen-straight": NoValues;
  readonly "chosen-start": { readonly rule: GuideConvention | ArchConvention };
  readonly "chosen-arch": { readonly rule: GuideConvention | ArchConvention };
  readonly "chosen-tail": { readonly rule: GuideConvention | ArchConvention };
  readonly "chosen-thickness": Texts<"thickness" | "unit">;
  readonly "chosen-pin": NoValues;
  readonly "chosen-pins": Texts<"count">;
  readonly "figure-mean": NoValues;
  readonly "figure-greatest": NoValues;
  readonly "figure-hair": NoValues;
  readonly "figure-skin": NoValues;
  readonly "figure-apart": NoValues;
  readonly "figure-lid": NoValues;
  readonly "figure-share": NoValues;
  readonly "value-unknown": NoValues;
  readonly "value-nothing": NoValues;
  readonly "value-both": Texts<"value">;
  readonly "value-held": Texts<"value">;
  readonly "title-plan": NoValues;
  readonly "title-choices": NoValues;
  readonly "title-captures": NoValues;
  readonly "title-strip": NoValues;
  readonly "described-face": NoValues;
  readonly "described-right": Texts<"start" | "arch" | "tail" | "lengths">;
  readonly "described-left": Texts<"start" | "arch" | "tail" | "lengths">;
  readonly "described-front": Texts<"length">;
  readonly "described-tail": Texts<"length">;
  readonly "described-overlap": { readonly side: Side } & Texts<"hair" | "skin">;
  readonly "described-check": { readonly outcome: Outcome } & Texts<"corrections">;
  readonly "described-captures": NoValues;
  readonly "described-capture": Texts<"name" | "right" | "left">;
  readonly "described-unplaced": Texts<"labels">;
  readonly "legend-planned": NoValues;
  readonly "legend-natural": NoValues;
  readonly "legend-midline": NoValues;
  readonly "legend-start": { readonly rule: GuideConvention | ArchConvention };
  readonly "legend-arch": { readonly rule: GuideConvention | ArchConvention };
  readonly "legend-tail": { readonly rule: GuideConvention | ArchConvention };
  readonly "legend-lengths": NoValues;
  readonly "legend-landmark": NoValues;
  readonly "legend-stand-in": NoValues;
  readonly "legend-no-overlap": { readonly side: Side };
  readonly "legend-hair": Texts<"areas" | "unit">;
  readonly "legend-skin": Texts<"areas" | "unit">;
  readonly "legend-drawn": { readonly outcome: Outcome };
  readonly "legend-correction": NoValues;
  readonly "legend-undecided": NoValues;
  readonly "legend-move": NoValues;
  readonly "legend-level": NoValues;
  readonly "legend-first-level": NoValues;
  readonly "legend-capture": NoValues;
  readonly "legend-first-capture": Texts<"name">;
  readonly "legend-change": Texts<"unit">;
  readonly "legend-doubt": NoValues;
  readonly "panel-natural": { readonly side: Side };
  readonly "panel-planned": { readonly side: Side };
  readonly "heading-moves": NoValues;
  readonly "heading-pins": NoValues;
  readonly "heading-cautions": NoValues;
  readonly "heading-steps": NoValues;
  readonly "heading-reasons": NoValues;
  readonly "heading-check": NoValues;
  readonly "heading-readings": NoValues;
  readonly "field-client": NoValues;
  readonly "field-date": NoValues;
  readonly "field-artist": NoValues;
  readonly "sheet-true-size": NoValues;
  readonly "sheet-readings": { readonly unit: LengthUnit };
  readonly "sheet-print": NoValues;
  readonly page: Texts<"title" | "number" | "of">;
  readonly "column-planned": NoValues;
  readonly "column-drawn": NoValues;
  readonly "column-difference": NoValues;
  readonly "column-decision": NoValues;
  readonly "column-step": NoValues;
  readonly "column-check": NoValues;
  readonly "column-reads": NoValues;
  readonly "column-right-grows": NoValues;
  readonly "column-right-planned": NoValues;
  readonly "column-left-grows": NoValues;
  readonly "column-left-planned": NoValues;
  readonly "column-left-less-right": NoValues;
  readonly "of-side": { readonly side: Side } & Texts<"what">;
  readonly "measure-in": { readonly measure: FaceMeasureName } & Texts<"unit">;
  readonly "chosen-tail-height": { readonly height: TailHeight };
  readonly "legend-arch-pinned": NoValues;
}
