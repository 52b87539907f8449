export type { FeedbackNotes, GradeNoteParts, GradeNotes, UngradedNotes } from "./notes.js";
