import type {
  AdviceCode,
  Decision,
  DecisionRule,
  Limits,
  Outcome,
  Tolerance,
  ToleranceName,
  ToleranceSet,
} from "../units/index.js";
import { note, spread, words } from "./quantity.js";
import { each, finite, maybe, record, type Schema, within, word } from "./schema.js";

const limits: Schema<Limits> = record<Limits>({}, { lower: finite, upper: finite });

/** What was decided about one measured value. */
export const decision: Schema<Decision> = record<Decision>(
  {
    outcome: word<Outcome>({ within: true, outside: true, undecided: true }),
    rule: word<DecisionRule>({ guarded: true, simple: true }),
    confidence: within(0, 1),
    value: finite,
    u: spread,
    limits,
    probability: within(0, 1),
    guardBand: maybe(finite),
    acceptable: maybe(finite),
  },
  { advice: note<AdviceCode>({ "repeat-placements": true, "measure-better": true }) },
);

const tolerance = record<Tolerance>(
  { limits, status: word<Tolerance["status"]>({ ours: true, published: true }), source: words },
  {},
);

/** Tolerances that belong together. */
export const toleranceSet: Schema<ToleranceSet> = record<ToleranceSet>(
  {
    name: words,
    tolerances: record<ToleranceSet["tolerances"]>(
      {},
      each<ToleranceName, Tolerance>(
        { position: true, thickness: true, frontShare: true, eyeCant: true, noseDeviation: true },
        tolerance,
      ),
    ),
  },
  {},
);
