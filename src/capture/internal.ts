export { type FindingNoteParts, type FindingNotes, notProven } from "./notes.js";
export type { DeclaredFact, DepthOrigin, Need, Question, ToldByLandmarks } from "./notes.js";
