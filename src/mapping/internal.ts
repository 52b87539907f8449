export { CAUTION_CODES, type ComparisonFindingCode } from "./plan/words.js";
export { REASON_CODES } from "./dots/words.js";
export { ORIGINS } from "./dots/planned-dots.js";
export { CHOSEN_SHARES } from "./choices/choice-tables.js";
export { CARRY_WORDS, LEAD_WORDS, LEVELS_WORDS, SHAPE_WORDS } from "./choices/words.js";
export { SHARE_WORDS, TAIL_HEIGHT_WORDS } from "./choices/words.js";
