import type { FindingNoteParts, FindingNotes } from "../../capture/internal.js";
import type { GradeNoteParts, GradeNotes, UngradedNotes } from "../../grading/internal.js";
import type { FeedbackNotes } from "../../grading/internal.js";
import type { BeyondNotes, FaceNotes } from "../../landmarks/internal.js";
import type {
  AmountNotes,
  CarryNotes,
  CautionNotes,
  ComparisonFindingNotes,
  CorrectionNotes,
  EvennessNotes,
  MoveNotes,
  ReadNotes,
  ReasonNoteParts,
  ReasonNotes,
  ResultNotes,
  RulerPlaceNotes,
  ShapeNotes,
  StepNotes,
  StepReasonNotes,
  TouchUpNotes,
  VisitNotes,
  WayNotes,
  WeighingNoteParts,
  WeighingNotes,
  WishLimitNotes,
  WishNotes,
} from "../../mapping/internal.js";
import type {
  HalfFacesNotes,
  RegistrationNoteParts,
  RegistrationNotes,
} from "../../symmetry/internal.js";
import type { AdviceNotes, ScaleNoteParts, ScaleNotes } from "../../units/internal.js";

/** Every note of this library by its code, with its values. Two notes of one code are one note. */
export interface Notes
  extends
    ScaleNotes,
    ScaleNoteParts,
    AdviceNotes,
    FaceNotes,
    BeyondNotes,
    HalfFacesNotes,
    RegistrationNotes,
    RegistrationNoteParts,
    FindingNotes,
    FindingNoteParts,
    ReasonNotes,
    ReasonNoteParts,
    CautionNotes,
    ComparisonFindingNotes,
    ShapeNotes,
    MoveNotes,
    WayNotes,
    ReadNotes,
    AmountNotes,
    CorrectionNotes,
    EvennessNotes,
    StepNotes,
    StepReasonNotes,
    RulerPlaceNotes,
    CarryNotes,
    ResultNotes,
    TouchUpNotes,
    VisitNotes,
    WeighingNotes,
    WeighingNoteParts,
    WishNotes,
    WishLimitNotes,
    GradeNotes,
    UngradedNotes,
    FeedbackNotes,
    GradeNoteParts {}
