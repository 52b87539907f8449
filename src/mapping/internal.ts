export { CAUTION_CODES, type CautionNotes, type ComparisonFindingNotes } from "./plan/notes.js";
export { isTold, movesToMake, noteOfMove } from "./plan/moves.js";
export { requirePlan } from "./plan/require-plan.js";
export type { MoveNotes, WayNotes } from "./plan/move-notes.js";
export { REASON_CODES, type ReasonNoteParts, type ReasonNotes } from "./dots/notes.js";
export type { ArchLimit } from "./dots/arch-limits.js";
export { amountNote, readNote } from "./drawn/correction.js";
export {
  type AmountNotes,
  type CorrectionNotes,
  readingNote,
  type ReadNotes,
} from "./drawn/notes.js";
export type { EvennessNotes } from "./drawn/notes.js";
export type { WeighingNoteParts, WeighingNotes } from "./weighing/notes.js";
export type { WishLimitNotes, WishNotes } from "./wishes/notes.js";
export type { AreaNotes } from "./areas/notes.js";
export type { CarryNotes, ResultNotes, TouchUpNotes, VisitNotes } from "./visits/notes.js";
export { AGREEMENTS, CALENDAR_DAY } from "./record/map-record.js";
export type { LaidNotes, RulerPlaceNotes, StepNotes } from "./record/notes.js";
export type { StepReasonNotes, StringNotes } from "./record/notes.js";
export { SHAPE_CODES, type ShapeNotes } from "./shape/notes.js";
export { isHair, standInOf } from "./dots/is-hair.js";
export { defaultLead } from "./dots/default-lead.js";
export type { BareCode } from "./dots/without-hair.js";
export { ORIGINS } from "./dots/planned-dots.js";
export { CHOSEN_SHARES } from "./choices/choice-tables.js";
