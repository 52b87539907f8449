import { type Declared, type Dot, DOT_NAMES, DOTS } from "../landmarks/index.js";
import type { Carry, Choices, Lead, Pin, TailHeight } from "../mapping/index.js";
import type {
  ArchConvention,
  ArchGuideConvention,
  GuideConvention,
  OutlineOptions,
  StartConvention,
  StationThickness,
} from "../proportions/index.js";
import type { DecisionRule, Side } from "../units/index.js";
import { toleranceSet } from "./tolerance-set.js";
import { parse } from "./parse.js";
import { point, positiveLength, words } from "./quantity.js";
import { flag, list, record, type Schema, within, word, type Words } from "./schema.js";

/** Each dot of both brows. */
const MOST_PINS = 2 * DOT_NAMES.length;

export const side: Schema<Side> = word<Side>({ right: true, left: true });

export const dot: Schema<Dot> = word<Dot>(DOTS);

const startConventions: Words<StartConvention> = {
  "alare-vertical": true,
  "endocanthion-vertical": true,
};

const archGuides: Words<ArchGuideConvention> = {
  "lateral-limbus-vertical": true,
  "alare-through-pupil": true,
  "eye-width-share": true,
  "exocanthion-vertical": true,
  "alare-through-lateral-limbus": true,
};

/** Every rule that is a line on the face. */
export const guideConvention: Schema<GuideConvention> = word<GuideConvention>({
  ...startConventions,
  ...archGuides,
  "alare-through-exocanthion": true,
});

export const startConvention: Schema<StartConvention> = word<StartConvention>(startConventions);

export const archConvention: Schema<ArchConvention> = word<ArchConvention>({
  natural: true,
  ...archGuides,
  "brow-length-share": true,
});

export const lead: Schema<Lead> = word<Lead>({ right: true, left: true, middle: true });

export const carry: Schema<Carry> = word<Carry>({ mirror: true, measure: true });

export const tailHeight: Schema<TailHeight> = word<TailHeight>({
  natural: true,
  "level-with-lower-start": true,
  "level-with-upper-start": true,
});

export const thickness: Schema<StationThickness> = record<StationThickness>(
  { start: positiveLength<"mm">(), body: positiveLength<"mm">(), arch: positiveLength<"mm">() },
  {},
);

export const shape: Schema<OutlineOptions> = record<OutlineOptions>(
  {},
  {
    angularity: within(0, 1),
    startSlope: within(0, 3),
    tailSlope: within(0, 3),
    frontRoundness: within(0, 1),
  },
);

export const pin: Schema<Pin> = record<Pin>(
  { side, dot, at: point<"mm">() },
  { by: words, reason: words },
);

export const pins: Schema<readonly Pin[]> = list(pin, MOST_PINS);

/** What an artist has chosen for a plan. */
export const choicesSchema: Schema<Choices> = record<Choices>(
  {},
  {
    lead,
    carry,
    levels: word<NonNullable<Choices["levels"]>>({
      right: true,
      left: true,
      middle: true,
      higher: true,
    }),
    levelLimit: positiveLength<"mm">(),
    start: startConvention,
    arch: archConvention,
    eyeWidthShare: within(0.4, 1.4),
    frontShare: within(0.4, 0.9),
    tailHeight,
    thickness,
    shape,
    noseBent: flag,
    pins,
    rule: word<DecisionRule>({ guarded: true, simple: true }),
    tolerances: toleranceSet,
    declared: record<Declared>({}, { upright: flag, relaxed: flag }),
  },
);

/**
 * Reads an artist's choices from outside, such as parsed JSON.
 *
 * @throws GeometryError `not-parsed`, naming the path, what stood there and what is needed
 *
 * @example
 * ```ts
 * import { parseChoices } from "brow-geometry/schema";
 * parseChoices({ lead: "left", noseBent: true }); // → { lead: "left", noseBent: true }
 * parseChoices({ lead: "top" }); // throws GeometryError: lead is "top"; needs one of right, left, middle
 * ```
 */
export function parseChoices(json: unknown): Choices {
  return parse("parseChoices", "choices", choicesSchema, json);
}
