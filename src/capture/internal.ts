export type { FindingNoteParts, FindingNotes } from "./notes.js";
export type { DeclaredFact, DepthOrigin, Need, Question, ToldByLandmarks } from "./notes.js";
