export { choicesSchema, parseChoices } from "./choices.js";
export { faceSchema, parseFace } from "./face.js";
export type { Schema } from "./schema.js";
