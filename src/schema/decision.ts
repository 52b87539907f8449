import type { Decision, Limits, Outcome } from "../units/index.js";
import { ADVICE_CODES, DECISION_RULES, OUTCOMES } from "../units/internal.js";
import { note, spreadIfKnown } from "./quantity.js";
import { finite, record, type Schema, within, word } from "./schema.js";

export const limits: Schema<Limits> = record<Limits>({}, { lower: finite, upper: finite });

export const outcome: Schema<Outcome> = word(OUTCOMES);

export const decision: Schema<Decision> = record<Decision>(
  {
    outcome,
    rule: word(DECISION_RULES),
    confidence: within(0, 1),
    value: finite,
    u: spreadIfKnown,
    limits,
    probability: within(0, 1),
  },
  {
    guardBand: finite,
    acceptable: finite,
    advice: note(ADVICE_CODES),
  },
);
