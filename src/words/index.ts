export type { FigureStyle, InchMarks, LengthUnit } from "./catalogue/figures.js";
export { ENGLISH } from "./english/english.js";
export { ANATOMICAL } from "./anatomical/anatomical.js";
export { SPANISH } from "./spanish/spanish.js";
export type { Notes } from "./catalogue/notes.js";
export { say, sayAdvice } from "./telling/say.js";
export type { Terms, Vocabularies } from "./catalogue/terms.js";
export { type Sentence, type Sentences, type Words, wordsOf } from "./catalogue/words.js";
