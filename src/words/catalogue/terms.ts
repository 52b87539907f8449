import type {
  DeclaredFact,
  DepthOrigin,
  Need,
  Question,
  ToldByLandmarks,
} from "../../capture/internal.js";
import type {
  ArchConvention,
  Dot,
  FaceMeasureName,
  GuideConvention,
  LandmarkName,
  Mark,
  MarkupName,
} from "../../landmarks/index.js";
import type {
  KindOfMeasure,
  Lacked,
  LandmarkPath,
  MeasureKind,
  StandInCode,
} from "../../landmarks/internal.js";
import type { Carry, Choices, Lead, Levels, TailHeight, WishName } from "../../mapping/index.js";
import type { ArchLimit, BareCode } from "../../mapping/internal.js";
import type { OutlineOptions, Station } from "../../proportions/index.js";
import type { Way } from "../../symmetry/index.js";
import type { Outcome, ScaleSource, Side } from "../../units/index.js";
import type { LengthUnit } from "./figures.js";

/** Vocabularies: what stands for a word of a result, such as a side or a dot, in a sentence. */
export interface Vocabularies {
  readonly sides: Side;
  readonly dots: Dot;
  readonly landmarks: LandmarkName;
  readonly marks: Mark;
  readonly stations: Station;
  readonly measures: FaceMeasureName;
  /** What too much of a kind of measure is called, and too little. */
  readonly tooMuch: MeasureKind;
  readonly tooLittle: MeasureKind;
  /** Rules for a mark, as the end of a phrase such as "arch …". */
  readonly rules: GuideConvention | ArchConvention;
  /** Where the tail ends along its guide, as the end of a phrase such as "tail …". */
  readonly tailHeights: TailHeight;
  /** Verticals between which a natural arch stays, by what they run through. */
  readonly archLimits: ArchLimit["convention"];
  readonly ways: Way;
  readonly levels: "higher" | "lower";
  /** Which brow leads, how the other follows, and whose heights both take, as an artist chose. */
  readonly leads: Lead;
  readonly carries: Carry;
  readonly heightsOf: Levels;
  readonly wishes: WishName;
  readonly choices: keyof Choices;
  readonly shapes: keyof OutlineOptions;
  readonly scaleSources: ScaleSource;
  readonly outcomes: Outcome;
  readonly units: Exclude<KindOfMeasure["unit"], "mm" | "mm²">;
  readonly lengthUnits: LengthUnit;
  /** What stands behind a length; an area has it squared. */
  readonly lengthSigns: LengthUnit;
  /** What is looked at, where the answer is that it was not. */
  readonly questions: Question;
  /** What it takes to look at it. */
  readonly needs: Need;
  /** What landmarks alone tell, in a word each. */
  readonly toldByLandmarks: ToldByLandmarks;
  /** What may be declared of a client, and its contrary. */
  readonly declared: DeclaredFact;
  readonly contrary: DeclaredFact;
  /** Landmarks and lines where they stand in a face. */
  readonly landmarkPaths: LandmarkPath;
  /** What a markup may lack. */
  readonly lacked: Lacked;
  /** What each markup is. */
  readonly markups: MarkupName;
  /** What was used instead of a landmark; what is no code, such as words of one's own, is said as it is. */
  readonly standIns: StandInCode | BareCode;
  /** Shares of the length that have a name, by two decimals: others are said as numbers. */
  readonly shares: string;
  /** Where the depth of a brow is known from. */
  readonly depthOrigins: DepthOrigin;
}

/** The words of every vocabulary. */
export type Terms = {
  readonly [Name in keyof Vocabularies]: Readonly<Record<Vocabularies[Name], string>>;
};
