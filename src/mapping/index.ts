export type { CautionCode } from "./cautions.js";
export type { Choices, Lead, Pin, TailHeight, Thickness } from "./choices.js";
export type { Move } from "./moves.js";
export type { BrowPlan, DotOrigin, ReasonCode, SettledChoices } from "./plan.js";
